import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { v7 } from 'uuid'
import { seeded } from '../../demo-data/seeded.ts'
import { calendarDate, type Entry, entryId, openBook, potId, sumsOf } from '../../src/index.ts'
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
}

/** Every third kill is the whole browser's; a browser takes a second to come back, a worker next to nothing. */
const BROWSER_EVERY = 3
const MOST_WAIT_MS = 120

/**
 * Runs a stream of spends, fills and undos into the built extension, and kills the browser (SIGKILL) or stops the worker
 * at random moments. After each kill the book is read again whole.
 */
export async function runTorture(options: {
  readonly kills: number
  readonly seed: number
  readonly onKill?: (n: number) => void
}): Promise<Torture> {
  const random = seeded(options.seed)
  const profile = await mkdtemp(join(tmpdir(), 'tillside-torture-'))
  const asked = new Set<string>()
  const acknowledged = new Set<string>()
  const tally = { killedBrowsers: 0, stoppedWorkers: 0, wrongBalances: 0 }
  let extension = await openExtension({ profile })
  await extension.ask('household.demo', {})
  const before = new Set((await readBook(extension)).map((e) => e.id))
  let entries: Entry[] = []
  try {
    for (let n = 1; n <= options.kills; n++) {
      const stream = startStream(extension, asked, acknowledged, random)
      // When the blow falls is what is put to chance: no event could be awaited.
      await new Promise((resolve) => setTimeout(resolve, random() * MOST_WAIT_MS))
      if (n % BROWSER_EVERY === 0) {
        await killBrowser(profile)
        tally.killedBrowsers += 1
        await stream.end()
        extension = await openExtension({ profile })
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
  const found = new Set<string>(entries.map((e) => e.id))
  return {
    ...tally,
    asked: asked.size,
    acknowledged: acknowledged.size,
    found: entries.length,
    lost: [...acknowledged, ...before].filter((id) => !found.has(id)).length,
    strange: [...found].filter((id) => !asked.has(id) && !before.has(id as Entry['id'])).length,
  }
}

/** Asks one thing after another, three at a time, until it is ended or the browser is gone. */
function startStream(
  extension: Extension,
  asked: Set<string>,
  acknowledged: Set<string>,
  random: () => number,
): { end: () => Promise<void> } {
  let isOn = true
  const lane = async (): Promise<void> => {
    while (isOn) {
      const id = entryId(v7())
      asked.add(id)
      try {
        await askSomething(extension, id, random())
        acknowledged.add(id)
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

async function askSomething(extension: Extension, id: Entry['id'], chance: number): Promise<void> {
  const date = calendarDate('2026-11-25')
  if (chance < 0.6) {
    const spend = { id, pot: potId('groceries'), side: 'cash', amount: '0.05', purpose: 'a roll', date } as const
    await extension.ask('spend.add', spend)
  } else if (chance < 0.9) {
    await extension.ask('fill.add', { id, pot: potId('garden'), cash: '0.10', card: '0.20', from: 'outside', date })
  } else {
    await extension.ask('pay.add', { id, amount: '1.00', date })
  }
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
