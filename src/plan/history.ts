import { type Book, entriesOf, isReversed } from '../book/book.ts'
import type { CalendarDate } from '../book/calendar-date.ts'
import type { Entry } from '../book/entry.ts'
import type { PotId } from '../book/ids.ts'

/** What one entry did to one pot, in minor units; more in the pot is positive. */
export interface PotChange {
  readonly entry: Entry
  readonly date: CalendarDate
  readonly cash: number
  readonly card: number
  readonly held: number
  /** *filled*: put in from pay or outside; *spent*: paid to a shop or back from it; *other*: all else. */
  readonly what: 'filled' | 'spent' | 'other'
}

type Mutable = { -readonly [K in keyof PotChange]: PotChange[K] }

const WHAT: Partial<Record<Entry['kind'], PotChange['what']>> = {
  fill: 'filled',
  spend: 'spent',
  charge: 'spent',
  refund: 'spent',
}

/**
 * Every pot's changes by day, oldest first, in one pass over the book. An entry that was taken back and the one that took
 * it back are both left out: together they changed nothing.
 *
 * @param keepsTakenBack leave them in, as they stand in the book
 */
export function potHistory(book: Book, keepsTakenBack = false): ReadonlyMap<PotId, readonly PotChange[]> {
  const found = new Map<PotId, Mutable[]>()
  const slots = new Map<string, { readonly changes: Mutable[]; readonly side: 'cash' | 'card' | 'held' }>()
  for (const pot of book.household.pots) {
    const changes: Mutable[] = []
    found.set(pot.id, changes)
    for (const side of ['cash', 'card', 'held'] as const) slots.set(`${side}:${pot.id}`, { changes, side })
  }
  for (const entry of entriesOf(book)) {
    if (!keepsTakenBack && (entry.kind === 'reversal' || isReversed(book, entry.id))) continue
    const what = WHAT[entry.kind] ?? 'other'
    for (const { account, amount } of entry.postings) {
      const slot = slots.get(account)
      if (!slot) continue
      const last = slot.changes.at(-1)
      const change = last?.entry === entry ? last : { entry, date: entry.date, cash: 0, card: 0, held: 0, what }
      if (change !== last) slot.changes.push(change)
      change[slot.side] += amount
    }
  }
  // Entries come by the time they were made, which may be days after the day they are for; equal days keep that order.
  for (const changes of found.values()) changes.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
  return found
}
