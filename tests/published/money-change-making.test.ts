import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import { currencyCode, currencyCodes, minorDigits } from '../../src/money/currency.ts'
import { piecesOf } from '../../src/money/denominations.ts'
import { ofMinor } from '../../src/money/money.ts'
import { breakdown, type PieceCount } from '../../src/money/notes.ts'

function pay(amount: number, denominations: readonly number[]): PieceCount[] | null {
  return breakdown(ofMinor('EUR', amount), { denominations })
}

function fewest(amount: number, denominations: readonly number[]): number {
  const pieces = pay(amount, denominations)
  if (!pieces) throw new Error(`${amount} cannot be paid with ${denominations.join(', ')}.`)
  return pieces.reduce((sum, { count }) => sum + count, 0)
}

/** The largest piece first, always: what the fewest pieces are compared with. Null when it gets stuck. */
function greedy(amount: number, denominations: readonly number[]): number | null {
  let rest = amount
  let pieces = 0
  for (const value of [...denominations].sort((a, b) => b - a)) {
    pieces += Math.floor(rest / value)
    rest %= value
  }
  return rest === 0 ? pieces : null
}

function average(denominations: readonly number[], below: number): number {
  let sum = 0
  for (let amount = 0; amount < below; amount++) sum += fewest(amount, denominations)
  return sum / below
}

const US = [1, 5, 10, 25]
const EURO = [1, 2, 5, 10, 20, 50, 100, 200]
const CANADA = [1, 5, 10, 25, 100, 200]

describe('average number of coins', () => {
  // Source: J. Shallit, "What this country needs is an 18c piece", Math. Intelligencer 25(2), 2003, 20-23 (seen in the
  // AMS digest and OEIS A212951); to the decimals printed there.
  it.each([
    ['US coins, 0 to 99', US, 100, 4.7, 2],
    ['{1, 5, 18, 25}, 0 to 99', [1, 5, 18, 25], 100, 3.89, 2],
    ['{1, 5, 18, 29}, 0 to 99', [1, 5, 18, 29], 100, 3.89, 2],
    ['US coins and a 32, 0 to 99', [...US, 32], 100, 3.46, 2],
    ['euro coins, 0 to 499', EURO, 500, 4.6, 2],
    ['euro coins and a 133, 0 to 499', [...EURO, 133], 500, 3.92, 2],
    ['euro coins and a 137, 0 to 499', [...EURO, 137], 500, 3.92, 2],
    ['Canadian coins, 0 to 499', CANADA, 500, 5.9, 2],
    ['Canadian coins and an 83, 0 to 499', [...CANADA, 83], 500, 4.578, 3],
  ] as const)('%s', (_, denominations, below, expected, decimals) => {
    expect(average(denominations, below).toFixed(decimals)).toBe(expected.toFixed(decimals))
  })
})

describe('smallest amount at which the largest coin first is not best', () => {
  // Source: the counterexamples of D. Pearson, "A polynomial-time algorithm for the change-making problem", ORL 33, 2005,
  // and others, recomputed; the old British coins in halfpence from S. Wagon, Macalester Problem of the Week 1009.
  it.each([
    [[1, 3, 4], 6, 3, 2],
    [[1, 10, 25], 30, 6, 3],
    [[1, 7, 10], 14, 5, 2],
    [[1, 6, 10], 12, 3, 2],
    [[1, 2, 4, 5], 8, 3, 2],
    [[1, 15, 25], 30, 6, 2],
    [[1, 5, 10, 20, 25], 40, 3, 2],
    [[1, 2, 3, 6, 17, 21], 34, 4, 2],
    [[1, 5, 18, 25], 28, 4, 3],
    [[1, 2, 6, 12, 24, 48, 60, 120, 480], 96, 3, 2],
  ])('%j: %d takes %d, or %d at best', (denominations, amount, byGreedy, atBest) => {
    for (let below = 1; below < amount; below++) {
      expect([below, fewest(below, denominations)]).toEqual([below, greedy(below, denominations)])
    }
    expect(greedy(amount, denominations)).toBe(byGreedy)
    expect(fewest(amount, denominations)).toBe(atBest)
  })

  // Source: the same list: these sets have no such amount. A smallest counterexample lies below the sum of the two
  // largest coins (Kozen & Zaks, TCS 123, 1994; from memory).
  it.each([
    ['US', [1, 5, 10, 25, 50, 100]],
    ['euro, coins and notes up to 20', [...EURO, 500, 1000, 2000]],
    ['Canada without the cent', [5, 10, 25, 100, 200]],
    ['Australia', [5, 10, 20, 50, 100, 200]],
  ])('%s has none', (_, denominations) => {
    const [largest = 0, second = 0] = [...denominations].sort((a, b) => b - a)
    const smallest = Math.min(...denominations)
    for (let amount = smallest; amount < largest + second; amount += smallest) {
      expect([amount, fewest(amount, denominations)]).toEqual([amount, greedy(amount, denominations)])
    }
  })
})

describe('notes whose smallest does not divide the rest', () => {
  // Source: computed by this project, no published value: cash machines with notes of 20 and 50 are the known case.
  it.each([
    [60, [20, 50], { 20: 3 }],
    [80, [20, 50], { 20: 4 }],
    [110, [20, 50], { 50: 1, 20: 3 }],
    [6, [2, 5], { 2: 3 }],
    [8, [2, 5], { 2: 4 }],
  ])('pays %d with %j, where the largest note first gets stuck', (amount, denominations, expected) => {
    expect(greedy(amount, denominations)).toBeNull()
    const pieces = pay(amount, denominations) ?? []
    expect(Object.fromEntries(pieces.map(({ denomination, count }) => [denomination, count]))).toEqual(expected)
  })

  it.each([
    [10, [20, 50]],
    [30, [20, 50]],
    [3, [2, 5]],
    [30, [20, 25]],
  ])('cannot pay %d with %j', (amount, denominations) => {
    expect(pay(amount, denominations)).toBeNull()
  })

  it('pays 30 with 10 and 25 in three tens', () => {
    expect(greedy(30, [10, 25])).toBeNull()
    expect(pay(30, [10, 25])).toEqual([{ denomination: 10, count: 3 }])
  })
})

describe('worked payments', () => {
  it('pays 1.38 in seven US coins: 2 halves, 1 quarter, 1 dime, 3 cents', () => {
    // Source: S. Wagon, Macalester Problem of the Week 1009.
    expect(pay(138, [1, 5, 10, 25, 50])).toEqual([
      { denomination: 50, count: 2 },
      { denomination: 25, count: 1 },
      { denomination: 10, count: 1 },
      { denomination: 1, count: 3 },
    ])
  })

  it('pays 388.88 EUR with one of each piece up to 200', () => {
    // Source: the euro series; recomputed, no printed value.
    expect(breakdown(ofMinor('EUR', 38_888))).toEqual(
      [20_000, 10_000, 5000, 2000, 1000, 500, 200, 100, 50, 20, 10, 5, 2, 1].map((denomination) => ({
        denomination,
        count: 1,
      })),
    )
  })

  it('pays 999.99 EUR in 17 pieces', () => {
    // Source: the notes and coins issued now (nbb.be, bportugal.pt); recomputed, no printed value.
    const pieces = breakdown(ofMinor('EUR', 99_999)) ?? []
    expect(pieces[0]).toEqual({ denomination: 20_000, count: 4 })
    expect(pieces.reduce((sum, { count }) => sum + count, 0)).toBe(17)
  })

  it('pays it in 15 with the 500 euro note, which is not issued any more', () => {
    // Counted by hand: 500, 2 x 200, 50, 2 x 20, 5, 2 x 2, 0.50, 2 x 0.20, 0.05, 2 x 0.02.
    expect(fewest(99_999, [...EURO, 500, 1000, 2000, 5000, 10_000, 20_000, 50_000])).toBe(15)
  })
})

describe('notes and coins of the currencies', () => {
  // Source: currencies-notes.json; per row its own tag: read at a central bank, second hand, or from memory.
  const { currencies } = z
    .object({
      currencies: z.array(
        z.object({
          currency: z.string(),
          minor_digits_iso: z.number(),
          notes_minor: z.array(z.number()),
          coins_minor: z.array(z.number()),
          'all_pieces_greedy_optimal [C]': z.enum(['yes', 'no']),
        }),
      ),
    })
    .parse(JSON.parse(readFileSync(new URL('./currencies-notes.json', import.meta.url), 'utf8')))

  it('are the rows of the file and no others', () => {
    expect(currencyCodes.filter((code) => piecesOf(code) !== null)).toEqual(
      currencies.map(({ currency }) => currency).sort(),
    )
    for (const { currency, minor_digits_iso, notes_minor, coins_minor } of currencies) {
      const code = currencyCode(currency)
      expect(piecesOf(code)).toEqual({ notes: notes_minor, coins: coins_minor })
      expect(minorDigits(code)).toBe(minor_digits_iso)
    }
  })

  it.each(currencies)('$currency: the largest piece first is best, as the file says', (row) => {
    const all = [...new Set([...row.notes_minor, ...row.coins_minor])]
    const step = Math.min(...all)
    const most = Math.max(...all) * 2
    expect(row['all_pieces_greedy_optimal [C]']).toBe('yes')
    // Every amount of small change, then a stride through the larger ones that meets every last digit.
    const amounts = Array.from({ length: 400 }, (_, index) => (index + 1) * step)
    for (let amount = 401 * step; amount < most; amount += step * Math.max(1, Math.floor(most / step / 400) | 1)) {
      amounts.push(amount)
    }
    for (const amount of amounts) {
      const pieces = breakdown(ofMinor(currencyCode(row.currency), amount)) ?? []
      expect([amount, pieces.reduce((sum, { count }) => sum + count, 0)]).toEqual([amount, greedy(amount, all)])
    }
  })
})
