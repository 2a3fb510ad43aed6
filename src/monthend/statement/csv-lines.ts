import { isCurrencyCode } from '../../money/currency.ts'
import { type Money, negate } from '../../money/money.ts'
import { MonthendError } from '../monthend-error.ts'
import { amountOf } from './amount.ts'
import { looksLikeAmount, plainAmount } from './csv-amounts.ts'
import { foldCell } from './csv-columns.ts'
import { type dayReader, looksLikeDate } from './csv-dates.ts'
import type { CsvMapping } from './csv-mapping.ts'
import type { CsvRow } from './csv-rows.ts'
import { rowAmount } from './csv-scheme.ts'
import { kindWords, pendingWords } from './csv-words.ts'
import type { DraftLine } from './draft.ts'

/** A row as a line of the account it names ('' when it names none). */
export interface CsvLine {
  readonly account: string
  readonly line: DraftLine
}

/**
 * Reads one row by a mapping. Null for a row that is no line: it has no date, as totals and closing remarks have none.
 *
 * @throws MonthendError `bad-date` for a day that does not exist (31/02), `bad-amount`, `bad-line`, with the line
 */
export function csvLine(
  row: CsvRow,
  mapping: CsvMapping,
  entry: number,
  dayOf: ReturnType<typeof dayReader>,
): CsvLine | null {
  const { columns } = mapping
  const at = (column: number | null): string => (column === null ? '' : (row.cells[column] ?? '').trim())
  const joined = (list: readonly number[]): string =>
    list
      .map(at)
      .filter((text) => text !== '')
      .join(' ')
      .replace(/\s+/g, ' ')
  const written = at(columns.date)
  const date = dayOf(written)
  if (date === null) return notALine(row, mapping, written)
  if (row.cells.length > mapping.width && row.cells.slice(mapping.width).some((cell) => cell.trim() !== '')) {
    const message = `Line ${row.row} has ${row.cells.length} cells where ${mapping.width} are expected. A cell may hold the delimiter without quotes.`
    throw new MonthendError('bad-line', message, row.row)
  }
  const currency = currencyAt(at(columns.currency), mapping, row)
  const plain = rowAmount(mapping.amount, row, mapping.decimalMark)
  if (plain === null) throw new MonthendError('bad-amount', `Line ${row.row}: ${sayAmountCells(row, mapping)}`, row.row)
  const amount = amountOf(currency, plain, row.row)
  const balance = plainAmount(at(columns.balance), mapping.decimalMark)
  const line: DraftLine = {
    reference: null,
    corrects: null,
    date,
    valueDate: dayOf(at(columns.valueDate)),
    paidOn: dayOf(at(columns.paidOn)),
    amount,
    status: isPending(at(columns.status)) ? 'pending' : 'booked',
    name: joined(columns.name),
    text: joined(columns.text),
    references: columns.references.map(at).filter((text) => text !== ''),
    original: originalAt(at, mapping, amount, row),
    fee: feeAt(at(columns.fee), mapping, amount, row),
    reversal: false,
    kind: columns.kind === null ? null : kindAt(at(columns.kind)),
    balance: balance === null ? null : amountOf(currency, balance, row.row),
    batch: null,
    place: { row: row.row, entry },
  }
  return { account: at(columns.account).replaceAll(' ', ''), line }
}

/** A row of words is passed over; one with an amount, or with a date that is no day, is refused: no line goes unseen. */
function notALine(row: CsvRow, mapping: CsvMapping, written: string): null {
  const isMeant = written === '' ? row.cells.length >= mapping.width : /\d/.test(written)
  if (!looksLikeDate(written) && !(isMeant && hasAmount(row, mapping))) return null
  const why =
    written === '' ? 'has an amount and no date' : `has "${written.slice(0, 40)}", which is no day on the calendar`
  throw new MonthendError('bad-date', `Line ${row.row} ${why} (dates are read as ${mapping.dateOrder}).`, row.row)
}

function hasAmount(row: CsvRow, mapping: CsvMapping): boolean {
  const plain = rowAmount(mapping.amount, row, mapping.decimalMark)
  return plain !== null && /[1-9]/.test(plain)
}

function currencyAt(text: string, mapping: CsvMapping, row: CsvRow): CsvMapping['currency'] {
  const code = text.toUpperCase()
  if (code === '') return mapping.currency
  if (isCurrencyCode(code)) return code
  throw new MonthendError('bad-line', `Line ${row.row}: "${text.slice(0, 40)}" is not a currency.`, row.row)
}

function sayAmountCells(row: CsvRow, { amount, decimalMark }: CsvMapping): string {
  const cell = (column: number): string => `"${(row.cells[column] ?? '').trim().slice(0, 40)}"`
  if (amount.kind === 'two-columns') {
    return `money out ${cell(amount.out)} and money in ${cell(amount.in)} do not give one amount (decimals behind "${decimalMark}").`
  }
  const plain = plainAmount(row.cells[amount.column] ?? '', decimalMark)
  if (amount.kind === 'direction' && plain !== null)
    return `${cell(amount.direction)} does not say which way the money went.`
  return `${cell(amount.column)} is not an amount with decimals behind "${decimalMark}".`
}

function isPending(status: string): boolean {
  if (status === '') return false
  const folded = foldCell(status)
  return pendingWords.some((word) => folded === word || folded.startsWith(`${word} `))
}

/** The first kind whose words stand in what the bank writes. */
function kindAt(text: string): DraftLine['kind'] {
  const folded = ` ${foldCell(text)} `
  return kindWords.find(({ words }) => words.some((word) => folded.includes(` ${word} `)))?.kind ?? null
}

function originalAt(
  at: (column: number | null) => string,
  mapping: CsvMapping,
  amount: Money,
  row: CsvRow,
): DraftLine['original'] {
  const { columns, decimalMark } = mapping
  const code = at(columns.originalCurrency).toUpperCase()
  const plain = plainAmount(at(columns.originalAmount), decimalMark)
  if (plain === null || !isCurrencyCode(code) || code === amount.currency) return null
  const size = amountOf(code, plain.replace('-', ''), row.row)
  return { amount: amount.minor < 0 ? negate(size) : size, rate: plainAmount(at(columns.rate), decimalMark) }
}

/** A fee is told positive; a bank may write it with the sign of money out. */
function feeAt(text: string, mapping: CsvMapping, amount: Money, row: CsvRow): Money | null {
  const plain = text !== '' && looksLikeAmount(text) ? plainAmount(text, mapping.decimalMark) : null
  if (plain === null || !/[1-9]/.test(plain)) return null
  return amountOf(amount.currency, plain.replace('-', ''), row.row)
}
