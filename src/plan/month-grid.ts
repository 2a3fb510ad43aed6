import type { Book } from '../book/book.ts'
import type { PotId } from '../book/ids.ts'
import { type MonthName, monthAfter, monthOf } from '../book/month.ts'
import { type Money, ofMinor } from '../money/money.ts'
import { potHistory } from './history.ts'

/** What went into a pot and out of it in a month. */
export interface MonthCell {
  readonly month: MonthName
  /** Fills, on both sides. */
  readonly filled: Money
  /** Spends and charges less refunds: below zero where more came back. */
  readonly spent: Money
}

/** What went in and out of every pot, month by month, with the sums along both edges. */
export interface MonthGrid {
  readonly months: readonly MonthName[]
  /** One row per pot in the household's order, archived ones where they have anything to show. */
  readonly rows: readonly {
    readonly pot: PotId
    readonly cells: readonly MonthCell[]
    readonly sum: Omit<MonthCell, 'month'>
  }[]
  /** All pots together, month by month. */
  readonly totals: readonly MonthCell[]
  readonly sum: Omit<MonthCell, 'month'>
}

/**
 * Pots by months: what was filled and what was spent, from the book alone.
 *
 * @param first the first month
 * @param count how many, 12 for a year
 */
export function monthGrid(book: Book, first: MonthName, count = 12): MonthGrid {
  const { household } = book
  const months = Array.from({ length: count }, (_, n) => monthAfter(first, n))
  const index = new Map(months.map((month, n) => [month, n]))
  const of = (minor: number): Money => ofMinor(household.currency, minor)
  const total = months.map(() => ({ filled: 0, spent: 0 }))
  const histories = potHistory(book)
  const rows = household.pots.flatMap((pot) => {
    const own = months.map(() => ({ filled: 0, spent: 0 }))
    for (const { date, cash, card, what } of histories.get(pot.id) ?? []) {
      const at = index.get(monthOf(date, household.monthStartDay))
      if (at === undefined || what === 'other') continue
      const amount = what === 'filled' ? cash + card : -cash - card
      for (const cell of [own[at], total[at]]) if (cell) cell[what] += amount
    }
    if (pot.archived && own.every((cell) => cell.filled === 0 && cell.spent === 0)) return []
    return [{ pot: pot.id, cells: cellsOf(own), sum: sumOf(own) }]
  })
  return { months, rows, totals: cellsOf(total), sum: sumOf(total) }

  function cellsOf(cells: readonly { filled: number; spent: number }[]): MonthCell[] {
    return months.map((month, n) => ({ month, filled: of(cells[n]?.filled ?? 0), spent: of(cells[n]?.spent ?? 0) }))
  }
  function sumOf(cells: readonly { filled: number; spent: number }[]): Omit<MonthCell, 'month'> {
    const add = (part: 'filled' | 'spent') => of(cells.reduce((sum, cell) => sum + cell[part], 0))
    return { filled: add('filled'), spent: add('spent') }
  }
}
