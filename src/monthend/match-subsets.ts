/** How far to look. */
export interface SubsetLimits {
  /** Find at most this many; two are enough to know that an answer is not the only one. */
  readonly most: number
  /** Members of a subset at most. */
  readonly largest?: number
}

/** More numbers than this are too many ways: the caller chooses the likelier ones. */
export const MOST_NUMBERS = 24

/**
 * The subsets of whole numbers that sum exactly to a target, as ascending lists of indexes: smaller subsets first, then
 * by index. Never the empty one. Exact: each half's sums are listed and met in the middle (Horowitz and Sahni 1974).
 *
 * @param numbers at most `MOST_NUMBERS`; any sign
 * @throws RangeError with more numbers
 * @example exactSubsets([1999, 2499, 499, 1299, 799], 3297, {most: 2}) // [[0, 2, 4]]
 */
export function exactSubsets(numbers: readonly number[], target: number, limits: SubsetLimits): number[][] {
  if (numbers.length > MOST_NUMBERS) throw new RangeError(`${numbers.length} numbers are too many for exact subsets.`)
  const largest = limits.largest ?? numbers.length
  const half = numbers.length >> 1
  const left = sumsOf(numbers.slice(0, half))
  const right = new Map<number, number[]>()
  sumsOf(numbers.slice(half)).forEach((sum, mask) => {
    const same = right.get(sum)
    if (same) same.push(mask)
    else right.set(sum, [mask])
  })
  const found: number[][] = []
  left.forEach((sum, low) => {
    for (const high of right.get(target - sum) ?? []) {
      if (low === 0 && high === 0) continue
      const members = [...indexesOf(low, 0), ...indexesOf(high, half)]
      if (members.length <= largest) found.push(members)
    }
  })
  found.sort(bySizeThenIndex)
  return found.slice(0, limits.most)
}

/** The sums of all subsets, at the place of their bit mask. */
function sumsOf(numbers: readonly number[]): number[] {
  const sums = [0]
  for (const number of numbers) {
    const count = sums.length
    for (let i = 0; i < count; i++) sums.push((sums[i] ?? 0) + number)
  }
  return sums
}

function indexesOf(mask: number, offset: number): number[] {
  const indexes: number[] = []
  for (let bit = 0; mask >> bit > 0; bit++) if ((mask >> bit) & 1) indexes.push(bit + offset)
  return indexes
}

function bySizeThenIndex(a: readonly number[], b: readonly number[]): number {
  if (a.length !== b.length) return a.length - b.length
  for (let i = 0; i < a.length; i++) {
    const difference = (a[i] ?? 0) - (b[i] ?? 0)
    if (difference !== 0) return difference
  }
  return 0
}
