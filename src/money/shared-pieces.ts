import { cheapestPieces, type Effort, OutOfSteps } from './cheapest-pieces.ts'
import { combine } from './piece-combining.ts'
import { type Level, levelCost, withCosts } from './piece-level.ts'
import { type Priced, SCALE, searchPrices } from './piece-prices.ts'
import { netOf, type PieceAnswer, type PieceProgram, type Pool, totalCost } from './piece-program.ts'

type Counts = readonly (readonly number[])[]

export interface SharedOptions {
  /** A solution known already: the answer is never worse. */
  readonly start?: Counts | null
  /** What no solution costs more than. Needed to prove that there is none. */
  readonly ceiling: number
  /** The part of the usual steps this one may take, where several make one answer; 1 when left out. */
  readonly share?: number
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
  const { ceiling, share = 1 } = options
  const best = new BestSolution(program, options.start ?? null)
  const usual: number[][] = program.envelopes.map(() => [])
  if (best.counts) best.offer(improve(program, best.counts))
  let round = 0
  const priced = searchPrices(program, ROUNDS, { steps: 0, most: PRICE_STEPS * share }, (met) => {
    const chosen = met.choices.map((choice) => choice.counts)
    noteUsual(usual, chosen, round === 0 ? 1 : 0.15)
    best.offer(chosen)
    if (round % 16 === 0) best.offer(improve(program, chosen))
    round += 1
    return best.cost
  })
  if (priced === 'no-choice') return best.answer(Number.POSITIVE_INFINITY)
  if (!priced) return best.answer(0)
  if (best.counts && priced.bound <= (best.cost - 1) * SCALE) best.offer(improve(program, best.counts))
  const task: Combining = { program, priced, usual, best, ceiling, share }
  return best.answer(prove(task, look(task)))
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

/** What the combining of choices works on. */
interface Combining {
  readonly program: PieceProgram
  readonly priced: Priced
  readonly usual: Counts
  readonly best: BestSolution
  readonly ceiling: number
  readonly share: number
}

/** Looks narrowly for a good solution, a little above the bound first. Gives the bound, perhaps raised. */
function look({ program, priced, usual, best, ceiling, share }: Combining): number {
  let atLeast = Math.ceil(priced.bound / SCALE)
  for (const more of [1, 3, 10, 100]) {
    if (best.cost < atLeast + more) break
    const goal = Math.min(atLeast + more, best.cost - 1, ceiling)
    const effort: Effort = { steps: 0, most: LOOK_STEPS * share }
    const { counts, complete } = combine(program, priced, usual, goal, { choices: 100, ways: 100 }, effort)
    if (counts) best.offer(improve(program, counts))
    best.offer(counts)
    if (complete && !counts) atLeast = goal + 1
    if (atLeast > ceiling) return Number.POSITIVE_INFINITY
  }
  return atLeast
}

/** Combines everything that could cost as little as the bound, raising it while there is nothing. */
function prove({ program, priced, usual, best, ceiling, share }: Combining, from: number): number {
  const effort: Effort = { steps: 0, most: PROOF_STEPS * share }
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

const ROUNDS = 30
const PRICE_STEPS = 300_000
const LOOK_STEPS = 120_000
const PROOF_STEPS = 80_000
const IMPROVE_STEPS = 100_000

/** A running average of what each envelope takes. */
function noteUsual(usual: number[][], chosen: Counts, weight: number): void {
  for (const [index, of] of chosen.entries()) {
    const before = usual[index] ?? []
    usual[index] = of.map((count, at) => (1 - weight) * (before[at] ?? 0) + weight * count)
  }
}

/**
 * Lets each envelope in turn choose again, given what the others have, until none finds anything better or the steps are
 * used up. While a pool is overdrawn, its pieces cost more than anything they could save.
 */
function improve(program: PieceProgram, start: Counts): Counts {
  const effort: Effort = { steps: 0, most: IMPROVE_STEPS }
  const penalty = 50 * dearest(program)
  const counts = start.map((of) => [...of])
  const net = netOf(program.pools, counts)
  try {
    for (let changed = true, round = 0; changed && round < 8; round++) {
      changed = false
      for (const [index, { amount, levels }] of program.envelopes.entries()) {
        const own = counts[index] ?? []
        const given = levels.map((level, at) =>
          givenOthers(level, program.pools[at], (net[at] ?? 0) - (own[at] ?? 0), penalty),
        )
        const better = cheapestPieces(amount, given, effort).best()
        if (!better || better.cost >= given.reduce((sum, level, at) => sum + levelCost(level, own[at] ?? 0), 0))
          continue
        changed = true
        for (let at = 0; at < net.length; at++) net[at] = (net[at] ?? 0) + (better.counts[at] ?? 0) - (own[at] ?? 0)
        counts[index] = [...better.counts]
      }
    }
  } catch (error) {
    if (!(error instanceof OutOfSteps)) throw error
  }
  return counts
}

/** A level with what its pool costs on top, when the other envelopes take `others` from it. */
function givenOthers(level: Level, pool: Pool | undefined, others: number, penalty: number): Level {
  if (!pool) return level
  const corners = [{ at: pool.free - others, gain: pool.price }]
  if (Number.isFinite(pool.most)) corners.push({ at: pool.most - others, gain: penalty })
  if (!Number.isFinite(pool.least)) return withCosts(level, 0, corners)
  return withCosts(level, -penalty, [...corners, { at: pool.least - others, gain: penalty }])
}

/** The most that one piece can cost or save anywhere. */
function dearest({ pools, envelopes }: PieceProgram): number {
  let most = 1
  for (const { price, worth = 0 } of pools) most = Math.max(most, price, worth)
  for (const { levels } of envelopes) {
    for (const { slope, corners } of levels) {
      most = Math.max(most, Math.abs(slope), ...corners.map(({ gain }) => gain))
    }
  }
  return most
}
