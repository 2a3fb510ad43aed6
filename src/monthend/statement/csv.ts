import { MonthendError } from '../monthend-error.ts'
import { balanceRemark } from './balance-check.ts'
import { headerCells } from './csv-columns.ts'
import { findMapping, type MappingFound } from './csv-find.ts'
import { type CsvHints, type CsvMapping, checkMapping, dataStart } from './csv-mapping.ts'
import { type CsvRow, csvRows } from './csv-rows.ts'
import { accountAbove, readRows, statementOf } from './csv-statement.ts'
import { findDelimiter, findTable, isLine } from './csv-table.ts'
import type { ReadAccounts, StatementRemark } from './opened.ts'
import type { Progress } from './utf.ts'

/** How a CSV file was read, to be shown before its lines are used. */
export interface CsvReading extends MappingFound {
  /** `found` by evidence, `remembered` by the file's header, or `given` by the caller. */
  readonly from: 'found' | 'remembered' | 'given'
  /** The first rows of the table as the file writes them. */
  readonly sample: readonly (readonly string[])[]
  /** Rows that were no lines: what stands above the table, totals, remarks. */
  readonly passedOver: readonly CsvRow[]
}

const SAMPLE = 8

/**
 * Reads the CSV of any bank. With a mapping given or remembered, by it; else the mapping is found.
 *
 * @returns `csv: null` for a table that has a header and no lines: there is nothing to find a mapping from
 * @throws MonthendError `unknown-columns`, `no-currency`, `bad-mapping`, `broken-file`
 */
export function* readCsv(
  text: string,
  hints: CsvHints,
): Generator<Progress, ReadAccounts & { version: string; csv: CsvReading | null }> {
  const found = findDelimiter(text)
  const delimiter = hints.mapping?.delimiter ?? found.delimiter
  const body = text.slice(found.skipped)
  const { rows, quoted } = yield* rowsOf(body, delimiter, hints.mapping?.quoted, found.skipped > 0 ? 2 : 1)
  yield { stage: 'looking', done: 0, of: rows.length }
  const reading = hints.mapping
    ? given(hints.mapping, rows, 'given')
    : (recalled(hints.remembered, delimiter, rows) ?? searched(rows, delimiter, quoted, found.evidence, hints))
  if (reading === null) return { version: 'CSV', accounts: [], problems: [], remarks: [], csv: null }
  const { mapping } = reading.csv
  const account = hints.account ?? accountAbove(reading.preamble)
  const { lines, problems, passedOver } = yield* readRows(reading.rows, mapping, account)
  if (lines.size === 0) lines.set(account, [])
  const accounts = [...lines].map(([key, all]) => statementOf(key, all, mapping))
  return {
    version: 'CSV',
    accounts,
    problems,
    remarks: [
      ...accounts.flatMap((a) => balanceRemark(a.account, a.check)),
      ...unsureRemarks(reading.csv),
      ...passedRemark(passedOver),
    ],
    csv: { ...reading.csv, passedOver: [...reading.preamble, ...passedOver] },
  }
}

interface Reading {
  readonly csv: Omit<CsvReading, 'passedOver'>
  readonly rows: readonly CsvRow[]
  readonly preamble: readonly CsvRow[]
}

/**
 * The rows, quoted by RFC 4180. Where quotes do not match, a bank may have written them as plain characters: that is taken
 * only if the rows are then all equally wide and hardly a cell looks quoted, for else the file is cut off.
 */
function* rowsOf(
  body: string,
  delimiter: string,
  asked: boolean | undefined,
  firstRow: number,
): Generator<Progress, { rows: CsvRow[]; quoted: boolean }> {
  try {
    return { rows: yield* csvRows(body, delimiter, asked ?? true, firstRow), quoted: asked ?? true }
  } catch (error) {
    if (asked !== undefined || !(error instanceof MonthendError)) throw error
    const rows = yield* csvRows(body, delimiter, false, firstRow)
    const even = rows.every((row) => row.cells.length === rows[0]?.cells.length)
    const cells = rows.flatMap((row) => row.cells)
    const looksQuoted = cells.filter((cell) => cell.length > 1 && cell.startsWith('"') && cell.endsWith('"')).length
    if (!even || rows.length < 2 || looksQuoted > cells.length / 20) throw error
    return { rows, quoted: false }
  }
}

function recalled(
  remembered: readonly CsvMapping[],
  delimiter: CsvMapping['delimiter'],
  rows: readonly CsvRow[],
): Reading | null {
  const mapping = remembered.find((m) => m.delimiter === delimiter && m.header !== null && dataStart(m, rows) !== null)
  return mapping ? given(mapping, rows, 'remembered') : null
}

function given(mapping: CsvMapping, rows: readonly CsvRow[], from: 'given' | 'remembered'): Reading {
  checkMapping(mapping)
  const start = dataStart(mapping, rows)
  if (start === null) {
    const header = mapping.header?.join(mapping.delimiter) ?? ''
    const message = `This file has not the header the mapping was made for (${header.slice(0, 200)}). Let the columns be found anew.`
    throw new MonthendError('bad-mapping', message)
  }
  const evidence = [from === 'given' ? 'The mapping was given.' : 'A mapping for this header is remembered.']
  const sample = sampleOf(rows.slice(Math.max(0, start - 1)))
  const csv = { mapping, evidence, alternatives: [], unsure: [], from, sample } as const
  return { csv, rows: rows.slice(start), preamble: rows.slice(0, Math.max(0, start - 1)) }
}

function searched(
  rows: readonly CsvRow[],
  delimiter: CsvMapping['delimiter'],
  quoted: boolean,
  why: string,
  hints: CsvHints,
): Reading | null {
  const table = findTable(rows, headerCells)
  if (!table.rows.some(isLine)) return null
  const found = findMapping(table, { delimiter, quoted }, hints)
  const sample = sampleOf([...(table.header ? [{ cells: table.header, row: 0 }] : []), ...table.rows])
  const plain = quoted ? [] : ['Quotes do not match in pairs; they are taken as plain characters.']
  const csv = { ...found, evidence: [why, ...plain, ...found.evidence], from: 'found', sample } as const
  return { csv, rows: table.rows, preamble: table.preamble }
}

function sampleOf(rows: readonly CsvRow[]): (readonly string[])[] {
  return rows.slice(0, SAMPLE).map((row) => row.cells)
}

function unsureRemarks(csv: Omit<CsvReading, 'passedOver'>): StatementRemark[] {
  const messages = {
    dates: ['dates-unsure', 'The dates can be read with the day or with the month first. Look at them and choose.'],
    sign: ['sign-unsure', 'No amount has a minus: it is not told whether a purchase is money out. Look and choose.'],
    columns: ['columns-unsure', 'More than one column may hold the amounts. Look and choose.'],
  } as const
  const unsure = csv.unsure.map(
    (what): StatementRemark => ({ code: messages[what][0], message: messages[what][1], row: null }),
  )
  if (csv.mapping.quoted || csv.from !== 'found') return unsure
  const message = 'Quotes in this file do not match in pairs and were taken as plain characters. Look at the texts.'
  return [...unsure, { code: 'quotes-are-plain', message, row: null }]
}

function passedRemark(passedOver: readonly CsvRow[]): StatementRemark[] {
  const [first] = passedOver
  if (!first) return []
  const text = first.cells.join(' ').trim().slice(0, 80)
  const count = passedOver.length === 1 ? 'One row is' : `${passedOver.length} rows are`
  const message = `${count} no line of the statement and passed over, from line ${first.row} on: ${text}`
  return [{ code: 'rows-passed-over', message, row: first.row }]
}
