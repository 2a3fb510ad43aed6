import type { Book } from '../book/book.ts'
import { addDays, type CalendarDate, dayNumber } from '../book/calendar-date.ts'
import type { PotId } from '../book/ids.ts'
import { monthOf } from '../book/month.ts'
import { cashStep } from '../money/cash-rounding.ts'
import { type Money, ofMinor, sameCurrency, toDecimal } from '../money/money.ts'
import { effectOf, type FillEffect } from './fill-effect.ts'
import { type ExpectedPay, paysAhead } from './pays-ahead.ts'
import { type Placed, placePay } from './place-pay.ts'
import { PlanError } from './plan-error.ts'
import { type PotState, potStates } from './pot-state.ts'
import { type CashSteps, putOnSides, type SideShare } from './side.ts'
import type { FillReason, PayMoment } from './want.ts'

/** One pot's part of a pay. `cash` + `card` = `gets` = `wants` - `short`. */
export interface FillLine {
  readonly pot: PotId
  readonly wants: Money
  readonly gets: Money
  readonly short: Money
  readonly cash: Money
  readonly card: Money
  readonly reason: FillReason
  readonly share: SideShare
  /** What going short does to a due date or a month; null when it gets all, or when nothing follows from it. */
  readonly effect: FillEffect | null
}

/** A pay placed on the pots. Every minor unit of it is in a line or in `unplaced`. */
export interface FillPlan {
  readonly pay: Money
  readonly date: CalendarDate
  /** One line per pot that is not archived, in the household's order of pots. */
  readonly lines: readonly FillLine[]
  /** What all pots want together. */
  readonly wants: Money
  /** What no pot wanted: it stays without a pot. */
  readonly unplaced: Money
  /** By how much the pots go short together. */
  readonly short: Money
}

/** Further ahead than goals are set. */
const AHEAD_DAYS = 4000

/**
 * Plans a pay: how much each pot gets of it, on which side, and why. Nothing is written.
 *
 * A pot wants what its goal needs of this pay (the pays up to its due date share it evenly, this one counted), or its
 * month's budget over the pays left of the month, or its own fill. Who is served first is said in `placePay`; the sides in
 * `SideShare`.
 *
 * @param pay what arrived and is to be placed; of zero, the plan says what goes short
 * @param today the day of the pay
 * @throws PlanError `bad-pay` (less than nothing); MoneyError `currency-mismatch`
 * @example planFill(book, money('CAD', '724.00'), calendarDate('2026-12-04')).lines[0]?.gets
 */
export function planFill(book: Book, pay: Money, today: CalendarDate): FillPlan {
  const { household } = book
  sameCurrency({ currency: household.currency, minor: 0 }, pay)
  if (pay.minor < 0) {
    throw new PlanError('bad-pay', `A pay of ${toDecimal(pay)} is less than nothing. Enter what arrived.`)
  }
  const pays = paysAhead(household, today, addDays(today, farthest(book, today)))
  return planFrom(potStates(book, today, pays), pay, today, pays, household)
}

/** The plan of one pay from how the pots stand. `pays` are those expected from its day on. */
export function planFrom(
  states: readonly PotState[],
  pay: Money,
  date: CalendarDate,
  pays: readonly ExpectedPay[],
  household: Book['household'],
): FillPlan {
  const { currency, planning } = household
  const of = (minor: number): Money => ofMinor(currency, minor)
  const moment = momentOf(date, pays, household)
  const { placed, over } = placePay(states, pay.minor, moment, planning?.sinkingFunds ?? 'after-essentials')
  const coin = cashStep(currency)
  const steps = { note: Math.max(moment.roundTo, coin), coin }
  const lines = placed.map((one) => lineOf(one, moment, steps))
  const sum = (part: 'wants' | 'short'): Money => of(lines.reduce((all, line) => all + line[part].minor, 0))
  return { pay, date, lines, wants: sum('wants'), unplaced: of(over), short: sum('short') }
}

function momentOf(date: CalendarDate, pays: readonly ExpectedPay[], household: Book['household']): PayMoment {
  const month = pays.find((pay) => pay.date === date)?.month ?? monthOf(date, household.monthStartDay)
  const later = pays.filter((pay) => pay.date > date)
  return {
    currency: household.currency,
    date,
    later: [...new Set(later.map((pay) => pay.date))],
    laterThisMonth: new Set(later.filter((pay) => pay.month === month).map((pay) => pay.date)).size,
    roundTo: household.planning?.roundTo ?? 1,
  }
}

function lineOf(placed: Placed, moment: PayMoment, steps: CashSteps): FillLine {
  const of = (minor: number): Money => ofMinor(moment.currency, minor)
  const { state, want, gets } = placed
  const { cash, card } = putOnSides(state.pot, state.share, gets, steps)
  return {
    pot: state.pot.id,
    wants: of(want.amount),
    gets: of(gets),
    short: of(want.amount - gets),
    cash: of(cash),
    card: of(card),
    reason: want.reason,
    share: state.share,
    effect: effectOf(placed, moment),
  }
}

/** How many days of pays the goals need, and a year more, so that a late goal still finds its day. */
function farthest(book: Book, today: CalendarDate): number {
  const { pots } = book.household
  const latest = pots.reduce((late, { plan }) => (plan?.goal && plan.goal.due > late ? plan.goal.due : late), today)
  const years = pots.reduce((most, { plan }) => Math.max(most, plan?.goal?.everyYears ?? 0), 0) + 1
  const days = dayNumber(latest) - dayNumber(today)
  return Math.min(AHEAD_DAYS, days + years * 366)
}
