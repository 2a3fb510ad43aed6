import type { PotId } from '../book/ids.ts'
import type { CurrencyCode } from '../money/currency.ts'
import { type Money, ofMinor } from '../money/money.ts'
import type { PieceCount } from '../money/notes.ts'
import { pieceList, worthOf } from '../money/piece-stock.ts'
import { checkSettlement } from './settle-check.ts'
import { readSettle } from './settle-input.ts'
import { bankPieces, type SettleMove, settleMoves } from './settle-moves.ts'
import { solveSettle } from './settle-solve.ts'

/** What was counted in one pot's envelope. */
export interface EnvelopeCount {
  readonly pot: PotId
  readonly pieces: readonly PieceCount[]
}

/** How much cash one pot's envelope should hold. */
export interface EnvelopeTarget {
  readonly pot: PotId
  readonly cash: Money
}

/** How to settle. */
export interface SettleOptions {
  /** One trip to the bank, which takes any piece and gives those of `bankGives`; or none. Without it a trip is made. */
  readonly bank?: 'trip' | 'none'
  /** Values of the notes and coins there are, in minor units. Without it those known for the currency. */
  readonly denominations?: readonly number[]
  /** What the bank gives, in minor units. Without it every denomination. */
  readonly bankGives?: readonly number[]
  /**
   * Pieces that envelopes were to end with by an earlier settle of the same targets that was interrupted. If they can
   * still be reached, the answer needs no more moves than are left of that list, also where the fewest are not proven.
   */
  readonly goOnTo?: readonly EnvelopeCount[]
}

/**
 * Why an envelope does not end with its target. `below-smallest-piece`: notes and coins cannot express the rest, and it
 * stays on the card side. `pieces-missing`: the pieces that would make it are not to be had, so that much more stays on
 * the card side. `left-over`: without a bank trip there is too much, and it stays in the envelope.
 */
export type SettleRest =
  | { readonly code: 'below-smallest-piece'; readonly amount: Money }
  | { readonly code: 'pieces-missing'; readonly amount: Money }
  | { readonly code: 'left-over'; readonly amount: Money }

/** One envelope when all moves are made. `cashChange` and `cardChange` are each other's negative: *left* stays. */
export interface SettledEnvelope {
  readonly pot: PotId
  readonly target: Money
  readonly cash: Money
  readonly pieces: readonly PieceCount[]
  readonly cashChange: Money
  readonly cardChange: Money
  readonly rests: readonly SettleRest[]
}

/** What to move, in the order to tick it off, and where that leads. Plain data throughout. */
export interface Settlement {
  readonly moves: readonly SettleMove[]
  readonly envelopes: readonly SettledEnvelope[]
  /** What goes to the bank and what comes from it, over all envelopes. */
  readonly toBank: readonly PieceCount[]
  readonly fromBank: readonly PieceCount[]
  /** Pieces moved: each counts once, when it leaves an envelope or the bank. */
  readonly moved: number
  /** With so little missing, no list moves fewer pieces. `moved - movedAtLeast` is the proven gap. */
  readonly movedAtLeast: number
  /** Minor units that all envelopes together lack because pieces are not to be had, and what no list gets it below. */
  readonly missing: number
  readonly missingAtLeast: number
  /** Whether both are proven to be the least. */
  readonly proven: boolean
}

/**
 * The fewest notes and coins to move so that every envelope holds its target, rounded down to what pieces can express;
 * the rest stays on the card side. Straight between envelopes where that fits, to the bank what is too much, from the
 * bank what is missing. Without a bank trip it comes as near as the counted pieces allow and says what is missing.
 *
 * Each pot's card side changes by as much as its cash side the other way, so no pot's *left* changes; the result is
 * checked for that before it is given. Each move can be entered by `settleMove` and ticked by itself; settling again from
 * the counts in between leads to a list that is no longer than what was left of the first.
 *
 * Deterministic: bounded by steps, not by time. Twenty pots with notes are usually proven minimal; many coins in many
 * envelopes can leave a proven gap of a few pieces.
 *
 * @param counts every envelope's pieces; a pot with a target and no count has an empty envelope
 * @param targets cash amounts of one currency, zero or more (cash side less what is spoken for, and the pot's wish)
 * @throws MoneyError `currency-mismatch`, `negative-amount`, `bad-denominations`, `unknown-piece`, `bad-count`,
 *   `search-too-large`
 * @throws BookError `unknown-pot` (a count without a target), `bad-lines` (a pot given twice)
 * @example settle([{pot: a, pieces: [{denomination: 2000, count: 3}]}], [{pot: a, cash: money('CAD', '40.00')}]).moved // 1
 */
export function settle(
  counts: readonly EnvelopeCount[],
  targets: readonly EnvelopeTarget[],
  options: SettleOptions = {},
): Settlement {
  const task = readSettle(counts, targets, options)
  const solved = solveSettle(task)
  const of = (minor: number): Money => ofMinor(task.currency, minor)
  const { denominations } = task
  const envelopes = task.envelopes.map(({ pot, counted, target, rounded }, index): SettledEnvelope => {
    const final = solved.final[index] ?? []
    const cash = worthOf(denominations, final)
    const change = cash - worthOf(denominations, counted)
    return {
      pot,
      target: of(target),
      cash: of(cash),
      pieces: pieceList(denominations, final),
      cashChange: of(change),
      cardChange: of(-change),
      rests: restsOf(task.currency, target, rounded, cash),
    }
  })
  const moves = settleMoves(task, solved.final)
  const settlement: Settlement = {
    moves,
    envelopes,
    toBank: bankPieces(denominations, moves, 'to'),
    fromBank: bankPieces(denominations, moves, 'from'),
    moved: solved.moved,
    movedAtLeast: solved.movedAtLeast,
    missing: solved.missing,
    missingAtLeast: solved.missingAtLeast,
    proven: solved.moved === solved.movedAtLeast && solved.missing === solved.missingAtLeast,
  }
  checkSettlement(task, settlement)
  return settlement
}

function restsOf(currency: CurrencyCode, target: number, rounded: number, cash: number): SettleRest[] {
  const rests: SettleRest[] = []
  const add = (code: SettleRest['code'], minor: number): void => {
    if (minor > 0) rests.push({ code, amount: ofMinor(currency, minor) })
  }
  add('below-smallest-piece', target - rounded)
  add('pieces-missing', rounded - cash)
  add('left-over', cash - rounded)
  return rests
}
