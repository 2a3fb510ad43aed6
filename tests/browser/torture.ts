import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { v7 } from 'uuid'
import { seeded } from '../../demo-data/seeded.ts'
import type { WishText } from '../../src/background/protocol.ts'
import { calendarDate, type Entry, entryId, type OrderId, openBook, orderId, potId, sumsOf } from '../../src/index.ts'
import { type Extension, openExtension } from './extension.ts'

/** What came of killing the browser and the worker over and over under a stream of entries. */
export interface Torture {
  readonly killedBrowsers: number
  readonly stoppedWorkers: number
  readonly asked: number
  readonly acknowledged: number
  /** Entries found at the end. */
  readonly found: number
  /** Acknowledged and not there. */
  readonly lost: number
  /** There and never asked, or not as asked. */
  readonly strange: number
  /** How often the kept balances were not those of the entries. */
  readonly wrongBalances: number
  /** What was acknowledged, by kind of entry. */
  readonly kinds: Readonly<Record<string, number>>
}

/** What was asked under an id. */
interface Asked {
  readonly kind: Entry['kind']
  isAcknowledged: boolean
}

/** Everything asked so far, and the orders whose charge nobody asked for yet. */
interface Stream {
  readonly asked: Map<string, Asked>
  readonly tagged: OrderId[]
}

/** Every third kill is the whole browser's; a browser takes a second to come back, a worker next to nothing. */
const BROWSER_EVERY = 3
const MOST_WAIT_MS = 120

/**
 * Runs a stream of tags, charges, fills, settling moves, spends and pays into the built extension, and kills the browser (SIGKILL) or stops the worker
 * at random moments. After each kill the book is read again whole.
 */
export async function runTorture(options: {
  readonly kills: number
  readonly seed: number
  readonly onKill?: (n: number) => void
}): Promise<Torture> {
  const random = seeded(options.seed)
  const profile = await mkdtemp(join(tmpdir(), 'tillside-torture-'))
  const all: Stream = { asked: new Map(), tagged: [] }
  const tally = { killedBrowsers: 0, stoppedWorkers: 0, wrongBalances: 0 }
  let extension = await openExtension({ profile })
  await extension.ask('household.demo', {})
  await showCheckout(extension)
  const before = new Set((await readBook(extension)).map((e) => e.id))
  let entries: Entry[] = []
  try {
    for (let n = 1; n <= options.kills; n++) {
      const stream = startStream(extension, all, random)
      // When the blow falls is what is put to chance: no event could be awaited.
      await new Promise((resolve) => setTimeout(resolve, random() * MOST_WAIT_MS))
      if (n % BROWSER_EVERY === 0) {
        await killBrowser(profile)
        tally.killedBrowsers += 1
        await stream.end()
        extension = await openExtension({ profile })
        await showCheckout(extension)
      } else {
        await extension.stopWorker()
        tally.stoppedWorkers += 1
        await stream.end()
      }
      entries = await readBook(extension)
      if (!(await balancesAgree(extension, entries))) tally.wrongBalances += 1
      options.onKill?.(n)
    }
  } finally {
    await extension.close()
    await rm(profile, { recursive: true, force: true, maxRetries: 5 })
  }
  const found = new Map<string, Entry>(entries.map((e) => [e.id, e]))
  const acknowledged = [...all.asked].filter(([, { isAcknowledged }]) => isAcknowledged)
  const kinds: Record<string, number> = {}
  for (const [, { kind }] of acknowledged) kinds[kind] = (kinds[kind] ?? 0) + 1
  return {
    ...tally,
    asked: all.asked.size,
    acknowledged: acknowledged.length,
    found: entries.length,
    lost: [...acknowledged.map(([id]) => id), ...before].filter((id) => !found.has(id)).length,
    strange: entries.filter((e) => !before.has(e.id) && all.asked.get(e.id)?.kind !== e.kind).length,
    kinds,
  }
}

/** Asks one thing after another, three at a time, until it is ended or the browser is gone. */
function startStream(extension: Extension, all: Stream, random: () => number): { end: () => Promise<void> } {
  let isOn = true
  const lane = async (): Promise<void> => {
    while (isOn) {
      const id = entryId(v7())
      try {
        await askSomething(extension, id, all, random())
      } catch {
        // Not acknowledged: it may be there or not, but never in part.
        return
      }
    }
  }
  const lanes = [lane(), lane(), lane()]
  return {
    async end() {
      isOn = false
      await Promise.all(lanes)
    },
  }
}

const GROCERIES = potId('groceries')
const GARDEN = potId('garden')
const PENNIES = '0.05'

async function askSomething(extension: Extension, id: Entry['id'], all: Stream, chance: number): Promise<void> {
  const asking = (kind: Entry['kind']): Asked => {
    const asked = { kind, isAcknowledged: false }
    all.asked.set(id, asked)
    return asked
  }
  if (chance < 0.3) {
    const order = orderId(v7())
    const asked = asking('order')
    const reply = await extension.ask('order.tag', { id, order, at: { tab: SHOP_TAB }, wish: WISH, reason: 'a test' })
    if (reply.kind !== 'tagged') throw new Error(`A tag was ${reply.kind}.`)
    asked.isAcknowledged = true
    all.tagged.push(order)
  } else if (chance < 0.5) {
    // Taken off the list first: of two lanes only one charges it.
    const order = all.tagged.shift()
    if (order === undefined) return
    const asked = asking('charge')
    const whole = { lines: null, items: null, foreign: null, account: null, acceptsAbove: false, complete: null }
    const reply = await extension.ask('order.charge', { id, order, amount: PENNIES, date: DAY, ...whole })
    if (reply.kind !== 'charged') throw new Error(`A charge was ${reply.kind}.`)
    asked.isAcknowledged = true
  } else if (chance < 0.65) {
    const asked = asking('fill')
    await extension.ask('fill.add', { id, pot: GARDEN, cash: '0.10', card: '0.20', from: 'outside', date: DAY })
    asked.isAcknowledged = true
  } else if (chance < 0.8) {
    const asked = asking('settle')
    const [from, to] = chance < 0.725 ? [GROCERIES, GARDEN] : [GARDEN, GROCERIES]
    const coin = [{ denomination: 100, count: 1 }]
    await extension.ask('settle.tick', { id, from: { pot: from }, to: { pot: to }, pieces: coin })
    asked.isAcknowledged = true
  } else if (chance < 0.95) {
    const asked = asking('spend')
    await extension.ask('spend.add', {
      id,
      pot: GROCERIES,
      side: 'cash',
      amount: PENNIES,
      purpose: 'a roll',
      date: DAY,
    })
    asked.isAcknowledged = true
  } else {
    const asked = asking('pay')
    await extension.ask('pay.add', { id, amount: '1.00', date: DAY })
    asked.isAcknowledged = true
  }
}

const DAY = calendarDate('2026-11-25')
/** No tab has this number. */
const SHOP_TAB = 9_999_999
const WISH: WishText = {
  total: PENNIES,
  currency: 'CAD',
  split: { by: 'pot', pot: GARDEN },
  foreign: null,
  margin: null,
  credit: null,
  instalments: null,
  renewal: null,
}

/**
 * What a checkout showed, laid down as the worker notes it when it has read one: it ends with the browser, and a shop's
 * page need not be opened again after each of a hundred kills.
 */
async function showCheckout(extension: Extension): Promise<void> {
  const page = { stage: 'checkout', total: { amount: PENNIES, currency: 'CAD' }, figures: [], placeOrderCount: 1 }
  const seen = { shop: 'corvid.example', origin: 'https://corvid.example', page }
  const own = await extension.popup()
  await own.evaluate((items) => chrome.storage.session.set(items), { [`seen:${SHOP_TAB}`]: seen })
  await own.close()
}

/** All entries, a message at a time, as the desk reads them. */
async function readBook(extension: Extension): Promise<Entry[]> {
  const entries: Entry[] = []
  for (let place = 0; ; ) {
    const part = await extension.ask('book.entries', { from: place })
    entries.push(...part.entries)
    if (part.next >= part.end) return entries
    place = part.next
  }
}

/** The fold of all entries against the balances the worker keeps beside them. */
async function balancesAgree(extension: Extension, entries: readonly Entry[]): Promise<boolean> {
  const { household } = await extension.book()
  const { sums, end } = await extension.ask('book.entries', { from: entries.length })
  if (end !== entries.length) return false
  const text = (of: Readonly<Record<string, number>>): string => JSON.stringify(Object.entries(of).sort())
  return text(sumsOf(openBook(household, entries))) === text(sums)
}

/** SIGKILL for the browser's main process, found by its profile: no goodbye of any kind. */
async function killBrowser(profile: string): Promise<void> {
  for (const pid of (await readdir('/proc')).filter((name) => /^\d+$/.test(name))) {
    const line = await readFile(`/proc/${pid}/cmdline`, 'utf8').catch(() => '')
    if (line.includes(`--user-data-dir=${profile}`) && !line.includes('--type=')) process.kill(Number(pid), 'SIGKILL')
  }
}
