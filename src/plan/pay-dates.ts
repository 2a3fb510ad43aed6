import {
  addDays,
  addMonths,
  endOfMonth,
  formatISO,
  getDaysInMonth,
  isWeekend,
  parseISO,
  setDate,
  startOfMonth,
} from 'date-fns'
import { type CalendarDate, calendarDate } from '../book/calendar-date.ts'

/** How pay arrives. `first` is the first pay: no date before it is a pay date. */
export type PaySchedule =
  | { readonly rhythm: 'weekly' | 'every-two-weeks'; readonly first: CalendarDate }
  /** On two days of each month; a day past the month's end means its last day. */
  | { readonly rhythm: 'twice-a-month'; readonly first: CalendarDate; readonly days: readonly [number, number] }
  /** On one day of each month; a day past the month's end means its last day. */
  | { readonly rhythm: 'monthly'; readonly first: CalendarDate; readonly day: number }
  /** The last day of each month that is not a Saturday or Sunday (public holidays are not known here). */
  | { readonly rhythm: 'last-working-day'; readonly first: CalendarDate }

/**
 * The pay dates of a schedule within a window, both ends included, ascending, each once.
 *
 * @example payDates({rhythm: 'every-two-weeks', first: calendarDate('2026-11-06')}, from, to)
 */
export function payDates(schedule: PaySchedule, from: CalendarDate, to: CalendarDate): CalendarDate[] {
  const start = from > schedule.first ? from : schedule.first
  if (start > to) return []
  const all =
    schedule.rhythm === 'weekly'
      ? everyDays(schedule.first, 7, start, to)
      : schedule.rhythm === 'every-two-weeks'
        ? everyDays(schedule.first, 14, start, to)
        : monthByMonth(start, to, (month) => daysIn(schedule, month))
  return [...new Set(all)].filter((d) => d >= start && d <= to).sort()
}

function everyDays(first: CalendarDate, step: number, start: CalendarDate, to: CalendarDate): CalendarDate[] {
  const origin = parseISO(first)
  const found: CalendarDate[] = []
  // A calendar date is parsed at local midnight and formatted in local time again, so no zone can shift it.
  const skip = Math.max(0, Math.floor((parseISO(start).getTime() - origin.getTime()) / (step * 86_400_000)) - 1)
  for (let n = skip; ; n++) {
    const day = iso(addDays(origin, n * step))
    if (day > to) return found
    found.push(day)
  }
}

function monthByMonth(start: CalendarDate, to: CalendarDate, days: (month: Date) => Date[]): CalendarDate[] {
  const found: CalendarDate[] = []
  for (let month = startOfMonth(parseISO(start)); iso(month) <= to; month = addMonths(month, 1)) {
    found.push(...days(month).map(iso))
  }
  return found
}

function daysIn(schedule: PaySchedule, month: Date): Date[] {
  const on = (day: number): Date => setDate(month, Math.min(day, getDaysInMonth(month)))
  if (schedule.rhythm === 'monthly') return [on(schedule.day)]
  if (schedule.rhythm === 'twice-a-month') return schedule.days.map(on)
  let day = endOfMonth(month)
  while (isWeekend(day)) day = addDays(day, -1)
  return [day]
}

function iso(date: Date): CalendarDate {
  return calendarDate(formatISO(date, { representation: 'date' }))
}
