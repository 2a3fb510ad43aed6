import { gcd, type Level } from '../money/piece-level.ts'
import type { PieceProgram, Pool } from '../money/piece-program.ts'
import { shareScarce } from '../money/piece-shortfall.ts'
import { worthOf } from '../money/piece-stock.ts'
import { againstWish, allAgainstWish } from './piece-wish.ts'
import type { SlipTask } from './withdrawal-slip-input.ts'

/** Each pot's pieces, and how good that is proven to be. */
export interface SolvedSlip {
  /** Per pot, how many of each denomination its envelope gets. */
  readonly counts: readonly (readonly number[])[]
  /** Pieces asked of the bank, and the fewest there could be. */
  readonly pieces: number
  readonly piecesAtLeast: number
  /** Minor units that all pots lack of what each could have alone, and the least there could be. */
  readonly short: number
  readonly shortAtLeast: number
  readonly proven: boolean
}

/**
 * The slip as a `PieceProgram`: pieces at hand are free, each further one costs 1 where the bank gives it and is not to
 * be had where not. A piece against a pot's wish costs more than all pieces of the slip together, so that wishes come
 * before the fewest pieces.
 */
export function solveSlip(task: SlipTask): SolvedSlip {
  const { denominations, pots, gives, hand } = task
  const unit = denominations.reduce((divisor, value) => gcd(value, divisor), 0) || 1
  const wishWeight = morePiecesThanAny(task)
  const distances = pots.flatMap(({ wish }) => denominations.map((value) => againstWish(wish, value)))
  const grain = distances.reduce((divisor, distance) => gcd(distance, divisor), 0) || 1
  const program: PieceProgram = {
    pools: denominations.map(
      (_, at): Pool => ({
        free: hand[at] ?? 0,
        price: gives[at] ? 1 : 0,
        least: Number.NEGATIVE_INFINITY,
        most: gives[at] ? Number.POSITIVE_INFINITY : (hand[at] ?? 0),
      }),
    ),
    envelopes: pots.map(({ expressible, wish }) => ({
      amount: expressible / unit,
      levels: denominations.map((value, at): Level => {
        const most = gives[at] ? Number.POSITIVE_INFINITY : (hand[at] ?? 0)
        const slope = (againstWish(wish, value) / grain) * wishWeight
        return { value: value / unit, least: 0, most, slope, corners: [] }
      }),
    })),
  }
  const dearest = Math.max(0, ...program.envelopes.flatMap(({ levels }) => levels.map(({ slope }) => slope)))
  const mostPieces = pots.reduce((sum, { expressible }) => sum + expressible / (denominations.at(-1) ?? unit), 0)
  const solved = shareScarce(program, { closed: false, ceiling: Math.ceil(mostPieces) * (dearest + 1) })
  const pieces = askedOf(task, solved.counts).reduce((sum, count) => sum + count, 0)
  // What is left of the bound when the wishes are paid; where they are not proven the best, nothing is.
  const piecesAtLeast = Math.max(0, solved.atLeast - (solved.cost - pieces))
  return {
    counts: solved.counts,
    pieces,
    piecesAtLeast,
    short: solved.short * unit,
    shortAtLeast: solved.shortAtLeast * unit,
    proven: solved.short === solved.shortAtLeast && pieces === piecesAtLeast,
  }
}

/** How many pieces of each denomination are not at hand. */
export function askedOf({ hand, denominations }: SlipTask, counts: readonly (readonly number[])[]): number[] {
  return denominations.map((_, at) => Math.max(0, counts.reduce((sum, of) => sum + (of[at] ?? 0), 0) - (hand[at] ?? 0)))
}

/** More pieces than a slip that meets its wishes as well as can be would ever ask for. */
function morePiecesThanAny({ denominations, pots, gives }: SlipTask): number {
  const given = denominations.filter((_, at) => gives[at])
  // In a fewest-pieces payment the pieces below one denomination come to less than a few times that denomination.
  const change = given.reduce((sum, value, at) => sum + 2 * Math.ceil(value / (given[at + 1] ?? value)), 0)
  return (
    1 +
    pots.reduce((sum, { expressible, wish }) => {
      const main = given.find((value) => value <= wish.upTo) ?? given.at(-1) ?? 1
      return sum + Math.ceil(expressible / main) + change
    }, 0)
  )
}

/** Whether a pot's wish is met as well as its amount allows, if it had any pieces it likes. */
export function meetsWish(task: SlipTask, index: number, counts: readonly number[]): boolean {
  const pot = task.pots[index]
  if (!pot) return true
  const { denominations, hand, gives } = task
  const against = allAgainstWish(pot.wish, denominations, counts)
  if (against === 0) return true
  if (pot.wish.upTo < Number.POSITIVE_INFINITY) return false
  const alone = solveSlip({
    ...task,
    hand: hand.map((count, at) => (gives[at] ? 0 : count)),
    pots: [{ ...pot, expressible: worthOf(denominations, counts) }],
  })
  return against <= allAgainstWish(pot.wish, denominations, alone.counts[0] ?? [])
}
