import { type Money, toDecimal } from '../money/money.ts'
import { BookError } from './book-error.ts'
import type { EntryBase, PlaceAccount, Posting, PurposeAccount, Stamp } from './entry.ts'
import type { Household, RealAccount } from './household.ts'

/** The head of a new entry: the caller's stamp and the postings, lines of zero left out. */
export function entryBase(
  stamp: Stamp,
  postings: readonly Posting<PurposeAccount>[],
  places: readonly Posting<PlaceAccount>[],
): EntryBase {
  const { id, device, date, note, line, happened } = stamp
  const head = { id, version: 1, device, date, postings: postings.filter(moves), places: places.filter(moves) } as const
  return {
    ...head,
    ...(note === undefined ? {} : { note }),
    ...(line === undefined ? {} : { line }),
    ...(happened === undefined ? {} : { happened }),
  }
}

/** The place a bank account or credit card is posted to. */
export function placeOf(account: RealAccount): PlaceAccount {
  return `${account.kind}:${account.id}`
}

/**
 * An amount for the book: of its currency, and not negative.
 *
 * @returns minor units
 * @throws BookError `currency-mismatch`, `bad-amount`
 */
export function takeAmount(household: Household, m: Money): number {
  if (m.currency !== household.currency) {
    throw new BookError(
      'currency-mismatch',
      `This amount is in ${m.currency}, but the book is kept in ${household.currency}. Enter what it comes to in ${household.currency}.`,
    )
  }
  if (m.minor < 0)
    throw new BookError('bad-amount', `${toDecimal(m)} is less than nothing. Enter an amount above zero.`)
  return m.minor
}

function moves(posting: Posting<string>): boolean {
  return posting.amount !== 0
}
