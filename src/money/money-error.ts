/** Codes a program can test; the message is a sentence for a person. */
export type MoneyErrorCode =
  | 'unknown-currency'
  | 'unknown-locale'
  | 'not-a-decimal'
  | 'too-many-decimals'
  | 'too-large'
  | 'currency-mismatch'
  | 'negative-amount'
  | 'bad-weights'
  | 'bad-denominations'
  | 'unknown-piece'
  | 'bad-count'
  | 'bad-rounding'
  | 'search-too-large'

/** An amount that cannot be taken as it stands. `code` says why; `message` says what to do. */
export class MoneyError extends Error {
  override readonly name = 'MoneyError'
  constructor(
    readonly code: MoneyErrorCode,
    message: string,
  ) {
    super(message)
  }
}
