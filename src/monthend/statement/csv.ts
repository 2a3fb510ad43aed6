import { MonthendError } from '../monthend-error.ts'
import { balanceRemark } from './balance-check.ts'
import { csvBalances } from './csv-balances.ts'
import { headerCells } from './csv-columns.ts'
import { findMapping, type MappingFound } from './csv-find.ts'
import { csvLine, spanOf } from './csv-lines.ts'
import { type CsvHints, type CsvMapping, checkMapping, dataStart } from './csv-mapping.ts'
import { type CsvRow, csvRows } from './csv-rows.ts'
import { findDelimiter, findTable } from './csv-table.ts'
import { type DraftLine, namer } from './draft.ts'
import type { AccountStatement, ReadAccounts, StatementRemark } from './opened.ts'
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
const STEP = 2000
const IBAN = /\b[A-Z]{2}\d{2}(?: ?[A-Z0-9]{4}){2,7}(?: ?[A-Z0-9]{1,4})?\b/

/**
 * Reads the CSV of any bank. With a mapping given or remembered, by it; else the mapping is found.
 *
 * @throws MonthendError `unknown-columns`, `no-currency`, `bad-mapping`, `broken-file`
 */
export function* readCsv(
  text: string,
  hints: CsvHints,
): Generator<Progress, ReadAccounts & { version: string; csv: CsvReading }> {
  const known = hints.mapping
  const found = known ? { delimiter: known.delimiter, evidence: '', skipped: 0 } : findDelimiter(text)
  const body = text.slice(found.skipped)
  const rows = yield* csvRows(body, found.delimiter, known?.quoted ?? true)
  const shift = found.skipped > 0 ? 1 : 0
  const placed = shift === 0 ? rows : rows.map((row) => ({ ...row, row: row.row + shift }))
  yield { stage: 'looking', done: 0, of: placed.length }
  const remembered = known
    ? undefined
    : hints.remembered.find(
        (m) => m.delimiter === found.delimiter && dataStart(m, placed) !== null && m.header !== null,
      )
  const reading = known
    ? given(known, placed, 'given')
    : remembered
      ? given(remembered, placed, 'remembered')
      : searched(placed, found.delimiter, found.evidence, hints)
  const { mapping } = reading.csv
  const { lines, problems, passedOver } = yield* readLines(reading.rows, mapping)
  const account =
    hints.account ?? IBAN.exec(reading.preamble.flatMap((row) => row.cells).join(' '))?.[0].replaceAll(' ', '') ?? ''
  const accounts = accountsOf(lines, mapping, account)
  const over = [...reading.preamble, ...passedOver]
  return {
    version: 'CSV',
    accounts: accounts.map((a) => a.statement),
    problems,
    remarks: [...accounts.flatMap((a) => a.remarks), ...remarksOf(reading.csv, passedOver)],
    csv: { ...reading.csv, passedOver: over },
  }
}

interface Reading {
  readonly csv: Omit<CsvReading, 'passedOver'>
  readonly rows: readonly CsvRow[]
  readonly preamble: readonly CsvRow[]
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

function searched(rows: readonly CsvRow[], delimiter: CsvMapping['delimiter'], why: string, hints: CsvHints): Reading {
  const table = findTable(rows, headerCells)
  const found = findMapping(table, delimiter, hints)
  const sample = sampleOf([...(table.header ? [{ cells: table.header, row: 0 }] : []), ...table.rows])
  const csv = { ...found, evidence: [why, ...found.evidence], from: 'found', sample } as const
  return { csv, rows: table.rows, preamble: table.preamble }
}

function sampleOf(rows: readonly CsvRow[]): (readonly string[])[] {
  return rows.slice(0, SAMPLE).map((row) => row.cells)
}

interface Lines {
  readonly lines: { readonly account: string; readonly line: DraftLine }[]
  readonly problems: MonthendError[]
  readonly passedOver: CsvRow[]
}

function* readLines(rows: readonly CsvRow[], mapping: CsvMapping): Generator<Progress, Lines> {
  const read: Lines = { lines: [], problems: [], passedOver: [] }
  const undated: { at: number; row: CsvRow; error: MonthendError }[] = []
  let lastLine = -1
  for (const [i, row] of rows.entries()) {
    if (i % STEP === 0) yield { stage: 'reading', done: i, of: rows.length }
    try {
      const line = csvLine(row, mapping, i + 1)
      if (line) {
        read.lines.push(line)
        lastLine = i
      } else read.passedOver.push(row)
    } catch (error) {
      if (!(error instanceof MonthendError)) throw error
      if ((row.cells[mapping.columns.date] ?? '').trim() === '') undated.push({ at: i, row, error })
      else read.problems.push(error)
    }
  }
  // A sum without a date behind the last line is a total; among the lines it is a line whose date is missing.
  for (const { at, row, error } of undated) {
    if (at > lastLine) read.passedOver.push(row)
    else read.problems.push(error)
  }
  return read
}

function accountsOf(
  lines: Lines['lines'],
  mapping: CsvMapping,
  fallback: string,
): { statement: AccountStatement; remarks: StatementRemark[] }[] {
  const groups = new Map<string, DraftLine[]>()
  for (const { account, line } of lines) {
    const key = account === '' ? fallback : account
    const group = groups.get(key)
    if (group) group.push(line)
    else groups.set(key, [line])
  }
  if (groups.size === 0) groups.set(fallback, [])
  const name = namer()
  return [...groups].map(([account, drafts]) => {
    const named = name(drafts, account)
    const balances = csvBalances(named.lines)
    const span = spanOf(named.lines)
    const statement: AccountStatement = {
      account,
      number: account,
      kind: null,
      currency: mapping.currency,
      ...span,
      ...balances,
      available: null,
      lines: named.lines,
      withdrawn: [],
    }
    return { statement, remarks: [...named.remarks, ...balanceRemark(account, balances.check)] }
  })
}

function remarksOf(csv: Omit<CsvReading, 'passedOver'>, passedOver: readonly CsvRow[]): StatementRemark[] {
  const messages = {
    dates: ['dates-unsure', 'The dates can be read with the day or with the month first. Look at them and choose.'],
    sign: ['sign-unsure', 'No amount has a minus: it is not told whether a purchase is money out. Look and choose.'],
    columns: ['columns-unsure', 'More than one column may hold the amounts. Look and choose.'],
  } as const
  const unsure = csv.unsure.map(
    (what): StatementRemark => ({ code: messages[what][0], message: messages[what][1], row: null }),
  )
  const [first] = passedOver
  if (!first) return unsure
  const message = `${passedOver.length} rows are no lines and were passed over, the first at line ${first.row}: ${first.cells.join(' ').trim().slice(0, 80)}`
  return [...unsure, { code: 'rows-passed-over', message, row: first.row }]
}
