import { type Chosen, leastSum } from './least-sum.ts'

/*
 * The search behind `smallestRemoval`, on whole minor units. Pots are coupled by the costs that stay whole: what is taken
 * out of one pot moves a part of the shipping onto the others.
 */

/** The items of one pot. */
export interface PotItems {
  /** Places of the items in the order, dearest first, with their values, all above zero. */
  readonly places: readonly number[]
  readonly values: readonly number[]
  readonly worth: number
  /** The most this pot can bear; null where it bears anything. */
  readonly most: number | null
}

/** What the order costs beside its items. */
export interface CostsBeside {
  /** Worth of all items. */
  readonly worth: number
  /** Stays whole and falls on the items kept, pro rata. */
  readonly stays: number
  /** Goes up and down with the items; not less than minus their worth. */
  readonly follows: number
}

/**
 * The places of the fewest items, then the least value, to take out so that every pot bears its part wherever the odd
 * cents fall; all of them where nothing less will do.
 *
 * First the least amount every pot must lose is found, and by it the fewest items each must lose. What is taken out
 * beyond that amount (items cannot be cut) shifts costs onto other pots; the least such sums for given counts are the
 * least fixed point of a monotone step. Counts are raised one by one, in every way, until one works.
 */
export function takeOut(pots: readonly PotItems[], costs: CostsBeside): number[] {
  const bound = pots.filter((p) => p.most !== null && p.worth > 0)
  const least = leastLosses(bound, costs)
  const counts = bound.map((p, n) => fewest(p.values, least[n] ?? 0))
  const greedy = raiseUntilItFits(bound, costs, counts, least)
  const spare = sum(greedy.counts) - sum(counts)
  let best = greedy.choice
  for (let more = 0; more < spare; more++) {
    const fitting = ways(counts, more, bound)
      .map((c) => settle(bound, costs, c, least))
      .filter((c) => Array.isArray(c))
    const found = fitting.sort((a, b) => sum(a.map((x) => x.sum)) - sum(b.map((x) => x.sum)))[0]
    if (found) {
      best = found
      return placesOf(bound, best)
    }
  }
  if (spare > 0) {
    for (const way of ways(counts, spare, bound)) {
      const choice = settle(bound, costs, way, least)
      if (Array.isArray(choice) && sum(choice.map((x) => x.sum)) < sum(best.map((x) => x.sum))) best = choice
    }
  }
  return placesOf(bound, best)
}

/** What each pot must lose at the very least, were items divisible. */
function leastLosses(pots: readonly PotItems[], costs: CostsBeside): number[] {
  const keptAt = (all: number): number => costs.worth - sum(pots.map((p) => loss(p, costs, all)))
  // What can be kept grows slower and slower with what is kept of all, so the crossing can be halved in upon; each cap
  // is cut to a whole unit, so the search looks that much above it and walks down to the exact point.
  let [low, high] = [0, costs.worth]
  while (low < high) {
    const middle = Math.ceil((low + high) / 2)
    if (keptAt(middle) + pots.length >= middle) low = middle
    else high = middle - 1
  }
  let all = Math.min(costs.worth, low + pots.length)
  for (let kept = keptAt(all); kept < all; kept = keptAt(all)) all = kept
  return pots.map((p) => loss(p, costs, all))
}

/** The least sums for these counts, or the place of the first pot whose count is too small. */
function settle(
  pots: readonly PotItems[],
  costs: CostsBeside,
  counts: readonly number[],
  least: readonly number[],
): Chosen[] | number {
  const chosen: Chosen[] = []
  for (const [n, p] of pots.entries()) {
    const first = leastSum(p.values, counts[n] ?? 0, least[n] ?? 0)
    if (!first) return n
    chosen.push(first)
  }
  for (let changed = true; changed; ) {
    changed = false
    for (const [n, p] of pots.entries()) {
      const all = costs.worth - sum(chosen.map((c) => c.sum))
      const needed = loss(p, costs, all)
      if (needed <= (chosen[n]?.sum ?? 0)) continue
      const next = leastSum(p.values, counts[n] ?? 0, needed)
      if (!next) return n
      chosen[n] = next
      changed = true
    }
  }
  return chosen
}

function raiseUntilItFits(
  pots: readonly PotItems[],
  costs: CostsBeside,
  from: readonly number[],
  least: readonly number[],
): { counts: number[]; choice: Chosen[] } {
  const counts = [...from]
  for (;;) {
    const choice = settle(pots, costs, counts, least)
    if (Array.isArray(choice)) return { counts, choice }
    counts[choice] = (counts[choice] ?? 0) + 1
  }
}

/** All ways to raise counts by `more` in all, none beyond the items there are. */
function ways(counts: readonly number[], more: number, pots: readonly PotItems[]): number[][] {
  const [first, ...rest] = counts
  if (first === undefined) return more === 0 ? [[]] : []
  const room = (pots[0]?.values.length ?? 0) - first
  const found: number[][] = []
  for (let by = 0; by <= Math.min(more, room); by++) {
    for (const tail of ways(rest, more - by, pots.slice(1))) found.push([first + by, ...tail])
  }
  return found
}

/** How much of its items a pot must lose when `all` is kept of the order's items. */
function loss(pot: PotItems, costs: CostsBeside, all: number): number {
  let [low, high] = [0, pot.worth]
  while (low < high) {
    const middle = Math.ceil((low + high) / 2)
    if (bears(pot, costs, middle, all)) low = middle
    else high = middle - 1
  }
  return pot.worth - low
}

/** Whether a pot bears so much of its items with their part of the costs, rounded against it. */
function bears(pot: PotItems, { worth, stays, follows }: CostsBeside, kept: number, all: number): boolean {
  if (kept === 0) return true
  // A gift card's part is counted as if the other pots kept all they have: it is never less than that.
  const among = stays < 0 ? kept + worth - pot.worth : Math.max(all, kept)
  const over = BigInt(kept) * (BigInt(follows) * BigInt(among) + BigInt(stays) * BigInt(worth))
  return kept + ceilDivide(over, BigInt(worth) * BigInt(among)) <= (pot.most ?? Number.POSITIVE_INFINITY)
}

function ceilDivide(over: bigint, under: bigint): number {
  const cut = over / under
  return Number(over > 0n && cut * under !== over ? cut + 1n : cut)
}

function fewest(values: readonly number[], needed: number): number {
  let [count, reached] = [0, 0]
  while (reached < needed) reached += values[count++] ?? Number.POSITIVE_INFINITY
  return count
}

function placesOf(pots: readonly PotItems[], choice: readonly Chosen[]): number[] {
  return pots.flatMap((p, n) => (choice[n]?.picks ?? []).map((k) => p.places[k] ?? -1))
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((all, n) => all + n, 0)
}
