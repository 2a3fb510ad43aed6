import type { Money } from '../money/money.ts'
import { type Book, entriesOf, findEntry, isReversed } from './book.ts'
import { BookError } from './book-error.ts'
import type { CalendarDate } from './calendar-date.ts'
import type { AgreeEntry, SeenEntry, Stamp } from './entry.ts'
import { findAccount } from './household.ts'
import type { AccountId, EntryId } from './ids.ts'
import { entryBase } from './posting.ts'

/**
 * Records that a statement's closing balance and the book agree. Whether they do is told by `explainBalance`; this
 * entry only remembers it.
 *
 * @param balance as the statement has it; a credit card's debt is negative
 * @throws BookError `unknown-account`, `currency-mismatch`
 */
export function agreeBalance(
  book: Book,
  stamp: Stamp,
  account: AccountId,
  on: CalendarDate,
  balance: Money,
): AgreeEntry {
  findAccount(book.household, account)
  if (balance.currency !== book.household.currency) {
    throw new BookError(
      'currency-mismatch',
      `The statement is in ${balance.currency}, but the book is kept in ${book.household.currency}.`,
    )
  }
  return { ...entryBase(stamp, [], []), kind: 'agree', account, on, balance: balance.minor }
}

/**
 * Records that a statement's line shows entries the book has already: a withdrawal for fills, pay noted before.
 *
 * @throws BookError `unknown-entry`, `bad-lines` (no entry), `line-posted`
 */
export function seenOnStatement(book: Book, stamp: Stamp, line: string, entries: readonly EntryId[]): SeenEntry {
  if (entries.length === 0) throw new BookError('bad-lines', 'Say which entry the line of the statement shows.')
  for (const id of entries) {
    if (!findEntry(book, id) || isReversed(book, id)) {
      throw new BookError('unknown-entry', `There is no standing entry ${id} that the statement could show.`)
    }
  }
  if (postedLines(book).has(line)) {
    throw new BookError('line-posted', 'This line of the statement is in the book already.')
  }
  return { ...entryBase({ ...stamp, line }, [], []), kind: 'seen', entries, line }
}

/** The identities of all statement lines that standing entries were posted from, or are shown by. */
export function postedLines(book: Book): ReadonlySet<string> {
  const lines = new Set<string>()
  for (const entry of entriesOf(book)) {
    if (entry.line !== undefined && !isReversed(book, entry.id)) lines.add(entry.line)
  }
  return lines
}
