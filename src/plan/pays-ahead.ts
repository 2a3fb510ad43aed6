import { addDays, type CalendarDate } from '../book/calendar-date.ts'
import type { Household } from '../book/household.ts'
import { type MonthName, monthAfter, monthEnd, monthOf, monthStart } from '../book/month.ts'
import type { Earner, PaySchedule } from '../book/planning.ts'
import { payDays } from './pay-dates.ts'

/** A pay that is to come: `amount` in minor units, 0 where it is not known. */
export interface ExpectedPay {
  readonly date: CalendarDate
  /** The month it is for; a pay moved over a month's end by a weekend is still for its own. */
  readonly month: MonthName
  readonly earner: string
  readonly amount: number
}

/**
 * The pays of all earners within a window, both ends included, ascending. A household without earners has the pay dates
 * it wrote down itself.
 */
export function paysAhead(household: Household, from: CalendarDate, to: CalendarDate): ExpectedPay[] {
  const { earners, monthStartDay } = household
  if (!earners || earners.length === 0) {
    return household.payDates
      .filter((date) => date >= from && date <= to)
      .map((date) => ({ date, month: monthOf(date, monthStartDay), earner: '', amount: 0 }))
  }
  return earners
    .flatMap((earner) =>
      payDays(earner.schedules, from, to).map(({ date, nominal }) => ({
        date,
        month: monthOf(nominal, monthStartDay),
        earner: earner.id,
        amount: earner.pay,
      })),
    )
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
}

/** A month's pays, and whose came more often than usual. */
export interface PayMonth {
  readonly month: MonthName
  readonly pays: readonly ExpectedPay[]
  /** Earners with a pay more than their usual: the third of a fortnightly one, the fifth of a weekly one. */
  readonly more: readonly { readonly earner: string; readonly count: number; readonly usual: number }[]
}

/**
 * Months ahead with their pays: "three-pay months" stand out by `more`.
 *
 * @param from the first month
 * @param count how many months
 */
export function payMonths(household: Household, from: MonthName, count: number): PayMonth[] {
  const { monthStartDay, earners = [] } = household
  const last = monthAfter(from, count - 1)
  // A weekend can move a pay out of the month it is for.
  const pays = paysAhead(
    household,
    addDays(monthStart(from, monthStartDay), -14),
    addDays(monthEnd(last, monthStartDay), 14),
  )
  return Array.from({ length: count }, (_, n) => {
    const month = monthAfter(from, n)
    const inMonth = pays.filter((pay) => pay.month === month)
    const more = earners.flatMap((earner) => {
      const mine = inMonth.filter((pay) => pay.earner === earner.id).length
      const usual = usualPays(earner, monthEnd(month, monthStartDay))
      return usual !== null && mine > usual ? [{ earner: earner.id, count: mine, usual }] : []
    })
    return { month, pays: inMonth, more }
  })
}

const USUAL: Readonly<Record<PaySchedule['rhythm'], number>> = {
  weekly: 4,
  'every-two-weeks': 2,
  'twice-a-month': 2,
  monthly: 1,
  'last-working-day': 1,
}

/** How many pays a month of this earner usually has; null where none is running. */
function usualPays(earner: Earner, on: CalendarDate): number | null {
  const running = earner.schedules.filter((s) => s.first <= on && (s.until === undefined || s.until >= on))
  const [one] = running
  return one ? USUAL[one.rhythm] : null
}
