import type { CurrencyMark } from './currency-names.ts'
import { placeCurrencies, settleCurrency } from './currency-places.ts'
import { knownLocale, localeMarks, localeNames } from './locale-money.ts'
import { threeDigits } from './price-amount.ts'
import { commonMark, decimalsOf, hintedMark } from './price-currency.ts'
import { normalisePrice } from './price-normalise.ts'
import { plainNumber } from './price-number.ts'
import { type PriceShape, priceShape } from './price-shape.ts'
import { priceTokens, type Token } from './price-tokens.ts'
import { saysBoundSpaceless } from './price-words.ts'

/** What is known from elsewhere about a price text. All optional; values that make no sense are ignored. */
export interface PriceHints {
  /** ISO 4217 code of the page's or the shop's currency, such as `CAD`. A symbol (`€`, `zł`) does too. */
  readonly currency?: string
  /** BCP 47 tag of the text's language, such as `fr-CA`. */
  readonly locale?: string
  /** ISO 3166 code of the country the shop sells from, such as `CA`. */
  readonly region?: string
}

/** `amount` is plain decimal text (`.` mark, `-` when negative); `currency` an ISO 4217 code, null when not said. */
export interface ParsedPrice {
  readonly amount: string
  readonly currency: string | null
}

// A price with words around it is short. What is longer is a paragraph, and is not searched.
const LONGEST_RAW = 2000
const LONGEST = 200

interface Context {
  readonly locale: string | null
  readonly hinted: CurrencyMark | null
  readonly places: readonly string[]
}

/**
 * Reads the amount and the currency out of a price as a shop writes it, in any decimal digits, with any of the usual
 * marks and spaces, signs, symbols, codes and names. Answers null rather than guess.
 *
 * - A currency named in the text wins over every hint. A sign that several countries share (`$`, `kr`, `¥`, `Rs`) gives
 *   `currency: null` unless a compatible hint, the region or the locale settles it; `£` alone is GBP.
 * - Three digits after the only mark are a group of thousands when the currency has fewer than three decimals; decimals
 *   when it has three, unless the locale groups with that mark. Without any currency (and for IQD, whose three decimals
 *   nobody writes) the locale decides, else null. Otherwise decimals are kept as written, also more than the currency
 *   has (`34.992001 GBP`).
 * - Null: a range, several different prices (but `AED 8000 (USD 2179)` is the first), "from", "up to" and "minus" in some
 *   thirty languages, words or a unit beside a bare number, percentages, dates, phone numbers, abbreviations (`1.2K`,
 *   `3万`), pence and cents signs, unsound grouping (`1,23,4567`), and anything longer than 200 characters.
 * - Words beside a price that names its currency are passed over, also `/kg` and `/month`: whether a price is for a unit,
 *   an old price or a saving is for the caller to judge.
 * - Cents behind the symbol (`1250€60`), raised (`12⁹⁹`), or behind a space when the symbol stands first (`$12 99`) are
 *   read; `12 99 €` is null, since 12 may be a count.
 *
 * @returns the amount as plain decimal text, never in floating point: `-1234.50`
 * @example parsePrice('1.234,50 €') // {amount: '1234.50', currency: 'EUR'}
 * @example parsePrice('$12.50', {region: 'CA'}) // {amount: '12.50', currency: 'CAD'}
 * @example parsePrice('1.234') // null: one thousand, or one?
 */
export function parsePrice(text: string, hints: PriceHints = {}): ParsedPrice | null {
  if (text.length > LONGEST_RAW) return null
  const clean = normalisePrice(text)
  if (clean.length > LONGEST || !/\d/.test(clean) || saysBoundSpaceless(clean)) return null
  const context = contextOf(hints)
  const shape = priceShape(tokensOf(clean, context))
  return shape && readShape(shape, context)
}

function contextOf(hints: PriceHints): Context {
  const locale = knownLocale(hints.locale)
  const hinted = hintedMark(hints.currency)
  const places = placeCurrencies(hints.region, locale)
  return { locale, hinted, places }
}

/** Reads with the names everybody knows; if words are left over, with those of the locale; last without the doubtful. */
function tokensOf(clean: string, context: Context): Token[] {
  const extraMark = context.locale === null ? null : localeMarks(context.locale, null).decimal
  const none = new Map<string, CurrencyMark>()
  const hasWords = (tokens: readonly Token[]) => tokens.some((token) => token.kind === 'word')
  const codes = new Set([...(context.hinted?.codes ?? []), ...context.places])
  const expected = (money: CurrencyMark) => money.codes.some((code) => codes.has(code))
  const believes = (money: CurrencyMark) => money.trust === 'alone' || expected(money)
  const plain = priceTokens(clean, { extra: none, believes, extraMark })
  if (!hasWords(plain)) return plain
  const extra = context.locale === null ? none : localeNames(context.locale)
  const local = priceTokens(clean, { extra, believes, extraMark })
  return hasWords(local) ? priceTokens(clean, { extra, believes: expected, extraMark }) : local
}

function readShape(shape: PriceShape, context: Context): ParsedPrice | null {
  const money = shape.marks.length === 0 ? context.hinted : commonMark(shape.marks)
  if (shape.marks.length > 0 && money === null) return null
  const currency = money && settleCurrency(money, context.hinted?.codes ?? [], context.places)
  const decimals = decimalsOf(currency === null ? (money?.codes ?? []) : [currency], money?.decimals ?? null)
  const amount = plainNumber(shape.number, (mark) => threeDigits(mark, decimals, context.locale, currency))
  const hasCents = decimals.length === 0 || decimals.some((count) => count > 0)
  if (amount === null || (shape.number.raised !== null && !hasCents)) return null
  const read = { amount: shape.negative && /[1-9]/.test(amount) ? `-${amount}` : amount, currency }
  return shape.restated === null || restates(read, shape, shape.restated, context) ? read : null
}

/** Whether an amount in brackets says the same in another currency, or the very same again. */
function restates(price: ParsedPrice, shape: PriceShape, bracketed: PriceShape, context: Context): boolean {
  const other = readShape(bracketed, context)
  if (!other) return false
  const codes = (currency: string | null, marks: readonly CurrencyMark[]) =>
    currency === null ? (commonMark(marks)?.codes ?? []) : [currency]
  const own = codes(price.currency, shape.marks)
  const others = codes(other.currency, bracketed.marks)
  const another = own.length > 0 && others.length > 0 && !own.some((code) => others.includes(code))
  return another || (price.currency === other.currency && price.amount === other.amount)
}
