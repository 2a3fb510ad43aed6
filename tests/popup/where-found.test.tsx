// @vitest-environment jsdom
import { beforeEach, expect, it, vi } from 'vitest'
import { PopupPage } from '../../popup/popup-page.tsx'
import { PanelPage } from '../../src/guard/panel/panel-page.tsx'
import { calendarDate } from '../../src/index.ts'
import { fresh } from './fake-browser.ts'
import { FakeWorker } from './fake-worker.ts'
import { shopPage, smallHousehold } from './samples.ts'
import { press, says, show, the, until } from './screen.tsx'

vi.mock('webextension-polyfill', () => import('./fake-browser.ts'))

let worker: FakeWorker

beforeEach(async () => {
  const look = shopPage('55.90')
  const others = [{ label: 'Subtotal', text: '$49.00', used: false, why: 'another amount has more to speak for it' }]
  const page = look.page && { ...look.page, figures: [...look.page.figures, ...others] }
  worker = fresh(new FakeWorker(calendarDate('2026-12-01'), { ...look, page }))
  await worker.answer({ command: 'household.create', ask: smallHousehold })
})

const marks = () => worker.asked.filter((a) => a.command === 'checkout.mark').map((a) => a.ask)
const where = (label: string) => the(`button[aria-label="Show on the page: ${label}"]`, HTMLButtonElement)
const TOTAL = { tab: 7, figure: { label: 'Order total', text: '$55.90' } }

it('the total and the figures set aside are shown on the page, by their place and nothing else', async () => {
  await show(<PopupPage tab={7} />)
  await says('Read from “Order total” on this page.')
  where('Order total').click()
  await says('Marked on the page.')
  where('Subtotal').click()
  await until(() => marks().length === 2)
  expect(marks()).toEqual([TOTAL, { tab: 7, figure: { label: 'Subtotal', text: '$49.00' } }])
})

it('the keyboard marks by coming there, and takes the mark away by leaving or with Escape', async () => {
  await show(<PopupPage tab={7} />)
  await says('Read from')
  where('Order total').focus()
  await says('Marked on the page.')
  expect(marks()).toEqual([TOTAL])
  await press('Escape')
  await until(() => !document.body.textContent?.includes('Marked'))
  where('Order total').blur()
  await until(() => marks().length === 3)
  expect(marks().slice(1)).toEqual([
    { tab: 7, figure: null },
    { tab: 7, figure: null },
  ])
})

it('a figure that the page shows no more is said to be gone, and the order can still be tagged', async () => {
  worker.showsFigures = false
  await show(<PopupPage tab={7} />)
  await says('Read from')
  where('Order total').click()
  await says('The page does not show it any more.')
  await press('1', the('.chooser input', HTMLInputElement))
  await says('It fits.')
  await press('Enter')
  await says('Tagged 55.90 to Groceries.')
})

it('the panel, which covers the page, offers no such thing', async () => {
  worker.checkout = { ...worker.checkout, watched: true, heldBecause: 'untagged' }
  await show(<PanelPage nonce={'ab'.repeat(16)} />)
  await says('Read from “Order total” on this page.')
  expect(document.querySelector('.where-found')).toBeNull()
})
