// @vitest-environment jsdom
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { PopupPage } from '../../popup/popup-page.tsx'
import type { SeenPage } from '../../src/background/protocol.ts'
import { calendarDate, money, potId } from '../../src/index.ts'
import { fresh } from './fake-browser.ts'
import { FakeWorker } from './fake-worker.ts'
import { shopPage, smallHousehold } from './samples.ts'
import { button, field, press, says, show, the, type, until } from './screen.tsx'

vi.mock('webextension-polyfill', () => import('./fake-browser.ts'))

let worker: FakeWorker

const withItems = (amount: string, items: [string, string | null][], parts: [string, string][] = []) => {
  const look = shopPage(amount)
  const seen: Partial<SeenPage> = {
    items: items.map(([name, price]) => ({ name, amount: price, quantity: 1 })),
    parts: parts.map(([kind, price]) => ({ kind, amount: price })),
  }
  return { ...look, page: look.page && { ...look.page, ...seen } }
}

beforeEach(async () => {
  worker = fresh(new FakeWorker(calendarDate('2026-12-01'), shopPage('45.90')))
  await worker.answer({ command: 'household.create', ask: smallHousehold })
})

async function open(): Promise<void> {
  await show(<PopupPage tab={7} />)
  await says('Which pot pays?')
  await press('1', the('.chooser input', HTMLInputElement))
  await says('It fits.')
}

const last = () => worker.entries().at(-1)
const choose = (select: HTMLSelectElement, value: string): void => {
  select.value = value
  select.dispatchEvent(new Event('change', { bubbles: true }))
}
const potOf = (item: string) => the(`select[aria-label="Pot for ${item}"]`, HTMLSelectElement)
const way = (label: string): void => the('.split .choice label', HTMLLabelElement, label).click()

describe('an order split over pots', () => {
  it('by item: each item goes where it is sent, shipping and tax follow, the odd cent is told', async () => {
    worker.checkout = withItems(
      '45.90',
      [
        ['Seeds', '10.00'],
        ['A score', '30.00'],
      ],
      [
        ['items', '40.00'],
        ['shipping', '5.00'],
        ['tax', '0.90'],
      ],
    )
    await open()
    button('Split over several pots').click()
    await says('These follow the items, pro rata: Shipping 5.00, Tax 0.90')
    await until(() => document.querySelector('.split-items'))
    choose(potOf('A score'), 'piano')
    await says('Tag to 2 pots')
    // 5.90 over 10.00 and 30.00: 1.475 and 4.425, the odd cent to the earlier one.
    await says('The odd cent goes to Groceries, by the largest remainder.')
    expect([...document.querySelectorAll('.split-lines .split-amount')].map((e) => e.textContent)).toEqual([
      '11.48',
      '34.42',
    ])
    the('.order-form', HTMLFormElement).requestSubmit()
    await says('Tagged 45.90 to Groceries and Piano lessons.')
    expect(last()).toMatchObject({
      kind: 'order',
      lines: [
        { pot: 'groceries', amount: 1148 },
        { pot: 'piano', amount: 3442 },
      ],
      details: {
        by: 'item',
        items: [{ name: 'Seeds' }, { name: 'A score' }],
        shared: [{ kind: 'shipping' }, { kind: 'tax' }],
      },
    })
  })

  it('one pot’s stop stops the order, and says which item would have to go', async () => {
    worker.checkout = withItems('90.00', [
      ['A score', '30.00'],
      ['Another', '20.00'],
      ['A third', '40.00'],
    ])
    await open()
    button('Split over several pots').click()
    await until(() => document.querySelector('.split-items'))
    for (const item of ['A score', 'Another']) choose(potOf(item), 'piano')
    // Piano lessons has 50.50, and 50.00 of items fit. With the third they do not.
    await says('Tag to 2 pots')
    choose(potOf('A third'), 'piano')
    await says('To make it fit, take out: A third (40.00).')
    expect(the('.order-foot button.primary', HTMLButtonElement).disabled).toBe(true)
    the('.order-form', HTMLFormElement).requestSubmit()
    expect(worker.count('order.tag')).toBe(0)
  })

  it('a stop in one pot already names the items that would have to go', async () => {
    worker.checkout = withItems('60.00', [
      ['A score', '20.00'],
      ['Another', '40.00'],
    ])
    await show(<PopupPage tab={7} />)
    await says('Which pot pays?')
    the('input[value="piano"]', HTMLInputElement).click()
    await says('Stop.')
    await says('To make it fit, take out: A score (20.00).')
  })

  it('by amount: one pot takes the rest', async () => {
    await open()
    button('Split over several pots').click()
    await says('45.90, the rest')
    await type(field('Garden'), '12,30')
    await says('33.60, the rest')
    await says('Tag to 2 pots')
    the('.order-form', HTMLFormElement).requestSubmit()
    await says('Tagged 45.90 to Garden and Groceries.')
    expect(last()).toMatchObject({
      lines: [
        { pot: 'garden', amount: 1230 },
        { pot: 'groceries', amount: 3360 },
      ],
      details: { by: 'amount' },
    })
  })

  it('by amount: more than the order is said, and nothing is tagged', async () => {
    await open()
    button('Split over several pots').click()
    await says('45.90, the rest')
    await type(field('Garden'), '50')
    await says("The pots' amounts come to 4.10 more than the order. Lower one of them.")
    the('.order-form', HTMLFormElement).requestSubmit()
    expect(worker.count('order.tag')).toBe(0)
  })

  it('by share', async () => {
    await open()
    button('Split over several pots').click()
    await says('By share')
    way('By share')
    await until(() => document.querySelector('#split-groceries:is(input)'))
    await type(field('Groceries'), '2')
    await type(field('Piano lessons'), '1')
    await says('Tag to 2 pots')
    the('.order-form', HTMLFormElement).requestSubmit()
    await says('Tagged 45.90 to Groceries and Piano lessons.')
    expect(last()).toMatchObject({
      lines: [
        { pot: 'groceries', amount: 3060 },
        { pot: 'piano', amount: 1530 },
      ],
    })
  })

  it('cannot be split by item where a price is missing', async () => {
    worker.checkout = withItems('45.90', [
      ['Seeds', '10.00'],
      ['A score', null],
    ])
    await open()
    button('Split over several pots').click()
    await says('By amount')
    expect([...document.querySelectorAll('.split .choice label')].map((l) => l.textContent)).toEqual([
      'By amount',
      'By share',
    ])
  })

  it('goes back to one pot, and what was typed is there when the popup opens again', async () => {
    await open()
    button('Split over several pots').click()
    await says('45.90, the rest')
    await type(field('Garden'), '10')
    await says('35.90, the rest')
    await show(<PopupPage tab={7} />)
    await says('35.90, the rest')
    button('One pot only').click()
    await says('Which pot pays?')
    await says('This order of 45.90')
  })
})

describe('what few orders need', () => {
  it('an estimate holds its margin', async () => {
    await open()
    await type(field('Margin for an estimate, %'), '10')
    await says('This order of 50.49')
    the('.order-form', HTMLFormElement).requestSubmit()
    await says('Tagged 50.49 to Groceries.')
    expect(last()).toMatchObject({ lines: [{ amount: 5049 }], details: { margin: 459 } })
  })

  it('a gift card pays its part; where it pays all, no pot does', async () => {
    await open()
    await type(field('Paid by gift card or credit'), '20')
    await says('This order of 25.90')
    await type(field('Paid by gift card or credit'), '45.90')
    await says('This order of 0.00')
    the('.order-form', HTMLFormElement).requestSubmit()
    await says('The card pays nothing, so no pot does.')
    expect(worker.entries().some((e) => e.kind === 'order')).toBe(false)
  })

  it('instalments: what each way of holding them leaves is shown, and the person chooses', async () => {
    await open()
    await type(field('Instalments'), '3')
    await says('Leaves Groceries 168.60. Nothing more is to be found later.')
    await says('Leaves Groceries 199.20 now; the parts of Jan 1 and Feb 1 must still be there then.')
    the('input[name="reserve"]:not(:checked)', HTMLInputElement).click()
    await says('This order of 15.30')
    the('.order-form', HTMLFormElement).requestSubmit()
    await says('Tagged 15.30 to Groceries.')
    expect(last()).toMatchObject({ lines: [{ amount: 1530 }], details: { instalments: { reserve: 'by-part' } } })
  })
})

describe('an order that was tagged and never confirmed', () => {
  async function unconfirmed(): Promise<void> {
    await open()
    await press('Enter')
    await says('Tagged 45.90')
    const entry = last()
    if (entry?.kind !== 'order') throw new Error('nothing was tagged')
    const look = shopPage('45.90')
    worker.checkout = {
      ...look,
      unconfirmed: [
        {
          order: entry.order,
          shop: 'corvid-books.example',
          amount: money('CAD', '45.90'),
          date: calendarDate('2026-11-28'),
          pots: [potId('groceries')],
        },
      ],
    }
  }

  it('is asked about; yes keeps the hold', async () => {
    await unconfirmed()
    await show(<PopupPage tab={7} />)
    await says('45.90 at corvid-books.example, tagged on Nov 28 to Groceries.')
    button('Yes, it went through').click()
    await until(() => last()?.kind === 'confirm')
    await until(() => !document.querySelector('.unconfirmed'))
  })

  it('no lets the hold go, once', async () => {
    await unconfirmed()
    await show(<PopupPage tab={7} />)
    await says('Did it go through?')
    button('No, let the hold go').click()
    button('No, let the hold go').click()
    await until(() => last()?.kind === 'release')
    expect(worker.count('order.release')).toBe(1)
    expect(last()).toMatchObject({ why: 'not-placed' })
  })

  it('a confirmation page that says another total offers to hold that', async () => {
    await unconfirmed()
    const { page } = worker.checkout
    worker.checkout = {
      ...worker.checkout,
      page: page && {
        ...page,
        stage: 'confirmation',
        total: { amount: '47.00', currency: 'CAD' },
        orderNumber: 'CB-12',
      },
    }
    await show(<PopupPage tab={7} />)
    await says('The page shows order CB-12.')
    await says('It says 47.00; 45.90 is held.')
    button('Yes, hold this total').click()
    await until(() => last()?.kind === 'confirm')
    expect(last()).toMatchObject({ number: 'CB-12', lines: [{ pot: 'groceries', amount: 4700 }] })
  })

  it('is asked about away from any shop as well', async () => {
    await unconfirmed()
    worker.checkout = { ...worker.checkout, shop: null, origin: null, page: null, unread: 'not-a-web-page' }
    await show(<PopupPage tab={7} />)
    await says('Did it go through?')
  })
})
