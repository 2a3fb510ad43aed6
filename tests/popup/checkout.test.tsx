// @vitest-environment jsdom
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { PopupPage } from '../../popup/popup-page.tsx'
import type { OpenTag } from '../../src/background/protocol.ts'
import { balances, calendarDate, money, potId } from '../../src/index.ts'
import { newOrderId } from '../../src/ui/new-id.ts'
import { fresh, state } from './fake-browser.ts'
import { FakeWorker } from './fake-worker.ts'
import { shopPage, smallHousehold } from './samples.ts'
import { button, field, press, says, show, the, type, until } from './screen.tsx'

vi.mock('webextension-polyfill', () => import('./fake-browser.ts'))

let worker: FakeWorker

beforeEach(async () => {
  worker = fresh(new FakeWorker(calendarDate('2026-12-01'), shopPage('55.90')))
  await worker.answer({ command: 'household.create', ask: smallHousehold })
  worker.asked.length = 0
})

async function open(): Promise<void> {
  await show(<PopupPage tab={7} />)
  await says('Which pot pays?')
}

const chosen = () => the('input[name="pot"]:checked', HTMLInputElement).value
const primary = () => the('.order-form button.primary', HTMLButtonElement)
const tags = () => worker.asked.filter((a) => a.command === 'order.tag').map((a) => a.ask)

function openTag(amount: string, read: string | null = amount): OpenTag {
  return {
    order: newOrderId(),
    shop: 'corvid-books.example',
    lines: [{ pot: potId('groceries'), amount: money('CAD', amount) }],
    amount: money('CAD', amount),
    read: read === null ? null : { amount: read, currency: 'CAD' },
    taggedAt: 0,
    placedAt: null,
  }
}

describe('the order of a page', () => {
  it('shows the shop, the total and where it was read', async () => {
    await open()
    expect(document.querySelector('h1')?.textContent).toBe('corvid-books.example')
    expect(field('Order total').value).toBe('55.90')
    await says('Read from “Order total” on this page.')
  })

  it('chooses no pot by itself at a shop that was never bought from, and says so on Enter', async () => {
    await open()
    expect(document.querySelector('input[name="pot"]:checked')).toBeNull()
    await press('Enter')
    await says('Choose the pot that pays first.')
    expect(worker.count('order.tag')).toBe(0)
  })

  it('is tagged by a digit and Enter alone', async () => {
    await open()
    await press('1')
    await says('It fits.')
    expect(chosen()).toBe('groceries')
    await press('Enter')
    await says('Tagged 55.90 to Groceries. Now press the shop')
    expect(worker.entries().at(-1)).toMatchObject({
      kind: 'order',
      shop: 'corvid-books.example',
      lines: [{ pot: 'groceries', amount: 5590 }],
    })
  })

  it('arrow keys, Home, End and first letters move among the pots', async () => {
    await open()
    const order = [...document.querySelectorAll<HTMLInputElement>('input[name="pot"]')].map((i) => i.value)
    await press('ArrowDown')
    expect(chosen()).toBe(order[0])
    await press('ArrowDown')
    expect(chosen()).toBe(order[1])
    await press('End')
    expect(chosen()).toBe(order.at(-1))
    await press('Home')
    expect(chosen()).toBe(order[0])
    await press('s')
    expect(chosen()).toBe('market')
    expect(document.activeElement).toBe(the('input[value="market"]', HTMLInputElement))
  })

  it('Enter pressed twice sends one tag, and one more after no answer sends the same id', async () => {
    await open()
    await press('1')
    await says('It fits.')
    let letGo = (): void => {}
    worker.gate = new Promise((resolve) => {
      letGo = resolve
    })
    worker.failure = { code: 'no-answer', message: '' }
    const enter = new KeyboardEvent('keydown', { key: 'Enter', bubbles: true, cancelable: true })
    document.activeElement?.dispatchEvent(enter)
    await press('Enter')
    letGo()
    await says('is entered once at most')
    expect(tags()).toHaveLength(1)
    worker.gate = null
    worker.failure = null
    await until(() => !primary().disabled)
    await press('Enter', the('input[name="pot"]:checked', HTMLInputElement))
    await says('Tagged 55.90')
    expect(tags()).toHaveLength(2)
    expect(tags()[1]).toEqual(tags()[0])
    expect(worker.entries().filter((e) => e.kind === 'order')).toHaveLength(1)
  })

  it('a stop disables the button, says why and what would help, and Enter does nothing', async () => {
    await open()
    await press('p')
    await says('Piano lessons has 50.50 left: 38.00 cash, 12.50 card, 0.00 held. This order of 55.90 is 5.40 too much.')
    expect(primary().disabled).toBe(true)
    expect(primary().textContent).toBe('Cannot be tagged to Piano lessons')
    await says('Groceries could pay for it.')
    await says('An order of up to 50.50 would fit.')
    await press('Enter')
    the('.order-form', HTMLFormElement).requestSubmit()
    await says('Stop.')
    expect(worker.count('order.tag')).toBe(0)
  })

  it('a warning needs a reason in words, which is kept with the order', async () => {
    await open()
    await press('g')
    await press('a')
    await says('Careful.')
    await press('Enter')
    await says('Write a few words')
    expect(worker.count('order.tag')).toBe(0)
    expect(document.activeElement).toBe(field('Why go on?'))
    await type(field('Why go on?'), 'the hedge is due')
    primary().click()
    await says('Tagged 55.90 to Garden.')
    expect(worker.entries().at(-1)).toMatchObject({ kind: 'order', goOnReason: 'the hedge is due' })
  })

  it('a typed total counts, and what is tagged is what was typed', async () => {
    worker.checkout = shopPage(null)
    await show(<PopupPage tab={7} />)
    await until(() => document.querySelector('nav'))
    button('This order').click()
    await says('Not found on this page.')
    await press('1', the('.chooser input', HTMLInputElement))
    await type(field('Order total'), '60+1,20')
    await says('This order of 61.20')
    primary().click()
    await says('Tagged 61.20 to Groceries.')
  })

  it('a verdict for an older total is never acted on', async () => {
    await open()
    await press('1')
    await says('It fits.')
    let letGo = (): void => {}
    worker.gate = new Promise((resolve) => {
      letGo = resolve
    })
    await type(field('Order total'), '900')
    await until(() => !document.querySelector('.verdict'))
    the('.order-form', HTMLFormElement).requestSubmit()
    letGo()
    await says('is 685.50 too much')
    expect(worker.count('order.tag')).toBe(0)
  })

  it('takes an order in another currency at a rate that is given, or its amount at home', async () => {
    const page = shopPage('40.00')
    worker.checkout = {
      ...page,
      page: page.page && { ...page.page, total: { amount: '40.00', currency: 'EUR' } },
    }
    await show(<PopupPage tab={7} />)
    await says('The shop asks EUR. It is held in CAD at a rate you give; nothing is looked up.')
    expect(field('Order total').value).toBe('40.00')
    await press('1', the('.chooser input', HTMLInputElement))
    await press('Enter', the('.chooser input:checked', HTMLInputElement))
    await says('Something typed above cannot be read, or is missing.')
    await type(field('CAD for 1 EUR'), '1.50')
    await type(field("Card's fee, %"), '2.5')
    // 40.00 at 1.50 is 60.00, and 2.5 per cent of it 1.50.
    await says('Comes to 61.50 CAD: 60.00 and 1.50 fee.')
    await says('This order of 61.50')
    the('.order-form', HTMLFormElement).requestSubmit()
    await says('Tagged 61.50 to Groceries.')
    expect(worker.entries().at(-1)).toMatchObject({
      lines: [{ pot: 'groceries', amount: 6150 }],
      details: { foreign: { currency: 'EUR', amount: 4000, home: '1.50', per: '1', fee: '2.5', from: 'given' } },
    })
  })

  it('an order in another currency can be typed at home instead', async () => {
    const page = shopPage('40.00')
    worker.checkout = { ...page, page: page.page && { ...page.page, total: { amount: '40.00', currency: 'EUR' } } }
    await show(<PopupPage tab={7} />)
    await says('The shop asks EUR.')
    button('Type it in CAD instead').click()
    await says('The page asks 40.00 EUR. Type what it comes to in CAD.')
    expect(field('Order total').value).toBe('')
  })

  it('undo takes the tag back and the order can be tagged anew', async () => {
    await open()
    await press('1')
    await says('It fits.')
    await press('Enter')
    await says('Tagged 55.90')
    button('Undo').click()
    await says('Which pot pays?')
    expect(worker.entries().at(-1)?.kind).toBe('reversal')
    await press('1', the('.chooser input', HTMLInputElement))
    await says('It fits.')
    await press('Enter', the('.chooser input:checked', HTMLInputElement))
    await until(() => worker.entries().filter((e) => e.kind === 'order').length === 2)
  })

  it('an order with a tag shows it, and a changed total is adjusted, not doubled', async () => {
    await open()
    await press('1')
    await says('It fits.')
    await press('Enter')
    await says('Tagged 55.90')
    worker.checkout = { ...shopPage('61.20') }
    await show(<PopupPage tab={7} />)
    await says('55.90 is tagged to Groceries, but the page now asks 61.20: 5.30 more.')
    await says('This order of 61.20')
    expect(primary().textContent).toBe('Change the tag to Groceries')
    await press('Enter', the('.chooser input:checked', HTMLInputElement))
    await says('Tagged 61.20 to Groceries.')
    expect(heldOf('groceries')).toBe(6120)
    button('Undo').click()
    await says('55.90 is tagged to Groceries, but the page now asks 61.20')
    expect(heldOf('groceries')).toBe(5590)
  })

  it('an order that is tagged and unchanged says what to do next', async () => {
    worker.checkout = shopPage('55.90', { tag: openTag('55.90', '55.9') })
    await show(<PopupPage tab={7} />)
    await says('Tagged 55.90 to Groceries. Now press the shop')
  })

  it('what was typed is there when the popup opens again', async () => {
    await open()
    await press('g')
    await press('a')
    await says('Careful.')
    await type(field('Order total'), '57')
    await says('This order of 57.00')
    await type(field('Why go on?'), 'half a rea')
    await until(() => state.session.get('draft:reason:corvid-books.example 55.90') === 'half a rea')
    await open()
    await says('This order of 57.00')
    expect([field('Order total').value, chosen(), field('Why go on?').value]).toEqual(['57', 'garden', 'half a rea'])
  })

  it('what was typed for one order is not taken for the next', async () => {
    await open()
    await press('1')
    await type(field('Order total'), '57')
    await says('This order of 57.00')
    worker.checkout = shopPage('12.00')
    await open()
    expect(field('Order total').value).toBe('12.00')
    expect(document.querySelector('input[name="pot"]:checked')).toBeNull()
  })
})

/** What a pot has on hold, in cents. */
function heldOf(pot: string): number | undefined {
  return worker.book ? balances(worker.book).get(potId(pot))?.held.minor : undefined
}
