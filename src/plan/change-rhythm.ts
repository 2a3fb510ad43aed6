import { addDays } from '../book/calendar-date.ts'
import type { PaySchedule } from '../book/planning.ts'

/**
 * An earner's schedules after a change of rhythm, also in mid-month: what went on until now ends the day before the first
 * pay of the new one, and what would have begun after that is gone. Past pay dates stay as they were.
 *
 * @example changeRhythm([monthly], {rhythm: 'weekly', first: calendarDate('2026-06-19')})
 */
export function changeRhythm(schedules: readonly PaySchedule[], next: PaySchedule): PaySchedule[] {
  const end = addDays(next.first, -1)
  const before = schedules
    .filter((schedule) => schedule.first <= end)
    .map((schedule) => (schedule.until !== undefined && schedule.until <= end ? schedule : { ...schedule, until: end }))
  return [...before, next]
}
