import { BookError } from './book-error.ts'
import { addDays, type CalendarDate, calendarDate } from './calendar-date.ts'
import type { Household } from './household.ts'

declare const brand: unique symbol

/** A household's month, `YYYY-MM`, by the calendar month it starts in. Months compare as text. */
export type MonthName = string & { readonly [brand]: 'MonthName' }

const SHAPE = /^(\d{4})-(0[1-9]|1[0-2])$/

/** Takes a text as a month. @throws BookError `bad-date`: `monthName('2026-13')` */
export function monthName(text: string): MonthName {
  if (isMonthName(text)) return text
  throw new BookError('bad-date', `"${text}" is not a month. Write it as YYYY-MM, such as 2026-12.`)
}

/** Whether a text has the form of a month's name. */
export function isMonthName(text: string): text is MonthName {
  return SHAPE.test(text)
}

/**
 * The month a day belongs to.
 *
 * @param startDay day on which the household's months start, 1 to 28
 * @example monthOf(calendarDate('2026-12-03'), 15) // 2026-11
 */
export function monthOf(date: CalendarDate, startDay: number): MonthName {
  const month = monthName(date.slice(0, 7))
  return Number(date.slice(8)) >= startDay ? month : monthAfter(month, -1)
}

/** The month so many months later; earlier with a number below zero. */
export function monthAfter(month: MonthName, count = 1): MonthName {
  const all = Number(month.slice(0, 4)) * 12 + Number(month.slice(5)) - 1 + count
  return monthName(`${String(Math.floor(all / 12)).padStart(4, '0')}-${String((all % 12) + 1).padStart(2, '0')}`)
}

/** The first day of a month. */
export function monthStart(month: MonthName, startDay: number): CalendarDate {
  return calendarDate(`${month}-${String(startDay).padStart(2, '0')}`)
}

/** The last day of a month. */
export function monthEnd(month: MonthName, startDay: number): CalendarDate {
  return addDays(monthStart(monthAfter(month), startDay), -1)
}

/** A month with its days, both ends included. With a start day of 25, `2026-11` is 25 November to 24 December. */
export interface Month {
  readonly name: MonthName
  readonly from: CalendarDate
  readonly to: CalendarDate
}

/**
 * A household's month by its name.
 *
 * @throws BookError `bad-date`
 * @example monthNamed(household, '2026-11') // {name: '2026-11', from: '2026-11-01', to: '2026-11-30'}
 */
export function monthNamed(household: Pick<Household, 'monthStartDay'>, text: string): Month {
  const name = monthName(text)
  return { name, from: monthStart(name, household.monthStartDay), to: monthEnd(name, household.monthStartDay) }
}
