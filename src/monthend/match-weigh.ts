import type { EntryToMatch, OrderToMatch, RenewalToMatch } from './match-types.ts'

/*
 * What a pair of line and expectation is worth, in whole points: up to 500 for the amount, 250 for the name, 150 for the
 * day, 100 for an order number. The scale is our own. What it must keep: an exact amount beats any near one; among exact
 * ones the name decides, then the day.
 */

/** How an amount fits what was expected. */
export type Fit = 'exact' | 'foreign' | 'margin' | 'rate' | 'refund' | 'differs' | 'part'

/** One thing a statement may show. */
export interface Target {
  readonly kind: 'charge' | 'refund' | 'entry' | 'renewal'
  /** Signed from the account's side, in minor units. */
  readonly amount: number
  /** Day number of the order, entry or due day. */
  readonly day: number
  /** Days a line may be before and after. */
  readonly early: number
  readonly late: number
  /** Index of its name among the names. */
  readonly name: number
  readonly order: OrderToMatch | null
  readonly entry: EntryToMatch | null
  readonly renewal: RenewalToMatch | null
}

/** Likeness from which a text may be the shop, and from which it surely is. */
export const MAY_BE = 45
export const IS_NAMED = 60

const AMOUNT: Record<Fit, number> = {
  exact: 500,
  foreign: 480,
  margin: 420,
  rate: 330,
  refund: 330,
  differs: 120,
  part: 100,
}

/** A charge may differ from its order by this much of it, in per cent, to be asked about: tips, weighed goods, postage. */
const DIFFERS_PERCENT = 30
/** A rate of the day and a card's fee: rarely more than this away from what was held. Common practice, no source. */
const RATE_PERCENT = 6

/** How a line's amount (from the account's side, in minor units) fits a target; null when it does not. */
export function fitOf(amount: number, foreign: { currency: string; minor: number } | null, target: Target): Fit | null {
  const wanted = target.amount
  if (amount === wanted) return 'exact'
  if (Math.sign(amount) !== Math.sign(wanted)) return null
  const by = Math.abs(amount - wanted)
  switch (target.kind) {
    case 'entry':
      return null
    case 'refund':
      return Math.abs(amount) < Math.abs(wanted) ? 'refund' : null
    case 'renewal':
      return by * 100 <= Math.abs(wanted) * DIFFERS_PERCENT ? 'differs' : null
    case 'charge': {
      const asked = target.order?.foreign
      if (asked && foreign?.currency === asked.currency && Math.abs(foreign.minor) === asked.minor) return 'foreign'
      const margin = target.order?.margin?.minor ?? 0
      if (margin > 0 && Math.abs(amount) < Math.abs(wanted) && by <= 2 * margin) return 'margin'
      if ((asked || foreign) && by * 100 <= Math.abs(wanted) * RATE_PERCENT) return 'rate'
      return by * 100 <= Math.abs(wanted) * DIFFERS_PERCENT ? 'differs' : null
    }
  }
}

/**
 * Points of a pair.
 *
 * @param likeness of the line's text to the target's name, 0 to 100
 * @param lag days from the target to the line
 */
export function pointsOf(fit: Fit, likeness: number, lag: number, hasNumber: boolean, bankSays: boolean): number {
  return AMOUNT[fit] + Math.round(2.5 * likeness) + dayPoints(lag) + (hasNumber ? 100 : 0) + (bankSays ? 200 : 0)
}

/** A charge comes on the day or a few days later. */
function dayPoints(lag: number): number {
  if (lag < 0) return Math.max(10, 120 + 20 * lag)
  return lag <= 4 ? 150 : Math.max(10, 150 - 3 * (lag - 4))
}
