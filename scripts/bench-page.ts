import type { Page } from 'puppeteer-core'
import { checkoutPath, startDemoShop } from '../demo-data/shop/server.ts'
import { type Driven, openBrowser } from '../tests/browser/both.ts'
import { round, type Spread, spread } from './spread.ts'

/*
 * What the guard costs a shop's page: the time its main thread spends in scripts in the first second, by the browser's own
 * trace, on the shop watched and not watched, in turns.
 */

const ROUNDS = 15
const SECOND_US = 1_000_000
/** Slices of the trace in which scripts are compiled or run. */
const SCRIPT = new Set([
  'EvaluateScript',
  'FunctionCall',
  'v8.compile',
  'v8.run',
  'RunMicrotasks',
  'TimerFire',
  'FireIdleCallback',
  'EventDispatch',
  'v8.callFunction',
])

interface Slice {
  readonly name: string
  readonly ph: string
  readonly pid: number
  readonly tid: number
  readonly ts: number
  readonly dur?: number
  readonly args?: { readonly data?: { readonly url?: string } }
}

export interface PageCost {
  readonly watched: Spread
  readonly unwatched: Spread
  /** Between the medians. */
  readonly added: number
  readonly layout_shift_watched: number
}

/** A page of a shop with no order on it, and a checkout, each watched and not. Milliseconds. */
export async function pageCosts(): Promise<{ plain_page: PageCost; checkout: PageCost }> {
  const shop = await startDemoShop({ delayMs: 0 })
  const browser = await openBrowser('Chromium', shop.url('fernhill'))
  const measure = (url: string): Promise<PageCost> => costOf(browser, url)
  const plain = await measure(shop.url('fernhill', '/'))
  const checkout = await measure(shop.url('fernhill', checkoutPath('fernhill', 'seed-mix:2,twine:1')))
  await browser.close()
  await shop.close()
  return { plain_page: plain, checkout }
}

async function costOf(browser: Driven, url: string): Promise<PageCost> {
  const times: Record<'watched' | 'unwatched', number[]> = { watched: [], unwatched: [] }
  let shift = 0
  const page = await browser.open('about:blank')
  for (let n = 0; n < ROUNDS * 2 + 2; n++) {
    const state = n % 2 === 0 ? 'watched' : 'unwatched'
    if (state === 'watched') await browser.ask('shop.watch', { origin: url })
    else await browser.ask('shop.unwatch', { host: new URL(url).hostname })
    await page.goto('about:blank')
    const taken = await tracedLoad(page, url)
    // The first of each warms the caches.
    if (n >= 2) times[state].push(taken)
    if (state === 'watched') shift = Math.max(shift, await layoutShift(page))
  }
  const [watched, unwatched] = [spread(times.watched), spread(times.unwatched)]
  return { watched, unwatched, added: round(watched.median - unwatched.median), layout_shift_watched: shift }
}

async function tracedLoad(page: Page, url: string): Promise<number> {
  await page.tracing.start({ categories: ['devtools.timeline', 'v8', 'disabled-by-default-v8.compile'] })
  await page.goto(url)
  await page.waitForFunction(() => performance.now() > 1000)
  const file = await page.tracing.stop()
  if (!file) throw new Error('the browser gave no trace')
  const { traceEvents }: { traceEvents: readonly Slice[] } = JSON.parse(new TextDecoder().decode(file))
  const start = traceEvents.find((each) => each.name === 'CommitLoad' && each.args?.data?.url === url)
  if (!start) throw new Error('the trace shows no such page')
  return scriptTime(
    traceEvents.filter((each) => each.pid === start.pid && each.tid === start.tid),
    start.ts,
  )
}

/** Milliseconds covered by script slices in the second from `from`; slices lie in one another, so covered time counts once. */
function scriptTime(slices: readonly Slice[], from: number): number {
  const scripts = slices
    .filter(({ ph, name, ts }) => ph === 'X' && SCRIPT.has(name) && ts >= from && ts < from + SECOND_US)
    .sort((a, b) => a.ts - b.ts)
  let [total, end] = [0, from]
  for (const { ts, dur = 0 } of scripts) {
    total += Math.max(0, ts + dur - Math.max(ts, end))
    end = Math.max(end, ts + dur)
  }
  return total / 1000
}

function layoutShift(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise<number>((done) => {
        let sum = 0
        const observer = new PerformanceObserver((list) => {
          for (const entry of list.getEntries()) sum += Number(Reflect.get(entry, 'value'))
        })
        observer.observe({ type: 'layout-shift', buffered: true })
        requestAnimationFrame(() => setTimeout(() => done(sum)))
      }),
  )
}
