import { type Book, entriesOf } from './book.ts'
import { BookError } from './book-error.ts'
import { addDays, type CalendarDate } from './calendar-date.ts'
import { closedThrough } from './closed-through.ts'
import type { CloseEntry, ReopenEntry, Stamp } from './entry.ts'
import { type MonthName, monthNamed } from './month.ts'
import { digestOf, summarise } from './month-summary.ts'
import { entryBase } from './posting.ts'

/**
 * Closes a month: freezes it and every month before, and signs off its figures with their digest.
 *
 * @param stamp `date` is today, on the month's last day or later
 * @throws BookError `bad-date`, `month-closed`, `month-not-over`
 */
export function closeMonth(book: Book, stamp: Stamp, name: MonthName): CloseEntry {
  const month = monthNamed(book.household, name)
  const through = closedThrough(book)
  if (through !== null && month.to <= through) throw new BookError('month-closed', `${name} is closed already.`)
  if (stamp.date < month.to) {
    throw new BookError('month-not-over', `${name} runs to ${month.to}. It can be closed on that day or later.`)
  }
  const summary = summarise(book, month)
  return {
    ...entryBase(stamp, [], []),
    kind: 'close',
    month: name,
    through: month.to,
    summary,
    digest: digestOf(summary),
  }
}

/**
 * Opens a closed month again, and with it the months after it.
 *
 * @throws BookError `bad-date`, `month-open`, `bad-reason` (none given)
 */
export function reopenMonth(book: Book, stamp: Stamp, name: MonthName, reason: string): ReopenEntry {
  const month = monthNamed(book.household, name)
  const through = closedThrough(book)
  if (through === null || month.to > through) throw new BookError('month-open', `${name} is not closed.`)
  if (reason.trim() === '') throw new BookError('bad-reason', 'Say why the month is opened again.')
  return { ...entryBase(stamp, [], []), kind: 'reopen', month: name, reason: reason.trim() }
}

/** The day an entry is dated, and the day it happened where that lies in a closed month. */
export interface Dated {
  readonly date: CalendarDate
  readonly happened?: CalendarDate
}

/**
 * How to date something that happened on a day. In an open month: that day. In a closed one: today (or the first open
 * day, when today itself is closed), with a reference to the day it happened. Every command dates its entries by this.
 *
 * @example datedFor(book, calendarDate('2026-10-30'), today) // {date: today, happened: '2026-10-30'} once October is closed
 */
export function datedFor(book: Book, date: CalendarDate, today: CalendarDate): Dated {
  const through = closedThrough(book)
  if (through === null || date > through) return { date }
  const open = addDays(through, 1)
  return { date: today > through ? today : open, happened: date }
}

/** A month that stands closed, and whether the book still gives the figures that were signed off. */
export interface ClosedMonth {
  readonly entry: CloseEntry
  /** False when entries of that month came later, from another device for instance: look at the month again. */
  readonly agrees: boolean
}

/** The months that stand closed, oldest first; of a month closed twice, the last sign-off. */
export function closedMonths(book: Book): ClosedMonth[] {
  const through = closedThrough(book)
  const standing = new Map<MonthName, CloseEntry>()
  for (const entry of entriesOf(book)) {
    if (entry.kind === 'close' && through !== null && entry.through <= through) standing.set(entry.month, entry)
  }
  return [...standing.values()]
    .sort((a, b) => (a.month < b.month ? -1 : 1))
    .map((entry) => ({
      entry,
      agrees: digestOf(summarise(book, monthNamed(book.household, entry.month))) === entry.digest,
    }))
}
