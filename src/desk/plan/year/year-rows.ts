import type { Book } from '../../../book/book.ts'
import type { PotId } from '../../../book/ids.ts'
import type { MonthName } from '../../../book/month.ts'
import { monthGrid } from '../../../plan/month-grid.ts'
import type { YearPlan } from '../../../plan/plan-year.ts'

/** One month of one pot, in minor units: what was filled and spent, and what pays to come are planned to bring. */
export interface YearCell {
  readonly month: MonthName
  readonly filled: number
  readonly spent: number
  readonly planned: number
}

export interface YearRows {
  readonly months: readonly MonthName[]
  readonly rows: readonly {
    readonly pot: PotId
    readonly name: string
    readonly cells: readonly YearCell[]
    readonly sum: YearCell
  }[]
  readonly totals: readonly YearCell[]
  readonly sum: YearCell
  /** Months in which a pay more than usual comes are told by how many pays they have. */
  readonly pays: ReadonlyMap<MonthName, number>
}

/** The book's months and the plan's beside each other: a running month has both. */
export function yearGrid(book: Book, plan: YearPlan, first: MonthName, now: MonthName): YearRows {
  const grid = monthGrid(book, first, 12)
  const planned = new Map<string, number>()
  const pays = new Map<MonthName, number>()
  for (const pay of plan.pays) {
    pays.set(pay.month, (pays.get(pay.month) ?? 0) + 1)
    for (const line of pay.plan.lines) {
      const key = `${line.pot} ${pay.month}`
      planned.set(key, (planned.get(key) ?? 0) + line.gets.minor)
    }
  }
  const rows = grid.rows.map(({ pot, cells }) => {
    const made = cells.map(({ month, filled, spent }) => ({
      month,
      filled: filled.minor,
      spent: spent.minor,
      planned: month >= now ? (planned.get(`${pot} ${month}`) ?? 0) : 0,
    }))
    const name = book.household.pots.find((p) => p.id === pot)?.name ?? pot
    return { pot, name, cells: made, sum: sumOf(first, made) }
  })
  const totals = grid.months.map((month, n) =>
    sumOf(
      month,
      rows.flatMap((row) => row.cells[n] ?? []),
    ),
  )
  return { months: grid.months, rows, totals, sum: sumOf(first, totals), pays }
}

function sumOf(month: MonthName, cells: readonly YearCell[]): YearCell {
  const add = (part: 'filled' | 'spent' | 'planned'): number => cells.reduce((sum, cell) => sum + cell[part], 0)
  return { month, filled: add('filled'), spent: add('spent'), planned: add('planned') }
}
