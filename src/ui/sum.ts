/*
 * Sums as people type them: + - * / and brackets, worked out with whole numbers only, so that nothing is lost before the
 * one rounding at the end.
 */

/** Why a sum cannot be worked out. `unfinished`: it ends where more must come. `decimals`: an amount finer than money. */
export type SumProblem = 'not_a_number' | 'unfinished' | 'by_zero' | 'decimals'

/** An exact value, `over / under`; `under` is above zero. */
export interface Fraction {
  readonly over: bigint
  readonly under: bigint
}

/** A number as typed: `12.50` is 1250 with two decimals. */
export interface TypedNumber {
  readonly digits: bigint
  readonly decimals: number
}

class Stop extends Error {
  constructor(readonly problem: SumProblem) {
    super(problem)
  }
}

/**
 * Works a sum out: products before sums, brackets first, a sign only where a sum begins.
 *
 * @param text without blanks; signs are `+ - * / ( )`
 * @param numberOf reads one number; null when it is none
 * @param mostDecimals of a number that is an amount by itself; a factor may have more
 * @returns the exact value and whether there was anything to work out, or what is wrong
 * @example workOut('(20-4)/2', …) // {value: {over: 16n, under: 2n}, isSum: true}
 */
export function workOut(
  text: string,
  numberOf: (text: string) => TypedNumber | null,
  mostDecimals: number,
): { readonly value: Fraction; readonly isSum: boolean } | SumProblem {
  const tokens = text.match(/[\d.,\u066b]+|./gsu) ?? []
  let at = 0
  const take = (signs: string): string | null => {
    const token = tokens[at]
    if (token === undefined || !signs.includes(token)) return null
    at += 1
    return token
  }
  const sum = (): Fraction => {
    const isNegative = take('+-') === '-'
    let total = isNegative ? negative(product()) : product()
    for (let sign = take('+-'); sign; sign = take('+-')) {
      const next = product()
      total = plus(total, sign === '-' ? negative(next) : next)
    }
    return total
  }
  const product = (): Fraction => {
    const first = factor()
    let { value } = first
    let isAlone = true
    for (let sign = take('*/'); sign; sign = take('*/')) {
      isAlone = false
      const by = factor().value
      if (sign === '/' && by.over === 0n) throw new Stop('by_zero')
      value = sign === '*' ? times(value, by) : times(value, inverse(by))
    }
    if (isAlone && first.decimals > mostDecimals) throw new Stop('decimals')
    return value
  }
  const factor = (): { value: Fraction; decimals: number } => {
    const token = tokens[at]
    if (token === undefined) throw new Stop('unfinished')
    at += 1
    if (token === '(') {
      const value = sum()
      if (tokens[at] === undefined) throw new Stop('unfinished')
      if (take(')') === null) throw new Stop('not_a_number')
      return { value, decimals: 0 }
    }
    const number = numberOf(token)
    if (!number) throw new Stop('not_a_number')
    return { value: { over: number.digits, under: 10n ** BigInt(number.decimals) }, decimals: number.decimals }
  }
  try {
    const value = sum()
    return at < tokens.length ? 'not_a_number' : { value, isSum: tokens.length > 1 }
  } catch (cause) {
    if (cause instanceof Stop) return cause.problem
    throw cause
  }
}

/** The nearest whole number; halves go away from zero. */
export function nearestWhole({ over, under }: Fraction): bigint {
  const twice = (over < 0n ? -over : over) * 2n + under
  const size = twice / (under * 2n)
  return over < 0n ? -size : size
}

function plus(a: Fraction, b: Fraction): Fraction {
  return { over: a.over * b.under + b.over * a.under, under: a.under * b.under }
}

function times(a: Fraction, b: Fraction): Fraction {
  return { over: a.over * b.over, under: a.under * b.under }
}

function negative({ over, under }: Fraction): Fraction {
  return { over: -over, under }
}

function inverse({ over, under }: Fraction): Fraction {
  return over < 0n ? { over: -under, under: -over } : { over: under, under: over }
}
