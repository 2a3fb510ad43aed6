import { type Book, balanceOf } from '../book/book.ts'
import { addDays, type CalendarDate } from '../book/calendar-date.ts'
import type { Pot } from '../book/household.ts'
import { monthOf } from '../book/month.ts'
import { type CurrentGoal, currentGoal } from './goal.ts'
import { potHistory } from './history.ts'
import { type ExpectedPay, paysAhead } from './pays-ahead.ts'
import { type MonthlyNeed, monthlyNeed } from './reserve.ts'
import { type SideShare, sideShare } from './side.ts'

/** All the plan needs to know of a pot on a day, in minor units. A plan of months ahead carries it from pay to pay. */
export interface PotState {
  readonly pot: Pot
  /** Cash side + card side - held. */
  readonly left: number
  /** What this month's pays put in already. */
  readonly filled: number
  readonly goal: CurrentGoal | null
  readonly reserve: { readonly target: number; readonly months: number; readonly need: MonthlyNeed } | null
  readonly share: SideShare
}

/** The pots that take fills, as they stand in the book. */
export function potStates(book: Book, today: CalendarDate, pays: readonly ExpectedPay[]): PotState[] {
  const { household } = book
  const histories = potHistory(book)
  // A pay that a weekend moved over the month's end is for the month after: so is what it put in.
  const past = new Map(paysAhead(household, addDays(today, -40), today).map((pay) => [pay.date, pay.month]))
  const monthFor = (date: CalendarDate) => past.get(date) ?? monthOf(date, household.monthStartDay)
  const month = monthFor(today)
  const pots = household.pots.filter((pot) => !pot.archived)
  const perMonth =
    new Set(pays.filter((pay) => pay.date > today && pay.date <= addDays(today, 365)).map((p) => p.date)).size / 12
  const budgets = pots
    .filter((pot) => pot.kind !== 'reserve')
    .reduce((sum, pot) => sum + (pot.plan?.monthly ?? Math.round((pot.fill.cash + pot.fill.card) * perMonth)), 0)
  const need = pots.some((pot) => pot.plan?.reserveMonths !== undefined)
    ? monthlyNeed(book, histories, today, budgets)
    : null
  return pots.map((pot) => {
    const changes = histories.get(pot.id) ?? []
    const of = (side: 'cash' | 'card' | 'held') => balanceOf(book, `${side}:${pot.id}`)
    const goal = pot.plan?.goal
    const months = pot.plan?.reserveMonths
    return {
      pot,
      left: of('cash') + of('card') - of('held'),
      filled: changes
        .filter((c) => c.what === 'filled' && monthFor(c.date) === month)
        .reduce((sum, c) => sum + c.cash + c.card, 0),
      goal: goal ? currentGoal(goal, changes, today) : null,
      reserve: need && months !== undefined ? { target: need.amount * months, months, need } : null,
      share: sideShare(pot, changes, today),
    }
  })
}
