import type { Book } from '../book/book.ts'
import type { CalendarDate } from '../book/calendar-date.ts'
import type { PotId } from '../book/ids.ts'
import { monthOf } from '../book/month.ts'
import type { PotChange } from './history.ts'
import { LEAST_MONTHS, wholeMonths } from './learn-budget.ts'
import { quantile } from './quantile.ts'

/** What a month of the household takes, in minor units. */
export interface MonthlyNeed {
  readonly amount: number
  /** *spent*: the median of whole months; *budgets*: what the pots are given, while there are not enough months. */
  readonly from: 'spent' | 'budgets'
  readonly months: number
}

/**
 * What a month takes, for a reserve's target in months of spending: the median over the whole months known (twelve at
 * most) of what all pots but reserves spent together.
 *
 * @param budgets what the pots are given in a month, used while fewer than three whole months are known
 */
export function monthlyNeed(
  book: Book,
  histories: ReadonlyMap<PotId, readonly PotChange[]>,
  today: CalendarDate,
  budgets: number,
): MonthlyNeed {
  const { pots, monthStartDay } = book.household
  const months = wholeMonths(book, today)
  if (months.length < LEAST_MONTHS) return { amount: budgets, from: 'budgets', months: months.length }
  const spent = new Map(months.map((month) => [month, 0]))
  for (const pot of pots) {
    if (pot.kind === 'reserve') continue
    for (const change of histories.get(pot.id) ?? []) {
      const month = monthOf(change.date, monthStartDay)
      const sum = spent.get(month)
      if (change.what === 'spent' && sum !== undefined) spent.set(month, sum - change.cash - change.card)
    }
  }
  return { amount: Math.max(0, Math.round(quantile([...spent.values()], 0.5))), from: 'spent', months: months.length }
}
