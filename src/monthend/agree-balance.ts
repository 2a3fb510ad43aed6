import { linesByEntry } from '../book/agree.ts'
import { type Book, balanceOf, entriesOf, isReversed } from '../book/book.ts'
import type { CalendarDate } from '../book/calendar-date.ts'
import type { Entry } from '../book/entry.ts'
import { findAccount } from '../book/household.ts'
import type { AccountId, EntryId } from '../book/ids.ts'
import { placeOf } from '../book/posting.ts'
import { type Money, ofMinor } from '../money/money.ts'
import type { StatementLine } from './statement-line.ts'

/** What a statement says of one account of the household. */
export interface StatementClose {
  readonly account: AccountId
  /** Balance before the first line; null when the bank does not tell. */
  readonly opening: Money | null
  readonly closing: Money
  /** The day of the closing balance. */
  readonly on: CalendarDate
  readonly lines: readonly StatementLine[]
}

/** One thing that explains part of the difference between statement and book; `amount` is what it adds to it. */
export type BalanceItem =
  /** A line that is not in the book. */
  | { readonly code: 'not-in-book'; readonly line: string; readonly date: CalendarDate; readonly amount: Money }
  /** An entry, dated up to the closing day, that no line shows. */
  | { readonly code: 'not-on-statement'; readonly entry: EntryId; readonly date: CalendarDate; readonly amount: Money }
  /** An entry after the closing day: the bank cannot have it yet. */
  | { readonly code: 'after'; readonly entry: EntryId; readonly date: CalendarDate; readonly amount: Money }
  /** A line that is in the book with another amount. */
  | { readonly code: 'other-amount'; readonly line: string; readonly date: CalendarDate; readonly amount: Money }
  /** The statement's own lines do not lead from its opening to its closing balance. */
  | { readonly code: 'statement-gap'; readonly amount: Money }
  /** Statement and book differed before the first line. */
  | { readonly code: 'before'; readonly amount: Money }

/** A statement's closing balance against the book as it is now. */
export interface BalanceExplanation {
  readonly account: AccountId
  readonly closing: Money
  readonly on: CalendarDate
  /** The account's balance by the book, now. */
  readonly book: Money
  /** `closing - book`: the sum of the items, and what they leave. */
  readonly difference: Money
  readonly items: readonly BalanceItem[]
  /** What nothing explains; zero unless the statement gives no opening balance. */
  readonly unexplained: Money
  /** The two agree: what differs is only time (entries the bank cannot have yet). */
  readonly isAgreed: boolean
}

/**
 * Explains a statement's closing balance by the book, down to zero: `closing = book + the items + unexplained`.
 *
 * @throws BookError `unknown-account`
 * @example explainBalance(book, {account, opening, closing, on, lines}).items
 */
export function explainBalance(book: Book, statement: StatementClose): BalanceExplanation {
  const place = placeOf(findAccount(book.household, statement.account))
  const of = (minor: number): Money => ofMinor(book.household.currency, minor)
  const booked = new Map(statement.lines.filter((l) => l.status === 'booked').map((l) => [l.id, l]))
  const lineOfEntry = linesByEntry(book)
  const shown = new Map<string, number>()
  const items: BalanceItem[] = []
  let baseline = 0
  for (const entry of standing(book)) {
    const amount = entry.places.reduce((sum, p) => sum + (p.account === place ? p.amount : 0), 0)
    if (amount === 0) continue
    const lines = (lineOfEntry.get(entry.id) ?? []).filter((l) => l.account === null || l.account === statement.account)
    const line = lines.find((l) => booked.has(l.line))?.line
    const date = entry.happened ?? entry.date
    if (line !== undefined) shown.set(line, (shown.get(line) ?? 0) + amount)
    else if (date > statement.on) items.push({ code: 'after', entry: entry.id, date, amount: of(-amount) })
    else if (lines.length > 0 || entry.kind === 'opening') baseline += amount
    else items.push({ code: 'not-on-statement', entry: entry.id, date, amount: of(-amount) })
  }
  let moved = 0
  for (const line of booked.values()) {
    moved += line.amount.minor
    const inBook = shown.get(line.id)
    const base = { line: line.id, date: line.date, amount: of(line.amount.minor - (inBook ?? 0)) }
    if (inBook === undefined) items.push({ ...base, code: 'not-in-book' })
    else if (base.amount.minor !== 0) items.push({ ...base, code: 'other-amount' })
  }
  const { opening, closing } = statement
  if (opening) {
    const gap = closing.minor - opening.minor - moved
    if (gap !== 0) items.push({ code: 'statement-gap', amount: of(gap) })
    if (opening.minor !== baseline) items.push({ code: 'before', amount: of(opening.minor - baseline) })
  }
  const now = balanceOf(book, place)
  const explained = items.reduce((sum, item) => sum + item.amount.minor, 0)
  const unexplained = closing.minor - now - explained
  return {
    account: statement.account,
    closing,
    on: statement.on,
    book: of(now),
    difference: of(closing.minor - now),
    items: items.sort(byDate),
    unexplained: of(unexplained),
    isAgreed: unexplained === 0 && items.every((item) => item.code === 'after'),
  }
}

/** All statements of a month-end against all pots: the identity of the model, from the bank's side. */
export interface BalancesExplanation {
  readonly accounts: readonly BalanceExplanation[]
  /** Accounts no statement was given for. */
  readonly missing: readonly AccountId[]
  /** Σ closing balances; a credit card's debt counts below zero. */
  readonly closing: Money
  /** Σ card sides of all pots, now. */
  readonly cardSides: Money
  readonly unplaced: Money
  /** Σ closing less card sides and unplaced money, less what the accounts without a statement hold by the book. */
  readonly difference: Money
  readonly isAgreed: boolean
}

/**
 * Explains all closing balances against Σ card sides + unplaced. Their difference is the sum of the accounts' own, since
 * the book keeps Σ card sides + unplaced = Σ accounts at every moment.
 *
 * @throws BookError `unknown-account`
 */
export function explainBalances(book: Book, statements: readonly StatementClose[]): BalancesExplanation {
  const { household } = book
  const of = (minor: number): Money => ofMinor(household.currency, minor)
  const accounts = statements.map((statement) => explainBalance(book, statement))
  const missing = household.accounts.filter((a) => !accounts.some((x) => x.account === a.id))
  const closing = accounts.reduce((sum, a) => sum + a.closing.minor, 0)
  const cards = household.pots.reduce((sum, pot) => sum + balanceOf(book, `card:${pot.id}`), 0)
  const unplaced = balanceOf(book, 'unplaced')
  const elsewhere = missing.reduce((sum, a) => sum + balanceOf(book, placeOf(a)), 0)
  return {
    accounts,
    missing: missing.map((a) => a.id),
    closing: of(closing),
    cardSides: of(cards),
    unplaced: of(unplaced),
    difference: of(closing + elsewhere - cards - unplaced),
    isAgreed: missing.length === 0 && accounts.every((a) => a.isAgreed),
  }
}

/** Entries that stand; one that was taken back and its reversal cancel each other, whenever that was. */
function standing(book: Book): Entry[] {
  return [...entriesOf(book)].filter((entry) => entry.kind !== 'reversal' && !isReversed(book, entry.id))
}

function byDate(a: BalanceItem, b: BalanceItem): number {
  const [x, y] = ['date' in a ? a.date : '', 'date' in b ? b.date : '']
  return x < y ? -1 : x > y ? 1 : 0
}
