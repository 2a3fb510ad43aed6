import { piecesOf } from '../money/denominations.ts'
import { BookError } from './book-error.ts'
import type { Pieces } from './entry.ts'
import type { Household } from './household.ts'

/**
 * What notes and coins are worth together, in minor units.
 *
 * @param allowed the denominations there are; without it those known for the household's currency, or any where none
 *   are known
 * @throws BookError `unknown-piece` (no such note or coin), `bad-count` (no whole number, or one value given twice)
 */
export function takePieces(
  household: Household,
  pieces: readonly Pieces[],
  allowed: readonly number[] | null = knownPieces(household),
): number {
  const seen = new Set<number>()
  let sum = 0
  for (const { denomination, count } of pieces) {
    const exists = allowed ? allowed.includes(denomination) : Number.isSafeInteger(denomination) && denomination > 0
    if (!exists) {
      throw new BookError(
        'unknown-piece',
        `There is no note or coin of ${denomination} minor units in ${household.currency}. Check what was counted.`,
      )
    }
    if (seen.has(denomination)) {
      throw new BookError(
        'bad-count',
        `The pieces of ${denomination} minor units are given twice. Give each value once.`,
      )
    }
    seen.add(denomination)
    if (!Number.isSafeInteger(count) || count < 0) {
      throw new BookError('bad-count', `${count} is not a number of pieces. Count in whole pieces, zero or more.`)
    }
    sum += denomination * count
  }
  if (!Number.isSafeInteger(sum)) throw new BookError('bad-count', 'This is more money than can be held exactly.')
  return sum
}

function knownPieces(household: Household): number[] | null {
  const known = piecesOf(household.currency)
  return known && [...new Set([...known.notes, ...known.coins])]
}
