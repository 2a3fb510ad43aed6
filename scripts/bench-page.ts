import type { Page } from 'puppeteer-core'
import { checkoutPath, startDemoShop } from '../demo-data/shop/server.ts'
import { type Driven, openBrowser } from '../tests/browser/both.ts'
import { round, type Spread, spread } from './spread.ts'

/*
 * What the guard costs a shop's page: the time its main thread spends in scripts in the first second, by the browser's own
 * trace, on the shop watched and not watched, in turns. Counted is the thread's own clock, which stands still while the
 * machine does something else; the time on the wall is given beside it.
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
  /** Microseconds on the wall, and of the thread itself. */
  readonly ts: number
  readonly dur?: number
  readonly tts?: number
  readonly tdur?: number
  readonly args?: { readonly data?: { readonly url?: string } }
}

export interface PageCost {
  readonly watched: Spread
  readonly unwatched: Spread
  /** Between the medians. */
  readonly added: number
  /** The same on the wall. */
  readonly added_on_the_wall: number
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
  const times: Record<'watched' | 'unwatched', Taken[]> = { watched: [], unwatched: [] }
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
  const [watched, unwatched] = [spreadOf(times.watched, 'thread'), spreadOf(times.unwatched, 'thread')]
  const onTheWall = spreadOf(times.watched, 'wall').median - spreadOf(times.unwatched, 'wall').median
  return {
    watched,
    unwatched,
    added: round(watched.median - unwatched.median),
    added_on_the_wall: round(onTheWall),
    layout_shift_watched: shift,
  }
}

/** Milliseconds of scripts in a page's first second. */
interface Taken {
  readonly thread: number
  readonly wall: number
}

function spreadOf(taken: readonly Taken[], clock: keyof Taken): Spread {
  return spread(taken.map((each) => each[clock]))
}

async function tracedLoad(page: Page, url: string): Promise<Taken> {
  await page.tracing.start({ categories: ['devtools.timeline', 'v8', 'disabled-by-default-v8.compile'] })
  await page.goto(url)
  await page.waitForFunction(() => performance.now() > 1000)
  const file = await page.tracing.stop()
  if (!file) throw new Error('the browser gave no trace')
  const { traceEvents }: { traceEvents: readonly Slice[] } = JSON.parse(new TextDecoder().decode(file))
  const start = traceEvents.find((each) => each.name === 'CommitLoad' && each.args?.data?.url === url)
  if (!start) throw new Error('the trace shows no such page')
  const scripts = traceEvents.filter(
    ({ pid, tid, ph, name, ts }) =>
      pid === start.pid &&
      tid === start.tid &&
      ph === 'X' &&
      SCRIPT.has(name) &&
      ts >= start.ts &&
      ts < start.ts + SECOND_US,
  )
  if (scripts.some((each) => each.tts === undefined)) throw new Error('the trace knows no time of the thread')
  return {
    thread: covered(scripts.map(({ tts = 0, tdur = 0 }) => [tts, tdur])),
    wall: covered(scripts.map(({ ts, dur = 0 }) => [ts, dur])),
  }
}

/** Milliseconds covered by slices (start and length in microseconds); they lie in one another, so covered time counts once. */
function covered(slices: readonly (readonly [number, number])[]): number {
  let [total, end] = [0, Number.NEGATIVE_INFINITY]
  for (const [start, length] of [...slices].sort((a, b) => a[0] - b[0])) {
    total += Math.max(0, start + length - Math.max(start, end))
    end = Math.max(end, start + length)
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
