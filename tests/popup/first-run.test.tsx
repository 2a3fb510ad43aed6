// @vitest-environment jsdom
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { checkFirstRun, type FirstRunDraft, firstRunFrom } from '../../popup/first-run/first-run-draft.ts'
import { PopupPage } from '../../popup/popup-page.tsx'
import { calendarDate, potId } from '../../src/index.ts'
import { blankPot } from '../../src/ui/pot-draft.ts'
import { fresh, state } from './fake-browser.ts'
import { FakeWorker } from './fake-worker.ts'
import { button, press, says, show, the, type, until } from './screen.tsx'

vi.mock('webextension-polyfill', () => import('./fake-browser.ts'))

let worker: FakeWorker
const names = () => [...document.querySelectorAll<HTMLInputElement>('.pot-name-field input')]
const amounts = () => [...document.querySelectorAll<HTMLInputElement>('.pot-amounts input')]
const start = () => the('button[type="submit"]', HTMLButtonElement).click()

beforeEach(async () => {
  worker = fresh(new FakeWorker())
  await show(<PopupPage tab={null} />)
  await says('Your pots, also at the checkout')
})

describe('the first run', () => {
  it('starts with the currency of the language’s region and three pots', () => {
    expect(the('.currency-field select', HTMLSelectElement).value).toBe('CAD')
    expect(names().map((n) => n.value)).toEqual(['Groceries', 'Household', 'Outings'])
  })

  it('makes a household of what was typed, sums shown while typing', async () => {
    const [cash, card, fillCash] = amounts()
    if (!cash || !card || !fillCash) throw new Error('The first pot has no amounts.')
    await type(cash, '100+20')
    await type(card, '94,50')
    await type(fillCash, '160')
    await until(
      () => document.querySelector('.running-sum')?.textContent === 'Notes120.00Card sides94.50Each pay160.00',
    )
    start()
    await says('Last entries')
    const groceries = worker.book?.household.pots[0]
    expect(groceries).toMatchObject({ id: potId('groceries'), fill: { cash: 16_000, card: 0 }, rule: 'block' })
    await says('Opened Groceries with 120.00 cash and 94.50 card')
  })

  it('says what is wrong beside the field, keeps all else, and asks nothing', async () => {
    const [first, second] = names()
    const [cash, card] = amounts()
    if (!first || !second || !cash || !card) throw new Error('The first pots have no fields.')
    await type(first, '')
    await type(second, 'outings')
    await type(cash, 'many')
    await type(card, '7.00')
    start()
    await says('Give the pot a name.')
    await says('Another pot has this name.')
    await says('This is not an amount.')
    expect(document.querySelectorAll('[aria-invalid="true"]').length).toBe(4)
    const noted = cash.getAttribute('aria-describedby')
    expect(document.getElementById(noted ?? '')?.textContent).toContain('This is not an amount.')
    await until(() => document.activeElement === first)
    expect(amounts()[1]?.value).toBe('7.00')
    expect(worker.count('household.create')).toBe(0)
  })

  it('rows are added and removed by keyboard', async () => {
    const [first] = names()
    if (!first) throw new Error('There is no pot.')
    await press('Enter', first)
    await until(() => names().length === 4 && document.activeElement === names()[1])
    await type(the('.pot-rows li:nth-child(2) input', HTMLInputElement), 'Piano lessons')
    await until(() => document.querySelector('[aria-label="Remove Piano lessons"]'))
    the('[aria-label="Remove Piano lessons"]', HTMLButtonElement).click()
    await until(() => names().length === 3 && document.activeElement === names()[1])
    expect(names().map((n) => n.value)).toEqual(['Groceries', 'Household', 'Outings'])
  })

  it('suggestions are ticked and unticked', async () => {
    const tick = (name: string) => the('.suggestion', HTMLLabelElement, name).querySelector('input')?.click()
    tick('Books')
    await until(() => names().length === 4)
    tick('Groceries')
    await until(() => names().length === 3)
    expect(names().map((n) => n.value)).toEqual(['Household', 'Outings', 'Books'])
  })

  it('what was typed survives closing', async () => {
    const [first] = names()
    if (!first) throw new Error('There is no pot.')
    await type(first, 'Food')
    await until(() => state.session.has('draft:first-run'))
    await show(<PopupPage tab={null} />)
    await until(() => names()[0]?.value === 'Food')
  })

  it('a demo household is one click away, and left by another', async () => {
    button('Try it with a demo household').click()
    await says('This household is invented.')
    button('Leave the demo').click()
    await says('Your pots, also at the checkout')
  })

  it('says plainly what it is not', async () => {
    const text = await says('no financial advice')
    for (const part of ["the bank's records decide", 'not insured', 'cannot stop a purchase made elsewhere']) {
      expect(text).toContain(part)
    }
  })
})

describe('checking a first run', () => {
  const today = calendarDate('2026-12-01')
  const draft: FirstRunDraft = {
    currency: 'CAD',
    rhythm: 'none',
    nextPay: '',
    otherDay: '',
    pots: [{ ...blankPot, name: 'Food', row: 0 }],
  }
  const check = (changes: Partial<FirstRunDraft>) =>
    checkFirstRun({ ...draft, ...changes }, today, 'America/Toronto', 'en-CA')

  it('turns the rhythm and the next pay into a schedule', () => {
    const nextPay = '2026-12-04'
    expect(check({ rhythm: 'monthly', nextPay }).ask?.schedule).toEqual({ rhythm: 'monthly', first: nextPay, day: 4 })
    expect(check({ rhythm: 'twice-a-month', nextPay, otherDay: '18' }).ask?.schedule).toEqual({
      rhythm: 'twice-a-month',
      first: nextPay,
      days: [4, 18],
    })
    expect(check({ rhythm: 'weekly', nextPay }).ask?.schedule).toEqual({ rhythm: 'weekly', first: nextPay })
    expect(check({ rhythm: 'none', nextPay }).ask?.schedule).toBeNull()
  })

  it('refuses a pay that passed, a day that is none, and a household without pots', () => {
    expect(check({ rhythm: 'weekly', nextPay: '2026-11-30' }).problems?.nextPay).toBe('past')
    expect(check({ rhythm: 'weekly', nextPay: '2026-02-30' }).problems?.nextPay).toBe('missing')
    expect(check({ rhythm: 'twice-a-month', nextPay: '2026-12-04', otherDay: '32' }).problems?.otherDay).toBe('bad')
    expect(check({ pots: [] }).problems?.noPots).toBe(true)
  })

  it('gives every pot an id of its own, whatever it is called', () => {
    const pots = ['Food & drink', 'food drink', '🎁', 'Élan'].map((name, row) => ({ ...blankPot, name, row }))
    expect(check({ pots }).ask?.pots.map((p) => p.id)).toEqual(['food-drink', 'food-drink-2', 'pot', 'élan'])
  })

  it('an amount on a side the pot does not keep is left out', () => {
    const pots = [{ ...blankPot, name: 'Market', sides: 'cash' as const, openCash: '45', openCard: '12', row: 0 }]
    expect(check({ pots }).ask?.pots[0]).toMatchObject({ openCash: '45.00', openCard: '0' })
  })

  it.each([null, 'text', 7, { pots: 'no list' }, { pots: [null, 3], currency: 'XXX', rhythm: 'daily' }])(
    'takes a draft that is none as a beginning: %o',
    (kept) => {
      const read = firstRunFrom(kept, draft)
      expect([read.currency, read.rhythm]).toEqual(['CAD', 'none'])
    },
  )
})
