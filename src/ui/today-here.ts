import { type CalendarDate, calendarDate } from '../book/calendar-date.ts'

/** Today where this machine is; a household that is set up has its own time zone, and its day comes from the worker. */
export function todayHere(): CalendarDate {
  const now = new Date()
  const two = (n: number): string => String(n).padStart(2, '0')
  return calendarDate(`${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`)
}
