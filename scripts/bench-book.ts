import Decimal from 'decimal.js'
import { add, type Dinero, dinero } from 'dinero.js'
import { CAD } from 'dinero.js/currencies'
import { longHousehold } from '../demo-data/long-household.ts'
import type { StorageArea } from '../src/background/store.ts'
import { newKept, writeWhole } from '../src/background/write-store.ts'
import {
  append,
  assess,
  type Book,
  balances,
  calendarDate,
  deviceId,
  type Entry,
  entryId,
  type Household,
  money,
  openBook,
  openBookAt,
  potId,
  spendFrom,
  sumsOf,
} from '../src/index.ts'
import { type Extension, openExtension } from '../tests/browser/extension.ts'
import { type Spread, spread } from './spread.ts'

/*
 * What a book of twenty years costs: 250,000 entries of 30 pots, made from a seed. Yardsticks run on the same numbers in
 * the same run. Engine figures are of Node, the others of the built extension in Chromium.
 */

const today = calendarDate('2026-11-25')
const SIZE = { years: 20, pots: 30, entries: 250_000, seed: 7, until: today }
const ROUNDS = 9

export async function bookCosts(): Promise<Record<string, unknown>> {
  const { household, entries } = longHousehold(SIZE)
  return {
    size: SIZE,
    engine: engineCosts(household, entries),
    extension: await extensionCosts(household, entries),
  }
}

function engineCosts(household: Household, entries: readonly Entry[]): Record<string, unknown> {
  const text = JSON.stringify(entries)
  const amounts = Float64Array.from(entries.flatMap((e) => [...e.postings, ...e.places].map((p) => p.amount)))
  const young = openBook(household, entries.slice(0, 500))
  const old = openBook(household, entries)
  const at = { sums: sumsOf(old), before: entries.length - 2000 }
  const latest = entries.slice(-2000)
  return {
    postings: amounts.length,
    open_at_latest_ms: times(ROUNDS, () => openBookAt(household, at, latest)),
    open_whole_ms: times(3, () => openBook(household, entries)),
    fold_ms: times(ROUNDS, () => fold(entries)),
    yardsticks: {
      parse_json_ms: times(3, () => JSON.parse(text)),
      typed_array_sum_ms: times(ROUNDS, () => amounts.reduce((sum, amount) => sum + amount, 0)),
      decimal_fold_ms: times(3, () => decimalFold(entries)),
      dinero_fold_ms: times(3, () => dineroFold(entries)),
    },
    assess_us: { at_500_entries: assessCost(young), at_250_000: assessCost(old) },
    append_with_balances_us: appendCost(household, old),
  }
}

/** All postings added up by account, as plain numbers. */
function fold(entries: readonly Entry[]): Map<string, number> {
  const sums = new Map<string, number>()
  for (const entry of entries) {
    for (const { account, amount } of entry.postings) sums.set(account, (sums.get(account) ?? 0) + amount)
    for (const { account, amount } of entry.places) sums.set(account, (sums.get(account) ?? 0) + amount)
  }
  return sums
}

function decimalFold(entries: readonly Entry[]): Map<string, Decimal> {
  const sums = new Map<string, Decimal>()
  for (const entry of entries) {
    for (const { account, amount } of [...entry.postings, ...entry.places]) {
      sums.set(account, (sums.get(account) ?? new Decimal(0)).plus(new Decimal(amount).div(100)))
    }
  }
  return sums
}

function dineroFold(entries: readonly Entry[]): unknown {
  const sums = new Map<string, Dinero<number>>()
  for (const entry of entries) {
    for (const { account, amount } of [...entry.postings, ...entry.places]) {
      const before = sums.get(account) ?? dinero({ amount: 0, currency: CAD })
      sums.set(account, add(before, dinero({ amount, currency: CAD })))
    }
  }
  return sums
}

function assessCost(book: Book): Spread {
  const purchase = { shop: 'corvid.example', lines: [{ pot: potId('pot-3'), amount: money('CAD', '55.90') }] }
  return micros(3000, () => assess(book, purchase, today))
}

function appendCost(household: Household, old: Book): Spread {
  let book = old
  let n = 0
  return micros(3000, () => {
    const id = entryId(`0193b000-0000-7000-8000-${String(n++).padStart(12, '0')}`)
    const stamp = { id, device: deviceId('bench'), date: today }
    book = append(book, spendFrom(household, stamp, potId('pot-3'), 'cash', money('CAD', '0.01'), 'x'))
    balances(book).get(potId('pot-3'))
  })
}

/** The book put into the extension's store as a restore would, then the popup opened on it, with and without a worker. */
async function extensionCosts(household: Household, entries: readonly Entry[]): Promise<Record<string, unknown>> {
  const extension = await openExtension()
  try {
    const written = await fillStore(extension, household, entries)
    await extension.stopWorker()
    const cold: number[] = []
    const warm: number[] = []
    for (let n = 0; n < ROUNDS; n++) {
      await extension.stopWorker()
      cold.push(await popupTime(extension))
      warm.push(await popupTime(extension))
    }
    const own = await extension.popup()
    const write = await own.evaluate(writeTimes, { rounds: 40, seed: String(Math.random()).slice(2, 6) })
    await own.close()
    return {
      stored_megabytes: Math.round(written / 1e5) / 10,
      popup_to_balances_ms: { cold_worker: spread(cold), warm_worker: spread(warm) },
      spend_acknowledged_ms: spread(write),
    }
  } finally {
    await extension.close()
  }
}

async function fillStore(extension: Extension, household: Household, entries: readonly Entry[]): Promise<number> {
  const { payDates: _, ...settings } = household
  const kept = await newKept(deviceId('bench'), {
    ...settings,
    pots: settings.pots.map((pot) => ({ ...pot, fill: { ...pot.fill } })),
    accounts: [...settings.accounts],
    schedule: null,
    isDemo: false,
  } as Parameters<typeof newKept>[1])
  const own = await extension.popup()
  let bytes = 0
  const area: StorageArea = {
    get: async () => ({}),
    remove: async () => {},
    async set(items) {
      const text = JSON.stringify(items)
      bytes += text.length
      await own.evaluate((json) => chrome.storage.local.set(JSON.parse(json)), text)
    },
  }
  await writeWhole(area, kept, openBook(household, entries))
  await own.close()
  return bytes
}

/** From the popup's navigation to the moment the pots and their figures stand on the page. */
async function popupTime(extension: Extension): Promise<number> {
  const page = await extension.context.newPage()
  await page.setViewportSize({ width: 400, height: 600 })
  await page.addInitScript(() => {
    const watcher = new MutationObserver(() => {
      if (!document.querySelector('.pot-left')) return
      document.documentElement.dataset.drawn = String(performance.now())
      watcher.disconnect()
    })
    watcher.observe(document, { subtree: true, childList: true })
  })
  await page.goto(extension.url('popup/popup.html?tab=0'))
  await page.locator('html[data-drawn]').waitFor()
  const took = Number(await page.evaluate(() => document.documentElement.dataset.drawn))
  await page.close()
  return took
}

async function writeTimes({ rounds, seed }: { rounds: number; seed: string }): Promise<number[]> {
  const found: number[] = []
  for (let n = 0; n < rounds; n++) {
    const id = `0193b000-0000-7000-8000-${seed.padStart(4, '1')}${String(n).padStart(8, '0')}`
    const ask = { id, pot: 'pot-3', side: 'cash', amount: '0.01', purpose: 'x', date: '2026-11-25' }
    const start = performance.now()
    await chrome.runtime.sendMessage({ command: 'spend.add', ask })
    found.push(performance.now() - start)
  }
  return found
}

function times(rounds: number, work: () => unknown): Spread {
  const found: number[] = []
  for (let n = 0; n < rounds + 1; n++) {
    const start = performance.now()
    work()
    if (n > 0) found.push(performance.now() - start)
  }
  return spread(found)
}

function micros(rounds: number, work: () => unknown): Spread {
  const found: number[] = []
  for (let n = 0; n < rounds; n++) {
    const start = performance.now()
    work()
    if (n >= rounds / 4) found.push((performance.now() - start) * 1000)
  }
  return spread(found)
}
