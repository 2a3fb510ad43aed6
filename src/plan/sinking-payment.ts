import { Decimal } from 'decimal.js'

/** Enough digits that compound interest over a lifetime of weekly pays is exact to the cent. */
const Exact = Decimal.clone({ precision: 40 })

/**
 * The sinking fund factor of engineering economics, (A/F, i, n) = i / ((1 + i)^n - 1): what to put in at the end of each
 * of n periods so that they come to 1 with interest. Without interest it is 1/n.
 *
 * @param rate interest of one period as a decimal, `'0.005'` for half a per cent
 * @param periods one or more
 */
export function sinkingFundFactor(rate: Decimal.Value, periods: number): Decimal {
  const i = new Exact(rate)
  if (i.isZero()) return new Exact(1).div(periods)
  return i.div(i.plus(1).pow(periods).minus(1))
}

/**
 * What each of n periods must bring at its end so that it reaches the target together with what is in, both with
 * interest. Not rounded; less than nothing when what is in grows past the target by itself.
 */
export function sinkingPayment(target: number, alreadyIn: number, periods: number, rate: Decimal.Value): Decimal {
  const growth = new Exact(rate).plus(1).pow(periods)
  return new Exact(target).minus(growth.times(alreadyIn)).times(sinkingFundFactor(rate, periods))
}

/** After how many periods it reaches the target; null when not within `most`. Minor units, interest not rounded. */
export function periodsToReach(
  target: number,
  alreadyIn: number,
  eachPeriod: number,
  rate: Decimal.Value,
  most: number,
): number | null {
  if (alreadyIn >= target) return 0
  const i = new Exact(rate)
  if (i.isZero()) {
    const periods = eachPeriod <= 0 ? Number.POSITIVE_INFINITY : Math.ceil((target - alreadyIn) / eachPeriod)
    return periods <= most ? periods : null
  }
  let sum = new Exact(alreadyIn)
  for (let n = 1; n <= most; n++) {
    sum = sum.times(i.plus(1)).plus(eachPeriod)
    if (sum.gte(target)) return n
  }
  return null
}
