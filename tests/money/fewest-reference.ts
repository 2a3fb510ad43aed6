/**
 * The fewest pieces by working out every amount up to the one asked for, one denomination after another: slow, and
 * nothing like the search it checks. Null if there is no way.
 */
export function fewestByHand(
  amount: number,
  denominations: readonly number[],
  stock?: Readonly<Record<number, number>>,
): number | null {
  let fewest = new Array<number>(amount + 1).fill(Number.POSITIVE_INFINITY)
  fewest[0] = 0
  for (const value of denominations) {
    fewest = stock ? withUpTo(stock[value] ?? 0, value, fewest) : withAnyNumberOf(value, fewest)
  }
  const answer = fewest[amount] ?? Number.POSITIVE_INFINITY
  return Number.isFinite(answer) ? answer : null
}

function withUpTo(most: number, value: number, before: readonly number[]): number[] {
  return before.map((_, reached) => {
    let best = Number.POSITIVE_INFINITY
    for (let count = 0; count <= most && count * value <= reached; count++) {
      best = Math.min(best, count + (before[reached - count * value] ?? Number.POSITIVE_INFINITY))
    }
    return best
  })
}

function withAnyNumberOf(value: number, before: readonly number[]): number[] {
  const after: number[] = []
  for (const [reached, best] of before.entries()) {
    after.push(Math.min(best, 1 + (after[reached - value] ?? Number.POSITIVE_INFINITY)))
  }
  return after
}

/**
 * The fewest pieces for an amount above the square of the largest denomination, by the cheapest way to reach each
 * remainder of that denomination: a smaller piece of value v costs (largest - v) / largest of a piece more than cutting
 * the largest one would. There are always enough of the largest to give way, because fewer smaller pieces than `largest`
 * are ever needed.
 */
export function fewestOfHuge(amount: number, denominations: readonly number[]): bigint | null {
  const largest = Math.max(...denominations)
  if (amount < largest * largest) throw new Error('Use fewestByHand for small amounts.')
  const cost = new Array<number>(largest).fill(Number.POSITIVE_INFINITY)
  cost[0] = 0
  for (let round = 0; round < largest; round++) {
    for (const value of denominations) {
      for (let remainder = 0; remainder < largest; remainder++) {
        const reached = (remainder + value) % largest
        const price = (cost[remainder] ?? Number.POSITIVE_INFINITY) + largest - value
        cost[reached] = Math.min(cost[reached] ?? Number.POSITIVE_INFINITY, price)
      }
    }
  }
  const extra = cost[amount % largest] ?? Number.POSITIVE_INFINITY
  // Pieces = (amount + extra) / largest: each smaller piece leaves largest - v uncovered, which is its cost.
  return Number.isFinite(extra) ? (BigInt(amount) + BigInt(extra)) / BigInt(largest) : null
}
