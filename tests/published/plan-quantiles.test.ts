import { describe, expect, it } from 'vitest'
import { quantile } from '../../src/plan/quantile.ts'

describe('quantiles of type 7 (Hyndman and Fan 1996)', () => {
  // R 4.2.2 quantile(type = 7) and numpy agree on these.
  it.each([
    [
      [2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37],
      [6.5, 15, 24.5],
    ],
    [
      [1, 12, 14, 3, 96, 111],
      [5.25, 13, 75.5],
    ],
  ])('the quartiles of %j are %j', (values, quartiles) => {
    expect([0.25, 0.5, 0.75].map((p) => quantile(values, p))).toEqual(quartiles)
  })

  it('the twelve monthly amounts whose nine types differ: Q3 13812.5, P90 19550 for type 7', () => {
    const spends = [12000, 15500, 9900, 20000, 13250, 12000, 41000, 11800, 12600, 13000, 12750, 12200]
    expect([0.5, 0.75].map((p) => quantile(spends, p))).toEqual([12675, 13812.5])
    expect(quantile(spends, 0.9)).toBeCloseTo(19550, 6)
  })

  // NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.6.2; the value for type 7 is R's.
  it("the handbook's gauge data: 95.19568 at 0.9", () => {
    const gauge = [
      95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.061, 95.1591, 95.1195, 95.1065, 95.0925, 95.199, 95.1682,
    ]
    expect(quantile(gauge, 0.9)).toBeCloseTo(95.19568, 5)
  })

  it('one value is all its quantiles', () => {
    expect([0, 0.25, 1].map((p) => quantile([7], p))).toEqual([7, 7, 7])
  })
})
