import { BookError } from './book-error.ts'

declare const brand: unique symbol

/**
 * A day on the calendar, `YYYY-MM-DD`, never an instant. Calendar dates compare as text: `a < b` means a is earlier.
 */
export type CalendarDate = string & { readonly [brand]: 'CalendarDate' }

const SHAPE = /^(\d{4})-(\d{2})-(\d{2})$/
const DAY_MS = 86_400_000
const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const

/** Whether a text is a real day of the Gregorian calendar in the form `YYYY-MM-DD` (RFC 3339 full-date). */
export function isCalendarDate(text: string): text is CalendarDate {
  const match = SHAPE.exec(text)
  if (!match) return false
  const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])]
  const days = month === 2 && isLeap(year) ? 29 : DAYS[month - 1]
  return days !== undefined && day >= 1 && day <= days
}

/**
 * Takes a text as a calendar date.
 *
 * @throws BookError `bad-date`: `calendarDate('2026-02-29')`
 */
export function calendarDate(text: string): CalendarDate {
  if (isCalendarDate(text)) return text
  throw new BookError('bad-date', `"${text}" is not a day. Write it as YYYY-MM-DD, such as 2026-12-04.`)
}

/**
 * The day a number of days later (earlier, when negative).
 *
 * @throws BookError `bad-date` beyond the years 0 to 9999
 * @example addDays(calendarDate('2028-02-28'), 1) // '2028-02-29'
 */
export function addDays(date: CalendarDate, days: number): CalendarDate {
  return calendarDate(new Date((dayNumber(date) + days) * DAY_MS).toISOString().slice(0, 10))
}

/** Days since 1 January 1970: two dates' numbers differ by the days between them. */
export function dayNumber(date: CalendarDate): number {
  // Both ways go through UTC, where every day has the same length.
  return Date.parse(`${date}T00:00:00Z`) / DAY_MS
}

/** Writes a day out for a reader: `sayDate('2026-12-04', 'en-GB')` is `Friday 4 December`. */
export function sayDate(date: CalendarDate, locale: string): string {
  let format = sayFormats.get(locale)
  if (!format) {
    format = new Intl.DateTimeFormat(locale, { weekday: 'long', day: 'numeric', month: 'long', timeZone: 'UTC' })
    sayFormats.set(locale, format)
  }
  // A calendar date is turned into an instant only to be formatted in UTC again: no zone can shift it.
  return format.format(new Date(`${date}T00:00:00Z`))
}

const sayFormats = new Map<string, Intl.DateTimeFormat>()

function isLeap(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0)
}
