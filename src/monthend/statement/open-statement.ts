import { type CurrencyCode, isCurrencyCode } from '../../money/currency.ts'
import { MonthendError } from '../monthend-error.ts'
import type { StatementLine } from '../statement-line.ts'
import { readCamt } from './camt.ts'
import { type CsvReading, readCsv } from './csv.ts'
import type { CsvHints, CsvMapping } from './csv-mapping.ts'
import { type DecodedText, decode, type Encoding } from './decode.ts'
import { readOfx } from './ofx.ts'
import type { AccountStatement, ReadAccounts, StatementRemark } from './opened.ts'
import { declaredEncoding, recognise, refuseOtherFiles, type StatementFormat } from './recognise.ts'
import type { Progress } from './utf.ts'

/** What the caller knows of a file. All optional: without it, everything is told by evidence. */
export interface StatementOptions {
  readonly format?: StatementFormat
  /** The household's currency. A statement in another one is refused; a CSV file that names none is taken to be in it. */
  readonly currency?: CurrencyCode
  /** Encoding of the bytes, such as `windows-1252`. */
  readonly encoding?: string
  /** Key of the account, for a CSV file that does not name it. */
  readonly account?: string
  /** How to read a CSV file: as found by an earlier reading and perhaps changed by the person. */
  readonly mapping?: CsvMapping
  /** Mappings remembered from other files; the one whose header is this file's is used. */
  readonly remembered?: readonly CsvMapping[]
  /** Order of day, month and year in a CSV file's dates, where the file itself leaves it open. */
  readonly dateOrder?: CsvMapping['dateOrder']
}

/** Everything a statement file says, and how it was told. */
export interface OpenedStatement {
  readonly format: StatementFormat
  /** `OFX 1.6 (SGML)`, `camt.053.001.08`, `CSV`. */
  readonly version: string
  /** Null when the caller handed over text. */
  readonly encoding: { readonly name: Encoding; readonly evidence: string; readonly sure: boolean } | null
  readonly accounts: readonly AccountStatement[]
  /** The lines of all accounts, in the order of the file. */
  readonly lines: readonly StatementLine[]
  /** Lines that could not be read, one error each. Show them: they are missing from `lines`. */
  readonly problems: readonly MonthendError[]
  readonly remarks: readonly StatementRemark[]
  /** For CSV: the mapping used, why, and what else it could have been. */
  readonly csv: CsvReading | null
}

/**
 * Opens a bank's statement: OFX 1.x and 2.x, ISO 20022 camt.052/.053/.054, and CSV of any bank. Nothing in it is posted;
 * the lines, balances and the way it was read are handed over to be looked at. A line that cannot be read is in
 * `problems`, and the others are read all the same.
 *
 * @param file bytes as fetched from the bank (the encoding is then found by evidence), or text
 * @throws MonthendError for a file that cannot be read at all: `empty-file`, `not-a-statement`, `hostile-file` (a DOCTYPE),
 *   `broken-file` (cut off), `too-deep`, `other-currency`, `no-currency`, `unknown-columns`, `bad-mapping`,
 *   `unknown-encoding`, `wrong-format`
 * @example openStatement(bytes, {currency: 'CAD'}).accounts[0]?.closing
 */
export function openStatement(file: Uint8Array | string, options: StatementOptions = {}): OpenedStatement {
  const steps = openStatementInSteps(file, options)
  let step = steps.next()
  while (!step.done) step = steps.next()
  return step.value
}

/**
 * The same in small steps, so that a page can show how far a large file has come and stay alive: go on with `next()`
 * until `done`, with a breath between.
 *
 * @throws MonthendError as `openStatement` does
 * @example for (let s = steps.next(); !s.done; s = steps.next()) show(s.value.done / s.value.of)
 */
export function* openStatementInSteps(
  file: Uint8Array | string,
  options: StatementOptions = {},
): Generator<Progress, OpenedStatement> {
  const decoded = yield* textOf(file, options.encoding)
  const hadNul = decoded.text.includes('\0')
  const text = (hadNul ? decoded.text.replaceAll('\0', '') : decoded.text).replace(/^\uFEFF/, '')
  const found = recognise(text)
  const format = options.format ?? found
  if (format !== found && !(format === 'csv' && !text.trimStart().startsWith('<'))) {
    const message = `This file was to be read as ${format}, but it is ${found}. Leave the format open.`
    throw new MonthendError('wrong-format', message)
  }
  const { csv, ...read } =
    format === 'ofx'
      ? { ...(yield* readOfx(text)), csv: null }
      : format === 'camt'
        ? { ...(yield* readCamt(text)), csv: null }
        : yield* readCsv(text, hints(options))
  refuseOtherCurrency(read, options.currency)
  const lines = read.accounts.flatMap((account) => account.lines)
  return {
    format,
    version: read.version,
    encoding: decoded.encoding && { name: decoded.encoding, evidence: decoded.evidence, sure: decoded.sure },
    accounts: read.accounts,
    lines,
    problems: read.problems,
    remarks: [...fileRemarks(decoded, hadNul), ...read.remarks, ...emptyRemark(lines, read.problems)],
    csv,
  }
}

function* textOf(file: Uint8Array | string, said: string | undefined): Generator<Progress, DecodedText> {
  if (typeof file === 'string') {
    refuseOtherFiles(new Uint8Array([...file.slice(0, 64)].map((char) => Math.min(char.charCodeAt(0), 255))))
    return { text: file, encoding: null, evidence: '', sure: true }
  }
  refuseOtherFiles(file)
  return yield* decode(file, { asked: said, declared: declaredEncoding(file) })
}

function hints(options: StatementOptions): CsvHints {
  return {
    currency: options.currency ?? null,
    account: options.account ?? null,
    mapping: options.mapping ?? null,
    remembered: options.remembered ?? [],
    dateOrder: options.dateOrder ?? null,
  }
}

/** A book is kept in one currency: an account in another cannot be matched with it. */
function refuseOtherCurrency(read: ReadAccounts, currency: CurrencyCode | undefined): void {
  if (currency === undefined) return
  if (!isCurrencyCode(currency)) {
    throw new MonthendError('no-currency', `"${String(currency)}" is not a currency. Use a code such as CAD.`)
  }
  for (const account of read.accounts) {
    if (account.currency !== currency) {
      const which = account.number === '' ? 'This account' : `The account ${account.number}`
      const message = `${which} is kept in ${account.currency}, the household's book in ${currency}. Choose another account's statement.`
      throw new MonthendError('other-currency', message)
    }
    const line = account.lines.find((one) => one.amount.currency !== currency)
    if (line) {
      const message = `Line ${line.place.row} is in ${line.amount.currency}, the household's book in ${currency}. It cannot be matched.`
      throw new MonthendError('other-currency', message, line.place.row)
    }
  }
}

function fileRemarks(decoded: DecodedText, hadNul: boolean): StatementRemark[] {
  const unsure: StatementRemark = {
    code: 'encoding-unsure',
    message: `${decoded.evidence} Look at names with accents, and choose another encoding if they are wrong.`,
    row: null,
  }
  const nul: StatementRemark = { code: 'nul-removed', message: 'Zero bytes in the file were left out.', row: null }
  return [...(decoded.sure ? [] : [unsure]), ...(hadNul ? [nul] : [])]
}

function emptyRemark(lines: readonly StatementLine[], problems: readonly MonthendError[]): StatementRemark[] {
  if (lines.length + problems.length > 0) return []
  return [{ code: 'no-lines', message: 'The statement is sound and holds no lines.', row: null }]
}
