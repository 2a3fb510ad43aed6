import { amountOfNumber } from '../money/price-amount.ts'
import type { Figure } from './stream.ts'

const SCALE = 4

/** Reads figures as amounts, once the page's currency is known. */
export interface Pricer {
  /** Plain decimal text, negative when the page shows a minus; null when the number can be read in two ways. */
  amount(figure: Figure): string | null
}

/** Makes a pricer for one page. `currency` settles decimals where a number alone does not (`1.234`). */
export function createPricer(currency: string | null, lang: string | null): Pricer {
  const known = new Map<Figure, string | null>()
  const locale = lang !== null && isLocale(lang) ? lang : null
  return {
    amount(figure) {
      const before = known.get(figure)
      if (before !== undefined) return before
      const only = figure.marks.length === 1 ? figure.marks[0]?.codes : undefined
      const own = only?.length === 1 ? only[0] : undefined
      const code = own ?? currency ?? undefined
      const parsed = amountOfNumber(figure.number, code ?? null, locale)
      const sign = figure.negative && parsed !== null && /[1-9]/.test(parsed) ? '-' : ''
      const amount = parsed === null ? null : sign + parsed
      known.set(figure, amount)
      return amount
    },
  }
}

function isLocale(text: string): boolean {
  try {
    return Intl.getCanonicalLocales(text).length === 1
  } catch {
    return false
  }
}

/**
 * A decimal text as a whole number of ten-thousandths, for adding and comparing; null beyond what can be exact.
 *
 * @example scaled('55.9') // 559000
 */
export function scaled(amount: string): number | null {
  const match = /^(-?)(\d+)(?:\.(\d+))?$/.exec(amount)
  if (!match) return null
  const [, sign, whole = '0', decimals = ''] = match
  if (/[1-9]/.test(decimals.slice(SCALE))) return null
  const value = Number(whole + decimals.slice(0, SCALE).padEnd(SCALE, '0'))
  return Number.isSafeInteger(value) ? (sign === '-' ? 0 - value : value) : null
}

/** The amount with a minus, whatever the page shows: what a discount or a credit does to the sum. */
export function takenOff(amount: string): string {
  return amount.startsWith('-') || scaled(amount) === 0 ? amount : `-${amount}`
}
