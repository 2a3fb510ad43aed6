import { gcd, type Level, levelCost } from './piece-level.ts'

/** A run of pieces of one level that all cost the same. */
interface Run {
  readonly index: number
  readonly value: number
  readonly pieces: number
  readonly cost: number
  readonly rate: number
}

/**
 * What an envelope's last levels could make if pieces could be cut. The tail at `index` is that level and all after it;
 * the one past the last level is empty.
 *
 * A tail makes the amounts from `lowest` to `highest`, its cheapest runs of pieces first; `divisor` is what every amount
 * of whole pieces is a multiple of (0 for the empty tail). All tails lie in one table, because they are made anew for
 * every set of prices.
 */
export class Tails {
  readonly lowest: number[]
  readonly highest: number[]
  readonly divisor: number[]
  /** Per tail and run: the amount and the cost where it starts, its rate, the pieces of the tail's first level by then. */
  readonly #amounts: number[]
  readonly #costs: number[]
  readonly #rates: number[]
  readonly #firsts: number[]
  readonly #last: number[]
  readonly #width: number
  readonly #values: number[]

  constructor(levels: readonly Level[]) {
    const runs = levels.flatMap(runsOf).sort((a, b) => a.rate - b.rate)
    const size = levels.length + 1
    this.#width = runs.length + 1
    this.#amounts = new Array<number>(size * this.#width).fill(0)
    this.#costs = new Array<number>(size * this.#width).fill(0)
    this.#rates = new Array<number>(size * this.#width).fill(0)
    this.#firsts = new Array<number>(size * this.#width).fill(0)
    this.lowest = new Array<number>(size).fill(0)
    this.highest = new Array<number>(size).fill(0)
    this.divisor = new Array<number>(size).fill(0)
    this.#last = new Array<number>(size).fill(0)
    this.#values = levels.map(({ value }) => value)
    let amount = 0
    let cost = 0
    for (let index = levels.length - 1; index >= 0; index--) {
      const level = levels[index]
      if (!level) continue
      amount += level.value * level.least
      cost += levelCost(level, level.least)
      this.divisor[index] = gcd(level.value, this.divisor[index + 1] ?? 0)
      this.#lay(index, runs, amount, cost, level.least)
    }
  }

  #lay(index: number, runs: readonly Run[], lowest: number, start: number, least: number): void {
    let at = index * this.#width
    let amount = lowest
    let cost = start
    let pieces = least
    this.lowest[index] = lowest
    for (const run of runs) {
      if (run.index < index) continue
      this.#amounts[at] = amount
      this.#costs[at] = cost
      this.#firsts[at] = pieces
      this.#rates[at] = run.rate
      at += 1
      amount += run.pieces * run.value
      cost += run.pieces * run.cost
      if (run.index === index) pieces += run.pieces
      if (amount === Number.POSITIVE_INFINITY) break
    }
    // A last corner, so that the pieces of the first level can be told within every run.
    this.#amounts[at] = amount
    this.#costs[at] = cost
    this.#firsts[at] = pieces
    this.#last[index] = at
    this.highest[index] = amount
  }

  /** The least an amount can cost in a tail; `Infinity` out of reach. */
  cheapest(index: number, amount: number): number {
    if (amount < (this.lowest[index] ?? 0) || amount > (this.highest[index] ?? 0)) return Number.POSITIVE_INFINITY
    const at = this.#runAt(index, amount)
    return (this.#costs[at] ?? 0) + (amount - (this.#amounts[at] ?? 0)) * (this.#rates[at] ?? 0)
  }

  /** How many pieces of its first level the cheapest way of a tail to an amount takes, perhaps with a part of one. */
  ideal(index: number, amount: number): number {
    const at = this.#runAt(index, amount)
    const firsts = this.#firsts[at] ?? 0
    const own = (this.#firsts[at + 1] ?? 0) > firsts && at < (this.#last[index] ?? 0)
    return own ? firsts + (amount - (this.#amounts[at] ?? 0)) / (this.#values[index] ?? 1) : firsts
  }

  #runAt(index: number, amount: number): number {
    let low = index * this.#width
    let high = this.#last[index] ?? low
    while (high - low > 1) {
      const middle = (low + high) >> 1
      if ((this.#amounts[middle] ?? 0) <= amount) low = middle
      else high = middle
    }
    return low
  }
}

/** The runs of one level, from its least count up. */
function runsOf(level: Level, index: number): Run[] {
  const { value } = level
  const corners = level.corners.length > 1 ? [...level.corners].sort((a, b) => a.at - b.at) : level.corners
  const runs: Run[] = []
  let from = level.least
  let cost = level.slope
  for (const { at, gain } of corners) {
    const to = Math.min(at, level.most)
    if (to > from) {
      runs.push({ index, value, pieces: to - from, cost, rate: cost / value })
      from = to
    }
    cost += gain
  }
  if (level.most > from) runs.push({ index, value, pieces: level.most - from, cost, rate: cost / value })
  return runs
}
