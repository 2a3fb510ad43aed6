import type { CalendarDate } from '../../book/calendar-date.ts'
import { MonthendError } from '../monthend-error.ts'
import type { StatementLine } from '../statement-line.ts'
import { csvBalances } from './csv-balances.ts'
import { dayReader, looksLikeDate } from './csv-dates.ts'
import { csvLine } from './csv-lines.ts'
import type { CsvMapping } from './csv-mapping.ts'
import type { CsvRow } from './csv-rows.ts'
import { foldWords, roleScore } from './csv-words.ts'
import { namer } from './draft.ts'
import type { AccountStatement } from './opened.ts'
import type { Progress } from './utf.ts'

const STEP = 2000
// ISO 13616: country, two check digits, up to thirty letters and digits, in groups of four.
const IBAN = /\b[A-Z]{2}\d{2}(?: ?[A-Z0-9]{4}){2,7}(?: ?[A-Z0-9]{1,4})?\b/

/** The lines of a table by account, in the order of the file, and what could not be one. */
export interface RowsRead {
  readonly lines: Map<string, StatementLine[]>
  readonly problems: MonthendError[]
  readonly passedOver: CsvRow[]
}

/** Reads the rows below the header by a mapping. `fallback` is the account of rows that name none. */
export function* readRows(
  rows: readonly CsvRow[],
  mapping: CsvMapping,
  fallback: string,
): Generator<Progress, RowsRead> {
  const read: RowsRead = { lines: new Map(), problems: [], passedOver: [] }
  const undated: { at: number; row: CsvRow; error: MonthendError }[] = []
  const dayOf = dayReader(mapping.dateOrder)
  const name = namer()
  let lastLine = -1
  for (const [i, row] of rows.entries()) {
    if (i % STEP === 0) yield { stage: 'reading', done: i, of: rows.length }
    try {
      const found = csvLine(row, mapping, i + 1, dayOf)
      if (found) {
        const account = found.account === '' ? fallback : found.account
        const line = name.one(found.line, account)
        const lines = read.lines.get(account)
        if (lines) lines.push(line)
        else read.lines.set(account, [line])
        lastLine = i
      } else read.passedOver.push(row)
    } catch (error) {
      if (!(error instanceof MonthendError)) throw error
      if (!looksLikeDate(row.cells[mapping.columns.date] ?? '')) undated.push({ at: i, row, error })
      else read.problems.push(error)
    }
  }
  // A sum without a date behind the last line is a total; among the lines it is a line whose date cannot be read.
  for (const { at, row, error } of undated) {
    if (at > lastLine) read.passedOver.push(row)
    else read.problems.push(error)
  }
  return read
}

/** The statement of one account from its lines. */
export function statementOf(account: string, lines: readonly StatementLine[], mapping: CsvMapping): AccountStatement {
  let [from, to]: [CalendarDate | null, CalendarDate | null] = [null, null]
  for (const { date } of lines) {
    if (from === null || date < from) from = date
    if (to === null || date > to) to = date
  }
  const { currency } = mapping
  const plain = { account, number: account, kind: null, currency, from, to, available: null, withdrawn: [] } as const
  return { ...plain, ...csvBalances(lines), lines }
}

/** The account the rows above the table name: an IBAN, or a number behind a word for account. */
export function accountAbove(preamble: readonly CsvRow[]): string {
  const iban = IBAN.exec(preamble.flatMap((row) => row.cells).join(' '))?.[0]
  if (iban) return iban.replaceAll(' ', '')
  const titled = preamble.find(({ cells }) => roleScore(foldWords(cells[0] ?? ''), 'account') >= 3)
  return (titled?.cells.find((cell, i) => i > 0 && /\d/.test(cell)) ?? '').replaceAll(' ', '')
}
