import { MonthendError } from '../monthend-error.ts'
import { looksLikeAmount } from './csv-amounts.ts'
import { looksLikeDate } from './csv-dates.ts'
import type { CsvMapping } from './csv-mapping.ts'
import { type CsvRow, csvRows } from './csv-rows.ts'

const DELIMITERS = [';', ',', '\t', '|'] as const
const SAMPLE = 1 << 16
/** The first line and the header stand within these rows, and a bank's table is not wider: other files are not searched. */
const [NEAR, WIDEST] = [1000, 200]

/** A CSV file's rows, and which of them are what. */
export interface CsvTable {
  readonly header: readonly string[] | null
  /** Rows above the header: the account, the period. */
  readonly preamble: readonly CsvRow[]
  /** Rows behind the header: lines, and perhaps totals at the end. */
  readonly rows: readonly CsvRow[]
  readonly width: number
}

/**
 * Finds the delimiter: a first line `sep=;` says it; else the one by which most rows hold a date and an amount, each in a
 * cell of its own; then the one by which most rows are equally wide.
 *
 * @returns the delimiter, why, and the text without the `sep=` line
 */
export function findDelimiter(text: string): { delimiter: CsvMapping['delimiter']; evidence: string; skipped: number } {
  const said = /^sep=([;,\t|])(?:\r\n?|\n)/i.exec(text)
  const named = DELIMITERS.find((delimiter) => delimiter === said?.[1])
  if (said && named)
    return { delimiter: named, evidence: 'The first line of the file names it.', skipped: said[0].length }
  const sample =
    text.length > SAMPLE ? text.slice(0, text.lastIndexOf('\n', SAMPLE) + 1) || text.slice(0, SAMPLE) : text
  const scored = DELIMITERS.map((delimiter) => ({ delimiter, ...scoreOf(sample, delimiter) }))
  const best = scored.reduce((a, b) => (b.lines > a.lines || (b.lines === a.lines && b.even > a.even) ? b : a))
  const evidence =
    best.lines > 0
      ? `Split by it, ${best.lines} rows hold a date and an amount in cells of their own.`
      : 'Most rows are equally wide when split by it.'
  return { delimiter: best.delimiter, evidence, skipped: 0 }
}

function scoreOf(sample: string, delimiter: string): { lines: number; even: number } {
  const rows = sampleRows(sample, delimiter)
  const lines = rows.filter(isLine).length
  const width = commonWidth(rows)
  return { lines, even: width < 2 ? 0 : rows.filter((row) => row.cells.length === width).length }
}

/** The first rows, read without quoting if quotes do not match: a sample may be cut within a cell. */
function sampleRows(sample: string, delimiter: string): CsvRow[] {
  for (const quoted of [true, false]) {
    try {
      const steps = csvRows(sample, delimiter, quoted)
      let step = steps.next()
      while (!step.done) step = steps.next()
      return step.value.slice(0, 200)
    } catch (error) {
      if (!(error instanceof MonthendError)) throw error
    }
  }
  return []
}

/** A row that may be a line of a statement: a date in one cell, an amount in another. */
export function isLine(row: CsvRow): boolean {
  const date = row.cells.findIndex((cell) => cell.trim() !== '' && looksLikeDate(cell))
  return date >= 0 && row.cells.some((cell, i) => i !== date && looksLikeAmount(cell) && !looksLikeDate(cell))
}

function commonWidth(rows: readonly CsvRow[]): number {
  const counts = new Map<number, number>()
  for (const { cells } of rows) counts.set(cells.length, (counts.get(cells.length) ?? 0) + 1)
  let [width, most] = [0, 0]
  for (const [w, n] of counts) if (n > most) [width, most] = [w, n]
  return width
}

/**
 * Finds the table in the rows: the first line, and the header right above it, if that row has words and no date.
 *
 * @throws MonthendError `unknown-columns` when no row holds a date and an amount and no header is there either
 */
export function findTable(rows: readonly CsvRow[], isHeader: (cells: readonly string[]) => number): CsvTable {
  const near = rows.slice(0, NEAR)
  if (near.some((row) => row.cells.length > WIDEST)) {
    throw new MonthendError('unknown-columns', `This file has more than ${WIDEST} columns, which no statement has.`)
  }
  const first = near.findIndex(isLine)
  if (first < 0) return emptyTable(rows, isHeader)
  const above = rows[first - 1]
  const width = commonWidth(rows.slice(first, first + 500).filter(isLine))
  const isTitle =
    above !== undefined && above.cells.length > 1 && above.cells.length >= width - 1 && hasWords(above.cells)
  return {
    header: isTitle ? above.cells : null,
    preamble: rows.slice(0, Math.max(0, isTitle ? first - 1 : first)),
    rows: rows.slice(first),
    width: Math.max(width, isTitle ? above.cells.length : 0),
  }
}

/** A statement with a header and nothing below it is empty, and sound. */
function emptyTable(rows: readonly CsvRow[], isHeader: (cells: readonly string[]) => number): CsvTable {
  const at = rows.slice(0, 60).findIndex((row) => isHeader(row.cells) >= 2)
  const header = rows[at]
  // Below a header without lines there may be a remark; dates or amounts would be lines that are not understood.
  const isEmpty = rows.slice(at + 1).every(({ cells }) => !cells.some((c) => looksLikeDate(c) || looksLikeAmount(c)))
  if (!header || !isEmpty) {
    throw new MonthendError(
      'unknown-columns',
      'No row of this file holds a date and an amount. If it is a statement, ask the bank for OFX, camt.053 or another CSV.',
    )
  }
  return { header: header.cells, preamble: rows.slice(0, at), rows: rows.slice(at + 1), width: header.cells.length }
}

function hasWords(cells: readonly string[]): boolean {
  const worded = cells.filter((cell) => /\p{L}{2}/u.test(cell) || cell.trim() === '' || /^\W{1,3}$/u.test(cell.trim()))
  return (
    cells.some((cell) => /\p{L}{2}/u.test(cell)) &&
    !cells.some((cell) => looksLikeDate(cell)) &&
    worded.length >= cells.length / 2
  )
}
