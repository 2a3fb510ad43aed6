import type { Level } from '../money/piece-level.ts'
import type { PieceProgram, Pool } from '../money/piece-program.ts'
import { shareScarce } from '../money/piece-shortfall.ts'
import { worthOf } from '../money/piece-stock.ts'
import type { SettleTask } from './settle-input.ts'

/** Each envelope's final pieces, and how good that is proven to be. */
export interface SolvedSettle {
  readonly final: readonly (readonly number[])[]
  readonly moved: number
  readonly movedAtLeast: number
  /** In minor units. */
  readonly missing: number
  readonly missingAtLeast: number
}

/**
 * Settling as a `PieceProgram`: what each envelope gains or gives of each denomination. A piece counts once, when it
 * leaves an envelope (so an envelope pays 1 for each piece it gives, and nothing for what it gets) or the bank (so what
 * the envelopes get beyond what they give costs 1 each). The bank takes what they give beyond what they get.
 */
export function solveSettle(task: SettleTask): SolvedSettle {
  const { denominations, unit, envelopes, gives, trip } = task
  const total = denominations.map((_, at) => envelopes.reduce((sum, { counted }) => sum + (counted[at] ?? 0), 0))
  const pools = denominations.map(
    (_, at): Pool => ({
      free: 0,
      price: gives[at] ? 1 : 0,
      least: trip ? Number.NEGATIVE_INFINITY : 0,
      most: gives[at] ? Number.POSITIVE_INFINITY : 0,
    }),
  )
  const program: PieceProgram = {
    pools,
    envelopes: envelopes.map(({ counted, expressible }) => ({
      amount: (expressible - worthOf(denominations, counted)) / unit,
      levels: denominations.map((value, at): Level => {
        const own = counted[at] ?? 0
        const most = gives[at] ? Number.POSITIVE_INFINITY : (total[at] ?? 0) - own
        // 1 for each piece given, nothing for each got: -n below zero, 0 above.
        return { value: value / unit, least: 0 - own, most, slope: -1, corners: [{ at: 0, gain: 1 }] }
      }),
    })),
  }
  const solved = shareScarce(program, { closed: !trip, start: startOf(task), ceiling: ceilingOf(task) })
  // What even one envelope alone could not get is missing in any case.
  const beyond = envelopes.reduce((sum, { rounded, expressible }) => sum + rounded - expressible, 0)
  return {
    final: envelopes.map(({ counted }, index) => counted.map((n, at) => n + (solved.counts[index]?.[at] ?? 0))),
    moved: solved.cost,
    movedAtLeast: solved.atLeast,
    missing: beyond + solved.short * unit,
    missingAtLeast: beyond + solved.shortAtLeast * unit,
  }
}

/** No list moves more pieces than there are in the envelopes and could come from the bank at the very most. */
function ceilingOf({ denominations, unit, envelopes, trip }: SettleTask): number {
  const counted = envelopes.reduce((sum, of) => sum + of.counted.reduce((s, n) => s + n, 0), 0)
  if (!trip) return counted
  const smallest = denominations.at(-1) ?? unit
  return counted + envelopes.reduce((sum, { expressible }) => sum + Math.ceil(expressible / smallest), 0)
}

/** The changes that lead to what an earlier settle was heading for. */
function startOf({ goOnTo, envelopes }: SettleTask): readonly (readonly number[])[] | null {
  return goOnTo && envelopes.map(({ counted }, index) => counted.map((n, at) => (goOnTo[index]?.[at] ?? 0) - n))
}
