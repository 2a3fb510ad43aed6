import { MonthendError } from './monthend-error.ts'
import { openStatement, type StatementOptions } from './statement/open-statement.ts'
import type { StatementLine } from './statement-line.ts'

/**
 * The lines of a bank's statement: OFX 1.x and 2.x, ISO 20022 camt.052/.053/.054, or CSV of any bank. All or nothing: where
 * `openStatement` shows what is doubtful, this refuses it.
 *
 * @param file bytes (the encoding is found by evidence) or text
 * @returns the lines of all accounts in the order of the file; pending ones are among them, marked
 * @throws MonthendError as `openStatement` does; the error of the first line that cannot be read (`bad-date`, `bad-amount`,
 *   `bad-line`); `unsure-dates` when a CSV file's dates can be read in two ways
 * @example readStatement('Date,Shop,Amount (CAD)\n2026-11-25,Corvid,-9.30\n')[0]?.amount // {currency: 'CAD', minor: -930}
 */
export function readStatement(file: Uint8Array | string, options: StatementOptions = {}): StatementLine[] {
  const opened = openStatement(file, options)
  const [problem] = opened.problems
  if (problem) {
    const more = opened.problems.length - 1
    throw more === 0
      ? problem
      : new MonthendError(problem.code, `${problem.message} ${more} more lines cannot be read.`, problem.row)
  }
  if (opened.csv?.unsure.includes('dates')) {
    const message =
      "Every date of this file can be read with the day or the month first. Say which it is (option 'dateOrder': 'dmy' or 'mdy')."
    throw new MonthendError('unsure-dates', message)
  }
  return [...opened.lines]
}
