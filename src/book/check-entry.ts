import { BookError } from './book-error.ts'
import { isCalendarDate } from './calendar-date.ts'
import { checkKind } from './check-kind.ts'
import type { Entry, Posting } from './entry.ts'
import { isUuidV7 } from './ids.ts'

/**
 * Refuses an entry that no book may hold, whatever the book: a bad id or date, amounts that are not whole, postings
 * that do not sum to zero, or two ledgers that disagree (notes must move with the cash sides, accounts with the card
 * sides and unplaced money).
 *
 * @throws BookError `bad-id`, `bad-date`, `bad-amount`, `unbalanced`, `sides-disagree`, `left-changes`, `unknown-version`
 */
export function checkEntry(entry: Entry): void {
  if (entry.version !== 1) {
    throw new BookError('unknown-version', `Entry ${entry.id} was written by a newer Tillside. Update before using it.`)
  }
  if (!isUuidV7(entry.id)) throw new BookError('bad-id', `"${entry.id}" cannot name an entry. Use a UUID version 7.`)
  if (!isCalendarDate(entry.date)) {
    throw new BookError('bad-date', `Entry ${entry.id} is dated "${entry.date}", which is not a day.`)
  }
  const purposes = sumOf(entry, entry.postings)
  const places = sumOf(entry, entry.places)
  if (purposes !== 0 || places !== 0) {
    throw new BookError('unbalanced', `The postings of entry ${entry.id} do not sum to zero, so it cannot be kept.`)
  }
  checkSides(entry)
  checkKind(entry)
}

function sumOf(entry: Entry, postings: readonly Posting<string>[]): number {
  let sum = 0
  for (const { amount } of postings) {
    if (!Number.isSafeInteger(amount)) {
      throw new BookError(
        'bad-amount',
        `Entry ${entry.id} holds ${amount}, which is not a whole number of minor units.`,
      )
    }
    sum += amount
  }
  return sum
}

function checkSides(entry: Entry): void {
  let notes = 0
  let bank = 0
  for (const { account, amount } of entry.postings) {
    if (account.startsWith('cash:')) notes += amount
    else if (account.startsWith('card:') || account === 'unplaced') bank += amount
  }
  for (const { account, amount } of entry.places) {
    if (account === 'notes') notes -= amount
    else if (account !== 'world') bank -= amount
  }
  if (notes !== 0 || bank !== 0) {
    throw new BookError(
      'sides-disagree',
      `Entry ${entry.id} moves pots by another amount than the notes or accounts they lie in.`,
    )
  }
}
