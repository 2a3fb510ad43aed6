import { MoneyError } from '../money/money-error.ts'
import { worthOf } from '../money/piece-stock.ts'

/**
 * Which pieces a pot likes in its envelope. `small`: small change for the market, nothing above a tenth of the largest
 * piece to be had (a choice of this project, no source). `large`: few large ones, for what lies long. `upTo` and `from`
 * say the same with a limit in minor units. `usual` leaves it to the fewest pieces.
 */
export type PieceWish = 'usual' | 'small' | 'large' | { readonly upTo: number } | { readonly from: number }

/** A wish by its limit: pieces above `upTo` or below `from` go against it, the more the farther they are from it. */
export interface WishLimits {
  readonly upTo: number
  readonly from: number
}

/**
 * A wish as limits, given the pieces to be had.
 *
 * @param usable values that the bank gives or that are at hand, the largest first
 * @throws MoneyError `bad-denominations` for a limit that is no whole number above zero
 */
export function wishLimits(wish: PieceWish, usable: readonly number[]): WishLimits {
  const none: WishLimits = { upTo: Number.POSITIVE_INFINITY, from: 0 }
  if (wish === 'usual') return none
  const largest = usable[0] ?? 0
  if (wish === 'large') return { ...none, from: largest }
  if (wish === 'small') {
    const small = usable.find((value) => value <= largest / 10) ?? usable.at(-1)
    return { ...none, upTo: small ?? none.upTo }
  }
  const limit = 'upTo' in wish ? wish.upTo : wish.from
  if (!Number.isSafeInteger(limit) || limit < 1) {
    throw new MoneyError(
      'bad-denominations',
      `A wish for pieces around ${limit} cannot be met. Give its limit as a whole number of minor units above zero.`,
    )
  }
  return 'upTo' in wish ? { ...none, upTo: limit } : { ...none, from: limit }
}

/** How far one piece is from a wish, in minor units; 0 when it suits. */
export function againstWish({ upTo, from }: WishLimits, value: number): number {
  return Math.max(0, value - upTo, from - value)
}

/** How far pieces together are from a wish. */
export function allAgainstWish(
  limits: WishLimits,
  denominations: readonly number[],
  counts: readonly number[],
): number {
  return worthOf(
    denominations.map((value) => againstWish(limits, value)),
    counts,
  )
}
