import { fv, nper, pmt } from 'financial'
import { describe, expect, it } from 'vitest'
import { calendarDate, money, ofMinor, type PaySchedule, planSinking } from '../../src/index.ts'
import { periodsToReach, sinkingFundFactor, sinkingPayment } from '../../src/plan/sinking-payment.ts'

const digits = (rate: string, n: number, places: number): string => sinkingFundFactor(rate, n).toFixed(places)

describe('(A/F, i, n) of engineering-economics tables', () => {
  // Fraser et al., Engineering Economics, Appendix A, i = 0.5 %.
  it.each([
    [5, '0.19801'],
    [10, '0.09777'],
    [12, '0.08107'],
    [15, '0.06436'],
    [20, '0.04767'],
    [40, '0.02265'],
  ])('Fraser: half a per cent, %i periods: %s', (n, factor) => expect(digits('0.005', n, 5)).toBe(factor))

  // Blank and Tarquin, Engineering Economy, Table 1, i = 0.25 %.
  it.each([
    [2, '0.49938'],
    [6, '0.16563'],
    [12, '0.08219'],
    [24, '0.04048'],
  ])('Blank and Tarquin: a quarter of a per cent, %i periods: %s', (n, factor) =>
    expect(digits('0.0025', n, 5)).toBe(factor),
  )

  // Newnan, Engineering Economic Analysis, i = 35 %.
  it.each([
    [5, '0.1005'],
    [10, '0.0183'],
  ])('Newnan: 35 per cent, %i periods: %s', (n, factor) => expect(digits('0.35', n, 4)).toBe(factor))

  it('without interest it is 1/n', () => expect(digits('0', 12, 6)).toBe('0.083333'))
})

describe("numpy-financial's documented examples", () => {
  it('fv: 100 in and 100 a month for ten years come to 15692.93, 16569.87, 17509.45 at 5, 6 and 7 per cent', () => {
    for (const [yearly, documented] of [
      [0.05, 15692.92889433575],
      [0.06, 16569.87435405],
      [0.07, 17509.44688102],
    ] as const) {
      // What must be put in each month to reach that very sum is the 100 it came from.
      expect(sinkingPayment(documented, 100, 120, yearly / 12).toNumber()).toBeCloseTo(100, 6)
      expect(fv(yearly / 12, 120, -100, -100)).toBeCloseTo(documented, 6)
    }
  })

  it('pmt: a loan of 200000 over 15 years at 7.5 per cent takes 1854.02 a month', () => {
    expect(sinkingPayment(0, -200000, 180, 0.075 / 12).toNumber()).toBeCloseTo(1854.0247200054619, 8)
    expect(sinkingPayment(0, -15000, 60, 0.08 / 12).toNumber()).toBeCloseTo(304.145914, 5)
    expect(sinkingPayment(0, -15000, 60, 0).toNumber()).toBe(250)
  })

  it('nper: 2000 a year reach 100000 in 50 years without interest, in 21.54 at 7.5 per cent', () => {
    expect(periodsToReach(100000, 0, 2000, 0, 100)).toBe(50)
    expect(periodsToReach(100000, 0, 2000, 0.075, 100)).toBe(22)
    expect(nper(0.075, -2000, 0, 100000)).toBeCloseTo(21.544944, 5)
  })
})

// Public reference implementation: the npm package financial 0.2.4, numpy-financial in TypeScript.
it('planSinking agrees with financial.pmt for monthly pays with interest', () => {
  const schedule: PaySchedule = { rhythm: 'monthly', first: calendarDate('2020-01-15'), day: 15 }
  const today = calendarDate('2026-01-20')
  for (const [target, alreadyIn, due, pays] of [
    [120_000, 0, '2027-01-15', 12],
    [500_000, 42_000, '2028-12-31', 35],
    [80_050, 79_000, '2026-02-15', 1],
  ] as const) {
    for (const rate of ['0', '0.01', '0.06']) {
      const plan = planSinking(
        {
          goal: { target: ofMinor('CAD', target), due: calendarDate(due), yearlyRate: rate },
          in: ofMinor('CAD', alreadyIn),
        },
        schedule,
        today,
      )
      const reference = pmt(Number(rate) / 12, pays, alreadyIn, -target)
      expect(plan.pays).toHaveLength(pays)
      expect(plan.exact.minor).toBe(Math.ceil(Number(reference.toFixed(4))))
    }
  }
})

it('pmt(0, 12, 0, 1200) is exactly 100: twelve pays of 100.00 for 1200.00', () => {
  const plan = planSinking(
    { goal: { target: money('CAD', '1200.00'), due: calendarDate('2026-12-31') }, in: money('CAD', '0') },
    { rhythm: 'monthly', first: calendarDate('2026-01-31'), day: 31 },
    calendarDate('2026-01-01'),
  )
  expect([plan.pays.length, plan.eachPay]).toEqual([12, money('CAD', '100.00')])
})
