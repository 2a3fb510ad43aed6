import type { CurrencyCode } from '../money/currency.ts'
import { minorDigits } from '../money/currency.ts'
import { type Money, ofMinor } from '../money/money.ts'
import { marks } from './money-text.ts'

/** Why a typed amount cannot be taken; `error_amount_*` says it to the person. */
export type AmountProblem = 'empty' | 'not_a_number' | 'decimals' | 'too_large' | 'negative'

export type AmountRead =
  | { readonly ok: true; readonly money: Money }
  | { readonly ok: false; readonly problem: AmountProblem }

// The zeros of the digits people type: ASCII needs none, then Arabic, Persian, Devanagari, Bengali and full-width.
const ZEROS = [0x660, 0x6f0, 0x966, 0x9e6, 0xff10]
const SUM = /^[+-]?[^+-]+([+-][^+-]+)*$/
const NUMBER = /^\d[\d.,]*$|^[.,]\d+$/

/**
 * Reads an amount a person typed: `12.50`, `12,50`, `1.234,50`, and sums such as `12.50+3` or `2*4.20-1`. A single mark
 * before exactly three digits is a group where the currency has fewer decimals and the language groups with that mark.
 *
 * @param language BCP 47; tells a group mark from a decimal mark where the digits do not
 * @example readAmount('12,50+3', 'CAD', 'en-CA') // {ok: true, money: 15.50 CAD}
 */
export function readAmount(text: string, currency: CurrencyCode, language: string): AmountRead {
  const clean = plainDigits(text).replace(/[\s'’\u066c\p{Sc}]/gu, '')
  if (clean === '') return { ok: false, problem: 'empty' }
  if (!SUM.test(clean)) return { ok: false, problem: 'not_a_number' }
  let sum = 0
  for (const [, sign = '+', term = ''] of clean.matchAll(/([+-]?)([^+-]+)/g)) {
    const value = readTerm(term, currency, language)
    if (typeof value === 'string') return { ok: false, problem: value }
    sum += sign === '-' ? -value : value
    if (!Number.isSafeInteger(sum)) return { ok: false, problem: 'too_large' }
  }
  return sum < 0 ? { ok: false, problem: 'negative' } : { ok: true, money: ofMinor(currency, sum) }
}

/** Digits of other scripts as ASCII digits, the Arabic decimal mark as a comma; all else stays. */
export function plainDigits(text: string): string {
  return text.replaceAll('\u066b', ',').replace(/\p{Nd}/gu, (digit) => {
    const code = digit.codePointAt(0) ?? 0
    const zero = ZEROS.find((z) => code >= z && code < z + 10)
    return zero === undefined ? digit : String(code - zero)
  })
}

/** One term: a number, or whole numbers times a number. Minor units, or what is wrong. */
function readTerm(term: string, currency: CurrencyCode, language: string): number | AmountProblem {
  const factors = term.split(/[*×x]/i)
  const counts = factors.filter((f) => /^\d{1,6}$/.test(f))
  const priced = factors.find((f) => !/^\d{1,6}$/.test(f)) ?? factors.at(-1) ?? ''
  const spare = counts.length === factors.length ? counts.slice(0, -1) : counts
  if (spare.length !== factors.length - 1) return 'not_a_number'
  const value = readNumber(priced, currency, language)
  if (typeof value === 'string') return value
  const product = spare.reduce((all, count) => all * Number(count), value)
  return Number.isSafeInteger(product) ? product : 'too_large'
}

function readNumber(text: string, currency: CurrencyCode, language: string): number | AmountProblem {
  if (!NUMBER.test(text)) return 'not_a_number'
  const digits = minorDigits(currency)
  const found = text.replace(/\d/g, '')
  const last = found.at(-1)
  let [whole, fraction]: [string, string] = [text, '']
  if (last !== undefined) {
    const tail = text.slice(text.lastIndexOf(last) + 1)
    const repeated = found.split(last).length > 2
    const isGroup = repeated || (found.length === 1 && tail.length === 3 && groupsWith(last, digits, language))
    if (!isGroup) [whole, fraction] = [text.slice(0, text.lastIndexOf(last)), tail]
    if (!groupsRight(whole)) return 'not_a_number'
  }
  if (fraction.length > digits) return 'decimals'
  const minor = Number(whole.replace(/\D/g, '') + fraction.padEnd(digits, '0'))
  return Number.isSafeInteger(minor) ? minor : 'too_large'
}

/** Whether one mark before three digits groups them: where the language groups with it, or no decimals are so many. */
function groupsWith(mark: string, digits: number, language: string): boolean {
  const { decimal, group } = marks(language)
  return mark === group || (digits < 3 && mark !== decimal)
}

/** One mark throughout, and every group but the first has three digits (two in India, except for the last). */
function groupsRight(whole: string): boolean {
  const groups = whole.split(/[.,]/)
  if (groups.length === 1) return true
  if (whole.includes('.') && whole.includes(',')) return false
  const inner = groups.slice(1, -1)
  return groups[0] !== '' && groups.at(-1)?.length === 3 && inner.every((g) => g.length === 3 || g.length === 2)
}
