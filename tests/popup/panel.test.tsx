// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { PanelPage } from '../../src/guard/panel/panel-page.tsx'
import { calendarDate, money, potId } from '../../src/index.ts'
import { ARM_AFTER_MS } from '../../src/ui/checkout/use-armed.ts'
import { newOrderId } from '../../src/ui/new-id.ts'
import { fresh } from './fake-browser.ts'
import { FakeWorker } from './fake-worker.ts'
import { shopPage, smallHousehold } from './samples.ts'
import { button, press, says, show, the, until } from './screen.tsx'

vi.mock('webextension-polyfill', () => import('./fake-browser.ts'))

const nonce = '0123456789abcdef0123456789abcdef'
let worker: FakeWorker
let now = 0

beforeEach(async () => {
  now = 1000
  vi.spyOn(performance, 'now').mockImplementation(() => now)
  const page = shopPage('55.90', { watched: true, heldBecause: 'untagged' })
  worker = fresh(new FakeWorker(calendarDate('2026-12-01'), page))
  await worker.answer({ command: 'household.create', ask: smallHousehold })
  worker.asked.length = 0
})
afterEach(() => {
  vi.restoreAllMocks()
})

const tagOf = (amount: string, placedAt: number | null) => ({
  order: newOrderId(),
  shop: 'corvid-books.example',
  lines: [{ pot: potId('groceries'), amount: money('CAD', amount) }],
  amount: money('CAD', amount),
  read: { amount, currency: 'CAD' },
  taggedAt: 0,
  placedAt,
})

describe('the panel', () => {
  it('says why the order is held, tags it, and leads back to the shop', async () => {
    await show(<PanelPage nonce={nonce} />)
    await says('Held: this order at corvid-books.example has no pot yet')
    await press('1', the('.chooser input', HTMLInputElement))
    await says('It fits.')
    now += ARM_AFTER_MS
    await press('Enter')
    await says("Tagged 55.90 to Groceries. Press the shop's button again to place the order.")
    expect(document.body.textContent).not.toContain('Held: this order')
    const back = the('button.primary', HTMLButtonElement, 'Back to the shop')
    await until(() => document.activeElement === back)
    back.click()
    expect(worker.asked.at(-1)).toEqual({ command: 'panel.close', ask: { nonce } })
  })

  it('comes with the pot that was said ahead for this basket: one press tags the real total', async () => {
    worker.checkout = { ...worker.checkout, ahead: { pot: potId('groceries'), until: 0 } }
    await show(<PanelPage nonce={nonce} />)
    await says('You said that this basket is for Groceries.')
    await says('It fits.')
    now += ARM_AFTER_MS
    the('button.primary', HTMLButtonElement, 'Tag to Groceries').click()
    await says('Tagged 55.90 to Groceries.')
    expect(document.body.textContent).not.toContain('Tag later')
  })

  it('takes no press in its first moments, nor after it changed its size', async () => {
    await show(<PanelPage nonce={nonce} />)
    await says('Which pot pays?')
    await press('1', the('.chooser input', HTMLInputElement))
    await says('It fits.')
    now += ARM_AFTER_MS - 1
    await press('Enter')
    the('button.primary', HTMLButtonElement, 'Tag to Groceries').click()
    expect(worker.count('order.tag')).toBe(0)
    now += 1
    window.dispatchEvent(new Event('resize'))
    await press('Enter')
    expect(worker.count('order.tag')).toBe(0)
    now += ARM_AFTER_MS
    await press('Enter')
    expect(worker.count('order.tag')).toBe(1)
    await says('Tagged 55.90')
  })

  it('has no way round a stop', async () => {
    await show(<PanelPage nonce={nonce} />)
    await says('Which pot pays?')
    now += ARM_AFTER_MS
    await press('p', the('.chooser input', HTMLInputElement))
    await says('Stop.')
    const words = [...document.querySelectorAll('button')].filter((b) => !b.disabled).map((b) => b.textContent)
    // What else there is changes the order; nothing goes on with it as it is.
    expect(words).toEqual(['Back to the shop', 'Split over several pots', 'Take 10 %'])
    await press('Enter')
    expect(worker.count('order.tag')).toBe(0)
  })

  it('Escape leads back to the shop', async () => {
    await show(<PanelPage nonce={nonce} />)
    await says('Which pot pays?')
    await press('Escape')
    expect(worker.asked.at(-1)).toEqual({ command: 'panel.close', ask: { nonce } })
  })

  it('says by how much the total changed, and adjusts the tag', async () => {
    worker.checkout = shopPage('55.90', { heldBecause: 'untagged' })
    await show(<PanelPage nonce={nonce} />)
    await says('Which pot pays?')
    await press('1', the('.chooser input', HTMLInputElement))
    await says('It fits.')
    now += ARM_AFTER_MS
    await press('Enter')
    await says('Tagged 55.90')
    worker.checkout = shopPage('61.20', { heldBecause: 'changed' })
    await show(<PanelPage nonce={nonce} />)
    await says('Held: the total changed from 55.90 to 61.20')
    await says('5.30 more')
    await says('This order of 61.20')
    now += ARM_AFTER_MS
    await press('Enter', the('.chooser input:checked', HTMLInputElement))
    await says('Tagged 61.20')
    expect(worker.entries().map((e) => e.kind)).toEqual(['opening', 'opening', 'opening', 'opening', 'order', 'adjust'])
  })

  it('an order let through before: the same one again writes nothing', async () => {
    worker.checkout = shopPage('55.90', { heldBecause: 'placed-before', tag: tagOf('55.90', 5) })
    await show(<PanelPage nonce={nonce} />)
    await says('was let through before')
    now += ARM_AFTER_MS
    button('Same order, try again').click()
    await says('Tagged 55.90 to Groceries.')
    expect(worker.asked.map((a) => a.command)).toEqual(['book.look', 'checkout.look', 'order.again'])
  })

  it('an order let through before: a new one gets a tag of its own', async () => {
    const tag = tagOf('55.90', 5)
    worker.checkout = shopPage('55.90', { heldBecause: 'placed-before', tag })
    await show(<PanelPage nonce={nonce} />)
    await says('was let through before')
    now += ARM_AFTER_MS
    button('A new order').click()
    await says('Which pot pays?')
    await press('1', the('.chooser input', HTMLInputElement))
    await says('It fits.')
    now += ARM_AFTER_MS
    await press('Enter')
    await says('Tagged 55.90')
    const entry = worker.entries().at(-1)
    expect(entry?.kind === 'order' && entry.order !== tag.order).toBe(true)
  })

  it.each(['', 'abc', '0123456789ABCDEF0123456789ABCDEF'])(
    'shows nothing without a nonce of the guard: "%s"',
    async (bad) => {
      await show(<PanelPage nonce={bad} />)
      await says("This panel opens only from Tillside's guard.")
      expect(document.querySelectorAll('button')).toHaveLength(0)
      expect(worker.asked).toEqual([])
    },
  )

  it('shows nothing under a nonce the worker does not know', async () => {
    worker.checkout = shopPage('55.90')
    await show(<PanelPage nonce={nonce} />)
    await says("This panel opens only from Tillside's guard.")
    expect(document.body.textContent).not.toContain('Groceries')
  })
})
