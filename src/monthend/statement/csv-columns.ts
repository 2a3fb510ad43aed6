import { isCurrencyCode } from '../../money/currency.ts'
import { looksLikeAmount, type MarkVotes, markVotes } from './csv-amounts.ts'
import { looksLikeDate } from './csv-dates.ts'
import { type CsvTable, isLine } from './csv-table.ts'
import { type CsvRole, foldWords, headerWords, roleScore } from './csv-words.ts'

/** What a column of the table holds, looked at over its rows. Shares are of the cells that hold something. */
export interface Column {
  readonly index: number
  readonly folded: string
  readonly filled: number
  readonly dates: number
  readonly amounts: number
  /** Of the amounts that are not zero. */
  readonly negatives: number
  readonly codes: number
  readonly letters: number
  readonly longest: number
  readonly marks: MarkVotes
  /** Distinct cells, folded, as long as there are few. */
  readonly values: ReadonlySet<string>
}

const FEW = 12
/** Rows looked at for what a column holds; dates and the decimal mark are told from all. */
export const LOOKED_AT = 3000

/** Looks at every column of a table. */
export function columnsOf(table: CsvTable): Column[] {
  const rows = table.rows.slice(0, LOOKED_AT).filter(isLine)
  return Array.from({ length: table.width }, (_, index): Column => {
    const cells = rows.map((row) => (row.cells[index] ?? '').trim()).filter((cell) => cell !== '')
    const share = (test: (cell: string) => boolean): number =>
      cells.length === 0 ? 0 : cells.filter(test).length / cells.length
    const amounts = cells.filter((cell) => looksLikeAmount(cell) && !looksLikeDate(cell))
    const nonZero = amounts.filter((cell) => /[1-9]/.test(cell))
    const values = new Set<string>()
    for (const cell of cells) if (values.size <= FEW) values.add(foldCell(cell))
    return {
      index,
      folded: foldWords(table.header?.[index] ?? ''),
      filled: rows.length === 0 ? 0 : cells.length / rows.length,
      dates: share(looksLikeDate),
      amounts: cells.length === 0 ? 0 : amounts.length / cells.length,
      negatives: nonZero.length === 0 ? 0 : nonZero.filter(isNegative).length / nonZero.length,
      codes: share((cell) => isCurrencyCode(cell.toUpperCase())),
      letters: share((cell) => /\p{L}{2}/u.test(cell)),
      longest: cells.reduce((most, cell) => Math.max(most, cell.length), 0),
      marks: markVotes(amounts),
      values: values.size <= FEW ? values : new Set(),
    }
  })
}

function isNegative(cell: string): boolean {
  return /^\(|^[^\d]*[-−–]|[-−–]$|\bdr$/i.test(cell)
}

/** A cell of a status or direction column, without case and accents; a lone sign stays. */
export function foldCell(cell: string): string {
  const folded = foldWords(cell)
  return folded === '' ? cell.trim() : folded
}

/** How many cells of a row are words a header is made of. */
export function headerCells(cells: readonly string[]): number {
  const roles = Object.keys(headerWords).filter((role): role is CsvRole => Object.hasOwn(headerWords, role))
  return cells.filter((cell) => {
    const folded = foldWords(cell)
    return folded !== '' && roles.some((role) => roleScore(folded, role) >= 3)
  }).length
}

/** The column whose header names a role best, among those that pass a test; null when none is named so. */
export function bestNamed(columns: readonly Column[], role: CsvRole, test: (column: Column) => boolean): Column | null {
  let best: Column | null = null
  let score = 0
  for (const column of columns) {
    const s = roleScore(column.folded, role)
    if (s > score && test(column)) [best, score] = [column, s]
  }
  return score >= 1 ? best : null
}

/** The cells of a column that hold something, each text once. */
export function cellsOf(table: CsvTable, column: number, most = Number.POSITIVE_INFINITY): string[] {
  const found = new Set<string>()
  for (let i = 0; i < table.rows.length && i < most; i++) {
    const cell = (table.rows[i]?.cells[column] ?? '').trim()
    if (cell !== '') found.add(cell)
  }
  return [...found]
}
