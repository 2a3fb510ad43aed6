import type { CalendarDate } from '../book/calendar-date.ts'
import type { CurrencyCode } from '../money/currency.ts'
import { type Money, ofMinor } from '../money/money.ts'
import type { PotState } from './pot-state.ts'
import type { MonthlyNeed } from './reserve.ts'
import { roundUp } from './round-up.ts'
import { evenShare, ratePerPay } from './sinking.ts'

/** Why a pay is to bring a pot what it does, with the figures behind it. `sayFillReason` says it in a sentence. */
export type FillReason =
  /** The pot's own fill, each pay. */
  | { readonly code: 'each-pay'; readonly amount: Money }
  /** A month's budget over the pays that are left of it, this one counted. */
  | { readonly code: 'month'; readonly budget: Money; readonly filled: Money; readonly paysLeft: number }
  /** A goal over the pays that are left, this one counted. */
  | {
      readonly code: 'goal'
      readonly target: Money
      readonly due: CalendarDate
      readonly in: Money
      readonly paysLeft: number
      readonly each: Money
    }
  | {
      readonly code: 'goal-reached' | 'goal-overdue'
      readonly target: Money
      readonly due: CalendarDate
      readonly in: Money
    }
  /** A cost that does not come again was paid. */
  | { readonly code: 'goal-spent'; readonly target: Money; readonly due: CalendarDate }
  | {
      readonly code: 'reserve' | 'reserve-reached'
      readonly amount: Money
      readonly target: Money
      readonly in: Money
      readonly months: number
      readonly need: MonthlyNeed
    }
  /** Neither a budget nor a goal: nothing is asked for. */
  | { readonly code: 'no-budget' }

/** When a pay is placed, and how. */
export interface PayMoment {
  readonly currency: CurrencyCode
  readonly date: CalendarDate
  /** Pay dates after this one, ascending, each once, as far ahead as any goal. */
  readonly later: readonly CalendarDate[]
  /** Pays of this month after this one. */
  readonly laterThisMonth: number
  readonly roundTo: number
}

/** What a pot wants from one pay, in minor units, and why. */
export interface Want {
  readonly amount: number
  readonly reason: FillReason
}

/** What a pot wants from the pay of this moment: by its goal, its month's budget or its fill, within its reserve's target. */
export function wantOf(state: PotState, moment: PayMoment): Want {
  if (state.goal) return goalWant(state, state.goal, moment)
  const want = budgetWant(state, moment)
  const { reserve } = state
  if (!reserve) return want
  const of = (minor: number): Money => ofMinor(moment.currency, minor)
  const room = Math.max(0, reserve.target - state.left)
  const figures = { ...reserve, target: of(reserve.target), in: of(state.left), amount: of(want.amount) }
  return {
    amount: Math.min(want.amount, room),
    reason: { code: room === 0 ? 'reserve-reached' : 'reserve', ...figures },
  }
}

function budgetWant({ pot, filled }: PotState, moment: PayMoment): Want {
  const of = (minor: number): Money => ofMinor(moment.currency, minor)
  const fill = pot.fill.cash + pot.fill.card
  const monthly = pot.plan?.monthly
  if (monthly !== undefined && monthly > 0) {
    const open = Math.max(0, monthly - filled)
    const paysLeft = moment.laterThisMonth + 1
    const amount = Math.min(open, roundUp(Math.ceil(open / paysLeft), moment.roundTo))
    return { amount, reason: { code: 'month', budget: of(monthly), filled: of(filled), paysLeft } }
  }
  if (fill === 0) return { amount: 0, reason: { code: 'no-budget' } }
  return { amount: fill, reason: { code: 'each-pay', amount: of(fill) } }
}

function goalWant(state: PotState, goal: NonNullable<PotState['goal']>, moment: PayMoment): Want {
  const of = (minor: number): Money => ofMinor(moment.currency, minor)
  const figures = { target: of(goal.target), due: goal.due, in: of(state.left) }
  if (goal.isSpent) return { amount: 0, reason: { code: 'goal-spent', target: figures.target, due: goal.due } }
  if (state.left >= goal.target) return { amount: 0, reason: { code: 'goal-reached', ...figures } }
  if (goal.due < moment.date) return { amount: goal.target - state.left, reason: { code: 'goal-overdue', ...figures } }
  const paysLeft = 1 + moment.later.filter((date) => date <= goal.due).length
  const rate = ratePerPay(moment.later, moment.date, goal.yearlyRate)
  const { each } = evenShare(goal.target, state.left, paysLeft, rate, moment.roundTo)
  return { amount: each, reason: { code: 'goal', ...figures, paysLeft, each: of(each) } }
}
