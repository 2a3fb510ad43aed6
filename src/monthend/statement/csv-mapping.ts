import type { CurrencyCode } from '../../money/currency.ts'
import { MonthendError } from '../monthend-error.ts'
import type { DecimalMark } from './csv-amounts.ts'
import type { DateOrder } from './csv-dates.ts'
import type { CsvRow } from './csv-rows.ts'
import { foldWords } from './csv-words.ts'

/** Where a CSV file keeps a line's amount. Columns count from 0. */
export type CsvAmount =
  /** One column with signs. `turned`: the file writes purchases as positive. */
  | { readonly kind: 'signed'; readonly column: number; readonly turned: boolean }
  /** Money out in one column, money in in the other. `outNegative`: money out carries a minus in its own column too. */
  | { readonly kind: 'two-columns'; readonly out: number; readonly in: number; readonly outNegative: boolean }
  /** An amount without sign, and a column that says which way it went. */
  | {
      readonly kind: 'direction'
      readonly column: number
      readonly direction: number
      /** What the column writes for money out, folded (small letters, no accents). */
      readonly out: readonly string[]
      readonly in: readonly string[]
    }

/**
 * How a bank's CSV is read. Plain data: it can be shown, changed by the person, kept, and passed in again for the bank's
 * next file, which is known by its header. Columns count from 0.
 */
export interface CsvMapping {
  readonly delimiter: ',' | ';' | '\t' | '|'
  /** False when a quote is a character like any other. */
  readonly quoted: boolean
  /** The header's cells as the file writes them; null when it has no header. */
  readonly header: readonly string[] | null
  /** How many columns a line has. */
  readonly width: number
  readonly dateOrder: DateOrder
  readonly decimalMark: DecimalMark
  readonly amount: CsvAmount
  readonly columns: {
    readonly date: number
    readonly valueDate: number | null
    readonly paidOn: number | null
    /** Joined with a space, in this order. */
    readonly name: readonly number[]
    readonly text: readonly number[]
    readonly references: readonly number[]
    readonly balance: number | null
    readonly currency: number | null
    readonly fee: number | null
    readonly originalAmount: number | null
    readonly originalCurrency: number | null
    readonly rate: number | null
    readonly status: number | null
    readonly account: number | null
    /** The bank's word for what a line is. */
    readonly kind: number | null
  }
  /** The currency of lines whose row does not name one. */
  readonly currency: CurrencyCode
}

/** What the caller knows of a CSV file. */
export interface CsvHints {
  readonly currency: CurrencyCode | null
  readonly account: string | null
  readonly mapping: CsvMapping | null
  readonly remembered: readonly CsvMapping[]
  readonly dateOrder: DateOrder | null
}

/** Rows above the table (an address, a period) are looked through this far for its header. */
const PREAMBLE = 60

/** Whether a row is the header a mapping was made for: same cells, whatever their case, accents and spaces. */
export function isHeaderOf(mapping: CsvMapping, cells: readonly string[]): boolean {
  const { header } = mapping
  return (
    header !== null &&
    header.length === cells.length &&
    header.every((cell, i) => foldWords(cell) === foldWords(cells[i] ?? ''))
  )
}

/** Where the lines of a mapping's file start: behind its header; 0 for a file without one; null when it is not there. */
export function dataStart(mapping: CsvMapping, rows: readonly CsvRow[]): number | null {
  if (mapping.header === null) return 0
  const at = rows.slice(0, PREAMBLE).findIndex((row) => isHeaderOf(mapping, row.cells))
  return at < 0 ? null : at + 1
}

/**
 * Refuses a mapping that names columns the file cannot have.
 *
 * @throws MonthendError `bad-mapping`
 */
export function checkMapping(mapping: CsvMapping): void {
  const { columns, amount, width } = mapping
  const used = [
    ...Object.values(columns).flat(),
    ...(amount.kind === 'two-columns' ? [amount.out, amount.in] : [amount.column]),
    ...(amount.kind === 'direction' ? [amount.direction] : []),
  ]
  const wrong = used.find((column) => column !== null && !(Number.isInteger(column) && column >= 0 && column < width))
  if (wrong !== undefined) {
    const message = `The mapping names column ${wrong}, but its file has columns 0 to ${width - 1}. Choose another column.`
    throw new MonthendError('bad-mapping', message)
  }
}
