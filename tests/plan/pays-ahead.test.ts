import { describe, expect, it } from 'vitest'
import { changeRhythm, monthOf, payDates, payMonths, paysAhead } from '../../src/index.ts'
import { household } from '../book/sample.ts'
import { day, fortnightly, monthly, paid } from './sample.ts'

describe('paysAhead', () => {
  it('the pays of several earners by day, each with who and how much', () => {
    const h = household([], {
      earners: [
        { id: 'ola', name: 'Ola', pay: 90_000, schedules: [{ rhythm: 'last-working-day', first: day('2026-01-01') }] },
        { id: 'ada', name: 'Ada', pay: 40_000, schedules: [{ ...fortnightly, first: day('2026-01-16') }] },
      ],
    })
    expect(
      paysAhead(h, day('2026-01-10'), day('2026-02-01')).map((p) => [p.date, p.earner, p.amount, p.month]),
    ).toEqual([
      ['2026-01-16', 'ada', 40_000, '2026-01'],
      ['2026-01-30', 'ola', 90_000, '2026-01'],
      ['2026-01-30', 'ada', 40_000, '2026-01'],
    ])
  })

  it('without earners, the pay dates written down', () => {
    const h = household([], { payDates: [day('2026-01-10'), day('2026-02-10')] })
    expect(paysAhead(h, day('2026-02-01'), day('2026-02-28'))).toEqual([
      { date: '2026-02-10', month: '2026-02', earner: '', amount: 0 },
    ])
  })
})

describe('payMonths', () => {
  it('shows three-pay months of a fortnightly pay and five-pay months of a weekly one ahead', () => {
    const months = (h: ReturnType<typeof paid>) =>
      payMonths(h, monthOf(day('2026-01-01'), 1), 12)
        .filter((m) => m.more.length > 0)
        .map((m) => m.month)
    // Fridays from 2 January 2026, by the calendar: three in January (2, 16, 30) and July (3, 17, 31).
    expect(months(paid([], [fortnightly]))).toEqual(['2026-01', '2026-07'])
    expect(months(paid([], [{ rhythm: 'weekly', first: day('2025-12-05') }]))).toEqual([
      '2026-01',
      '2026-05',
      '2026-07',
      '2026-10',
    ])
    expect(months(paid([], [monthly]))).toEqual([])
  })

  it('months that start on another day count their own pays', () => {
    const h = paid([], [fortnightly], { monthStartDay: 15 })
    const [first] = payMonths(h, monthOf(day('2026-01-20'), 15), 1)
    expect(first?.pays.map((p) => p.date)).toEqual(['2026-01-16', '2026-01-30', '2026-02-13'])
    expect(first?.more).toEqual([{ earner: 'ingrid', count: 3, usual: 2 }])
  })

  it('a pay that a weekend moved is counted in the month it is for', () => {
    const h = paid([], [{ rhythm: 'monthly', first: day('2026-07-01'), day: 1, weekend: 'before' }])
    expect(payMonths(h, monthOf(day('2026-07-01'), 1), 2).map((m) => m.pays.map((p) => p.date))).toEqual([
      ['2026-07-01'],
      ['2026-07-31'],
    ])
  })
})

describe('changeRhythm', () => {
  it('in mid-month: the old rhythm ends the day before the first pay of the new one', () => {
    const changed = changeRhythm([monthly], { rhythm: 'weekly', first: day('2026-03-20') })
    expect(payDates(changed, day('2026-02-01'), day('2026-04-05'))).toEqual([
      '2026-02-15',
      '2026-03-15',
      '2026-03-20',
      '2026-03-27',
      '2026-04-03',
    ])
    const again = changeRhythm(changed, { ...monthly, first: day('2026-03-22') })
    expect(payDates(again, day('2026-03-01'), day('2026-04-30'))).toEqual(['2026-03-15', '2026-03-20', '2026-04-15'])
  })

  it('a change that is changed before it began leaves no trace', () => {
    const once = changeRhythm([monthly], { ...fortnightly, first: day('2026-06-19') })
    expect(changeRhythm(once, { rhythm: 'weekly', first: day('2026-06-12') }).map((s) => [s.rhythm, s.until])).toEqual([
      ['monthly', '2026-06-11'],
      ['weekly', undefined],
    ])
  })
})

describe('weekends and days off', () => {
  it('moves a pay before or after a weekend and over days the bank is closed', () => {
    // 25 December 2026 is a Friday, 27 December a Sunday.
    const daysOff = [day('2026-12-25'), day('2026-12-28')]
    const on = (dayOfMonth: number, weekend: 'before' | 'after') =>
      payDates(
        { rhythm: 'monthly', first: day('2026-01-01'), day: dayOfMonth, weekend, daysOff },
        day('2026-12-15'),
        day('2027-01-10'),
      )
    expect([on(27, 'before'), on(27, 'after')]).toEqual([['2026-12-24'], ['2026-12-29']])
    expect(
      payDates(
        { rhythm: 'last-working-day', first: day('2026-01-01'), daysOff: [day('2026-12-31')] },
        day('2026-12-01'),
        day('2026-12-31'),
      ),
    ).toEqual(['2026-12-30'])
  })

  it('the first pay may itself be moved', () => {
    const schedule = { rhythm: 'monthly', first: day('2026-08-01'), day: 1, weekend: 'before' } as const
    expect(payDates(schedule, day('2026-07-01'), day('2026-09-30'))).toEqual(['2026-07-31', '2026-09-01'])
  })
})
