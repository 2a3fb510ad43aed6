import { type CurrencyCode, minorDigits } from './currency.ts'
import { MoneyError } from './money-error.ts'

/**
 * An exact amount of money: a whole number of minor units and its ISO 4217 code.
 * `money('CAD', '12.30')` is `{currency: 'CAD', minor: 1230}`. Minor units follow ISO 4217 (HUF has 2, JPY 0, KWD 3),
 * never Intl. `minor` is always a safe integer; a float never holds money.
 *
 * The currency is part of the type, so adding CAD to EUR does not compile where both are known.
 */
export interface Money<C extends CurrencyCode = CurrencyCode> {
  readonly currency: C
  readonly minor: number
}

const DECIMAL_TEXT = /^([+-])?(\d+)(?:\.(\d+))?$/

/**
 * Makes a Money from a currency and a plain decimal text: digits, at most one `.`, an optional sign, no grouping.
 * For a shop's price text use `parsePrice`.
 *
 * @throws MoneyError `unknown-currency`, `not-a-decimal`, `too-many-decimals` (`money('CAD', '1.234')`; trailing zeros
 *   beyond the currency's digits are refused too), `too-large` (beyond 2^53 - 1 minor units)
 * @example money('JPY', '1200') // {currency: 'JPY', minor: 1200}
 */
export function money<C extends CurrencyCode>(currency: C, amount: string): Money<C> {
  const digits = minorDigits(currency)
  const match = typeof amount === 'string' ? DECIMAL_TEXT.exec(amount.trim()) : null
  if (!match) {
    throw new MoneyError(
      'not-a-decimal',
      `"${amount}" is not an amount. Write digits with at most one point, such as 12.30.`,
    )
  }
  const [, sign, whole = '0', fraction = ''] = match
  if (fraction.length > digits) {
    throw new MoneyError(
      'too-many-decimals',
      `"${amount}" has ${fraction.length} decimals, but ${currency} has ${digits}. Round it before entering it.`,
    )
  }
  const magnitude = Number(whole + fraction.padEnd(digits, '0'))
  return ofMinor(currency, sign === '-' ? -magnitude : magnitude)
}

/**
 * Makes a Money from a whole number of minor units: `ofMinor('CAD', 1230)` is 12.30.
 *
 * @throws MoneyError `too-large` when `minor` is not a safe integer, `unknown-currency`
 */
export function ofMinor<C extends CurrencyCode>(currency: C, minor: number): Money<C> {
  minorDigits(currency)
  if (!Number.isSafeInteger(minor)) {
    throw new MoneyError(
      'too-large',
      `${minor} is not a whole number of minor units that can be held exactly (at most 2^53 - 1).`,
    )
  }
  return { currency, minor: minor === 0 ? 0 : minor }
}

/**
 * The plain decimal text of an amount, always with the currency's own number of decimals: 1230 CAD is `12.30`.
 * `money(m.currency, toDecimal(m))` gives `m` back.
 */
export function toDecimal(m: Money): string {
  const digits = minorDigits(m.currency)
  const text = String(Math.abs(m.minor)).padStart(digits + 1, '0')
  const sign = m.minor < 0 ? '-' : ''
  return digits === 0 ? sign + text : `${sign}${text.slice(0, -digits)}.${text.slice(-digits)}`
}

/**
 * Sum of two amounts of one currency.
 *
 * @throws MoneyError `currency-mismatch`, `too-large`
 */
export function add<C extends CurrencyCode>(a: Money<C>, b: Money<NoInfer<C>>): Money<C> {
  sameCurrency(a, b)
  return ofMinor(a.currency, a.minor + b.minor)
}

/**
 * `a - b` for two amounts of one currency.
 *
 * @throws MoneyError `currency-mismatch`, `too-large`
 */
export function subtract<C extends CurrencyCode>(a: Money<C>, b: Money<NoInfer<C>>): Money<C> {
  sameCurrency(a, b)
  return ofMinor(a.currency, a.minor - b.minor)
}

/** The same amount with the other sign; zero stays plain zero. */
export function negate<C extends CurrencyCode>(m: Money<C>): Money<C> {
  return ofMinor(m.currency, -m.minor)
}

/**
 * Refuses two amounts of different currencies.
 *
 * @throws MoneyError `currency-mismatch`
 */
export function sameCurrency(a: Money, b: Money): void {
  if (a.currency !== b.currency) {
    throw new MoneyError(
      'currency-mismatch',
      `${toDecimal(a)} ${a.currency} and ${toDecimal(b)} ${b.currency} are different currencies and cannot be combined.`,
    )
  }
}
