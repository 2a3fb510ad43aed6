import { cheapestPieces, type Effort, OutOfSteps } from './cheapest-pieces.ts'
import { combine } from './piece-combining.ts'
import { withCosts } from './piece-level.ts'
import { type Priced, SCALE, searchPrices } from './piece-prices.ts'
import { netOf, type PieceAnswer, type PieceProgram, totalCost } from './piece-program.ts'

type Counts = readonly (readonly number[])[]

export interface SharedOptions {
  /** A solution known already: the answer is never worse. */
  readonly start?: Counts | null
  /** What no solution costs more than. Needed to prove that there is none. */
  readonly ceiling: number
}

/**
 * Solves a `PieceProgram`, proving how good the answer is.
 *
 * 1. Prices for the pools' pieces let every envelope choose for itself; that bounds every solution from below.
 * 2. Choices met on the way are made better one envelope at a time, given the others; then a narrow combining of all.
 * 3. If a gap is left, near-cheapest choices are combined for every cost from the bound up, so that the first solution
 *    met is the cheapest there is, and costs without one raise the bound.
 *
 * Each part stops after a number of steps, never by a clock, so every machine gives the same answer: the best solution so
 * far, with the bound proven so far.
 */
export function sharePieces(program: PieceProgram, options: SharedOptions): PieceAnswer {
  const best = new BestSolution(program, options.start ?? null)
  const usual: number[][] = program.envelopes.map(() => [])
  const effort: Effort = { steps: 0, most: PRICE_STEPS }
  let priced: Priced | null = null
  try {
    let round = 0
    priced = searchPrices(program, ROUNDS, effort, (met) => {
      const chosen = met.choices.map((choice) => choice.counts)
      noteUsual(usual, chosen, round === 0 ? 1 : 0.15)
      best.offer(chosen)
      if (round % 16 === 0) best.offer(improve(program, chosen, effort))
      round += 1
      return best.cost
    })
    if (!priced) return best.answer(Number.POSITIVE_INFINITY)
    if (best.counts && priced.bound <= (best.cost - 1) * SCALE) best.offer(improve(program, best.counts, effort))
  } catch (error) {
    if (!(error instanceof OutOfSteps)) throw error
  }
  if (!priced) return best.answer(0)
  const from = look(program, priced, usual, best, options.ceiling)
  return best.answer(prove(program, priced, usual, best, options.ceiling, from))
}

class BestSolution {
  counts: Counts | null = null
  cost = Number.POSITIVE_INFINITY

  constructor(
    readonly program: PieceProgram,
    start: Counts | null,
  ) {
    this.offer(start)
  }

  offer(found: Counts | null): void {
    const cost = found ? totalCost(this.program, found) : Number.POSITIVE_INFINITY
    if (cost < this.cost) [this.counts, this.cost] = [found, cost]
  }

  answer(atLeast: number): PieceAnswer {
    return { counts: this.counts, cost: this.cost, atLeast: Math.min(atLeast, this.cost) }
  }
}

/** Looks narrowly for a good solution, a little above the bound first. Gives the bound, perhaps raised. */
function look(program: PieceProgram, priced: Priced, usual: Counts, best: BestSolution, ceiling: number): number {
  let atLeast = Math.ceil(priced.bound / SCALE)
  for (const more of [1, 3, 10, 100]) {
    if (best.cost < atLeast + more) break
    const goal = Math.min(atLeast + more, best.cost - 1, ceiling)
    const effort: Effort = { steps: 0, most: LOOK_STEPS }
    const { counts, complete } = combine(program, priced, usual, goal, { choices: 100, ways: 100 }, effort)
    if (counts) best.offer(improve(program, counts, { steps: 0, most: LOOK_STEPS }))
    best.offer(counts)
    if (complete && !counts) atLeast = goal + 1
    if (atLeast > ceiling) return Number.POSITIVE_INFINITY
  }
  return atLeast
}

/** Combines everything that could cost as little as the bound, raising it while there is nothing. */
function prove(
  program: PieceProgram,
  priced: Priced,
  usual: Counts,
  best: BestSolution,
  ceiling: number,
  from: number,
): number {
  const effort: Effort = { steps: 0, most: PROOF_STEPS }
  let atLeast = from
  while (atLeast < best.cost && atLeast < Number.POSITIVE_INFINITY) {
    // With no solution yet, the first question is whether there is any.
    const goal = best.counts ? atLeast : ceiling
    const { counts, complete } = combine(program, priced, usual, goal, { choices: 3000, ways: 3000 }, effort)
    best.offer(counts)
    if (!complete) return atLeast
    if (counts) return Math.min(best.cost, atLeast < goal ? best.cost : goal)
    atLeast = goal >= ceiling ? Number.POSITIVE_INFINITY : goal + 1
  }
  return atLeast
}

const ROUNDS = 40
const PRICE_STEPS = 300_000
const LOOK_STEPS = 300_000
const PROOF_STEPS = 150_000

/** A running average of what each envelope takes. */
function noteUsual(usual: number[][], chosen: Counts, weight: number): void {
  for (const [index, of] of chosen.entries()) {
    const before = usual[index] ?? []
    usual[index] = of.map((count, at) => (1 - weight) * (before[at] ?? 0) + weight * count)
  }
}

/** A piece too many or too few in a pool costs this much while a solution is still being made. */
const PENALTY = 50

/** Lets each envelope in turn choose again, given what the others have, until none finds anything better. */
function improve(program: PieceProgram, start: Counts, effort: Effort): Counts {
  const counts = start.map((of) => [...of])
  const net = netOf(program.pools, counts)
  for (let changed = true, round = 0; changed && round < 8; round++) {
    changed = false
    for (const [index, envelope] of program.envelopes.entries()) {
      const own = counts[index] ?? []
      const levels = envelope.levels.map((level, at) => {
        const pool = program.pools[at]
        if (!pool) return level
        const others = (net[at] ?? 0) - (own[at] ?? 0)
        const corners = [{ at: pool.free - others, gain: pool.price }]
        if (Number.isFinite(pool.most)) corners.push({ at: pool.most - others, gain: PENALTY })
        if (!Number.isFinite(pool.least)) return withCosts(level, 0, corners)
        return withCosts(level, -PENALTY, [...corners, { at: pool.least - others, gain: PENALTY }])
      })
      const asked = cheapestPieces(envelope.amount, levels, effort)
      const better = asked.best()
      if (!better) continue
      const cost = (of: readonly number[]) =>
        levels.reduce((sum, level, at) => {
          let price = level.slope * (of[at] ?? 0)
          for (const corner of level.corners) price += corner.gain * Math.max(0, (of[at] ?? 0) - corner.at)
          return sum + price
        }, 0)
      if (better.cost >= cost(own)) continue
      changed = true
      for (let at = 0; at < net.length; at++) net[at] = (net[at] ?? 0) + (better.counts[at] ?? 0) - (own[at] ?? 0)
      counts[index] = [...better.counts]
    }
  }
  return counts
}
