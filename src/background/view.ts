import { type Book, balances, type Entry, entriesOf, isReversed, lastUndoable, unplaced } from '../index.ts'
import type { Context } from './context.ts'
import type { Look } from './protocol.ts'
import { shopOf } from './shop-host.ts'
import { permitted } from './shops.ts'
import type { Head, Kept } from './store.ts'

const RECENT = 12

/** The household as our pages draw it. */
export async function look(context: Context): Promise<Look> {
  const held = await context.keeper.look()
  if (held.status !== 'ready') return held
  const { kept, book } = await context.keeper.ready()
  return {
    status: 'ready',
    view: {
      household: book.household,
      schedule: kept.head.settings.schedule,
      isDemo: kept.head.settings.isDemo,
      today: context.today(book.household.timeZone),
      device: kept.head.device,
      balances: Object.fromEntries(balances(book)),
      unplaced: unplaced(book),
      recent: recentEntries(book),
      undoable: lastUndoable(book),
      held: kept.head.held ?? {},
      series: `${kept.head.device}/${kept.head.series}`,
      gaps: new Set([...kept.head.gaps, ...gapsAtHand(kept)]).size,
      mended: kept.head.mended.map((m) => m.date),
      statements: kept.head.settings.statements ?? { accounts: {}, mappings: [] },
      watched: await watchedHosts(kept.head),
    },
  }
}

function gapsAtHand({ head, window }: Kept): number[] {
  return window.flatMap((segment, i) => (segment ? [] : [head.first + i]))
}

async function watchedHosts(head: Head): Promise<string[]> {
  const hosts = (await permitted(head.watched)).map((origin) => shopOf(origin)).filter((host) => host !== null)
  return [...new Set(hosts)]
}

function recentEntries(book: Book): Entry[] {
  const standing: Entry[] = []
  for (const entry of entriesOf(book)) {
    if (entry.kind !== 'reversal' && !isReversed(book, entry.id)) standing.push(entry)
  }
  return standing.slice(-RECENT).reverse()
}
