import type { MonthName } from '../book/month.ts'
import { locale } from './browser.ts'

/** A month as a reader writes it: `November 2026`. It is named by the calendar month in which it starts. */
export function monthText(month: MonthName): string {
  return written(month, { month: 'long', year: 'numeric' })
}

/** A month in few letters, where the year is plain: `Nov`. */
export function monthShort(month: MonthName): string {
  return written(month, { month: 'short' })
}

function written(month: MonthName, format: Intl.DateTimeFormatOptions): string {
  const date = new Date(`${month}-01T00:00:00Z`)
  return new Intl.DateTimeFormat(locale(), { ...format, timeZone: 'UTC' }).format(date)
}
