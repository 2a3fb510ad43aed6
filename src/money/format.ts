import { minorDigits } from './currency.ts'
import { type Money, toDecimal } from './money.ts'
import { MoneyError } from './money-error.ts'

// Making an Intl formatter costs several times more than using one, and a page formats many amounts.
const formatters = new Map<string, Intl.NumberFormat>()

const NUMBER_PARTS: ReadonlySet<string> = new Set(['minusSign', 'integer', 'group', 'decimal', 'fraction'])
// Marks that tell which way a sign belongs to its number in a text that runs right to left.
const DIRECTION_MARKS = /^[\u061c\u200e\u200f]+$/
const CURRENCY_SIGN = /\p{Sc}/u

/**
 * The amount as a person in a locale writes it, with the currency's sign. Always shows the decimals of ISO 4217, also
 * where Intl would drop them (HUF shows 2), and is exact for every amount a Money can hold. The marks come from the
 * runtime's CLDR data and change between its releases, so never compare or parse the text.
 *
 * @param locale a BCP 47 tag; one the runtime does not know falls back to the runtime's own locale
 * @throws MoneyError `unknown-locale` for a malformed tag, `unknown-currency`
 * @example formatMoney(money('CAD', '1234.50'), 'en-CA') // $1,234.50
 */
export function formatMoney(m: Money, locale: string): string {
  return formatter('currency', m, locale).format(numericText(m))
}

/**
 * The same number as `formatMoney` shows, with the same marks, but without the currency's sign and the space beside it:
 * for sentences that name the currency elsewhere, such as "41.20 left".
 *
 * @throws MoneyError `unknown-locale`, `unknown-currency`
 * @example formatAmount(money('EUR', '1234.50'), 'de-DE') // 1.234,50
 */
export function formatAmount(m: Money, locale: string): string {
  const parts = formatter('currency', m, locale).formatToParts(numericText(m))
  // Cape Verde writes its currency sign in place of the decimal mark (1234$50); a bare number takes the plain mark.
  if (parts.some((part) => part.type === 'decimal' && CURRENCY_SIGN.test(part.value))) {
    return formatter('decimal', m, locale).format(numericText(m))
  }
  return parts
    .filter(({ type, value }) => NUMBER_PARTS.has(type) || (m.minor < 0 && DIRECTION_MARKS.test(value)))
    .map((part) => part.value)
    .join('')
}

function formatter(style: 'currency' | 'decimal', m: Money, locale: string): Intl.NumberFormat {
  const key = `${style} ${m.currency} ${locale}`
  const known = formatters.get(key)
  if (known) return known
  const digits = minorDigits(m.currency)
  const made = makeFormatter(locale, {
    style,
    ...(style === 'currency' ? { currency: m.currency } : {}),
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  })
  formatters.set(key, made)
  return made
}

function makeFormatter(locale: string, options: Intl.NumberFormatOptions): Intl.NumberFormat {
  try {
    return new Intl.NumberFormat(locale, options)
  } catch (error) {
    if (!(error instanceof RangeError)) throw error
    throw new MoneyError('unknown-locale', `"${locale}" is not a language tag. Use one such as en-CA or fr.`)
  }
}

// Intl reads a decimal text exactly, while a float would lose the cents of large amounts.
function numericText(m: Money): Intl.StringNumericLiteral {
  const text = toDecimal(m)
  if (isNumericText(text)) return text
  throw new MoneyError('not-a-decimal', `${text} ${m.currency} is not an amount. Make amounts with money or ofMinor.`)
}

function isNumericText(text: string): text is `${number}` {
  return /^-?\d+(\.\d+)?$/.test(text)
}
