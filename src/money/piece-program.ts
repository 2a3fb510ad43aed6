import { type Level, levelCost } from './piece-level.ts'

/**
 * The common stock of one denomination. The envelopes together take `net` pieces more than they give: the first `free`
 * of them cost nothing, each further one costs `price`, and the net must stay between `least` and `most`.
 */
export interface Pool {
  readonly free: number
  readonly price: number
  readonly least: number
  readonly most: number
  /** About what one of its pieces saves elsewhere, where that is known: the search for its price starts from there. */
  readonly worth?: number
}

/** An envelope: its pieces must come to `amount`. Its levels are in the order of the program's pools. */
export interface Envelope {
  readonly amount: number
  readonly levels: readonly Level[]
}

/**
 * Envelopes that take pieces from common pools and give pieces to them: choose each envelope's counts so that its amount
 * is made exactly, no pool is overdrawn, and the cost over all levels and pools is the least. All figures are whole.
 */
export interface PieceProgram {
  readonly pools: readonly Pool[]
  readonly envelopes: readonly Envelope[]
}

/** Counts per envelope and level, or null where none were found; no solution costs less than `atLeast`. */
export interface PieceAnswer {
  readonly counts: readonly (readonly number[])[] | null
  readonly cost: number
  /** `Infinity` when it is proven that there is no solution. */
  readonly atLeast: number
}

/** What the pools cost at these nets; `Infinity` where one is overdrawn. */
export function poolCost(pools: readonly Pool[], net: readonly number[]): number {
  let cost = 0
  for (const [index, { free, price, least, most }] of pools.entries()) {
    const wanted = net[index] ?? 0
    if (wanted < least || wanted > most) return Number.POSITIVE_INFINITY
    cost += price * Math.max(0, wanted - free)
  }
  return cost
}

/** What the envelopes take together, by pool. */
export function netOf(pools: readonly Pool[], counts: readonly (readonly number[])[]): number[] {
  return pools.map((_, index) => counts.reduce((sum, of) => sum + (of[index] ?? 0), 0))
}

/** What one envelope's counts cost by themselves. */
export function envelopeCost(envelope: Envelope, counts: readonly number[]): number {
  return envelope.levels.reduce((sum, level, index) => sum + levelCost(level, counts[index] ?? 0), 0)
}

/** The whole cost of a solution; `Infinity` where a pool is overdrawn. */
export function totalCost(program: PieceProgram, counts: readonly (readonly number[])[]): number {
  const own = program.envelopes.reduce((sum, envelope, index) => sum + envelopeCost(envelope, counts[index] ?? []), 0)
  return own + poolCost(program.pools, netOf(program.pools, counts))
}
