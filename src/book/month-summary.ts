import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'
import { type Book, entriesOf, isReversed } from './book.ts'
import type { CalendarDate } from './calendar-date.ts'
import type { AccountId } from './ids.ts'
import type { Month, MonthName } from './month.ts'
import { balanceAt, type PotMonth, potMonth } from './month-figures.ts'
import { placeOf } from './posting.ts'

/** An account at a month's end. */
export interface AccountSummary {
  readonly account: AccountId
  readonly name: string
  /** In minor units; a credit card's debt is negative. */
  readonly balance: number
  /** The last day up to which a statement agreed with the book when the month was closed; null when none did. */
  readonly agreedOn: CalendarDate | null
}

/** A month as it was signed off: plain data, amounts in minor units. */
export interface MonthSummary {
  readonly month: MonthName
  readonly from: CalendarDate
  readonly to: CalendarDate
  readonly currency: string
  readonly pots: readonly (PotMonth & { readonly name: string })[]
  /** Bank money without a pot at the month's end. */
  readonly unplaced: number
  readonly accounts: readonly AccountSummary[]
}

/**
 * A month's figures from the book alone. They satisfy the identity of the model: card sides and unplaced money are the
 * accounts' balances.
 */
export function summarise(book: Book, month: Month): MonthSummary {
  const { household } = book
  const name = new Map(household.pots.map((pot) => [pot.id, pot.name]))
  return {
    month: month.name,
    from: month.from,
    to: month.to,
    currency: household.currency,
    pots: potMonth(book, month).map((pot) => ({ ...pot, name: name.get(pot.pot) ?? pot.pot })),
    unplaced: balanceAt(book, 'unplaced', month.to),
    accounts: household.accounts.map((account) => ({
      account: account.id,
      name: account.name,
      balance: balanceAt(book, placeOf(account), month.to),
      agreedOn: lastAgreed(book, account.id),
    })),
  }
}

/**
 * The digest a month is signed off with: SHA-256 (FIPS 180-4) of its figures. Names are left out, since renaming a pot
 * later changes no figure; so is `agreedOn`, which a later statement may move.
 *
 * @returns 64 hexadecimal digits
 */
export function digestOf(summary: MonthSummary): string {
  const pots = summary.pots.map(({ name: _, ...figures }) => figures)
  const accounts = summary.accounts.map(({ account, balance }) => ({ account, balance }))
  return bytesToHex(sha256(utf8ToBytes(canonical({ ...summary, pots, accounts }))))
}

/** A statement that closes after the month proves the month as well. */
function lastAgreed(book: Book, account: AccountId): CalendarDate | null {
  let last: CalendarDate | null = null
  for (const entry of entriesOf(book)) {
    if (entry.kind !== 'agree' || entry.account !== account || isReversed(book, entry.id)) continue
    if (last === null || entry.on > last) last = entry.on
  }
  return last
}

/** JSON with keys in order, so that the same figures always give the same text. */
function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`
  if (typeof value !== 'object' || value === null) return JSON.stringify(value)
  const pairs = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1))
  return `{${pairs.map(([k, v]) => `${JSON.stringify(k)}:${canonical(v)}`).join(',')}}`
}
