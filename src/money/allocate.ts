import type { CurrencyCode } from './currency.ts'
import { type Money, ofMinor } from './money.ts'
import { MoneyError } from './money-error.ts'

const WEIGHT_TEXT = /^([+-]?)(\d+)(?:\.(\d+))?(?:e([+-]?\d{1,4}))?$/i

/** A weight as `digits * 10^exponent`, so that 0.1 means one tenth and not the nearest binary fraction. */
interface Weight {
  readonly digits: bigint
  readonly exponent: number
}

/**
 * Splits an amount by weights with the largest remainder method (Hamilton's): each share is its exact quota cut to a
 * whole minor unit, and the units left over go one each to the largest cut-off remainders, ties to the earlier index.
 * The shares sum to the amount exactly, each is less than one minor unit from its quota, and a weight of zero gets
 * nothing. A negative amount mirrors the positive one. All arithmetic is on whole numbers of any size.
 *
 * The method is not monotone: with weights 6, 6, 2 an amount of 10 gives 4, 4, 2 and one of 11 gives 5, 5, 1 (the
 * Alabama paradox). Do not split a grown amount and book the differences.
 *
 * @param weights numbers or plain decimal texts, zero or more, at least one above zero. A number stands for the decimal
 *   it prints as.
 * @throws MoneyError `bad-weights`, `too-large`, `unknown-currency`
 * @example allocate(money('CAD', '1.00'), [2, 3, 1]) // 0.33, 0.50, 0.17
 */
export function allocate<C extends CurrencyCode>(m: Money<C>, weights: readonly (number | string)[]): Money<C>[] {
  const whole = ofMinor(m.currency, m.minor)
  const scaled = toWholeNumbers(weights.map(readWeight))
  const total = scaled.reduce((sum, weight) => sum + weight, 0n)
  if (total === 0n) {
    throw new MoneyError(
      'bad-weights',
      weights.length === 0
        ? 'There are no weights to split by. Give at least one weight above zero.'
        : 'All weights are zero, so nothing says who gets the amount. Make at least one weight larger than zero.',
    )
  }

  const amount = BigInt(Math.abs(whole.minor))
  const shares = scaled.map((weight, index) => {
    const product = amount * weight
    const units = product / total
    return { index, units, remainder: product - units * total }
  })
  const leftOver = Number(amount - shares.reduce((sum, share) => sum + share.units, 0n))
  const byRemainder = [...shares].sort((a, b) =>
    a.remainder === b.remainder ? a.index - b.index : a.remainder > b.remainder ? -1 : 1,
  )
  for (const share of byRemainder.slice(0, leftOver)) share.units += 1n

  const sign = whole.minor < 0 ? -1 : 1
  return shares.map((share) => ofMinor(m.currency, sign * Number(share.units)))
}

function readWeight(weight: number | string, index: number): Weight {
  if (typeof weight === 'number' && Number.isSafeInteger(weight) && weight >= 0) {
    return { digits: BigInt(weight), exponent: 0 }
  }
  const match = WEIGHT_TEXT.exec(String(weight).trim())
  if (!match) {
    throw new MoneyError(
      'bad-weights',
      `Weight ${index + 1} is "${weight}", which is not a finite decimal number. Write it as digits, such as 2 or 0.25.`,
    )
  }
  const [, sign, integer = '0', fraction = '', power = '0'] = match
  const digits = BigInt(integer + fraction)
  if (sign === '-' && digits !== 0n) {
    throw new MoneyError('bad-weights', `Weight ${index + 1} is ${weight}. A weight cannot be less than zero.`)
  }
  return { digits, exponent: Number(power) - fraction.length }
}

function toWholeNumbers(weights: readonly Weight[]): bigint[] {
  // A weight of zero has no say in the common scale.
  const exponents = weights.filter(({ digits }) => digits !== 0n).map(({ exponent }) => exponent)
  const lowest = exponents.reduce((low, exponent) => Math.min(low, exponent), Number.POSITIVE_INFINITY)
  return weights.map(({ digits, exponent }) =>
    digits === 0n || exponent === lowest ? digits : digits * 10n ** BigInt(exponent - lowest),
  )
}
