import { type CurrencyCode, minorDigits } from '../../money/currency.ts'
import { type Money, money, ofMinor } from '../../money/money.ts'
import { MoneyError } from '../../money/money-error.ts'
import { MonthendError } from '../monthend-error.ts'

/**
 * An amount of a currency from digits with a point at most (`-12.3`, `.5`, `100`). Zeros beyond the currency's decimals
 * are dropped; other digits beyond them are refused, since nobody knows where they should go.
 *
 * @param row line of the file, for the sentence
 * @throws MonthendError `bad-amount`
 */
export function amountOf(currency: CurrencyCode, text: string, row: number): Money {
  const match = /^([+-]?)(\d*)(?:\.(\d*))?$/.exec(text)
  const [, sign = '', whole = '', decimals = ''] = match ?? []
  if (!match || whole + decimals === '' || text.length > 40) {
    throw new MonthendError('bad-amount', `Line ${row}: "${text.slice(0, 40)}" is not an amount.`, row)
  }
  const digits = minorDigits(currency)
  const kept = decimals.slice(digits).replace(/0+$/, '') === '' ? decimals.slice(0, digits) : decimals
  try {
    return money(currency, `${sign}${whole === '' ? '0' : whole}${kept === '' ? '' : `.${kept}`}`)
  } catch (error) {
    if (error instanceof MoneyError) {
      throw new MonthendError('bad-amount', `Line ${row}: "${text}" is no amount of ${currency}. ${error.message}`, row)
    }
    throw error
  }
}

/** A rate as a fraction of whole numbers; null when the text is not a positive decimal. */
function fraction(rate: string): { over: bigint; under: bigint } | null {
  const match = /^(\d{1,30})(?:\.(\d{1,30}))?$/.exec(rate)
  if (!match) return null
  const [, whole = '', decimals = ''] = match
  const over = BigInt(whole + decimals)
  return over === 0n ? null : { over, under: 10n ** BigInt(decimals.length) }
}

/**
 * What an amount comes to in another currency, exactly, rounded once to the minor unit, halves away from zero.
 *
 * @param rate units of `to` for one unit of the amount's currency, as decimal text
 * @returns null when the rate is not a positive decimal or the result is too large
 * @example convert({currency: 'EUR', minor: -10000}, '1.10', 'USD') // -110.00 USD
 */
export function convert(m: Money, rate: string, to: CurrencyCode): Money | null {
  const r = fraction(rate)
  return r && scaled(m, r.over, r.under, to)
}

/** The other way round: what it was in `to` before it was multiplied by the rate. */
export function convertBack(m: Money, rate: string, to: CurrencyCode): Money | null {
  const r = fraction(rate)
  return r && scaled(m, r.under, r.over, to)
}

function scaled(m: Money, over: bigint, under: bigint, to: CurrencyCode): Money | null {
  const top = BigInt(Math.abs(m.minor)) * over * 10n ** BigInt(minorDigits(to))
  const bottom = under * 10n ** BigInt(minorDigits(m.currency))
  const minor = Number((2n * top + bottom) / (2n * bottom))
  return Number.isSafeInteger(minor) ? ofMinor(to, m.minor < 0 ? -minor : minor) : null
}

/** One divided by a rate, to ten decimals; null when the rate is not a positive decimal. */
export function inverseRate(rate: string): string | null {
  const r = fraction(rate)
  if (!r) return null
  const tenths = (2n * r.under * 10n ** 10n + r.over) / (2n * r.over)
  const text = String(tenths).padStart(11, '0')
  return `${text.slice(0, -10)}.${text.slice(-10)}`.replace(/\.?0+$/, '')
}
