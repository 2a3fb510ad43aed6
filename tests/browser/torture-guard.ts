import type { Page } from 'puppeteer-core'
import type { HostileShop } from '../../demo-data/shop/hostile/server.ts'
import type { Driven } from './both.ts'
import { untilAllArrived } from './landing.ts'
import { type Way, waysTable } from './ways-table.ts'

/** What came of many orders tried in random ways at random moments. */
export interface GuardOutcome {
  readonly runs: number
  readonly held: number
  /** Nothing was ordered, and nothing held: by way, moment and what kept the test from pressing. */
  readonly nothing: readonly string[]
  /** Orders that reached the server without a tag: each a failure, by its way and moment. */
  readonly unheld: readonly string[]
}

/** Numbers from 0 up to 1 from a seed (mulberry32, common practice), so that a run can be repeated. */
export function randomFrom(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
}

const LATEST_MS = 900
/** Longer than any page's own timer. */
const LONGEST_MS = 3_000

/**
 * Tries to order in random ways, from the moment a page is there to most of a second later, now and then twice, or with the
 * worker's record of what is held taken away in between. Every way that can be held takes part, or one of them alone.
 */
export async function runGuardTorture(
  browser: Driven,
  shop: HostileShop,
  { runs, seed, only }: { runs: number; seed: number; only?: string | undefined },
): Promise<GuardOutcome> {
  const random = randomFrom(seed)
  const ways = Object.entries(waysTable).filter(
    ([name, way]) =>
      (only === undefined || name === only) &&
      (way.notHoldable === undefined || (way.notHoldableIn ?? browser.name) !== browser.name) &&
      way.notDriven !== browser.name,
  )
  let held = 0
  const nothing: string[] = []
  const unheld: string[] = []
  for (let n = 0; n < runs; n++) {
    const [name, way] = ways[Math.floor(random() * ways.length)] ?? ['', waysTable.mouse]
    if (!way) continue
    shop.clear()
    await browser.clearHeld()
    const page = await browser.open(shop.url(way.page))
    const delay = Math.floor(random() ** 2 * LATEST_MS)
    await page.evaluate((ms) => new Promise((done) => setTimeout(done, ms)), delay)
    const pressed = [await tried(way, page, browser)]
    if (random() < 0.3) pressed.push(await tried(way, page, browser))
    // Something comes of it soon, or nothing does; then what was sent late has its time to arrive.
    for (
      const until = Date.now() + LONGEST_MS;
      Date.now() < until && (await browser.held()) + shop.orders().length === 0;
    ) {
      await untilAllArrived(page)
    }
    await untilAllArrived(page)
    if (shop.orders().length > 0) unheld.push(`run ${n}: ${name} after ${delay} ms`)
    else if ((await browser.held()) > 0) held++
    else nothing.push(`run ${n}: ${name} after ${delay} ms, ${pressed.join(', ')}`)
  }
  return { runs, held, nothing, unheld }
}

/** A second press may find no page any more, or a curtain over it. */
async function tried(way: Way, page: Page, browser: Driven): Promise<string> {
  return way.act(page, browser.name).then(
    () => 'pressed',
    (cause: unknown) => `not pressed (${cause instanceof Error ? cause.message : String(cause)})`,
  )
}
