import type { CurrencyCode } from '../money/currency.ts'
import { minorDigits } from '../money/currency.ts'
import { type Money, ofMinor } from '../money/money.ts'
import { marks } from './money-text.ts'
import { nearestWhole, type SumProblem, type TypedNumber, workOut } from './sum.ts'

/** Why a typed amount cannot be taken; `error_amount_*` says it to the person. */
export type AmountProblem = 'empty' | 'too_large' | 'negative' | SumProblem

export type AmountRead =
  | {
      readonly ok: true
      readonly money: Money
      /** There was something to work out: what it comes to is shown before it is taken. */
      readonly isSum: boolean
      /** It did not come out even and was rounded to the nearest minor unit, halves away from zero. */
      readonly isRounded: boolean
    }
  | { readonly ok: false; readonly problem: AmountProblem }

const NUMBER = /^\d[\d.,\u066b]*$|^[.,\u066b]\d+$/
/** A blank inside a number that does not group three digits. */
const STRAY_BLANK = /\d\s+(?!\d{3}(?!\d))\d/u
/** Blanks, group marks that nothing else is written with, marks of writing direction, signs of currencies. */
const SAYS_NOTHING = /[\s'’\u066c\u061c\u200e\u200f\u2066-\u2069\p{Sc}]/gu

/**
 * Reads an amount a person typed: `12.50`, `12,50`, `1.234,50`, in the digits of any script, and sums such as `12.50+3`,
 * `3*4.20` or `(20-4)/2`. A single mark before exactly three digits is a group where the currency has fewer decimals and
 * the language groups with that mark.
 *
 * @param language BCP 47; tells a group mark from a decimal mark where the digits do not
 * @example readAmount('12,50+3', 'CAD', 'en-CA') // {ok: true, money: 15.50 CAD, isSum: true, isRounded: false}
 */
export function readAmount(text: string, currency: CurrencyCode, language: string): AmountRead {
  const plain = plainSigns(text)
  if (STRAY_BLANK.test(plain)) return { ok: false, problem: 'not_a_number' }
  const clean = plain
    .replace(SAYS_NOTHING, '')
    .replace(new RegExp(currency, 'gi'), '')
    .replace(/(?<=\d)x(?=[\d.,(])/gi, '*')
  if (clean === '') return { ok: false, problem: 'empty' }
  const digits = minorDigits(currency)
  const worked = workOut(clean, (number) => readNumber(number, digits, language), digits)
  if (typeof worked === 'string') return { ok: false, problem: worked }
  const { over, under } = worked.value
  const exact = { over: over * 10n ** BigInt(digits), under }
  const minor = nearestWhole(exact)
  if (minor < 0n) return { ok: false, problem: 'negative' }
  if (minor > BigInt(Number.MAX_SAFE_INTEGER)) return { ok: false, problem: 'too_large' }
  const money = ofMinor(currency, Number(minor))
  return { ok: true, money, isSum: worked.isSum, isRounded: exact.over % under !== 0n }
}

/** Digits of all scripts as ASCII digits; the marks of reckoning as `+ - * / ( )`; all else stays. */
export function plainSigns(text: string): string {
  return text
    .replace(/[\uff01-\uff5e]/g, (wide) => String.fromCharCode(wide.charCodeAt(0) - 0xfee0))
    .replace(/\p{Nd}/gu, plainDigit)
    .replace(/[\u2212\u2013]/g, '-')
    .replace(/[×✕⋅·]/g, '*')
    .replace(/[÷\u2044\u2215]/g, '/')
}

/** The digits of a script stand in a row from zero to nine, and rows of several scripts may follow each other. */
function plainDigit(digit: string): string {
  const code = digit.codePointAt(0) ?? 0
  if (code < 0x80) return digit
  let start = code
  while (/\p{Nd}/u.test(String.fromCodePoint(start - 1))) start -= 1
  return String((code - start) % 10)
}

/** One number, by its marks: the Arabic decimal mark is always one, others by their place and the language. */
function readNumber(text: string, digits: number, language: string): TypedNumber | null {
  if (!NUMBER.test(text)) return null
  const found = text.replace(/\d/g, '')
  const last = found.at(-1)
  let [whole, fraction]: [string, string] = [text, '']
  if (last !== undefined) {
    const tail = text.slice(text.lastIndexOf(last) + 1)
    const repeated = found.split(last).length > 2
    const isGroup = repeated || (found.length === 1 && tail.length === 3 && groupsWith(last, digits, language))
    if (!isGroup) [whole, fraction] = [text.slice(0, text.lastIndexOf(last)), tail]
    if (!groupsRight(whole)) return null
  }
  return { digits: BigInt(whole.replace(/\D/g, '') + fraction), decimals: fraction.length }
}

/** Whether one mark before three digits groups them: where the language groups with it, or no decimals are so many. */
function groupsWith(mark: string, digits: number, language: string): boolean {
  const { decimal, group } = marks(language)
  return mark !== '\u066b' && (mark === group || (digits < 3 && mark !== decimal))
}

/** One mark throughout, and every group but the first has three digits (two in India, except for the last). */
function groupsRight(whole: string): boolean {
  const groups = whole.split(/[.,]/)
  if (groups.length === 1) return !whole.includes('\u066b')
  if ((whole.includes('.') && whole.includes(',')) || whole.includes('\u066b')) return false
  const inner = groups.slice(1, -1)
  return groups[0] !== '' && groups.at(-1)?.length === 3 && inner.every((g) => g.length === 3 || g.length === 2)
}
