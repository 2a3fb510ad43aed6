import type { CurrencyMark } from './currency-names.ts'
import { normalisePrice } from './price-normalise.ts'

/** The marks a locale writes amounts with, in the alphabet of `normalisePrice`. */
interface LocaleMarks {
  readonly decimal: string | null
  readonly group: string | null
}

// One of these falls into every plural category that any language of CLDR has.
const COUNTS = [1, 0, 2, 3, 5, 6, 11, 20, 21, 100, 1.5, 1.1, 1.9, 1_000_000, 1_234_567.89]
// How much is kept for the next call. A page has one language, seldom two.
const KEPT_LOCALES = 4
const KEPT_MARKS = 64

/** A locale tag `Intl` has data for, or null. Underscores are forgiven: `en_GB`. */
export function knownLocale(tag: string | undefined): string | null {
  if (tag === undefined) return null
  try {
    return Intl.NumberFormat.supportedLocalesOf(tag.replaceAll('_', '-'))[0] ?? null
  } catch {
    return null // not a language tag at all
  }
}

const keptMarks = new Map<string, LocaleMarks>()

/**
 * The decimal and grouping mark that CLDR gives a locale for amounts of one currency (they differ: euros in `en-CZ`).
 *
 * @param currency an ISO 4217 code; null asks for the locale's ordinary marks for money
 */
export function localeMarks(locale: string, currency: string | null): LocaleMarks {
  const key = `${locale} ${currency}`
  return keptMarks.get(key) ?? keep(keptMarks, KEPT_MARKS, key, readMarks(locale, currency ?? 'XXX'))
}

function readMarks(locale: string, currency: string): LocaleMarks {
  const format = new Intl.NumberFormat(locale, { style: 'currency', currency, minimumFractionDigits: 2 })
  const parts = format.formatToParts(1234567.89)
  const mark = (type: 'decimal' | 'group') => {
    const value = parts.find((part) => part.type === type)?.value
    return value === undefined ? null : normalisePrice(value) || ' '
  }
  return { decimal: mark('decimal'), group: mark('group') }
}

function keep<T>(store: Map<string, T>, most: number, key: string, value: T): T {
  if (store.size >= most) store.delete([...store.keys()][0] ?? '')
  store.set(key, value)
  return value
}

const keptNames = new Map<string, ReadonlyMap<string, CurrencyMark>>()

/**
 * Every symbol and name a locale has for money, by CLDR through `Intl`: `dollars des États-Unis`, `नेरू`, `Franc CFA`.
 * Costs tens of milliseconds the first time a locale is asked for; the last few locales are kept.
 */
export function localeNames(locale: string): ReadonlyMap<string, CurrencyMark> {
  return keptNames.get(locale) ?? keep(keptNames, KEPT_LOCALES, locale, readNames(locale))
}

function readNames(locale: string): ReadonlyMap<string, CurrencyMark> {
  const codesByName = new Map<string, Set<string>>()
  const counts = new Map([0, 2, 3].map((digits) => [digits, pluralCounts(locale, digits)]))
  for (const currency of Intl.supportedValuesOf('currency')) {
    for (const name of namesOf(locale, currency, counts)) {
      codesByName.set(name, (codesByName.get(name) ?? new Set()).add(currency))
    }
  }
  return new Map([...codesByName].map(([name, codes]) => [name, localMark(name, [...codes])]))
}

function localMark(name: string, codes: readonly string[]): CurrencyMark {
  const usual = codes.length === 1 ? (codes[0] ?? null) : null
  const trust = /^\p{L}{1,2}$/u.test(name) ? 'alone' : 'full'
  return { codes, usual, decimals: null, trust, side: null, general: false }
}

/** One count for each plural category a locale tells apart in amounts with so many decimals. */
function pluralCounts(locale: string, digits: number): number[] {
  const rules = new Intl.PluralRules(locale, { minimumFractionDigits: digits, maximumFractionDigits: digits })
  return [...new Map(COUNTS.map((count) => [rules.select(count), count])).values()]
}

function namesOf(locale: string, currency: string, counts: ReadonlyMap<number, readonly number[]>): Set<string> {
  const names = new Set<string>()
  const format = (currencyDisplay: 'symbol' | 'narrowSymbol' | 'name') =>
    new Intl.NumberFormat(locale, { style: 'currency', currency, currencyDisplay })
  const add = (parts: Intl.NumberFormatPart[]) => {
    for (const { type, value } of parts) if (type === 'currency') names.add(normalisePrice(value))
  }
  add(format('symbol').formatToParts(1))
  add(format('narrowSymbol').formatToParts(1))
  const named = format('name')
  const digits = named.resolvedOptions().maximumFractionDigits ?? 2
  for (const count of counts.get(digits) ?? COUNTS) add(named.formatToParts(count))
  names.delete('')
  return names
}
