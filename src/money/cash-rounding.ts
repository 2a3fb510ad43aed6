import { cldrCashSteps } from './cash-steps.ts'
import type { CurrencyCode } from './currency.ts'
import { type Money, ofMinor } from './money.ts'
import { MoneyError } from './money-error.ts'
import { type CashRule, type NationalCashRule, nationalCashRules } from './national-cash-rules.ts'

export { type CashRule, type NationalCashRule, nationalCashRules } from './national-cash-rules.ts'

/** A household's own choice; every field left out comes from the region's rule, then from CLDR's step. */
export interface CashRoundingOptions extends Partial<CashRule> {
  /** An ISO 3166 region of `nationalCashRules`. A rule for another currency than the amount's is not used. */
  readonly region?: string
}

/**
 * What a till would ask for in notes and coins: the nearest cash step, a tie away from zero unless the rule says
 * otherwise. Without options the step is CLDR's (CAD 0.05, CHF 0.05, SEK 1.00, HUF 5.00 ...) and a currency without one
 * is not rounded; the rules of countries whose currency CLDR leaves alone (AUD, NZD, the euro) are asked for by region
 * or by step. A negative amount mirrors the positive one. An order paid online is never cash-rounded.
 *
 * @param options `step` in minor units
 * @throws MoneyError `bad-rounding` for a step that is no whole number above zero or a malformed region, `too-large`
 * @example roundForCash(money('CAD', '4.92')) // 4.90
 * @example roundForCash(money('NZD', '3.25'), { region: 'NZ' }) // 3.20
 */
export function roundForCash<C extends CurrencyCode>(m: Money<C>, options: CashRoundingOptions = {}): Money<C> {
  const national = regionalRule(m.currency, options.region)
  const step = options.step ?? cashStep(m.currency, options.region)
  const smallAmounts = options.smallAmounts ?? national?.smallAmounts
  if (!Number.isSafeInteger(step) || step < 1) {
    throw new MoneyError(
      'bad-rounding',
      `A cash step of ${step} cannot be used. Give a whole number of minor units above zero, such as 5 for 0.05.`,
    )
  }
  const size = Math.abs(m.minor)
  if (smallAmounts === 'unchanged' && size <= step) return ofMinor(m.currency, m.minor)
  const rounded = roundSize(size, step, options.ties ?? national?.ties, options.mode ?? national?.mode)
  const asked = smallAmounts === 'up-to-step' && rounded === 0 && size > 0 ? step : rounded
  return ofMinor(m.currency, m.minor < 0 ? -asked : asked)
}

/**
 * The smallest step of a cash payment in minor units: CLDR's for the currency, else the one of the region's rule, else
 * 1 (no rounding).
 *
 * @throws MoneyError `bad-rounding` for a malformed region
 * @example cashStep('HUF') // 500, five forints
 * @example cashStep('EUR', 'FI') // 5
 */
export function cashStep(currency: CurrencyCode, region?: string): number {
  return cldrCashSteps[currency] ?? regionalRule(currency, region)?.step ?? 1
}

function regionalRule(currency: CurrencyCode, region: string | undefined): NationalCashRule | undefined {
  if (region === undefined) return undefined
  if (!/^[A-Z]{2}$/.test(region)) {
    throw new MoneyError(
      'bad-rounding',
      `"${region}" is not a region. Use an ISO 3166 code of two capitals such as NZ.`,
    )
  }
  const rule = nationalCashRules[region]
  return rule?.currency === currency ? rule : undefined
}

function roundSize(size: number, step: number, ties: CashRule['ties'], mode: CashRule['mode']): number {
  const over = size % step
  const below = size - over
  if (over === 0 || mode === 'towards') return below
  const beyondHalf = over > step - over
  const tie = over === step - over
  return beyondHalf || (tie && ties !== 'towards') ? below + step : below
}
