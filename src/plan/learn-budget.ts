import { type Book, entriesOf } from '../book/book.ts'
import type { CalendarDate } from '../book/calendar-date.ts'
import type { PotId } from '../book/ids.ts'
import { type MonthName, monthAfter, monthOf, monthStart } from '../book/month.ts'
import { type Money, ofMinor } from '../money/money.ts'
import { type PotChange, potHistory } from './history.ts'
import { quantile } from './quantile.ts'
import { roundUp } from './round-up.ts'

/** What was spent from a pot in one whole month; less than nothing where more came back than went out. */
export interface MonthSpend {
  readonly month: MonthName
  readonly spent: Money
}

/** What past months say of a pot. The spread is from `lower` to `upper`, the middle half of the months. */
export interface LearntBudget {
  /** Whole months known, oldest first. */
  readonly months: readonly MonthSpend[]
  /** Whether they are enough to suggest from; `suggested` is null when they are not. */
  readonly isEnough: boolean
  readonly median: Money | null
  readonly lower: Money | null
  readonly upper: Money | null
  /** Months outside Tukey's fences; they are shown and not counted in the suggestion. */
  readonly outliers: readonly MonthSpend[]
  /** What would have been enough in three months of four, outliers aside. */
  readonly suggested: Money | null
}

/** Fewer months say nothing of the next one. */
export const LEAST_MONTHS = 3
/** How far back it looks. */
const MOST_MONTHS = 12

/**
 * How much a month of a pot takes, from what was really spent in whole months before today's, twelve at most.
 *
 * Quantiles are type 7 (see `quantile`). An outlier lies beyond Tukey's fences (Exploratory Data Analysis, 1977): more
 * than one and a half times the distance between the quartiles above the upper or below the lower one. The suggestion is
 * the upper quartile of the other months, rounded up to `roundTo`.
 *
 * @param roundTo minor units; 1 suggests to the cent
 */
export function learnBudget(book: Book, pot: PotId, today: CalendarDate, roundTo = 1): LearntBudget {
  return learnFrom(book, potHistory(book).get(pot) ?? [], today, roundTo)
}

/** The same, from a pot's changes that were gathered already. */
export function learnFrom(
  book: Book,
  changes: readonly PotChange[],
  today: CalendarDate,
  roundTo: number,
): LearntBudget {
  const { currency } = book.household
  const months = wholeMonths(book, today).map((month) => ({
    month,
    spent: ofMinor(currency, spentIn(book, changes, month)),
  }))
  const amounts = months.map((m) => m.spent.minor)
  const of = (p: number, values: readonly number[]): Money => ofMinor(currency, Math.round(quantile(values, p)))
  if (months.length === 0) {
    return { months, isEnough: false, median: null, lower: null, upper: null, outliers: [], suggested: null }
  }
  const [q1, q3] = [quantile(amounts, 0.25), quantile(amounts, 0.75)]
  const reach = 1.5 * (q3 - q1)
  const isOutlier = (amount: number): boolean => amount > q3 + reach || amount < q1 - reach
  const isEnough = months.length >= LEAST_MONTHS
  const usual = amounts.filter((amount) => !isOutlier(amount))
  return {
    months,
    isEnough,
    median: of(0.5, amounts),
    lower: of(0.25, amounts),
    upper: of(0.75, amounts),
    outliers: isEnough ? months.filter((m) => isOutlier(m.spent.minor)) : [],
    suggested: isEnough ? ofMinor(currency, Math.max(0, roundUp(Math.ceil(quantile(usual, 0.75)), roundTo))) : null,
  }
}

function spentIn(book: Book, changes: readonly PotChange[], month: MonthName): number {
  const { monthStartDay } = book.household
  return changes
    .filter((c) => c.what === 'spent' && monthOf(c.date, monthStartDay) === month)
    .reduce((sum, c) => sum - c.cash - c.card, 0)
}

/** Months that lie wholly between the book's first day and today, the latest twelve. */
export function wholeMonths(book: Book, today: CalendarDate): MonthName[] {
  const { monthStartDay } = book.household
  let first: CalendarDate | null = null
  for (const entry of entriesOf(book)) if (first === null || entry.date < first) first = entry.date
  if (first === null) return []
  const now = monthOf(today, monthStartDay)
  let month = monthOf(first, monthStartDay)
  if (monthStart(month, monthStartDay) < first) month = monthAfter(month)
  const found: MonthName[] = []
  for (; month < now; month = monthAfter(month)) found.push(month)
  return found.slice(-MOST_MONTHS)
}
