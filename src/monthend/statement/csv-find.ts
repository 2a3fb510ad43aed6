import { type CurrencyCode, minorDigits } from '../../money/currency.ts'
import { MonthendError } from '../monthend-error.ts'
import { type DecimalMark, markVotes } from './csv-amounts.ts'
import { bestNamed, type Column, cellsOf, columnsOf, LOOKED_AT } from './csv-columns.ts'
import { currencyFor } from './csv-currency.ts'
import { type DateOrder, findOrder, looksLikeDate } from './csv-dates.ts'
import type { CsvHints, CsvMapping } from './csv-mapping.ts'
import { otherColumns } from './csv-roles.ts'
import { findSchemes, type Scheme } from './csv-scheme.ts'
import { type CsvTable, isLine } from './csv-table.ts'
import { roleScore } from './csv-words.ts'

/** A mapping found by evidence, with what spoke for it, and other ways to read the file. */
export interface MappingFound {
  readonly mapping: CsvMapping
  /** One sentence for each thing found. */
  readonly evidence: readonly string[]
  /** Other mappings that fit, each with what is different. */
  readonly alternatives: readonly { readonly mapping: CsvMapping; readonly difference: string }[]
  /** What is a guess and should be asked. */
  readonly unsure: readonly ('dates' | 'sign' | 'columns')[]
}

/**
 * Finds out how a table is to be read: from what all its cells are, from a balance that runs on, from its header's words.
 *
 * @throws MonthendError `unknown-columns`, `no-currency`
 */
export function findMapping(
  table: CsvTable,
  marks: Pick<CsvMapping, 'delimiter' | 'quoted'>,
  hints: CsvHints,
): MappingFound {
  const columns = columnsOf(table)
  const lines = table.rows.slice(0, LOOKED_AT).filter(isLine)
  const date = dateColumn(columns, lines.length)
  const order = hints.dateOrder
    ? { order: hints.dateOrder, evidence: 'This order was asked for.', other: null }
    : findOrder(cellsOf(table, date.index).filter(looksLikeDate))
  const mark = decimalMark(table, columns, hints.currency)
  const schemes = findSchemes(columns, lines, mark.mark)
  const [scheme] = schemes
  if (!scheme) {
    const message =
      'No column of this CSV file holds amounts. Choose the columns by hand, or ask the bank for OFX or camt.053.'
    throw new MonthendError('unknown-columns', message)
  }
  const currency = currencyFor(table, columns, scheme, hints)
  const build = (s: Scheme, dateOrder: DateOrder): CsvMapping => ({
    ...marks,
    header: table.header,
    width: table.width,
    dateOrder,
    decimalMark: mark.mark,
    amount: s.amount,
    columns: otherColumns(columns, date, s, currency.column),
    currency: currency.code,
  })
  const rivals = rivalsOf(scheme, schemes)
  const noSigns = scheme.amount.kind === 'signed' && !scheme.proven && lines.length > 0 && !hasMinus(columns, scheme)
  return {
    mapping: build(scheme, order.order),
    evidence: [order.evidence, mark.evidence, scheme.evidence, currency.evidence],
    alternatives: [
      ...(order.other ? [{ mapping: build(scheme, order.other), difference: sayOrder(order.other) }] : []),
      ...rivals.map((s) => ({ mapping: build(s, order.order), difference: sayScheme(s, table) })),
    ],
    unsure: [
      ...(order.other ? (['dates'] as const) : []),
      ...(noSigns ? (['sign'] as const) : []),
      ...(rivals.some((s) => s.score > scheme.score - 1 && !isTurned(s, scheme)) ? (['columns'] as const) : []),
    ],
  }
}

/** The column of booking days: named so, else the first that is full of dates. */
function dateColumn(columns: readonly Column[], lines: number): Column {
  const isDates = (c: Column): boolean => lines === 0 || (c.dates >= 0.9 && c.filled >= 0.9)
  const other = (c: Column): number => Math.max(roleScore(c.folded, 'valueDate'), roleScore(c.folded, 'paidOn'))
  const plain = columns.filter((c) => isDates(c) && other(c) <= roleScore(c.folded, 'date'))
  const found =
    bestNamed(plain, 'date', () => true) ??
    plain.find((c) => c.dates > 0) ??
    columns.find((c) => isDates(c) && c.dates > 0)
  if (found) return found
  throw new MonthendError(
    'unknown-columns',
    'No column of this CSV file is full of dates. Choose the columns by hand, or ask the bank for OFX or camt.053.',
  )
}

/** Rows whose amounts are asked for their decimal mark. A later one of another kind is refused when it is read. */
const MARKS = 20_000

function decimalMark(
  table: CsvTable,
  columns: readonly Column[],
  currency: CurrencyCode | null,
): { mark: DecimalMark; evidence: string } {
  const money = columns.filter((c) => c.amounts >= 0.95 && c.dates < 0.5)
  const votes = money
    .map((c) => markVotes(cellsOf(table, c.index, MARKS)))
    .reduce((sum, v) => ({ '.': sum['.'] + v['.'], ',': sum[','] + v[','], three: sum.three + v.three }), {
      '.': 0,
      ',': 0,
      three: 0,
    })
  if (votes['.'] !== votes[',']) {
    const mark = votes['.'] > votes[','] ? '.' : ','
    return { mark, evidence: `Amounts have "${mark}" before their decimals.` }
  }
  const only = money.flatMap((c) => cellsOf(table, c.index, MARKS)).find((cell) => /[.,]\d{3}\D*$/.test(cell))
  const written = only?.includes(',') ? ',' : '.'
  // Three digits behind the only mark are thousands, unless the currency has three decimals.
  const hasThree = currency !== null && minorDigits(currency) === 3
  const mark = only === undefined || hasThree ? written : written === ',' ? '.' : ','
  return { mark, evidence: 'No amount shows its decimal mark.' }
}

function hasMinus(columns: readonly Column[], scheme: Scheme): boolean {
  const { amount } = scheme
  return amount.kind === 'signed' && (columns[amount.column]?.negatives ?? 0) > 0
}

/** Other schemes worth showing: the sign turned, and others that nearly have as much to speak for them. */
function rivalsOf(best: Scheme, all: readonly Scheme[]): Scheme[] {
  const key = (s: Scheme): string => JSON.stringify(s.amount)
  const seen = new Set([key(best)])
  return all.filter((s) => {
    if (seen.has(key(s)) || (best.proven && !s.proven)) return false
    seen.add(key(s))
    return (s.amount.kind === 'signed' && isTurned(s, best)) || s.score > best.score - 2
  })
}

function isTurned(a: Scheme, b: Scheme): boolean {
  if (a.amount.kind === 'signed' && b.amount.kind === 'signed') return a.amount.column === b.amount.column
  return a.amount.kind === 'two-columns' && b.amount.kind === 'two-columns' && a.amount.out === b.amount.in
}

function sayOrder(order: DateOrder): string {
  const words = { dmy: 'day, month, year', mdy: 'month, day, year', ymd: 'year, month, day' }
  return `Dates as ${words[order]}.`
}

function sayScheme(scheme: Scheme, table: CsvTable): string {
  const title = (column: number): string => table.header?.[column]?.trim() || `column ${column + 1}`
  const { amount } = scheme
  if (amount.kind === 'two-columns')
    return `Money out from "${title(amount.out)}", money in from "${title(amount.in)}".`
  if (amount.kind === 'direction')
    return `Amounts from "${title(amount.column)}", their way from "${title(amount.direction)}".`
  return `Amounts from "${title(amount.column)}"${amount.turned ? ', with the sign turned' : ''}.`
}
