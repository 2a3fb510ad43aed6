import { type Choice, cheapestPieces, type Effort, OutOfSteps } from './cheapest-pieces.ts'
import { withCosts } from './piece-level.ts'
import { netOf, type PieceProgram, type Pool } from './piece-program.ts'

/** Prices are whole numbers of this part of a piece, so that bounds are exact: divisible by 1 to 8. */
export const SCALE = 840

/** What a piece of each pool is worth, in 1/SCALE of a piece, and what follows from that. */
export interface Priced {
  readonly prices: readonly number[]
  /** No solution costs less, in 1/SCALE. */
  readonly bound: number
  /** Each envelope's cheapest choice at these prices. */
  readonly choices: readonly Choice[]
  /** Pieces the envelopes take beyond what a pool would best give at its price. */
  readonly excess: readonly number[]
}

/**
 * Lets every envelope choose for itself with each pool's pieces at a price. Whatever the prices, the sum of what that
 * costs is never more than the best solution costs (the Lagrangian bound). Null if an envelope has no choice at all.
 *
 * @throws OutOfSteps
 */
function atPrices(program: PieceProgram, prices: readonly number[], effort: Effort): Priced | null {
  const choices: Choice[] = []
  let bound = 0
  for (let index = 0; index < program.envelopes.length; index++) {
    const choice = pricedEnvelope(program, index, prices, effort).best()
    if (!choice) return null
    choices.push(choice)
    bound += choice.cost
  }
  const net = netOf(
    program.pools,
    choices.map(({ counts }) => counts),
  )
  const excess = program.pools.map((pool, index) => {
    const wanted = net[index] ?? 0
    const price = prices[index] ?? 0
    const [low, high] = bestGiven(pool, price)
    bound += lowestPoolCost(pool, price)
    return wanted - Math.min(Math.max(wanted, low), high)
  })
  return { prices, bound, choices, excess }
}

/** An envelope with the pools' prices on its pieces, in 1/SCALE. */
export function pricedEnvelope(program: PieceProgram, index: number, prices: readonly number[], effort: Effort) {
  const envelope = program.envelopes[index]
  if (!envelope) throw new RangeError(`There is no envelope ${index}.`)
  const levels = envelope.levels.map((level, at) => ({
    ...withCosts(level, 0),
    slope: level.slope * SCALE + (prices[at] ?? 0),
    corners: level.corners.map((corner) => ({ ...corner, gain: corner.gain * SCALE })),
  }))
  return cheapestPieces(envelope.amount, levels, effort)
}

/** What a pool costs when it gives `net` pieces and is paid `price` for each, in 1/SCALE. */
export function poolAt(pool: Pool, price: number, net: number): number {
  return pool.price * SCALE * Math.max(0, net - pool.free) - price * net
}

/** The nets at which `poolAt` is lowest, from the least to the most. */
export function bestGiven(pool: Pool, price: number): readonly [number, number] {
  const full = pool.price * SCALE
  if (price < 0) return [pool.least, pool.least]
  if (price === 0 && full > 0) return [pool.least, pool.free]
  if (price === 0) return [pool.least, pool.most]
  if (price < full) return [pool.free, pool.free]
  return price === full ? [pool.free, pool.most] : [pool.most, pool.most]
}

/** The lowest that `poolAt` gets, in 1/SCALE. */
export function lowestPoolCost(pool: Pool, price: number): number {
  const [low, high] = bestGiven(pool, price)
  return poolAt(pool, price, Math.min(Math.max(pool.free, low), high))
}

/** The prices worth asking: beyond them a pool without end would give or take without end. */
function priceRange(pool: Pool): readonly [number, number] {
  return [
    pool.least === Number.NEGATIVE_INFINITY ? 0 : Number.NEGATIVE_INFINITY,
    pool.most === Number.POSITIVE_INFINITY ? pool.price * SCALE : Number.POSITIVE_INFINITY,
  ]
}

/** Prices to start from: what a piece costs, where it always does; else the middle. */
function firstPrices(program: PieceProgram): number[] {
  return program.pools.map((pool, index) => {
    const [low, high] = priceRange(pool)
    const onlyTakes = program.envelopes.every(({ levels }) => (levels[index]?.least ?? 0) >= 0)
    if (onlyTakes && pool.free === 0 && Number.isFinite(high)) return high
    if (pool.worth !== undefined) return Math.min(Math.round((pool.worth * SCALE) / 2), high)
    return Number.isFinite(high) && Number.isFinite(low) ? Math.round((low + high) / 2) : 0
  })
}

/**
 * Looks for the prices with the highest bound, by the subgradient method with Polyak's step, and shows every set of
 * choices it meets to `meet`, which answers with the cost of the best solution known (in pieces).
 *
 * @returns the best prices; `no-choice` where some envelope cannot be made at all; null where the steps ran out before
 *   anything was known
 */
export function searchPrices(
  program: PieceProgram,
  rounds: number,
  effort: Effort,
  meet: (priced: Priced) => number,
): Priced | 'no-choice' | null {
  let prices = firstPrices(program)
  let best: Priced | null = null
  let stride = 1
  let idle = 0
  for (let round = 0; round < rounds; round++) {
    const priced = tryPrices(program, prices, effort)
    if (priced === 'out-of-steps') return best
    if (priced === 'no-choice') return priced
    idle += 1
    if (!best || priced.bound > best.bound) {
      best = priced
      idle = 0
    }
    const known = meet(priced)
    if (priced.excess.every((e) => e === 0) || Math.ceil(best.bound / SCALE) >= known) return best
    if (idle < 4) {
      prices = moved(program, priced, stride * gapOf(priced, known))
      continue
    }
    stride /= 2
    idle = 0
    if (stride < 0.02) return best
    prices = moved(program, best, stride * gapOf(best, known))
  }
  return best
}

function tryPrices(
  program: PieceProgram,
  prices: readonly number[],
  effort: Effort,
): Priced | 'no-choice' | 'out-of-steps' {
  try {
    return atPrices(program, prices, effort) ?? 'no-choice'
  } catch (error) {
    if (error instanceof OutOfSteps) return 'out-of-steps'
    throw error
  }
}

function gapOf(priced: Priced, known: number): number {
  const goal = Number.isFinite(known) ? known * SCALE : priced.bound + 3 * SCALE
  return Math.max(goal - priced.bound, SCALE / 4)
}

/** Prices moved against the excess of each pool, each in proportion to what its pieces are worth. */
function moved(program: PieceProgram, { prices, excess }: Priced, gap: number): number[] {
  const way = program.pools.map(({ worth = 1 }, index) => worth * (excess[index] ?? 0))
  const step = gap / way.reduce((sum, w) => sum + w * w, 0)
  return program.pools.map((pool, index) => {
    const [low, high] = priceRange(pool)
    const next = Math.round((prices[index] ?? 0) + step * (pool.worth ?? 1) * (way[index] ?? 0))
    return Math.min(Math.max(next, low), high)
  })
}
