import { addDays, type CalendarDate } from '../book/calendar-date.ts'
import type { PaySchedule } from '../book/planning.ts'
import { payDates } from './pay-dates.ts'

/** When pay comes: a rhythm, several of them (earners, or one after another), or the days written down one by one. */
export type PayTimes = PaySchedule | readonly PaySchedule[] | readonly CalendarDate[]

/** The pay dates after one day, up to and including another, ascending, each once. */
export function paysAfter(times: PayTimes, after: CalendarDate, to: CalendarDate): CalendarDate[] {
  if ('rhythm' in times) return payDates(times, addDays(after, 1), to)
  const [schedules, dates]: [PaySchedule[], CalendarDate[]] = [[], []]
  for (const time of times) {
    if (typeof time === 'string') dates.push(time)
    else schedules.push(time)
  }
  const all = [...payDates(schedules, addDays(after, 1), to), ...dates.filter((d) => d > after && d <= to)]
  return [...new Set(all)].sort()
}
