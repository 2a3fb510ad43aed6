import type { PotId } from '../book/ids.ts'
import { type Money, ofMinor } from '../money/money.ts'
import type { PieceCount } from '../money/notes.ts'
import { pieceList, worthOf } from '../money/piece-stock.ts'
import type { PieceWish } from './piece-wish.ts'
import { readSlip, type SlipTask } from './withdrawal-slip-input.ts'
import { askedSum, fitMultiple } from './withdrawal-slip-machine.ts'
import { askedOf, meetsWish, type SolvedSlip, solveSlip } from './withdrawal-slip-solve.ts'

/** How much cash a pot's envelope is to get, and which pieces it likes. */
export interface CashFill {
  readonly pot: PotId
  readonly cash: Money
  readonly wish?: PieceWish
}

/** What the bank gives: a counter any note and coin (or those named), a machine certain notes only. */
export type SlipBank =
  | { readonly kind: 'counter'; readonly gives?: readonly number[] }
  /** `multipleOf`: what the sum asked must be a multiple of, in minor units. */
  | { readonly kind: 'machine'; readonly gives: readonly number[]; readonly multipleOf?: number }

/** How to make a slip. */
export interface SlipOptions {
  /** Values of the notes and coins there are, in minor units. Without it those known for the currency. */
  readonly denominations?: readonly number[]
  /** Whether coins may go into envelopes. Without it they may. */
  readonly coins?: boolean
  /** Without it a counter that gives every denomination. */
  readonly bank?: SlipBank
  /** Pieces that are there already; they are used first. */
  readonly atHand?: readonly PieceCount[]
}

/**
 * Why a part of a fill stays on the card side. `below-smallest-piece`: no notes and coins in use express it.
 * `bank-cannot-give`: the pieces for it are neither at hand nor given by this bank.
 */
export interface SlipRest {
  readonly code: 'below-smallest-piece' | 'bank-cannot-give'
  readonly amount: Money
}

/** One envelope of the slip. */
export interface SlipEnvelope {
  readonly pot: PotId
  readonly wanted: Money
  /** What its pieces come to; the rest of `wanted` stays on the card side. */
  readonly placed: Money
  readonly onCard: Money
  readonly fromHand: readonly PieceCount[]
  readonly fromBank: readonly PieceCount[]
  /** `missed`: other pieces would have suited, but could not be had (with so much money in notes). */
  readonly wish: 'none' | 'met' | 'missed'
  readonly rests: readonly SlipRest[]
}

/** What to ask the bank for, and what goes into each envelope. Plain data throughout. */
export interface WithdrawalSlip {
  /** What to ask for, the largest first, and what it comes to in minor units. */
  readonly ask: readonly PieceCount[]
  readonly asked: number
  readonly fromHand: readonly PieceCount[]
  readonly envelopes: readonly SlipEnvelope[]
  /** What all envelopes get, in minor units, and the most that any slip could place. */
  readonly placed: number
  readonly placedAtMost: number
  /** Pieces asked of the bank; with as much placed and the wishes as well met, no slip asks for fewer. */
  readonly pieces: number
  readonly piecesAtLeast: number
  /** Whether value, wishes and pieces are all proven the best. */
  readonly proven: boolean
  /** True when money was wanted in notes and this bank can give nothing that helps. */
  readonly bankServesNone: boolean
}

/**
 * The withdrawal slip: as much value in notes and coins as can be, then the pots' wishes met as well as can be (the
 * least distance of all pieces from the limits wished for), then the fewest pieces asked of the bank. Pieces at hand
 * cost nothing and are used first; two pots never get the same piece. What cannot be met in notes stays on the card side
 * and is said per pot.
 *
 * Bounded by steps, not by time, and deterministic. Where it stops before the proof is complete, `placedAtMost` and
 * `piecesAtLeast` are what is proven; so too where the best slip is not one of the machine's `multipleOf` and another one
 * had to be made.
 *
 * @throws MoneyError `currency-mismatch`, `negative-amount`, `bad-denominations` (also a currency without known pieces),
 *   `unknown-piece`, `bad-count`, `search-too-large`
 * @throws BookError `bad-lines` (a pot given twice)
 * @throws PlanError `bad-options` (`multipleOf`)
 * @example withdrawalSlip([{pot, cash: money('CAD', '60.00')}], {bank: {kind: 'machine', gives: [2000, 5000]}}).ask
 *   // [{denomination: 2000, count: 3}]
 */
export function withdrawalSlip(fills: readonly CashFill[], options: SlipOptions = {}): WithdrawalSlip {
  const task = readSlip(fills, options)
  const free = solveSlip(task)
  const fits = askedSum(task, free) % task.multipleOf === 0
  return slipOf(task, fits ? free : fitMultiple(task, free))
}

function slipOf(task: SlipTask, solved: SolvedSlip): WithdrawalSlip {
  const { denominations, pots, hand } = task
  const of = (minor: number): Money => ofMinor(task.currency, minor)
  const left = [...hand]
  const envelopes = pots.map(({ pot, wanted, rounded, wished }, index): SlipEnvelope => {
    const counts = solved.counts[index] ?? []
    const own = counts.map((count, at) => Math.min(count, left[at] ?? 0))
    for (const [at, count] of own.entries()) left[at] = (left[at] ?? 0) - count
    const placed = worthOf(denominations, counts)
    const rests: SlipRest[] = []
    if (wanted > rounded) rests.push({ code: 'below-smallest-piece', amount: of(wanted - rounded) })
    if (rounded > placed) rests.push({ code: 'bank-cannot-give', amount: of(rounded - placed) })
    return {
      pot,
      wanted: of(wanted),
      placed: of(placed),
      onCard: of(wanted - placed),
      fromHand: pieceList(denominations, own),
      fromBank: pieceList(
        denominations,
        counts.map((count, at) => count - (own[at] ?? 0)),
      ),
      wish: !wished ? 'none' : meetsWish(task, index, counts) ? 'met' : 'missed',
      rests,
    }
  })
  const ask = askedOf(task, solved.counts)
  const asked = worthOf(denominations, ask)
  const placed = envelopes.reduce((sum, envelope) => sum + envelope.placed.minor, 0)
  const placedAtMost = pots.reduce((sum, { expressible }) => sum + expressible, 0) - solved.shortAtLeast
  return {
    ask: pieceList(denominations, ask),
    asked,
    fromHand: pieceList(
      denominations,
      hand.map((count, at) => count - (left[at] ?? 0)),
    ),
    envelopes,
    placed,
    placedAtMost,
    pieces: solved.pieces,
    piecesAtLeast: solved.piecesAtLeast,
    proven: solved.proven,
    bankServesNone: asked === 0 && envelopes.some(({ rests }) => rests.some(({ code }) => code === 'bank-cannot-give')),
  }
}
