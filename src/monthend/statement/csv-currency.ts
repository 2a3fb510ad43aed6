import { type CurrencyCode, isCurrencyCode } from '../../money/currency.ts'
import { MonthendError } from '../monthend-error.ts'
import { moneyNameIn } from './csv-amounts.ts'
import { bestNamed, type Column, cellsOf } from './csv-columns.ts'
import type { CsvHints } from './csv-mapping.ts'
import type { Scheme } from './csv-scheme.ts'
import type { CsvTable } from './csv-table.ts'
import { roleScore } from './csv-words.ts'

/** The currency of a table's lines, and the column of codes, if there is one. */
export interface CurrencyFound {
  readonly code: CurrencyCode
  readonly column: number | null
  readonly evidence: string
}

const SIGNS: Readonly<Record<string, CurrencyCode>> = {
  '€': 'EUR',
  '£': 'GBP',
  zł: 'PLN',
  Kč: 'CZK',
  '₹': 'INR',
  '₪': 'ILS',
}

/** From a column of codes, the amount's header, the amounts' own cells, the rows above the table, or the caller. */
export function currencyFor(
  table: CsvTable,
  columns: readonly Column[],
  scheme: Scheme,
  hints: CsvHints,
): CurrencyFound {
  const codes = columns.filter((c) => c.codes >= 0.95 && c.filled >= 0.9 && roleScore(c.folded, 'originalCurrency') < 1)
  const amountAt = scheme.amount.kind === 'two-columns' ? scheme.amount.out : scheme.amount.column
  const column = bestNamed(codes, 'currency', () => true) ?? codes.find((c) => c.index > amountAt) ?? codes[0] ?? null
  if (column) {
    const counts = countsOf(table, column.index)
    const code = hints.currency !== null && counts.has(hints.currency) ? hints.currency : commonest(counts)
    if (code) return { code, column: column.index, evidence: `A column names the currency (${code}).` }
  }
  const titles = [table.header?.[amountAt] ?? '', ...cellsOf(table, amountAt, 50).map(moneyNameIn)]
  const places = [...titles, ...table.preamble.flatMap((row) => row.cells)]
  const named = places.flatMap((text) => codeIn(text) ?? [])[0]
  if (named)
    return {
      code: named,
      column: null,
      evidence: `The file names its currency (${named}) beside the amounts or above the table.`,
    }
  if (hints.currency)
    return {
      code: hints.currency,
      column: null,
      evidence: `The file names no currency; the household's is taken (${hints.currency}).`,
    }
  throw new MonthendError(
    'no-currency',
    "This CSV file does not name its currency. Say which it is (option 'currency').",
  )
}

function codeIn(text: string): CurrencyCode | null {
  for (const word of text.split(/[\s()[\]:;,/]+/)) {
    const sign = SIGNS[word]
    if (sign) return sign
    if (isCurrencyCode(word)) return word
  }
  return null
}

function countsOf(table: CsvTable, column: number): Map<CurrencyCode, number> {
  const counts = new Map<CurrencyCode, number>()
  for (const row of table.rows) {
    const code = (row.cells[column] ?? '').trim().toUpperCase()
    if (isCurrencyCode(code)) counts.set(code, (counts.get(code) ?? 0) + 1)
  }
  return counts
}

function commonest(counts: ReadonlyMap<CurrencyCode, number>): CurrencyCode | undefined {
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0]
}
