import { type Money, ofMinor } from '../money/money.ts'
import { type Book, balanceOf } from './book.ts'
import { BookError } from './book-error.ts'
import type { CountEntry, Pieces, Stamp } from './entry.ts'
import { findPot, hasSide } from './household.ts'
import type { PotId } from './ids.ts'
import { takePieces } from './pieces.ts'
import { entryBase } from './posting.ts'

/** How to take a count. */
export interface CountOptions {
  /** Post the difference as cash over or short. Without it the count is only recorded. */
  readonly post?: boolean
  /** The denominations there are, in minor units, where they differ from the currency's known ones. */
  readonly denominations?: readonly number[]
}

/**
 * The notes and coins found in a pot's envelope, against the book. A difference is posted to *over-short* only when
 * `post` says so: over raises the cash side, short lowers it, and the book then says what was counted.
 *
 * @throws BookError `unknown-pot`, `wrong-side` (a pot without an envelope), `unknown-piece`, `bad-count`
 * @example countPot(book, stamp, potId('groceries'), [{denomination: 2000, count: 3}], {post: true})
 */
export function countPot(
  book: Book,
  stamp: Stamp,
  pot: PotId,
  pieces: readonly Pieces[],
  options: CountOptions = {},
): CountEntry {
  const found = findPot(book.household, pot)
  const expected = balanceOf(book, `cash:${pot}`)
  if (!hasSide(found, 'cash') && expected === 0) {
    throw new BookError('wrong-side', `${found.name} keeps no notes, so there is no envelope to count.`)
  }
  const counted = takePieces(book.household, pieces, options.denominations)
  const over = options.post ? counted - expected : 0
  const base = entryBase(
    stamp,
    [
      { account: `cash:${pot}`, amount: over },
      { account: 'over-short', amount: -over },
    ],
    [
      { account: 'notes', amount: over },
      { account: 'world', amount: -over },
    ],
  )
  return { ...base, kind: 'count', pot, pieces: pieces.filter((p) => p.count > 0), expected }
}

/** What a count found, in all. */
export function countedAmount(book: Book, count: CountEntry): Money {
  const sum = count.pieces.reduce((all, p) => all + p.denomination * p.count, 0)
  return ofMinor(book.household.currency, sum)
}
