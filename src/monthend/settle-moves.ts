import type { PotId } from '../book/ids.ts'
import { type Money, ofMinor } from '../money/money.ts'
import type { PieceCount } from '../money/notes.ts'
import { pieceList } from '../money/piece-stock.ts'
import type { SettleTask } from './settle-input.ts'
import { fewestTransfers, type Transfer } from './settle-pairs.ts'

/** An envelope, or the bank. */
export type SettlePlace = { readonly pot: PotId } | 'bank'

/**
 * One line to tick off: pieces of one value go from one place to another. `amount` leaves the cash side of `from` and
 * joins that of `to`; the card sides move by as much the other way.
 */
export interface SettleMove {
  readonly from: SettlePlace
  readonly to: SettlePlace
  /** In minor units. */
  readonly denomination: number
  readonly count: number
  readonly amount: Money
}

/**
 * The moves from the counted to the final pieces, in as few lines as may be, in the order to tick them off: first
 * between envelopes, envelope by envelope; then the bank trip in one block, what is taken there before what is brought.
 */
export function settleMoves(task: SettleTask, final: readonly (readonly number[])[]): SettleMove[] {
  const { envelopes, denominations, currency } = task
  const bank = envelopes.length
  const all = denominations.flatMap((denomination, at) => {
    const balances = envelopes.map(({ counted }, index) => (counted[at] ?? 0) - (final[index]?.[at] ?? 0))
    const sum = balances.reduce((s, n) => s + n, 0)
    return fewestTransfers([...balances, -sum]).map((transfer) => ({ ...transfer, denomination }))
  })
  const block = ({ from, to }: Transfer): number => (from === bank ? 2 : to === bank ? 1 : 0)
  const place = (index: number): SettlePlace => {
    const pot = envelopes[index]?.pot
    return pot === undefined ? 'bank' : { pot }
  }
  return all
    .sort((a, b) => block(a) - block(b) || a.from - b.from || a.to - b.to || b.denomination - a.denomination)
    .map(({ from, to, denomination, count }) => ({
      from: place(from),
      to: place(to),
      denomination,
      count,
      amount: ofMinor(currency, denomination * count),
    }))
}

/** The pieces that go `to` the bank or come `from` it. */
export function bankPieces(
  denominations: readonly number[],
  moves: readonly SettleMove[],
  way: 'from' | 'to',
): PieceCount[] {
  const counts = denominations.map((value) =>
    moves.reduce((sum, move) => sum + (move[way] === 'bank' && move.denomination === value ? move.count : 0), 0),
  )
  return pieceList(denominations, counts)
}
