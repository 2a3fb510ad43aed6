import type { Book } from './book.ts'
import { BookError } from './book-error.ts'
import type { Pieces, SettleEnd, SettleEntry, Stamp } from './entry.ts'
import { findAccount, findPot, type Household } from './household.ts'
import { takePieces } from './pieces.ts'
import { entryBase, placeOf } from './posting.ts'

/**
 * One tick of the settling list: pieces go from an envelope or the bank to an envelope or the bank, and each pot's card
 * side moves by as much the other way. So no pot's *left* changes, which `checkEntry` proves of every such entry: this is
 * no borrowing.
 *
 * @throws BookError `unknown-pot`, `unknown-account`, `unknown-piece`, `bad-count` (no pieces), `bad-lines` (from and to
 *   are the same, or both are accounts: that is a `transfer`)
 * @example settleMove(book, stamp, {pot: potId('a')}, {pot: potId('b')}, [{denomination: 2000, count: 1}])
 */
export function settleMove(
  book: Book,
  stamp: Stamp,
  from: SettleEnd,
  to: SettleEnd,
  pieces: readonly Pieces[],
  denominations?: readonly number[],
): SettleEntry {
  const { household } = book
  const moved = takePieces(household, pieces, denominations)
  if (moved === 0) throw new BookError('bad-count', 'No pieces are moved. Say which notes or coins go.')
  if ('account' in from && 'account' in to) {
    throw new BookError('bad-lines', 'Both ends are accounts. Enter that as a transfer.')
  }
  if ('pot' in from && 'pot' in to && from.pot === to.pot) {
    throw new BookError(
      'bad-lines',
      `The notes would stay in ${findPot(household, from.pot).name}. Choose another pot.`,
    )
  }
  const ends = [end(household, from, -moved), end(household, to, moved)]
  const base = entryBase(
    stamp,
    ends.flatMap((e) => e.postings),
    ends.flatMap((e) => e.places).concat({ account: 'notes', amount: notesChange(from, to, moved) }),
  )
  return { ...base, kind: 'settle', from, to, pieces: pieces.filter((p) => p.count > 0) }
}

function end(household: Household, at: SettleEnd, notes: number): Pick<SettleEntry, 'postings' | 'places'> {
  if ('account' in at) {
    return { postings: [], places: [{ account: placeOf(findAccount(household, at.account)), amount: notes }] }
  }
  const { id } = findPot(household, at.pot)
  return {
    postings: [
      { account: `cash:${id}`, amount: notes },
      { account: `card:${id}`, amount: -notes },
    ],
    places: [],
  }
}

function notesChange(from: SettleEnd, to: SettleEnd, moved: number): number {
  if ('account' in from) return moved
  return 'account' in to ? -moved : 0
}
