import { type Level, levelCost } from './piece-level.ts'
import { Tails } from './piece-tails.ts'

/** Counts per level and what they cost. */
export interface Choice {
  readonly counts: readonly number[]
  readonly cost: number
}

/** Counts the work of a search, so that it can stop at the same place on every machine. */
export interface Effort {
  steps: number
  readonly most: number
}

/** One envelope's amount and levels, ready to be asked for its best choices. */
export interface CheapestPieces {
  /** The cheapest choice, or null where none makes the amount. */
  best(): Choice | null
  /** All choices up to a cost, the cheapest first; null when there are more than `most`. */
  upTo(cost: number, most: number): Choice[] | null
}

/** Costs are whole numbers, so that what is not lower by nearly one is not lower. Covers the error of the fractions. */
const HAIR = 0.01

/** The search was stopped by its effort: what it knows so far proves nothing. */
export class OutOfSteps extends Error {}

/** What is known of a level and a rest: its cheapest cost, or only that it costs `cost` at least. */
interface Known {
  readonly count: number
  readonly cost: number
  readonly exact: boolean
}

const NOTHING_LEFT: Known = { count: 0, cost: 0, exact: true }
const NO_WAY: Known = { count: 0, cost: Number.POSITIVE_INFINITY, exact: true }

/**
 * The cheapest choice of pieces that makes an amount exactly: `sum of value * count = amount`, each count within its
 * level, costs convex per level and whole numbers.
 *
 * Works from the first level down and remembers what it learnt of every (level, rest). At each it starts from the count
 * that would be best if the smaller pieces could be cut and goes outwards on both sides until that bound is no better
 * than what it has: the bound is convex in the count, so nothing better follows.
 *
 * @param levels values from the largest down, whole and above zero; `least` finite
 * @throws OutOfSteps
 */
export function cheapestPieces(amount: number, levels: readonly Level[], effort: Effort): CheapestPieces {
  const tails = new Tails(levels)
  const memo = new Map<number, Known>()

  /** The cheapest way to make the rest from this level on, if it costs `limit` or less. */
  function solve(index: number, rest: number, limit: number): Known {
    const level = levels[index]
    if (!level) return rest === 0 ? NOTHING_LEFT : NO_WAY
    if (rest % (tails.divisor[index] ?? 1) !== 0 || tails.cheapest(index, rest) > limit + HAIR) return NO_WAY
    const key = rest * levels.length + index
    const before = memo.get(key)
    if (before && (before.exact || before.cost > limit)) return before
    let count = 0
    let best = limit + 1
    let found = false
    outwards(level, index, tails, rest, effort, (tried, bound) => {
      if (bound > best - 1 + HAIR) return false
      const own = levelCost(level, tried)
      const cost = own + solve(index + 1, rest - tried * level.value, best - 1 - own).cost
      if (cost <= best - 1) {
        count = tried
        best = cost
        found = true
      }
      return true
    })
    const learnt = found || limit < Number.POSITIVE_INFINITY ? { count, cost: best, exact: found } : NO_WAY
    memo.set(key, learnt)
    return learnt
  }

  function best(): Choice | null {
    const { cost } = solve(0, amount, Number.POSITIVE_INFINITY)
    if (cost === Number.POSITIVE_INFINITY) return null
    let rest = amount
    let left = cost
    const counts = levels.map((level, index) => {
      const { count } = solve(index, rest, left)
      rest -= count * level.value
      left -= levelCost(level, count)
      return count
    })
    return { counts, cost }
  }

  function upTo(limit: number, most: number): Choice[] | null {
    const found: Choice[] = []
    const counts: number[] = []
    const visit = (index: number, rest: number, paid: number): void => {
      const level = levels[index]
      if (!level) {
        found.push({ counts: [...counts], cost: paid })
        return
      }
      outwards(level, index, tails, rest, effort, (count, bound) => {
        if (paid + bound > limit + HAIR || found.length > most) return false
        const cost = paid + levelCost(level, count)
        const restAfter = rest - count * level.value
        if (cost + solve(index + 1, restAfter, limit - cost).cost > limit) return true
        counts.push(count)
        visit(index + 1, restAfter, cost)
        counts.pop()
        return true
      })
    }
    visit(0, amount, 0)
    return found.length > most ? null : found.sort((a, b) => a.cost - b.cost)
  }

  return { best, upTo }
}

/**
 * Shows the counts a level may have, with the least the whole rest can then cost, from the lowest bound to the highest,
 * until `show` answers false.
 */
function outwards(
  level: Level,
  index: number,
  tails: Tails,
  rest: number,
  effort: Effort,
  show: (count: number, bound: number) => boolean,
): void {
  const after = index + 1
  const low = Math.max(level.least, Math.ceil((rest - (tails.highest[after] ?? 0)) / level.value))
  const high = Math.min(level.most, Math.floor((rest - (tails.lowest[after] ?? 0)) / level.value))
  if (low > high) return
  const bound = (count: number): number => levelCost(level, count) + tails.cheapest(after, rest - count * level.value)
  let left = Math.min(Math.max(Math.floor(tails.ideal(index, rest)), low - 1), high)
  let right = left + 1
  let rightBound = bound(right)
  let leftBound = bound(left)
  while (right <= high || left >= low) {
    effort.steps += 1
    if (effort.steps > effort.most) throw new OutOfSteps()
    if (left < low || (right <= high && rightBound <= leftBound)) {
      if (!show(right, rightBound)) return
      right += 1
      rightBound = bound(right)
    } else {
      if (!show(left, leftBound)) return
      left -= 1
      leftBound = bound(left)
    }
  }
}
