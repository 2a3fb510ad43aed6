import { MoneyError } from './money-error.ts'

// ISO 4217:2015 list one (as published 2024-06-25), without the codes that have no minor unit (metals, bond units, XTS,
// XXX). Intl follows CLDR and disagrees for a score of them (HUF, COP, IDR, PKR, IQD ...), so the book's scale never
// comes from Intl. XCG, and HRK, SLL and ZWL (withdrawn, still found on old statements), are added from memory.
// biome-ignore format: a table
const TWO_DIGITS = [
  'AED', 'AFN', 'ALL', 'AMD', 'ANG', 'AOA', 'ARS', 'AUD', 'AWG', 'AZN', 'BAM', 'BBD', 'BDT', 'BGN', 'BMD', 'BND',
  'BOB', 'BOV', 'BRL', 'BSD', 'BTN', 'BWP', 'BYN', 'BZD', 'CAD', 'CDF', 'CHE', 'CHF', 'CHW', 'CNY', 'COP', 'COU',
  'CRC', 'CUC', 'CUP', 'CVE', 'CZK', 'DKK', 'DOP', 'DZD', 'EGP', 'ERN', 'ETB', 'EUR', 'FJD', 'FKP', 'GBP', 'GEL',
  'GHS', 'GIP', 'GMD', 'GTQ', 'GYD', 'HKD', 'HNL', 'HRK', 'HTG', 'HUF', 'IDR', 'ILS', 'INR', 'IRR', 'JMD', 'KES',
  'KGS', 'KHR', 'KPW', 'KYD', 'KZT', 'LAK', 'LBP', 'LKR', 'LRD', 'LSL', 'MAD', 'MDL', 'MGA', 'MKD', 'MMK', 'MNT',
  'MOP', 'MRU', 'MUR', 'MVR', 'MWK', 'MXN', 'MXV', 'MYR', 'MZN', 'NAD', 'NGN', 'NIO', 'NOK', 'NPR', 'NZD', 'PAB',
  'PEN', 'PGK', 'PHP', 'PKR', 'PLN', 'QAR', 'RON', 'RSD', 'RUB', 'SAR', 'SBD', 'SCR', 'SDG', 'SEK', 'SGD', 'SHP',
  'SLE', 'SLL', 'SOS', 'SRD', 'SSP', 'STN', 'SVC', 'SYP', 'SZL', 'THB', 'TJS', 'TMT', 'TOP', 'TRY', 'TTD', 'TWD',
  'TZS', 'UAH', 'USD', 'USN', 'UYU', 'UZS', 'VED', 'VES', 'WST', 'XCD', 'XCG', 'YER', 'ZAR', 'ZMW', 'ZWG', 'ZWL',
] as const
// biome-ignore format: a table
const NO_DIGITS = [
  'BIF', 'CLP', 'DJF', 'GNF', 'ISK', 'JPY', 'KMF', 'KRW', 'PYG', 'RWF', 'UGX', 'UYI', 'VND', 'VUV', 'XAF', 'XOF',
  'XPF',
] as const
const THREE_DIGITS = ['BHD', 'IQD', 'JOD', 'KWD', 'LYD', 'OMR', 'TND'] as const
const FOUR_DIGITS = ['CLF', 'UYW'] as const

/** An ISO 4217 alphabetic code that has a minor unit. `currencyCode` turns text into one. */
export type CurrencyCode =
  | (typeof TWO_DIGITS)[number]
  | (typeof NO_DIGITS)[number]
  | (typeof THREE_DIGITS)[number]
  | (typeof FOUR_DIGITS)[number]

const DIGITS: ReadonlyMap<string, number> = new Map<string, number>([
  ...TWO_DIGITS.map((code) => [code, 2] as const),
  ...NO_DIGITS.map((code) => [code, 0] as const),
  ...THREE_DIGITS.map((code) => [code, 3] as const),
  ...FOUR_DIGITS.map((code) => [code, 4] as const),
])

/** Every code this library keeps money in, in alphabetical order. */
export const currencyCodes: readonly CurrencyCode[] = [...DIGITS.keys()].filter(isCurrencyCode).sort()

/** Whether a text is one of the codes this library keeps money in. Capital letters only. */
export function isCurrencyCode(text: string): text is CurrencyCode {
  return DIGITS.has(text)
}

/**
 * Turns text into a currency code.
 *
 * @throws MoneyError `unknown-currency`
 */
export function currencyCode(text: string): CurrencyCode {
  if (isCurrencyCode(text)) return text
  throw unknownCurrency(text)
}

function unknownCurrency(text: string): MoneyError {
  return new MoneyError(
    'unknown-currency',
    `"${text}" is not a currency with an ISO 4217 minor unit. Use a three-letter code such as CAD.`,
  )
}

/**
 * Decimals of a currency's minor unit by ISO 4217: CAD 2, JPY 0, KWD 3, HUF 2.
 *
 * @throws MoneyError `unknown-currency`
 */
export function minorDigits(code: CurrencyCode): number {
  const digits = DIGITS.get(code)
  if (digits === undefined) throw unknownCurrency(code)
  return digits
}
