import type { MonthName } from '../book/month.ts'
import { locale } from './browser.ts'

/** A month as a reader writes it: `November 2026`. It is named by the calendar month in which it starts. */
export function monthText(month: MonthName): string {
  const format = new Intl.DateTimeFormat(locale(), { month: 'long', year: 'numeric', timeZone: 'UTC' })
  return format.format(new Date(`${month}-01T00:00:00Z`))
}
