import type { CalendarDate } from '../book/calendar-date.ts'
import { type Money, ofMinor } from '../money/money.ts'
import type { Placed } from './place-pay.ts'
import { evenShare, ratePerPay } from './sinking.ts'
import { periodsToReach } from './sinking-payment.ts'
import type { PayMoment } from './want.ts'

/** What it does to a goal or a month that a pay brought less than was wanted. */
export type FillEffect =
  /** The goal is still met if each later pay brings `laterEach`; with the former amount it is reached on `reachedOn`. */
  | {
      readonly code: 'goal-later'
      readonly due: CalendarDate
      readonly paysLeft: number
      readonly laterEach: Money
      /** Null when it lies further ahead than pay dates are known. */
      readonly reachedOn: CalendarDate | null
    }
  /** No pay comes before the due date: so much will be missing then. */
  | { readonly code: 'goal-missed'; readonly due: CalendarDate; readonly missing: Money }
  /** The month's budget is still met if each of its later pays brings so much. */
  | { readonly code: 'month-later'; readonly paysLeft: number; readonly laterEach: Money }
  /** The month ends so much short. */
  | { readonly code: 'month-short'; readonly missing: Money }

/** The effect of a pot going short; null where it is nothing but less money in the pot. */
export function effectOf({ state, want, gets }: Placed, moment: PayMoment): FillEffect | null {
  if (gets >= want.amount) return null
  const of = (minor: number): Money => ofMinor(moment.currency, minor)
  const { reason } = want
  if (reason.code === 'month') {
    const open = reason.budget.minor - reason.filled.minor - gets
    const paysLeft = reason.paysLeft - 1
    return paysLeft === 0
      ? { code: 'month-short', missing: of(open) }
      : { code: 'month-later', paysLeft, laterEach: of(Math.ceil(open / paysLeft)) }
  }
  const { goal } = state
  if (!goal || (reason.code !== 'goal' && reason.code !== 'goal-overdue')) return null
  const inNow = state.left + gets
  const laterToDue = moment.later.filter((date) => date <= goal.due)
  if (laterToDue.length === 0) return { code: 'goal-missed', due: goal.due, missing: of(goal.target - inNow) }
  const rate = ratePerPay(moment.later, moment.date, goal.yearlyRate)
  const { exact } = evenShare(goal.target, inNow, laterToDue.length, rate, 1)
  const pays = periodsToReach(goal.target, inNow, want.amount, rate, moment.later.length)
  return {
    code: 'goal-later',
    due: goal.due,
    paysLeft: laterToDue.length,
    laterEach: of(exact),
    reachedOn: pays === null ? null : (moment.later[pays - 1] ?? null),
  }
}
