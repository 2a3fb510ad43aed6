import { type Money, ofMinor } from '../money/money.ts'
import type { CalendarDate } from './calendar-date.ts'
import type { Household, Pot } from './household.ts'

/** When a pot is filled next, and with how much over both sides. */
export interface NextFill {
  readonly date: CalendarDate
  readonly amount: Money
}

/**
 * A pot's next fill: on the first pay date after `today` (a pay of today is being placed now). Null when no pay date is
 * known or the pot is not filled by pay.
 */
export function nextFill(household: Household, pot: Pot, today: CalendarDate): NextFill | null {
  const date = household.payDates.find((d) => d > today)
  const amount = pot.fill.cash + pot.fill.card
  return date === undefined || amount === 0 ? null : { date, amount: ofMinor(household.currency, amount) }
}
