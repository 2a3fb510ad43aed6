/**
 * A quantile of numbers by linear interpolation between order statistics: type 7 of Hyndman and Fan, "Sample Quantiles
 * in Statistical Packages", The American Statistician 50 (1996), the default of R and numpy. Other types give other
 * values for few numbers, so the type is fixed here.
 *
 * @param p 0 to 1
 * @returns NaN for no numbers
 * @example quantile([2, 3, 5, 7], 0.5) // 4
 */
export function quantile(values: readonly number[], p: number): number {
  const sorted = [...values].sort((a, b) => a - b)
  const at = (sorted.length - 1) * p
  const low = Math.floor(at)
  const below = sorted[low] ?? Number.NaN
  const above = sorted[low + 1] ?? below
  return below + (at - low) * (above - below)
}
