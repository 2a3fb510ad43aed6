/** Codes a program can test; the message is a sentence for a person. */
export type MonthendErrorCode =
  /** The file holds nothing, or nothing that looks like a statement. */
  | 'empty-file'
  | 'not-a-statement'
  | 'wrong-format'
  | 'unknown-encoding'
  /** The file breaks off, or its marks do not match. */
  | 'broken-file'
  | 'hostile-file'
  | 'too-deep'
  /** A currency is not told, or is another one than the household's. */
  | 'no-currency'
  | 'other-currency'
  /** The columns of a CSV file could not be told, or can be read in two ways. */
  | 'unknown-columns'
  | 'unsure-dates'
  | 'bad-mapping'
  /** One line cannot be read. */
  | 'bad-date'
  | 'bad-amount'
  | 'bad-line'

/** Something the month-end room will not take. `code` says why; `message` says what to do and names the line, if one. */
export class MonthendError extends Error {
  override readonly name = 'MonthendError'
  constructor(
    readonly code: MonthendErrorCode,
    message: string,
    /** Line of the file, from 1; null when the whole file is meant. */
    readonly row: number | null = null,
  ) {
    super(message)
  }
}
