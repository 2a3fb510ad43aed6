// npm run bench: one JSON with medians and spread. Engine figures are of Node; the others of the built extension in a real
// Chromium, with a live worker, the demo household and the demo shops. Milliseconds unless the name says otherwise.

import type { Locator } from 'playwright-core'
import { v7 } from 'uuid'
import { demoHousehold } from '../demo-data/household.ts'
import { startDemoShop } from '../demo-data/shop/server.ts'
import { assess, calendarDate, deviceId, entryId, money, openBook, potId } from '../src/index.ts'
import { openExtension } from '../tests/browser/extension.ts'
import { goToCheckout, orderButton, panelOf, watchShops } from '../tests/browser/guarded-shop.ts'
import { bookCosts } from './bench-book.ts'
import { engineCosts } from './bench-engine.ts'
import { pageCosts } from './bench-page.ts'
import { readingCosts } from './bench-reading.ts'
import { round, type Spread, spread } from './spread.ts'

const ROUNDS = 40
/** How long a button stays down. */
const PRESS_MS = 50
const today = calendarDate('2026-11-25')

const shop = await startDemoShop({ delayMs: 0 })
const extension = await openExtension()
await extension.ask('household.demo', {})
await watchShops(extension, shop, ['corvid', 'fernhill'])

const classic = await presses('fernhill', 'seed-mix:2,twine:1', 'mouse')
const components = await presses('corvid', 'evening-piano:1', 'mouse')
const byKey = await presses('fernhill', 'seed-mix:2,twine:1', 'Enter')
const verdict = await roundTrips()
const reading = await readingCosts()
const searches = await engineCosts()
const book = await bookCosts()
const page = await pageCosts()
const result = {
  what: 'Tillside: from the press of the shop’s button to the verdict',
  node: process.version,
  engine_assess_us: engine(),
  held_decision: { classic_form: classic.held, web_components: components.held, by_enter_key: byKey.held },
  verdict_round_trip: verdict,
  click_to_verdict_median: round(
    Math.max(classic.held.median, components.held.median, byKey.held.median) + verdict.median,
  ),
  click_to_verdict_limit: 16,
  reading,
  searches,
  book,
  script_time_of_a_page: page,
  script_time_limits: { plain_page_added: 2, checkout_added: 25 },
  panel_with_verdict_on_screen: { classic_form: classic.shown, web_components: components.shown },
}
console.log(JSON.stringify(result, null, 2))
await extension.close()
await shop.close()
const isCheap = page.plain_page.added < 2 && page.checkout.added < 25
process.exitCode = result.click_to_verdict_median < result.click_to_verdict_limit && isCheap ? 0 : 1

/**
 * Presses the shop's button over and over, a fresh page each time. `held`: from the browser's time stamp of the click to
 * the moment the gate, having read the page and stopped the click, tells the worker. `shown`: to the panel's verdict.
 */
async function presses(
  name: 'corvid' | 'fernhill',
  basket: string,
  by: 'mouse' | 'Enter',
): Promise<{ held: Spread; shown: Spread }> {
  const held: number[] = []
  const shown: number[] = []
  const own = await extension.popup()
  for (let n = 0; n < ROUNDS / 2; n++) {
    const page = await goToCheckout(extension, shop, name, basket)
    const tab = await extension.tabId(page)
    // In the gate's own isolated world: its message to the worker is stamped on the way out.
    await own.evaluate(stampMessages(tab))
    await press(orderButton(page, name), by)
    const panel = await panelOf(page)
    await panel.locator('.verdict').waitFor()
    const seenAt = await panel.evaluate(() => performance.timeOrigin + performance.now())
    const [took, clickedAt] = (await page.evaluate(() => document.documentElement.dataset.held ?? ''))
      .split(' ')
      .map(Number)
    if (took === undefined || clickedAt === undefined) throw new Error('the gate told nothing')
    held.push(took)
    shown.push(seenAt - clickedAt)
    await page.close()
  }
  await own.close()
  return { held: spread(held), shown: spread(shown) }
}

/** A press as people make it: the pointer comes to the button, and stays down for a moment; or the keyboard gets there. */
async function press(button: Locator, by: 'mouse' | 'Enter'): Promise<void> {
  if (by === 'mouse') {
    await button.hover()
    await button.click({ delay: PRESS_MS })
  } else {
    await button.focus()
    await button.press('Enter', { delay: PRESS_MS })
  }
}

/**
 * Code for an own page: in the gate's isolated world, its message to the worker is stamped on the way out. A text, because
 * the TypeScript runner names inner functions with a helper that the page does not have.
 */
function stampMessages(tabId: number): string {
  const stamp = `() => {
    const send = chrome.runtime.sendMessage.bind(chrome.runtime)
    chrome.runtime.sendMessage = (message) => {
      if (message.command === 'page.held' && window.event) {
        const took = performance.now() - window.event.timeStamp
        document.documentElement.dataset.held = took + ' ' + (performance.timeOrigin + window.event.timeStamp)
      }
      return send(message)
    }
  }`
  return `chrome.scripting.executeScript({ target: { tabId: ${tabId} }, func: ${stamp} })`
}

/** From an extension page to the worker and back with the verdicts of all pots. */
async function roundTrips(): Promise<Spread> {
  const own = await extension.popup()
  const times = await own.evaluate(async (rounds) => {
    const found: number[] = []
    for (let n = 0; n < rounds + 5; n++) {
      const start = performance.now()
      await chrome.runtime.sendMessage({
        command: 'order.assess',
        ask: { shop: 'corvid.localhost', total: '55.90', order: null },
      })
      if (n >= 5) found.push(performance.now() - start)
    }
    return found
  }, ROUNDS)
  return spread(times)
}

/** `assess` on the demo household, in microseconds. */
function engine(): Spread {
  const { settings, entries } = demoHousehold({
    now: Date.parse(today),
    today: () => today,
    newId: (msecs) => entryId(v7({ msecs })),
    device: deviceId('bench'),
  })
  const { schedule: _, isDemo: __, ...household } = settings
  const book = openBook({ ...household, payDates: [] }, entries)
  const purchase = { shop: 'corvid.localhost', lines: [{ pot: potId('piano-lessons'), amount: money('CAD', '55.90') }] }
  const times: number[] = []
  for (let n = 0; n < 2000; n++) {
    const start = performance.now()
    assess(book, purchase, today)
    if (n >= 500) times.push((performance.now() - start) * 1000)
  }
  return spread(times)
}
