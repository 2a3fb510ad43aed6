import { type Book, entriesOf, isReversed } from '../book/book.ts'
import { addDays, type CalendarDate } from '../book/calendar-date.ts'
import type { PotId } from '../book/ids.ts'
import { type MonthName, monthAfter, monthEnd, monthOf } from '../book/month.ts'
import { type Money, ofMinor } from '../money/money.ts'
import { type CurrentGoal, yearsAfter } from './goal.ts'
import { paysAhead } from './pays-ahead.ts'
import { type FillPlan, planFrom } from './plan-fill.ts'
import { type PotState, potStates } from './pot-state.ts'
import { quantile } from './quantile.ts'

/** A pay to come, planned as if every pay before it was placed as planned. */
export interface PlannedPay {
  readonly date: CalendarDate
  readonly month: MonthName
  readonly plan: FillPlan
  /** Whether the amount is what the earner usually brings; else it is the median of past pays. */
  readonly isUsual: boolean
}

/** A cost that falls due in the time planned, and what will be in for it then. */
export interface DueCost {
  readonly pot: PotId
  readonly due: CalendarDate
  readonly target: Money
  readonly in: Money
  readonly missing: Money
}

/** The pays planned ahead, and the costs that fall due meanwhile. */
export interface YearPlan {
  readonly months: readonly MonthName[]
  readonly pays: readonly PlannedPay[]
  readonly costs: readonly DueCost[]
}

/**
 * Plans every pay to come over so many months, the present one counted, each from where the one before left the pots. What
 * is due is taken out of its pot on its day, and saved for again if it comes again. Everyday pots are taken to be spent as
 * they are filled.
 *
 * @param months 12 for a year
 * @example planYear(book, calendarDate('2026-11-25')).pays.length // 27 in a year with 27 fortnightly pays
 */
export function planYear(book: Book, today: CalendarDate, months = 12): YearPlan {
  const { household } = book
  const { monthStartDay } = household
  const names = Array.from({ length: months }, (_, n) => monthAfter(monthOf(today, monthStartDay), n))
  const end = monthEnd(names.at(-1) ?? monthOf(today, monthStartDay), monthStartDay)
  const longest = household.pots.reduce((most, { plan }) => Math.max(most, plan?.goal?.everyYears ?? 0), 1)
  const pays = paysAhead(household, today, addDays(end, longest * 366))
  const usual = pays.some((pay) => pay.amount === 0) ? medianPay(book) : 0
  let states = potStates(book, today, pays)
  const planned: PlannedPay[] = []
  const costs: DueCost[] = []
  // A pay of today is being placed now: it belongs to the plan of the day.
  const dates = [...new Set(pays.map((pay) => pay.date))].filter((date) => date > today && date <= end)
  let month = monthOf(today, monthStartDay)
  let at = 0
  for (const date of dates) {
    const spent = spendDue(states, date, household.currency)
    costs.push(...spent.costs)
    states = spent.states
    // Pays come by date, so those from this day on are the rest of the list.
    while ((pays[at]?.date ?? date) < date) at++
    const ahead = pays.slice(at)
    const ofDay = ahead.filter((pay) => pay.date === date)
    const payMonth = ofDay[0]?.month ?? month
    if (payMonth !== month) states = states.map((state) => ({ ...state, filled: 0 }))
    month = payMonth
    const amount = ofDay.reduce((sum, pay) => sum + (pay.amount || usual), 0)
    const plan = planFrom(states, ofMinor(household.currency, amount), date, ahead, household)
    planned.push({ date, month: payMonth, plan, isUsual: ofDay.every((pay) => pay.amount > 0) })
    const gets = new Map(plan.lines.map((line) => [line.pot, line.gets.minor]))
    states = states.map((state) => {
      const got = gets.get(state.pot.id) ?? 0
      return { ...state, left: state.left + got, filled: state.filled + got }
    })
  }
  costs.push(...spendDue(states, addDays(end, 1), household.currency).costs)
  return { months: names, pays: planned, costs: costs.sort((a, b) => (a.due < b.due ? -1 : 1)) }
}

/** Takes what was due before a day out of its pot. A pay on the due date still counted for it. */
function spendDue(
  states: readonly PotState[],
  before: CalendarDate,
  currency: Book['household']['currency'],
): { states: PotState[]; costs: DueCost[] } {
  const costs: DueCost[] = []
  const next = states.map((state) => {
    let { goal, left } = state
    while (goal && !goal.isSpent && goal.due < before) {
      const paid = Math.min(Math.max(0, left), goal.target)
      costs.push({
        pot: state.pot.id,
        due: goal.due,
        target: ofMinor(currency, goal.target),
        in: ofMinor(currency, Math.max(0, left)),
        missing: ofMinor(currency, goal.target - paid),
      })
      left -= paid
      goal = nextGoal(goal, state, left)
    }
    return { ...state, goal, left }
  })
  return { states: next, costs }
}

function nextGoal(goal: CurrentGoal, { pot }: PotState, left: number): CurrentGoal {
  const years = pot.plan?.goal?.everyYears
  if (years === undefined) return { ...goal, isSpent: true }
  return { ...goal, due: yearsAfter(goal.due, years), since: { date: goal.due, in: left } }
}

/** What a pay usually is where no earner says: the median of the pays in the book, 0 without any. */
function medianPay(book: Book): number {
  const amounts: number[] = []
  for (const entry of entriesOf(book)) {
    if (entry.kind !== 'pay' || isReversed(book, entry.id)) continue
    amounts.push(entry.postings.reduce((sum, p) => (p.account === 'unplaced' ? sum + p.amount : sum), 0))
  }
  return amounts.length === 0 ? 0 : Math.round(quantile(amounts, 0.5))
}
