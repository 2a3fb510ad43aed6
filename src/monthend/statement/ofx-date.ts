import { type CalendarDate, isCalendarDate } from '../../book/calendar-date.ts'
import { MonthendError } from '../monthend-error.ts'

// YYYYMMDD, or with a full time, thousandths and a zone: 20260131233000.000[-5:EST]
const SHAPE = /^(\d{4})(\d{2})(\d{2})(?:([01]\d|2[0-3])[0-5]\d(?:[0-5]\d|60)(?:\.\d{3})?)?(?:\[[^\]]*\])?$/

/**
 * The calendar date an OFX date-time is written with: the bank's own day. No zone is turned into another, since a purchase
 * on the evening of the 31st belongs to the 31st.
 *
 * @throws MonthendError `bad-date` for a day that does not exist and for a time that is cut short
 */
export function ofxDate(text: string, row: number): CalendarDate {
  const [, year, month, day] = SHAPE.exec(text) ?? []
  const date = `${year}-${month}-${day}`
  if (isCalendarDate(date)) return date
  throw new MonthendError('bad-date', `Line ${row}: "${text.slice(0, 40)}" is not a day in the form OFX writes.`, row)
}
