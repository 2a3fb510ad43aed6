import { knownLocale, localeMarks } from './locale-money.ts'
import { decimalsOf } from './price-currency.ts'
import { mayStandAlone, plainNumber, readNumber, startsNumber } from './price-number.ts'

/** What a lone mark before three digits does: see the rules of `parsePrice`. */
export function threeDigits(
  mark: string,
  decimals: readonly number[],
  locale: string | null,
  currency: string | null,
): 'group' | 'decimal' | null {
  if (decimals.length > 0 && decimals.every((count) => count < 3)) return 'group'
  const marks = locale === null ? null : localeMarks(locale, currency)
  if (mark === marks?.group) return 'group'
  if (mark === marks?.decimal) return 'decimal'
  return decimals.length > 0 && decimals.every((count) => count > 2) ? 'decimal' : null
}

/**
 * The amount that a number says whose currency is known already: the part of `parsePrice` that is about the number alone,
 * by the same rules.
 *
 * @param text nothing but the number, in the alphabet of `normalisePrice`
 * @param currency an ISO 4217 code; null where nobody knows
 * @returns plain decimal text without a sign, or null where it can be read in two ways
 * @example amountOfNumber('1.234,50', 'EUR', 'de') // '1234.50'
 */
export function amountOfNumber(text: string, currency: string | null, language: string | null): string | null {
  const locale = knownLocale(language ?? undefined)
  const chars = Array.from(text)
  if (!startsNumber(chars, 0)) return null
  const { number, end } = readNumber(chars, 0, locale === null ? null : localeMarks(locale, null).decimal)
  if (end !== chars.length || (currency === null && !mayStandAlone(number))) return null
  const decimals = decimalsOf(currency === null ? [] : [currency], null)
  const hasCents = decimals.length === 0 || decimals.some((count) => count > 0)
  if (number.raised !== null && !hasCents) return null
  return plainNumber(number, (mark) => threeDigits(mark, decimals, locale, currency))
}
