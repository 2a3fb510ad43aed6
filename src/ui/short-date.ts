import type { CalendarDate } from '../book/calendar-date.ts'
import { locale } from './browser.ts'

/** A day in few letters: "4 Dec". A calendar date is an instant only to be formatted, in UTC, so no zone shifts it. */
export function shortDate(date: CalendarDate): string {
  const format = new Intl.DateTimeFormat(locale(), { day: 'numeric', month: 'short', timeZone: 'UTC' })
  return format.format(new Date(`${date}T00:00:00Z`))
}
