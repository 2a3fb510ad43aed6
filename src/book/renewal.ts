import { type Money, ofMinor } from '../money/money.ts'
import { type Book, isReversed } from './book.ts'
import { addDays, type CalendarDate, calendarDate, dayNumber } from './calendar-date.ts'
import type { PotId } from './ids.ts'
import { orderEntries } from './order-index.ts'
import type { Every, Renewal } from './ordering.ts'

/**
 * The days something is due within a window, both ends included, ascending. Days count from `first` and never from the
 * last result; the 31st of a shorter month, and 29 February, mean the month's last day (RFC 5545's rules with
 * RFC 7529's SKIP=BACKWARD).
 *
 * @example dueDates(calendarDate('2026-01-31'), {unit: 'month', count: 1}, from, to) // 31 January, 28 February, 31 March
 */
export function dueDates(first: CalendarDate, every: Every, from: CalendarDate, to: CalendarDate): CalendarDate[] {
  const found: CalendarDate[] = []
  for (let n = stepsBefore(first, every, from); ; n++) {
    const due = nthDue(first, every, n)
    if (due > to) return found
    if (due >= from) found.push(due)
  }
}

/** So many days, the first one and those that follow it. */
export function daysFrom(first: CalendarDate, every: Every, count: number): CalendarDate[] {
  return Array.from({ length: count }, (_, n) => nthDue(first, every, n))
}

/** A renewal's next due day from `from` on, or null when it has ended. */
export function nextDue(renewal: Renewal, from: CalendarDate): CalendarDate | null {
  const start = from > renewal.first ? from : renewal.first
  for (let n = stepsBefore(renewal.first, renewal.every, start); ; n++) {
    const due = nthDue(renewal.first, renewal.every, n)
    if (due >= start) return renewal.end !== undefined && due > renewal.end ? null : due
  }
}

/** A renewal on one of its days. */
export interface DueRenewal {
  readonly renewal: Renewal
  readonly due: CalendarDate
  readonly amount: Money
}

/**
 * What renews within a window, both ends included, by day: without what an order in the book pays already.
 */
export function dueRenewals(book: Book, from: CalendarDate, to: CalendarDate, pot?: PotId): DueRenewal[] {
  const { renewals = [], currency } = book.household
  const wanted = renewals.filter((r) => pot === undefined || r.pot === pot)
  if (wanted.length === 0) return []
  const paid = paidRenewals(book)
  return wanted
    .flatMap((renewal) => {
      const last = renewal.end !== undefined && renewal.end < to ? renewal.end : to
      return dueDates(renewal.first, renewal.every, from, last)
        .filter((due) => !paid.has(`${renewal.id} ${due}`))
        .map((due) => ({ renewal, due, amount: ofMinor(currency, renewal.amount) }))
    })
    .sort((a, b) => (a.due < b.due ? -1 : a.due > b.due ? 1 : 0))
}

/** A sinking fund a yearly renewal could become: what is needed, by when, and how often again. */
export interface RenewalFund {
  readonly name: string
  readonly target: Money
  readonly due: CalendarDate
  readonly everyYears: number
}

/**
 * What to save for a renewal that comes once a year or less often; null for one that comes more often or has ended.
 */
export function fundFor(book: Book, renewal: Renewal, today: CalendarDate): RenewalFund | null {
  const { unit, count } = renewal.every
  const years = unit === 'year' ? count : unit === 'month' && count % 12 === 0 ? count / 12 : 0
  const due = years > 0 ? nextDue(renewal, addDays(today, 1)) : null
  if (due === null) return null
  return { name: renewal.name, target: ofMinor(book.household.currency, renewal.amount), due, everyYears: years }
}

function paidRenewals(book: Book): Set<string> {
  const paid = new Set<string>()
  for (const { id, details } of orderEntries(book, 'renewals')) {
    if (details?.renewal && !isReversed(book, id)) paid.add(`${details.renewal.id} ${details.renewal.due}`)
  }
  return paid
}

/** A number of steps that surely does not pass the first due day from `from` on. */
function stepsBefore(first: CalendarDate, every: Every, from: CalendarDate): number {
  const days = dayNumber(from) - dayNumber(first)
  const longest = { day: 1, week: 7, month: 31, year: 366 }[every.unit] * every.count
  return Math.max(0, Math.floor(days / longest))
}

function nthDue(first: CalendarDate, { unit, count }: Every, n: number): CalendarDate {
  if (unit === 'day') return addDays(first, n * count)
  if (unit === 'week') return addDays(first, n * count * 7)
  const months = n * count * (unit === 'year' ? 12 : 1)
  const [year = 0, month = 1, day = 1] = first.split('-').map(Number)
  const all = year * 12 + month - 1 + months
  const start = calendarDate(`${String(Math.floor(all / 12)).padStart(4, '0')}-${two((all % 12) + 1)}-01`)
  const length = dayNumber(firstOfNext(all)) - dayNumber(start)
  return addDays(start, Math.min(day, length) - 1)
}

function firstOfNext(month: number): CalendarDate {
  const next = month + 1
  return calendarDate(`${String(Math.floor(next / 12)).padStart(4, '0')}-${two((next % 12) + 1)}-01`)
}

function two(n: number): string {
  return String(n).padStart(2, '0')
}
