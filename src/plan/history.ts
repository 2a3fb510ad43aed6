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
  const found = new Map<PotId, PotChange[]>(book.household.pots.map((pot) => [pot.id, []]))
  const byName = new Map<string, PotId>(book.household.pots.map((pot) => [pot.id, pot.id]))
  for (const entry of entriesOf(book)) {
    if (!keepsTakenBack && (entry.kind === 'reversal' || isReversed(book, entry.id))) continue
    const changes = new Map<PotId, { cash: number; card: number; held: number }>()
    for (const { account, amount } of entry.postings) {
      const [side, name = ''] = account.split(':')
      const pot = byName.get(name)
      if (pot === undefined || (side !== 'cash' && side !== 'card' && side !== 'held')) continue
      const change = changes.get(pot) ?? { cash: 0, card: 0, held: 0 }
      change[side] += amount
      changes.set(pot, change)
    }
    for (const [pot, change] of changes) {
      found.get(pot)?.push({ entry, date: entry.date, ...change, what: WHAT[entry.kind] ?? 'other' })
    }
  }
  // Entries come by the time they were made, which may be days after the day they are for; equal days keep that order.
  for (const changes of found.values()) changes.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
  return found
}
