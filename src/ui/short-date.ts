import type { CalendarDate } from '../book/calendar-date.ts'
import { locale } from './browser.ts'

/** A day in few letters: "4 Dec", or "Fri 4 Dec" with its weekday. */
export function shortDate(date: CalendarDate, hasWeekday = false): string {
  const format = new Intl.DateTimeFormat(locale(), {
    day: 'numeric',
    month: 'short',
    // A calendar date is an instant only to be formatted, in UTC, so that no zone shifts it.
    timeZone: 'UTC',
    ...(hasWeekday ? { weekday: 'short' } : {}),
  })
  return format.format(new Date(`${date}T00:00:00Z`))
}
