/** How measured values lie. */
export interface Spread {
  readonly median: number
  readonly p90: number
  readonly worst: number
  readonly count: number
}

/** The median, the ninth decile and the worst of some values, to two decimals. */
export function spread(values: readonly number[]): Spread {
  const sorted = [...values].sort((a, b) => a - b)
  const at = (share: number): number =>
    round(sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0)
  return { median: at(0.5), p90: at(0.9), worst: at(1), count: sorted.length }
}

export function round(value: number): number {
  return Math.round(value * 100) / 100
}
