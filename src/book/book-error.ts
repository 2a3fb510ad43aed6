/** Codes a program can test; the message is a sentence for a person. */
export type BookErrorCode =
  | 'bad-id'
  | 'bad-date'
  | 'bad-household'
  | 'bad-amount'
  | 'bad-lines'
  | 'currency-mismatch'
  | 'unknown-pot'
  | 'archived-pot'
  | 'unknown-account'
  | 'unknown-entry'
  | 'unknown-order'
  | 'wrong-side'
  | 'unbalanced'
  | 'sides-disagree'
  | 'id-reused'
  | 'already-reversed'
  | 'not-reversible'
  | 'order-already-charged'
  | 'unknown-version'
  | 'bad-split'
  | 'zero-order'
  | 'bad-rate'
  | 'bad-renewal'
  | 'bad-instalments'
  | 'month-closed'
  | 'month-open'
  | 'month-not-over'
  | 'bad-reason'
  | 'bad-count'
  | 'unknown-piece'
  | 'left-changes'
  | 'line-posted'
  | 'not-agreed'

/** Something the book will not take. `code` says why; `message` says what to do. */
export class BookError extends Error {
  override readonly name = 'BookError'
  constructor(
    readonly code: BookErrorCode,
    message: string,
  ) {
    super(message)
  }
}
