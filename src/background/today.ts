import { addDays, formatISO, parseISO } from 'date-fns'
import { type CalendarDate, calendarDate } from '../index.ts'

/** The calendar date in a time zone at an instant (milliseconds since 1970 UTC); an unknown zone falls back to UTC. */
export function dateIn(timeZone: string, now: number): CalendarDate {
  const parts = { year: 'numeric', month: '2-digit', day: '2-digit' } as const
  let format: Intl.DateTimeFormat
  try {
    format = new Intl.DateTimeFormat('en-CA', { ...parts, timeZone, calendar: 'gregory', numberingSystem: 'latn' })
  } catch {
    format = new Intl.DateTimeFormat('en-CA', {
      ...parts,
      timeZone: 'UTC',
      calendar: 'gregory',
      numberingSystem: 'latn',
    })
  }
  const found = new Map(format.formatToParts(now).map((p) => [p.type, p.value]))
  return calendarDate(`${found.get('year')}-${found.get('month')}-${found.get('day')}`)
}

/** The date some days later. */
export function addDaysTo(date: CalendarDate, days: number): CalendarDate {
  return calendarDate(formatISO(addDays(parseISO(date), days), { representation: 'date' }))
}
