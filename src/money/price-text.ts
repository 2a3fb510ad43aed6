import { isCurrencyCode, minorDigits } from './currency.ts'

/** What is known from elsewhere about a price text. All optional; unknown values are ignored. */
export interface PriceHints {
  /** ISO 4217 code of the page's or the shop's currency, such as `CAD`. */
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

const SYMBOLS: ReadonlyMap<string, string | null> = new Map([
  ['€', 'EUR'],
  ['£', 'GBP'],
  ['$', null],
  ['kr', null],
])

/** First version: one number, `,` or `.` marks, a code or one of a few symbols. Everything else gives null. */
export function parsePrice(text: string, hints: PriceHints = {}): ParsedPrice | null {
  const clean = text.replace(/[\u200e\u200f\u061c]/gu, '').trim()
  if (clean.length > 100) return null
  const match = /^([^\d.,()-]*)(-?)\s?([\d.,\s]*\d)\s?([^\d()-]*)$/u.exec(clean)
  if (!match) return null
  const [, before = '', sign = '', number = '', after = ''] = match
  const name = (before + after).replace(/[\s*]/gu, '')
  const own = isCurrencyCode(name) ? name : SYMBOLS.get(name)
  if (name !== '' && own === undefined) return null
  const currency = own ?? (hints.currency && isCurrencyCode(hints.currency) ? hints.currency : null)
  const digits = number.replace(/\s/gu, '')
  const marks = digits.replace(/\d/g, '')
  const last = marks.at(-1)
  let whole = digits
  let cents = ''
  if (last !== undefined) {
    const at = digits.lastIndexOf(last)
    const tail = digits.slice(at + 1)
    const once = digits.indexOf(last) === at
    const group = !once || (marks.length === 1 && tail.length === 3 && (currency === null || minorDigits(currency) < 3))
    if (group && name === '' && currency === null) return null
    if (!group) {
      whole = digits.slice(0, at)
      cents = tail
    }
  }
  const plain = whole.replace(/\D/g, '') || '0'
  return { amount: `${sign}${plain}${cents ? `.${cents}` : ''}`, currency }
}
