import type { CurrencyMark } from './currency-names.ts'
import { normalisePrice } from './price-normalise.ts'

/** The marks a locale writes amounts with, in the alphabet of `normalisePrice`. */
export interface LocaleMarks {
  readonly decimal: string | null
  readonly group: string | null
}

// Enough counts to meet every plural form CLDR has.
const COUNTS = [0, 1, 2, 3, 5, 6, 11, 20, 100, 1.5, 1_000_000]
const KEPT_LOCALES = 4

/** A locale tag `Intl` has data for, or null. Underscores are forgiven: `en_GB`. */
export function knownLocale(tag: string | undefined): string | null {
  if (tag === undefined) return null
  try {
    return Intl.NumberFormat.supportedLocalesOf(tag.replaceAll('_', '-'))[0] ?? null
  } catch {
    return null // not a language tag at all
  }
}

/** The decimal and grouping mark that CLDR gives a locale for amounts of one currency. */
export function localeMarks(locale: string, currency: string): LocaleMarks {
  const parts = new Intl.NumberFormat(locale, { style: 'currency', currency, minimumFractionDigits: 2 }).formatToParts(
    1234567.89,
  )
  const mark = (type: 'decimal' | 'group') => {
    const value = parts.find((part) => part.type === type)?.value
    return value === undefined ? null : normalisePrice(value) || ' '
  }
  return { decimal: mark('decimal'), group: mark('group') }
}

const kept = new Map<string, ReadonlyMap<string, CurrencyMark>>()

/**
 * Every symbol and name a locale has for money, by CLDR through `Intl`: `dollars des États-Unis`, `नेरू`, `Franc CFA`.
 * Costs tens of milliseconds the first time a locale is asked for; the last few locales are kept.
 */
export function localeNames(locale: string): ReadonlyMap<string, CurrencyMark> {
  const known = kept.get(locale)
  if (known) return known
  const codesByName = new Map<string, Set<string>>()
  for (const currency of Intl.supportedValuesOf('currency')) {
    for (const name of namesOf(locale, currency)) {
      codesByName.set(name, (codesByName.get(name) ?? new Set()).add(currency))
    }
  }
  const names = new Map(
    [...codesByName].map(([name, codes]) => [
      name,
      {
        codes: [...codes],
        usual: codes.size === 1 ? ([...codes][0] ?? null) : null,
        decimals: null,
        alone: /^[a-z]$/iu.test(name),
        side: null,
      },
    ]),
  )
  if (kept.size >= KEPT_LOCALES) kept.delete([...kept.keys()][0] ?? '')
  kept.set(locale, names)
  return names
}

function namesOf(locale: string, currency: string): Set<string> {
  const names = new Set<string>()
  const add = (format: Intl.NumberFormat, count: number) => {
    for (const { type, value } of format.formatToParts(count)) if (type === 'currency') names.add(normalisePrice(value))
  }
  add(new Intl.NumberFormat(locale, { style: 'currency', currency }), 1)
  const named = new Intl.NumberFormat(locale, { style: 'currency', currency, currencyDisplay: 'name' })
  for (const count of COUNTS) add(named, count)
  names.delete('')
  return names
}
