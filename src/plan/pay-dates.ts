import { addMonths, endOfMonth, formatISO, getDaysInMonth, isWeekend, parseISO, setDate, startOfMonth } from 'date-fns'
import { addDays, type CalendarDate, calendarDate, dayNumber } from '../book/calendar-date.ts'
import type { PaySchedule } from '../book/planning.ts'

/** One pay: the day it reaches the account, and the day it is for, which differs where a weekend moved it. */
export interface PayDay {
  readonly date: CalendarDate
  readonly nominal: CalendarDate
}

/** More days in a row than any bank stays closed: how far a pay can be moved. */
const MOST_MOVED = 14

/**
 * The pay dates of a schedule, or of several, within a window: both ends included, ascending, each once.
 *
 * @example payDates({rhythm: 'every-two-weeks', first: calendarDate('2026-11-06')}, from, to)
 */
export function payDates(
  schedule: PaySchedule | readonly PaySchedule[],
  from: CalendarDate,
  to: CalendarDate,
): CalendarDate[] {
  return [...new Set(payDays(schedule, from, to).map((day) => day.date))]
}

/** The pays behind `payDates`, with the day each one is for; two schedules that pay on one day give two. */
export function payDays(
  schedule: PaySchedule | readonly PaySchedule[],
  from: CalendarDate,
  to: CalendarDate,
): PayDay[] {
  const all = 'rhythm' in schedule ? [schedule] : schedule
  return all.flatMap((one) => daysOf(one, from, to)).sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
}

function daysOf(schedule: PaySchedule, from: CalendarDate, to: CalendarDate): PayDay[] {
  const margin = schedule.weekend ? MOST_MOVED : 0
  const [start, end] = [addDays(from, -margin), addDays(to, margin)]
  return [...new Set(nominalDays(schedule, start < schedule.first ? addDays(schedule.first, -margin) : start, end))]
    .map((nominal) => ({ nominal, date: moved(schedule, nominal) }))
    .filter(({ date, nominal }) => {
      // The first pay may be told by the day it is for or by the day it comes; the same holds for the last.
      const hasBegun = date >= schedule.first || nominal >= schedule.first
      const hasEnded = schedule.until !== undefined && date > schedule.until && nominal > schedule.until
      return hasBegun && !hasEnded && date >= from && date <= to
    })
}

/** The days pay is for, before any weekend moves them. */
function nominalDays(schedule: PaySchedule, start: CalendarDate, end: CalendarDate): CalendarDate[] {
  if (schedule.rhythm === 'weekly') return everyDays(schedule.first, 7, start, end)
  if (schedule.rhythm === 'every-two-weeks') return everyDays(schedule.first, 14, start, end)
  const found: CalendarDate[] = []
  for (let month = startOfMonth(parseISO(start)); iso(month) <= end; month = addMonths(month, 1)) {
    found.push(...daysIn(schedule, month))
  }
  return found
}

function everyDays(first: CalendarDate, step: number, start: CalendarDate, end: CalendarDate): CalendarDate[] {
  const found: CalendarDate[] = []
  const skip = Math.max(0, Math.ceil((dayNumber(start) - dayNumber(first)) / step))
  for (let day = addDays(first, skip * step); day <= end; day = addDays(day, step)) found.push(day)
  return found
}

function daysIn(schedule: PaySchedule, month: Date): CalendarDate[] {
  const on = (day: number): CalendarDate => iso(setDate(month, Math.min(day, getDaysInMonth(month))))
  if (schedule.rhythm === 'monthly') return [on(schedule.day)]
  if (schedule.rhythm === 'twice-a-month') return schedule.days.map(on)
  return [nearestWorkingDay(iso(endOfMonth(month)), -1, schedule.daysOff)]
}

function moved(schedule: PaySchedule, nominal: CalendarDate): CalendarDate {
  if (!schedule.weekend) return nominal
  return nearestWorkingDay(nominal, schedule.weekend === 'before' ? -1 : 1, schedule.daysOff)
}

function nearestWorkingDay(date: CalendarDate, step: 1 | -1, daysOff: readonly CalendarDate[] = []): CalendarDate {
  let day = date
  while (isWeekend(parseISO(day)) || daysOff.includes(day)) day = addDays(day, step)
  return day
}

/** A calendar date is parsed at local midnight and formatted in local time again, so no zone can shift it. */
function iso(date: Date): CalendarDate {
  return calendarDate(formatISO(date, { representation: 'date' }))
}
