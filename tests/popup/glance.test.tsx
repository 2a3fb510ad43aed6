// @vitest-environment jsdom
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { PopupPage } from '../../popup/popup-page.tsx'
import { calendarDate, money, type Pot, potId } from '../../src/index.ts'
import { splitByNotes, usualSplit } from '../../src/ui/glance/quick-plan.ts'
import { fresh, state } from './fake-browser.ts'
import { FakeWorker } from './fake-worker.ts'
import { smallHousehold } from './samples.ts'
import { button, field, press, says, show, the, type, until } from './screen.tsx'

vi.mock('webextension-polyfill', () => import('./fake-browser.ts'))

let worker: FakeWorker
const line = () => the('.quick-input', HTMLInputElement)
const enter = () => the('.quick', HTMLFormElement).requestSubmit()
const potOf = (id: string): Pot => {
  const pot = worker.book?.household.pots.find((p) => p.id === id)
  if (!pot) throw new Error(`There is no pot ${id}.`)
  return pot
}

beforeEach(async () => {
  worker = fresh(new FakeWorker(calendarDate('2026-12-01')))
  await worker.answer({ command: 'household.create', ask: smallHousehold })
  worker.asked.length = 0
  await show(<PopupPage tab={null} />)
  await says('left in all')
})

describe('quick entry', () => {
  it('has the keyboard at once; a line and Enter is a spend, told in a sentence with its undo', async () => {
    await until(() => document.activeElement === line())
    await type(line(), '12.50 gro bread')
    await says('Spend 12.50 cash from Groceries: bread')
    enter()
    await says('Spent 12.50 cash from Groceries: bread')
    await until(() => line().value === '')
    expect(worker.entries().at(-1)).toMatchObject({ kind: 'spend', date: '2026-12-01', purpose: 'bread' })
    the('.said button', HTMLButtonElement).click()
    await until(() => !document.querySelector('.said'))
    expect(worker.entries().at(-1)?.kind).toBe('reversal')
  })

  it('entered twice in one go it is one entry; the same again later is a second one', async () => {
    await type(line(), '5 sat leeks')
    await says('Spend 5.00 cash')
    enter()
    enter()
    await says('Spent 5.00 cash')
    expect(worker.entries().filter((e) => e.kind === 'spend')).toHaveLength(1)
    await type(line(), '5 sat leeks')
    await says('Spend 5.00 cash')
    enter()
    await until(() => worker.entries().filter((e) => e.kind === 'spend').length === 2)
  })

  it('after no answer the same line keeps its id, also when the popup was closed in between', async () => {
    worker.failure = { code: 'no-answer', message: '' }
    await type(line(), '5 sat leeks')
    await says('Spend 5.00 cash')
    enter()
    await says('entered once at most')
    worker.failure = null
    await show(<PopupPage tab={null} />)
    await says('Spend 5.00 cash')
    enter()
    await says('Spent 5.00 cash')
    const ids = worker.asked.filter((a) => a.command === 'spend.add').map((a) => JSON.stringify(a.ask))
    expect(ids).toHaveLength(2)
    expect(ids[1]).toBe(ids[0])
  })

  it('arrow keys choose among the pots a beginning may mean', async () => {
    await type(line(), '3 g')
    await says('Spend 3.00 cash from Groceries')
    await press('ArrowDown', line())
    await says('Spend 3.00 cash from Garden')
    enter()
    await says('Spent 3.00 cash from Garden')
  })

  it('warns when the notes are spoken for, and enters it all the same', async () => {
    await type(line(), '40 piano')
    await says('2.00 more than its free cash')
    enter()
    await says('Spent 40.00 cash from Piano lessons')
  })

  it('a plus makes it a fill, split like the pot’s own fill, from unplaced money', async () => {
    await type(line(), '+50 gro')
    await says('Fill Groceries: 40.00 in notes, 10.00 on the card side')
    await says('Only 0.00 is unplaced')
    await type(field('Of it in notes'), '15')
    await says('Fill Groceries: 15.00 in notes, 35.00 on the card side')
    enter()
    await says('Filled Groceries with 15.00 cash and 35.00 card')
    expect(worker.asked.find((a) => a.command === 'fill.add')?.ask).toMatchObject({ from: 'unplaced', cash: '15.00' })
  })

  it('a half-typed line is there when the popup opens again', async () => {
    await type(line(), '12.50 gro')
    await until(() => state.session.get('draft:quick') === '12.50 gro')
    await show(<PopupPage tab={null} />)
    await says('Spend 12.50 cash from Groceries')
    expect(line().value).toBe('12.50 gro')
  })

  it('so are the side, the source and the part in notes, until the line is entered', async () => {
    const choice = (label: string): HTMLInputElement =>
      the('label', HTMLLabelElement, label).querySelector('input') ?? line()
    await type(line(), '12.50 gro')
    the('.quick-details label', HTMLLabelElement, 'card').click()
    await says('Spend 12.50 card from Groceries')
    await show(<PopupPage tab={null} />)
    await says('Spend 12.50 card from Groceries')
    await type(line(), '+50 gro')
    await type(field('Of it in notes'), '15')
    the('.quick-details label', HTMLLabelElement, 'new money').click()
    await says('15.00 in notes, 35.00 on the card side')
    await show(<PopupPage tab={null} />)
    await says('15.00 in notes, 35.00 on the card side')
    expect(choice('new money').checked).toBe(true)
    enter()
    await says('Filled Groceries with 15.00 cash and 35.00 card')
    expect(worker.asked.find((a) => a.command === 'fill.add')?.ask).toMatchObject({ from: 'outside', cash: '15.00' })
    await type(line(), '12.50 gro')
    await says('Spend 12.50 cash from Groceries')
  })
})

describe('the split of a fill', () => {
  it('follows the pot’s fill, notes in whole units, and always sums to the amount', () => {
    const split = (id: string, amount: string) => {
      const { cash, card } = usualSplit(potOf(id), money('CAD', amount))
      return [cash.minor, card.minor]
    }
    expect(split('piano', '50.00')).toEqual([2900, 2100])
    expect(split('garden', '50.00')).toEqual([0, 5000])
    expect(split('market', '50.25')).toEqual([5025, 0])
  })

  it('takes no more in notes than the fill has', () => {
    expect(splitByNotes(money('CAD', '50.00'), '50.01', 'en-CA')).toBeNull()
    expect(splitByNotes(money('CAD', '50.00'), '50', 'en-CA')?.card.minor).toBe(0)
  })
})

describe('the household at a glance', () => {
  it('enters pay, which is unplaced until a pot has it', async () => {
    button('Pay arrived').click()
    await until(() => document.querySelector('.pay-form'))
    button('Enter pay').click()
    await says('Type an amount above zero.')
    await type(field('How much reached the account'), '724')
    button('Enter pay').click()
    await says('Pay of 724.00 arrived')
    expect(document.querySelector('.unplaced-amount')?.textContent).toBe('724.00')
  })

  it('adds a pot, refuses a name that is taken, changes and archives one', async () => {
    button('Add a pot').click()
    await until(() => document.querySelector('.pot-form'))
    await type(field('Name'), 'garden')
    button('Add this pot').click()
    await says('Another pot has this name.')
    await type(field('Name'), 'Bicycle')
    await type(field('Notes now'), '20')
    button('Add this pot').click()
    await says('Opened Bicycle with 20.00 cash')
    button('Bicycle').click()
    await until(() => document.querySelector('.pot-form'))
    await type(field('Name'), 'Bicycles')
    button('Save').click()
    await until(() => potOf('bicycle').name === 'Bicycles' && !document.querySelector('.pot-form'))
    button('Bicycles').click()
    await until(() => document.querySelector('.pot-form'))
    button('Archive').click()
    await says('Show 1 archived pot')
    expect(potOf('bicycle').archived).toBe(true)
  })

  it('lists watched shops, each with an end', async () => {
    worker.watched = ['corvid-books.example']
    await show(<PopupPage tab={null} />)
    await says('corvid-books.example')
    the('[aria-label="Stop watching corvid-books.example"]', HTMLButtonElement).click()
    await says('At a shop’s checkout you can'.replace('’', "'"))
    expect(worker.watched).toEqual([])
  })

  it('the figures beside a bar are the pot’s own', async () => {
    const card = the('.pot-card', HTMLDivElement, 'Piano lessons')
    expect(card.textContent).toContain('50.50')
    expect(card.textContent).toContain('38.00 notes')
    expect(card.textContent).toContain('12.50 card')
    expect(potId('piano')).toBe(potOf('piano').id)
  })
})
