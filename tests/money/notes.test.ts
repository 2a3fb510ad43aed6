import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { piecesOf } from '../../src/money/denominations.ts'
import { money, ofMinor } from '../../src/money/money.ts'
import { type BreakdownOptions, breakdown, type PieceCount } from '../../src/money/notes.ts'
import { codeOf } from './code-of.ts'
import { fewestByHand, fewestOfHuge } from './fewest-reference.ts'

function pieces(minor: number, options: BreakdownOptions = {}): PieceCount[] | null {
  return breakdown(ofMinor('EUR', minor), options)
}

function counted(result: readonly PieceCount[] | null): number | null {
  return result?.reduce((sum, { count }) => sum + count, 0) ?? null
}

function valued(result: readonly PieceCount[] | null): bigint {
  return (result ?? []).reduce((sum, { denomination, count }) => sum + BigInt(denomination) * BigInt(count), 0n)
}

const smallSet = fc.uniqueArray(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 6 })
const closeSet = fc.uniqueArray(fc.integer({ min: 900, max: 1000 }), { minLength: 1, maxLength: 3 })
const evenSet = fc.uniqueArray(fc.constantFrom(5, 10, 20, 25, 50, 100, 200, 250, 500, 1000), {
  minLength: 1,
  maxLength: 7,
})

function stockOf(set: readonly number[], counts: readonly number[]): Record<number, number> {
  return Object.fromEntries(set.map((value, index) => [value, counts[index] ?? 0]))
}

describe('breakdown', () => {
  it.each<[number, number[], [number, number][] | null]>([
    [6000, [2000, 5000], [[2000, 3]]],
    [6, [1, 3, 4], [[3, 2]]],
    [8, [1, 2, 4, 5], [[4, 2]]],
    [4000, [5000], null],
    [3000, [2000, 5000], null],
    [7, [7], [[7, 1]]],
    [7, [], null],
    [0, [2000], []],
  ])('%d from %j is %j', (minor, denominations, expected) => {
    const result = expected?.map(([denomination, count]) => ({ denomination, count }))
    expect(pieces(minor, { denominations })).toEqual(result ?? null)
  })

  it('takes more of the larger pieces where that needs no more of them', () => {
    // 8 is 5 + 3 or 4 + 4.
    expect(pieces(8, { denominations: [3, 4, 5] })).toEqual([
      { denomination: 5, count: 1 },
      { denomination: 3, count: 1 },
    ])
  })

  it('uses only what is at hand', () => {
    expect(pieces(6000, { stock: { 5000: 1, 2000: 2, 1000: 3 } })).toEqual([
      { denomination: 5000, count: 1 },
      { denomination: 1000, count: 1 },
    ])
    expect(pieces(6000, { stock: { 5000: 1, 2000: 3 } })).toEqual([{ denomination: 2000, count: 3 }])
    expect(pieces(6000, { stock: { 5000: 1, 2000: 2 } })).toBeNull()
    expect(pieces(6000, { stock: {} })).toBeNull()
  })

  it('uses a stock only in the denominations asked for', () => {
    const stock = { 5000: 1, 2000: 3, 1000: 1 }
    expect(pieces(6000, { stock, denominations: [1000, 2000] })).toEqual([{ denomination: 2000, count: 3 }])
    expect(pieces(6000, { stock, denominations: [500] })).toBeNull()
  })

  it('knows the currency’s own notes and coins', () => {
    expect(breakdown(money('CAD', '36.65'))).toEqual([
      { denomination: 2000, count: 1 },
      { denomination: 1000, count: 1 },
      { denomination: 500, count: 1 },
      { denomination: 100, count: 1 },
      { denomination: 25, count: 2 },
      { denomination: 10, count: 1 },
      { denomination: 5, count: 1 },
    ])
    expect(breakdown(money('CAD', '36.66'))).toBeNull()
    expect(breakdown(money('JPY', '0'))).toEqual([])
  })

  it('asks for denominations where it knows none', () => {
    expect(piecesOf('THB')).toBeNull()
    expect(codeOf(() => breakdown(money('THB', '20.00')))).toBe('bad-denominations')
    expect(breakdown(money('THB', '20.00'), { denominations: [2000] })).toEqual([{ denomination: 2000, count: 1 }])
  })

  it('refuses an amount below zero', () => {
    expect(codeOf(() => pieces(-1))).toBe('negative-amount')
  })

  it.each<[string, BreakdownOptions]>([
    ['zero', { denominations: [0, 5] }],
    ['a negative', { denominations: [-5] }],
    ['a fraction', { denominations: [2.5] }],
    ['no number', { denominations: [Number.NaN] }],
    ['one given twice', { denominations: [5, 10, 5] }],
    ['too many', { denominations: Array.from({ length: 101 }, (_, index) => index + 1) }],
    ['a stock of zeros', { stock: { 0: 1 } }],
    ['a negative stock', { stock: { 5: -1 } }],
    ['half a note', { stock: { 5: 0.5 } }],
    ['an endless stock', { stock: { 5: Number.POSITIVE_INFINITY } }],
  ])('refuses %s', (_, options) => {
    expect(codeOf(() => pieces(10, options))).toBe('bad-denominations')
    expect(codeOf(() => pieces(0, options))).toBe('bad-denominations')
  })

  it('says so when a set of denominations is too uneven to work out', () => {
    const denominations = [10_039, 10_037, 10_009, 10_007]
    expect(codeOf(() => pieces(123_456_789, { denominations }))).toBe('search-too-large')
  })

  it('lists pieces that make the amount, from the largest down, each at least once and within the stock', () => {
    const counts = fc.array(fc.nat(9), { minLength: 7, maxLength: 7 })
    fc.assert(
      fc.property(fc.oneof(smallSet, evenSet), counts, fc.integer({ min: 1, max: 5000 }), (set, held, minor) => {
        const stock = stockOf(set, held)
        const result = pieces(minor, { stock })
        fc.pre(result !== null)
        expect(valued(result)).toBe(BigInt(minor))
        const used = (result ?? []).map(({ denomination }) => denomination)
        expect(used).toEqual([...used].sort((a, b) => b - a))
        for (const { denomination, count } of result ?? []) {
          expect(count).toBeGreaterThan(0)
          expect(count).toBeLessThanOrEqual(stock[denomination] ?? 0)
        }
      }),
    )
  })

  it('is as short as the shortest of all ways, and null only if there is none', () => {
    const any = fc.oneof(
      fc.tuple(smallSet, fc.integer({ min: 1, max: 600 })),
      fc.tuple(closeSet, fc.integer({ min: 1, max: 30_000 })),
      fc.tuple(
        evenSet,
        fc.integer({ min: 1, max: 2000 }).map((steps) => steps * 5),
      ),
    )
    fc.assert(
      fc.property(any, ([set, minor]) => {
        expect(counted(pieces(minor, { denominations: set }))).toBe(fewestByHand(minor, set))
      }),
      { numRuns: 400 },
    )
  })

  it('is as short as the shortest of all ways with a stock', () => {
    const counts = fc.array(fc.nat(12), { minLength: 7, maxLength: 7 })
    const any = fc.oneof(smallSet, closeSet, evenSet).chain((set) =>
      counts.chain((held) => {
        const worth = set.reduce((sum, value, index) => sum + value * (held[index] ?? 0), 0)
        return fc.record({
          set: fc.constant(set),
          held: fc.constant(held),
          minor: fc.integer({ min: 1, max: worth + 5 }),
        })
      }),
    )
    // A random amount of a random stock can seldom be paid; one that is drawn from the stock always can.
    const payable = fc.oneof(smallSet, closeSet, evenSet).chain((set) =>
      fc.tuple(counts, counts).map(([held, taken]) => ({
        set,
        held,
        minor: set.reduce((sum, value, index) => sum + value * Math.min(held[index] ?? 0, taken[index] ?? 0), 0),
      })),
    )
    fc.assert(
      fc.property(fc.oneof(any, payable), ({ set, held, minor }) => {
        const stock = stockOf(set, held)
        expect(counted(pieces(minor, { stock }))).toBe(fewestByHand(minor, set, stock))
      }),
      { numRuns: 600 },
    )
  })

  it('has more of the larger pieces than any other way as short', () => {
    fc.assert(
      fc.property(smallSet, fc.integer({ min: 1, max: 300 }), (set, minor) => {
        const result = pieces(minor, { denominations: set })
        fc.pre(result !== null)
        let rest = minor
        let left = counted(result) ?? 0
        const falling = [...set].sort((a, b) => b - a)
        for (const [index, value] of falling.entries()) {
          const chosen = result?.find(({ denomination }) => denomination === value)?.count ?? 0
          for (let more = chosen + 1; more * value <= rest; more++) {
            const others = fewestByHand(rest - more * value, falling.slice(index + 1))
            expect(others === null || more + others > left).toBe(true)
          }
          rest -= chosen * value
          left -= chosen
        }
      }),
      { numRuns: 300 },
    )
  })

  it('is as short as can be for huge amounts', () => {
    const set = fc.uniqueArray(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 6 })
    fc.assert(
      fc.property(set, fc.integer({ min: 10_000, max: Number.MAX_SAFE_INTEGER }), (values, minor) => {
        const result = pieces(minor, { denominations: values })
        expect(result === null ? null : BigInt(counted(result) ?? 0)).toBe(fewestOfHuge(minor, values))
        if (result) expect(valued(result)).toBe(BigInt(minor))
      }),
      { numRuns: 300 },
    )
  })

  it('finds the same with a stock that is never used up', () => {
    fc.assert(
      fc.property(smallSet, fc.integer({ min: 1, max: 5000 }), (set, minor) => {
        const plenty = Object.fromEntries(set.map((value) => [value, minor]))
        expect(pieces(minor, { stock: plenty })).toEqual(pieces(minor, { denominations: set }))
      }),
    )
  })

  it.each(['CAD', 'EUR', 'USD', 'CHF', 'SEK', 'JPY', 'MXN', 'HUF'] as const)(
    'is quick for %s, also when huge',
    (code) => {
      const smallest = piecesOf(code)?.coins[0] ?? 1
      const start = performance.now()
      for (let step = 0; step < 100; step++) {
        const large = Math.floor((1_234_565 + step * 9871) / smallest) * smallest
        const huge = Math.floor((Number.MAX_SAFE_INTEGER - step * 99_991) / smallest) * smallest
        expect(valued(breakdown(ofMinor(code, large)))).toBe(BigInt(large))
        expect(valued(breakdown(ofMinor(code, huge)))).toBe(BigInt(huge))
      }
      // 200 payments; one takes about a tenth of a millisecond.
      expect(performance.now() - start).toBeLessThan(1000)
    },
  )
})
