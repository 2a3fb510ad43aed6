import { MoneyError } from './money-error.ts'

/** A denomination in minor units and how many pieces of it may be used: `Infinity` for as many as are needed. */
export interface Supply {
  readonly value: number
  readonly stock: number
}

/** Steps after which the search gives up: some tenths of a second, and far more than a currency needs (under 0.2 ms). */
const MOST_STEPS = 2_000_000

/** A denomination as the search sees it, with facts about the smaller ones that follow it. */
interface Level extends Supply {
  /** Greatest common divisor of this value and all smaller ones: what it does not divide cannot be paid from here. */
  readonly divisor: number
  /** What this denomination and all smaller ones are worth together. */
  readonly capacity: number
  readonly limits: readonly Limit[]
}

/** In a fewest-pieces payment, wherever `spare` pieces are left unused, the smaller pieces are worth `most` or less. */
interface Limit {
  readonly spare: number
  readonly most: number
}

interface Found {
  /** Pieces of this level. */
  readonly count: number
  /** Pieces of this level and all that follow; `Infinity` where there is no way. */
  readonly total: number
}

const NO_WAY: Found = { count: 0, total: Number.POSITIVE_INFINITY }

/**
 * The fewest pieces that pay an amount exactly: how many of each supply, in the order given, or null where no choice of
 * pieces makes the amount. Among equally few pieces, the one with more of the larger denominations.
 *
 * Works from the largest value down and remembers every (denomination, rest) it has solved. `limitsOf` keeps the counts
 * worth trying to a handful for a real currency, however large the amount.
 *
 * @param supplies values from the largest down, no two alike, all whole and above zero
 * @throws MoneyError `search-too-large`
 */
export function fewestPieces(amount: number, supplies: readonly Supply[]): number[] | null {
  const levels = levelsOf(supplies)
  const memo = levels.map(() => new Map<number, Found>())
  let steps = 0

  function solve(index: number, rest: number): Found {
    const level = levels[index]
    const known = memo[index]
    if (rest === 0) return { count: 0, total: 0 }
    if (!level || !known || rest > level.capacity || rest % level.divisor !== 0) return NO_WAY
    const before = known.get(rest)
    if (before) return before

    const next = levels[index + 1]
    let best = NO_WAY
    const least = leastCount(level, next, rest)
    for (let count = Math.min(level.stock, Math.floor(rest / level.value)); count >= least; count--) {
      steps += 1
      if (steps > MOST_STEPS) throw searchTooLarge(amount, supplies)
      const restAfter = rest - count * level.value
      // With fewer of this piece the smaller ones can only become more, so nothing better follows.
      if (count + atLeast(levels, index + 1, restAfter) >= best.total) break
      const total = count + solve(index + 1, restAfter).total
      if (total < best.total) best = { count, total }
    }
    known.set(rest, best)
    return best
  }

  if (solve(0, amount).total === Number.POSITIVE_INFINITY) return null
  let rest = amount
  return levels.map((level, index) => {
    const { count } = solve(index, rest)
    rest -= count * level.value
    return count
  })
}

/** As many pieces as would do if they could be cut: no payment of the rest from this level on has fewer. */
function atLeast(levels: readonly Level[], from: number, rest: number): number {
  let pieces = 0
  let open = rest
  for (const { value, stock } of levels.slice(from)) {
    if (stock >= open / value) return pieces + open / value
    pieces += stock
    open -= stock * value
  }
  return open === 0 ? pieces : Number.POSITIVE_INFINITY
}

/** No fewest-pieces payment of the rest has fewer of this piece. */
function leastCount(level: Level, next: Level | undefined, rest: number): number {
  const bounds = level.limits.map(({ spare, most }) =>
    Math.min(level.stock - spare + 1, Math.ceil((rest - most) / level.value)),
  )
  return Math.max(0, Math.ceil((rest - (next?.capacity ?? 0)) / level.value), ...bounds)
}

function levelsOf(supplies: readonly Supply[]): Level[] {
  const levels: Level[] = []
  for (const supply of [...supplies].reverse()) {
    const below = levels[0]
    levels.unshift({
      ...supply,
      divisor: gcd(supply.value, below?.divisor ?? 0),
      capacity: supply.value * supply.stock + (below?.capacity ?? 0),
      limits: limitsOf(supply.value, levels),
    })
  }
  return levels
}

/**
 * Two exchange arguments. Each makes a payment shorter, so a fewest-pieces payment can make neither.
 *
 * 1. Let L be the least common multiple of this value v and a smaller w. L/w pieces of w can be exchanged for L/v pieces
 *    of v, if so many are unused. So with `spare` of v unused for every w, there are at most L/w - 1 pieces of each w.
 * 2. Among any n = v/g smaller pieces (g divides all the values) some are together worth a multiple of v, because two of
 *    the n + 1 partial sums leave the same remainder. They are exchanged for fewer than n pieces of v. So with n - 1 of
 *    v unused there are at most n - 1 smaller pieces.
 */
function limitsOf(value: number, smaller: readonly Level[]): Limit[] {
  const largest = smaller[0]
  if (!largest) return []
  let spare = 0
  let most = 0
  for (const { value: other } of smaller) {
    const divisor = gcd(value, other)
    spare = Math.max(spare, other / divisor)
    most += (value / divisor - 1) * other
  }
  const pieces = value / gcd(value, largest.divisor) - 1
  return [
    { spare, most },
    { spare: pieces, most: pieces * largest.value },
  ]
}

function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b)
}

function searchTooLarge(amount: number, supplies: readonly Supply[]): MoneyError {
  return new MoneyError(
    'search-too-large',
    `Paying ${amount} minor units with ${supplies.length} such uneven denominations would take too long to work out. ` +
      'Use fewer denominations or rounder values.',
  )
}
