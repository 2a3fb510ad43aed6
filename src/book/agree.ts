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

/** A statement line that an entry came from or was shown by; `account` is null where the entry moves only one. */
export interface ShownBy {
  readonly line: string
  readonly account: AccountId | null
}

/** The statement lines of each standing entry. */
export function linesByEntry(book: Book): ReadonlyMap<EntryId, readonly ShownBy[]> {
  const lines = new Map<EntryId, ShownBy[]>()
  const add = (id: EntryId, line: string, account: AccountId | null): void => {
    lines.set(id, [...(lines.get(id) ?? []), { line, account }])
  }
  for (const entry of entriesOf(book)) {
    if (entry.kind === 'reversal' || isReversed(book, entry.id)) continue
    if (entry.kind === 'seen') for (const id of entry.entries) add(id, entry.line, entry.account ?? null)
    else if (entry.line !== undefined) {
      add(entry.id, entry.line, entry.kind === 'transfer' ? (entry.lineOf ?? null) : null)
    }
  }
  return lines
}

/**
 * Records that a statement's line shows entries the book has already: a withdrawal for fills, pay noted before.
 *
 * @param account the account whose statement it is; needed for entries that move money between two accounts
 * @throws BookError `unknown-entry`, `bad-lines` (no entry), `line-posted`
 */
export function seenOnStatement(
  book: Book,
  stamp: Stamp,
  line: string,
  entries: readonly EntryId[],
  account?: AccountId,
): SeenEntry {
  if (entries.length === 0) throw new BookError('bad-lines', 'Say which entry the line of the statement shows.')
  for (const id of entries) {
    if (!findEntry(book, id) || isReversed(book, id)) {
      throw new BookError('unknown-entry', `There is no standing entry ${id} that the statement could show.`)
    }
  }
  if (postedLines(book).has(line)) {
    throw new BookError('line-posted', 'This line of the statement is in the book already.')
  }
  const base = { ...entryBase({ ...stamp, line }, [], []), kind: 'seen', entries, line } as const
  return account === undefined ? base : { ...base, account }
}

/** The identities of all statement lines that standing entries were posted from, or are shown by. */
export function postedLines(book: Book): ReadonlySet<string> {
  const lines = new Set<string>()
  for (const entry of entriesOf(book)) {
    if (entry.line !== undefined && !isReversed(book, entry.id)) lines.add(entry.line)
  }
  return lines
}
