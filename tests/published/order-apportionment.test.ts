import { readFileSync } from 'node:fs'
import { dinero, allocate as dineroAllocate, toSnapshot } from 'dinero.js'
import { USD } from 'dinero.js/currencies'
import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import { ofMinor, potId, splitOrder } from '../../src/index.ts'

/* An order is put on pots as seats are on states: by Hamilton's method, the largest remainder. */

const byShare = (units: number, shares: readonly (number | string)[]): number[] =>
  splitOrder(ofMinor('USD', units), {
    by: 'share',
    shares: shares.map((share, n) => ({ pot: potId(`p${n}`), share: String(share) })),
  }).lines.map((line) => line.amount.minor)

describe('published apportionments', () => {
  // Source: census of 1790; Macmillan FAPP 10e, ch. 14, example 6, table 14.5. 120 seats by Hamilton's bill.
  it('1790: 120 seats over 15 states, and the nine odd seats to the largest remainders', () => {
    const populations = [
      630_560, 475_327, 432_879, 353_523, 331_589, 278_514, 236_841, 206_236, 179_570, 141_822, 85_533, 70_835, 68_705,
      68_446, 55_540,
    ]
    expect(byShare(120, populations)).toEqual([21, 16, 14, 12, 11, 9, 8, 7, 6, 5, 3, 2, 2, 2, 2])
    const split = splitOrder(ofMinor('USD', 120), {
      by: 'share',
      shares: populations.map((p, n) => ({ pot: potId(`p${n}`), share: String(p) })),
    })
    // Published quotas: VA 20.926, MA 15.774, NC 11.732, CT 7.860, SC 6.844, NJ 5.959, NH 4.707, VT 2.839, DE 1.843 round up.
    expect(split.lines.flatMap((l, n) => (l.odd === 1 ? [n] : []))).toEqual([0, 1, 3, 6, 7, 8, 9, 10, 14])
    expect(split.lines.reduce((sum, l) => sum + l.odd, 0)).toBe(9)
  })

  /*
   * 1880, where the Alabama paradox was found (FAPP 10e, example 7; Balinski & Young, Fair Representation, 1982):
   * populations of Alabama 1,262,505, Texas 1,591,749 and Illinois 3,077,871 of 49,371,340; Alabama has 8 of 299 seats and
   * 7 of 300. The other 35 states are taken as one here, for every state's own seat is a rule money does not know; the
   * published quotas of the three, and Alabama's seats, come out as they did.
   */
  it('1880: Alabama loses its eighth seat when the house grows from 299 to 300', () => {
    const three = [1_262_505, 1_591_749, 3_077_871]
    const quotas = (seats: number) => three.map((p) => ((p * seats) / 49_371_340).toFixed(3))
    expect(quotas(299)).toEqual(['7.646', '9.640', '18.640'])
    expect(quotas(300)).toEqual(['7.671', '9.672', '18.702'])
    const states = [...three, 49_371_340 - three.reduce((sum, p) => sum + p, 0)]
    expect([byShare(299, states)[0], byShare(300, states)[0]]).toEqual([8, 7])
  })

  it('is not monotone in the total: a pot may bear less of a larger order', () => {
    // Weights 6, 6, 2 (computed by this project, no other source): the third pot's part shrinks.
    expect([byShare(10, [6, 6, 2]), byShare(11, [6, 6, 2])]).toEqual([
      [4, 4, 2],
      [5, 5, 1],
    ])
  })
})

// Source: allocation-cases.json, the rows whose library names the largest remainder (brick/money, MIT).
const row = z.object({
  mode: z.string(),
  amount: z.string(),
  cash_step_minor: z.number(),
  ratios: z.array(z.string()),
  expected: z.array(z.string()),
})
const rows = z
  .array(z.unknown())
  .parse(JSON.parse(readFileSync(new URL('./allocation-cases.json', import.meta.url), 'utf8')))
  .flatMap((r) => {
    const read = row.safeParse(r)
    return read.success && read.data.mode === 'FloorToLargestRemainder' ? [read.data] : []
  })
  // Orders are not below zero, and a share is a decimal.
  .filter((r) => !r.amount.startsWith('-') && r.ratios.every((ratio) => !ratio.includes('/')))

describe('the tables of brick/money', () => {
  it('have rows by the largest remainder', () => expect(rows.length).toBeGreaterThan(8))

  it.each(rows)('$amount by $ratios', (r) => {
    const units = Math.round((Number(r.amount) * 100) / r.cash_step_minor)
    const theirs = r.expected.map((e) => Math.round((Number(e) * 100) / r.cash_step_minor))
    expect(byShare(units, r.ratios)).toEqual(theirs)
  })
})

describe('dinero.js 2.0.2, which gives what is left over to the largest ratios', () => {
  const theirs = (units: number, ratios: number[]): number[] =>
    dineroAllocate(dinero({ amount: units, currency: USD }), ratios).map((d) => toSnapshot(d).amount)

  it.each([
    [100, [1, 1, 1]],
    [101, [3, 7]],
    [5, [7, 3]],
    [1000, [50, 50]],
  ])('agrees on %i by %j', (units, ratios) => {
    expect(byShare(units, ratios)).toEqual(theirs(units, ratios))
  })

  it.each([
    [5, [3, 7], [1, 4], [2, 3]],
    [10, [1, 1, 2], [2, 2, 6], [3, 2, 5]],
    [100, [2, 3, 1], [33, 51, 16], [33, 50, 17]],
    [3, [75, 25], [3, 0], [2, 1]],
    [2, [1, 1, 3, 1], [0, 0, 2, 0], [1, 0, 1, 0]],
  ])('differs on %i by %j: theirs %j, ours %j', (units, ratios, dineros, ours) => {
    expect(theirs(units, ratios)).toEqual(dineros)
    expect(byShare(units, ratios)).toEqual(ours)
  })
})
