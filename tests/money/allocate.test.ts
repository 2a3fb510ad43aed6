import Decimal from 'decimal.js'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { allocate } from '../../src/money/allocate.ts'
import { money, ofMinor } from '../../src/money/money.ts'
import { codeOf } from './code-of.ts'

function shares(minor: number, weights: readonly (number | string)[]): number[] {
  return allocate(ofMinor('CAD', minor), weights).map((share) => share.minor)
}

// Wide enough that no sum, product or quotient below is rounded where it matters.
const Exact = Decimal.clone({ precision: 400 })

const anyWeight = fc.oneof(
  fc.nat(1000),
  fc.double({ min: 0, max: 1e6, noNaN: true }),
  fc.double({ min: 0, max: 1e-300, noNaN: true }),
  fc.tuple(fc.nat(), fc.nat(99_999)).map(([whole, cents]) => `${whole}.${String(cents).padStart(5, '0')}`),
)
const anyWeights = fc
  .array(anyWeight, { minLength: 1, maxLength: 12 })
  .filter((weights) => weights.some((weight) => Number(weight) > 0))
const anyMinor = fc.oneof(fc.integer({ min: -100_000, max: 100_000 }), fc.maxSafeInteger())

describe('allocate', () => {
  it.each<[number, (number | string)[], number[]]>([
    [100, [1, 1, 1], [34, 33, 33]],
    [100, [2, 3, 1], [33, 50, 17]],
    [5, [3, 7], [2, 3]],
    [-5, [7, 3], [-4, -1]],
    [0, [1, 2], [0, 0]],
    [1, [0, 0, 1], [0, 0, 1]],
    [7, [5], [7]],
    [10, ['0.1', 0.2, '0.10'], [3, 5, 2]],
    [100, [1e-7, 3e-7], [25, 75]],
    [100, [1e21, '3000000000000000000000'], [25, 75]],
    [100, ['1e-7', '+3E-7'], [25, 75]],
    [100, [0, -0, ' 1 ', '-0.0'], [0, 0, 100, 0]],
  ])('%d by %j is %j', (minor, weights, expected) => {
    expect(shares(minor, weights)).toEqual(expected)
  })

  it('gives odd units to the earlier index on a tie', () => {
    expect(shares(2, [1, 1, 1, 1])).toEqual([1, 1, 0, 0])
    expect(shares(3, [1, 1, 1, 1])).toEqual([1, 1, 1, 0])
  })

  it('takes a number for the decimal it prints as: 0.1 + 0.2 is a fair third of 0.9', () => {
    expect(shares(9, [0.1, 0.2, 0.6])).toEqual([1, 2, 6])
    expect(shares(3, [0.3, '0.1', '0.2'])).toEqual(shares(3, [3, 1, 2]))
  })

  it('sees differences far below the precision of a float', () => {
    const barelyMore = '1.00000000000000000000000000000000001'
    expect(shares(1, ['1', barelyMore])).toEqual([0, 1])
    expect(shares(1, [barelyMore, '1'])).toEqual([1, 0])
  })

  it('splits the largest amount exactly', () => {
    expect(shares(Number.MAX_SAFE_INTEGER, [1, 1])).toEqual([4_503_599_627_370_496, 4_503_599_627_370_495])
  })

  it('keeps the currency', () => {
    expect(allocate(money('JPY', '100'), [1, 2])).toEqual([money('JPY', '33'), money('JPY', '67')])
  })

  it.each<[string, (number | string)[]]>([
    ['no weights', []],
    ['all zero', [0, 0, '0.00']],
    ['a negative number', [1, -1]],
    ['a negative text', ['1', '-0.01']],
    ['not a number', [1, Number.NaN]],
    ['infinite', [1, Number.POSITIVE_INFINITY]],
    ['minus infinite', [1, Number.NEGATIVE_INFINITY]],
    ['a word', [1, 'half']],
    ['an empty text', [1, '']],
    ['a fraction', ['1/3', '2/3']],
    ['grouping', ['1,000']],
    ['hexadecimal', ['0x10']],
  ])('refuses %s', (_, weights) => {
    expect(codeOf(() => shares(100, weights))).toBe('bad-weights')
  })

  it('names the weight it refuses', () => {
    expect(() => shares(100, [1, -2])).toThrow('Weight 2 is -2. A weight cannot be less than zero.')
  })

  it('sums to the amount exactly, and every share has the amount’s sign', () => {
    fc.assert(
      fc.property(anyMinor, anyWeights, (minor, weights) => {
        const parts = shares(minor, weights)
        expect(parts).toHaveLength(weights.length)
        expect(parts.reduce((sum, part) => sum + BigInt(part), 0n)).toBe(BigInt(minor))
        for (const part of parts) expect(part === 0 || Math.sign(part) === Math.sign(minor)).toBe(true)
      }),
    )
  })

  it('keeps each share less than one unit from its exact quota, and larger remainders served first', () => {
    fc.assert(
      fc.property(anyMinor, anyWeights, (minor, weights) => {
        const exact = weights.map((weight) => new Exact(weight))
        const total = exact.reduce((sum, weight) => sum.plus(weight), new Exact(0))
        const parts = shares(minor, weights).map((part, index) => {
          const quota = new Exact(Math.abs(minor)).times(exact[index] ?? 0).div(total)
          return { raised: new Exact(Math.abs(part)).minus(quota) }
        })
        for (const { raised } of parts) expect(raised.abs().lessThan(1)).toBe(true)
        // A raised share has 1 - remainder too much, another has its remainder too little: none may be better served.
        const leastServed = parts.map(({ raised }) => raised.neg()).filter((less) => less.greaterThan(0))
        const raisedBy = parts.map(({ raised }) => raised).filter((more) => more.greaterThan(0))
        for (const less of leastServed)
          for (const more of raisedBy) expect(less.plus(more).lessThanOrEqualTo(new Exact(1).plus('1e-60'))).toBe(true)
      }),
    )
  })

  it('mirrors a negative amount', () => {
    fc.assert(
      fc.property(anyMinor, anyWeights, (minor, weights) => {
        expect(shares(-minor, weights)).toEqual(shares(minor, weights).map((part) => (part === 0 ? 0 : -part)))
      }),
    )
  })

  it('gives equal weights shares that fall by at most one, from the first to the last', () => {
    fc.assert(
      fc.property(fc.nat(100_000), anyWeights, fc.nat(11), (minor, weights, pick) => {
        const repeated = weights[pick % weights.length] ?? 1
        const all = [...weights, repeated, repeated]
        const twins = shares(minor, all).filter((_, index) => all[index] === repeated)
        expect(twins).toEqual([...twins].sort((a, b) => b - a))
        expect(Math.max(...twins) - Math.min(...twins)).toBeLessThanOrEqual(1)
      }),
    )
  })

  it('does not mind the order of weights, but for ties', () => {
    fc.assert(
      fc.property(fc.nat(100_000), anyWeights, (minor, weights) => {
        const ascending = (a: number, b: number) => a - b
        expect(shares(minor, [...weights].reverse()).sort(ascending)).toEqual(shares(minor, weights).sort(ascending))
      }),
    )
  })

  it('does not mind the scale of weights', () => {
    fc.assert(
      fc.property(anyMinor, fc.array(fc.nat(1000), { minLength: 1, maxLength: 8 }), (minor, weights) => {
        fc.pre(weights.some((weight) => weight > 0))
        const thousandths = weights.map((weight) => `0.${String(weight).padStart(4, '0')}`)
        expect(shares(minor, thousandths)).toEqual(shares(minor, weights))
      }),
    )
  })

  it('splits over 500 weights in a few milliseconds', () => {
    const weights = Array.from({ length: 500 }, (_, index) => ((index * 7919) % 1000) / 1000 + 0.001)
    const times = Array.from({ length: 15 }, () => {
      const start = performance.now()
      shares(123_456_789, weights)
      return performance.now() - start
    })
    // The median, because other work on the machine can hold up any single run.
    expect(times.sort((a, b) => a - b)[7]).toBeLessThan(5)
  })
})
