import type { Book } from './book.ts'
import { BookError } from './book-error.ts'
import { addDays, type CalendarDate } from './calendar-date.ts'
import type { Entry } from './entry.ts'
import { monthNamed } from './month.ts'

/**
 * The last day of the last closed month, or null when none is closed. Closing a month closes all before it; opening one
 * again opens all after it.
 */
export function closedThrough(book: Book): CalendarDate | null {
  let through: CalendarDate | null = null
  for (const index of book.log.closings) {
    const entry = index < book.length ? book.log.entries[index] : undefined
    if (entry?.kind === 'close' && (through === null || entry.through > through)) through = entry.through
    if (entry?.kind === 'reopen' && through !== null) {
      const before = addDays(monthNamed(book.household, entry.month).from, -1)
      if (before < through) through = before
    }
  }
  return through
}

/** Kinds that tell of a month or a statement and change no figure: they may be dated in a closed month. */
const FACTS: ReadonlySet<Entry['kind']> = new Set(['close', 'reopen', 'agree', 'seen'])

/**
 * Refuses a new entry dated in a closed month. Entries that come with a whole book (from storage or another device) are
 * not asked: nothing may be lost; `closedMonths` then tells which sign-off no longer agrees.
 *
 * @throws BookError `month-closed`
 */
export function checkOpen(book: Book, entry: Entry): void {
  if (FACTS.has(entry.kind)) return
  const through = closedThrough(book)
  if (through === null || entry.date > through) return
  throw new BookError(
    'month-closed',
    `${entry.date} lies in a closed month (closed to ${through}). Enter it in the open month, or open the month again.`,
  )
}
