import { type Book, balances, type Entry, entriesOf, isReversed, lastUndoable, unplaced } from '../index.ts'
import type { Context } from './context.ts'
import type { Look, OwnCommands } from './protocol.ts'
import { shopOf } from './shop-host.ts'
import { permitted } from './shops.ts'
import type { Head } from './store.ts'

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
      watched: await watchedHosts(kept.head),
    },
  }
}

/** Some tens of kilobytes a message: quick to copy, and few messages for a year. */
const ENTRIES_A_MESSAGE = 2000

/** A stretch of the book's entries. @throws StoreError */
export async function entriesFrom(
  context: Context,
  ask: OwnCommands['book.entries']['ask'],
): Promise<OwnCommands['book.entries']['answer']> {
  const { kept } = await context.keeper.ready()
  return { entries: kept.entries.slice(ask.from, ask.from + ENTRIES_A_MESSAGE), length: kept.entries.length }
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
