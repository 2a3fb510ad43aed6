/** A corner of a cost: from `at` pieces on, each further piece costs `gain` more than the one before. */
export interface Corner {
  readonly at: number
  readonly gain: number
}

/**
 * One denomination as one envelope sees it: its value, how many pieces may be added (`most`) or taken away (`least`,
 * negative), and what that costs. The cost of `n` pieces is `slope * n` plus, for each corner passed, its gain times the
 * pieces beyond it; with gains of zero or more it is convex, which the search relies on.
 */
export interface Level {
  readonly value: number
  readonly least: number
  readonly most: number
  readonly slope: number
  readonly corners: readonly Corner[]
}

/** What `count` pieces of a level cost. */
export function levelCost(level: Level, count: number): number {
  let cost = level.slope * count
  for (const { at, gain } of level.corners) if (count > at) cost += gain * (count - at)
  return cost
}

/** A level as it is, its pieces dearer by `slope` each, with more corners. */
export function withCosts(level: Level, slope: number, corners: readonly Corner[] = []): Level {
  return { ...level, slope: level.slope + slope, corners: [...level.corners, ...corners] }
}

/** Greatest common divisor; of a number and 0 the number. */
export function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b)
}
