import { describe, expect, it } from 'vitest'
import { calendarDate, type PaySchedule, payDates } from '../../src/index.ts'

const d = calendarDate
const between = (schedule: PaySchedule, from: string, to: string) => payDates(schedule, d(from), d(to))

describe('payDates', () => {
  it('every two weeks from the first pay, both ends of the window included', () => {
    expect(between({ rhythm: 'every-two-weeks', first: d('2026-11-06') }, '2026-11-20', '2026-12-18')).toEqual([
      '2026-11-20',
      '2026-12-04',
      '2026-12-18',
    ])
  })

  it('gives nothing before the first pay', () => {
    expect(between({ rhythm: 'weekly', first: d('2026-11-27') }, '2026-11-01', '2026-12-04')).toEqual([
      '2026-11-27',
      '2026-12-04',
    ])
    expect(between({ rhythm: 'weekly', first: d('2027-01-01') }, '2026-11-01', '2026-12-04')).toEqual([])
  })

  it('finds the right days far from the first pay, over changes of the clock', () => {
    const dates = between({ rhythm: 'weekly', first: d('2001-01-05') }, '2026-03-01', '2026-04-12')
    expect(dates).toEqual(['2026-03-06', '2026-03-13', '2026-03-20', '2026-03-27', '2026-04-03', '2026-04-10'])
  })

  it('a year with 27 fortnightly pays: from Friday 1 January 2016 to Friday 30 December 2016', () => {
    const dates = between({ rhythm: 'every-two-weeks', first: d('2016-01-01') }, '2016-01-01', '2016-12-31')
    expect([dates.length, dates.at(-1)]).toEqual([27, '2016-12-30'])
  })

  it('a day past the end of a month means its last day', () => {
    expect(between({ rhythm: 'monthly', first: d('2027-12-31'), day: 31 }, '2028-01-01', '2028-04-30')).toEqual([
      '2028-01-31',
      '2028-02-29',
      '2028-03-31',
      '2028-04-30',
    ])
    expect(
      between({ rhythm: 'twice-a-month', first: d('2027-01-15'), days: [15, 30] }, '2027-01-15', '2027-03-31'),
    ).toEqual(['2027-01-15', '2027-01-30', '2027-02-15', '2027-02-28', '2027-03-15', '2027-03-30'])
  })

  it('two days of a month that fall together are one pay', () => {
    expect(
      between({ rhythm: 'twice-a-month', first: d('2027-01-01'), days: [30, 31] }, '2027-02-01', '2027-02-28'),
    ).toEqual(['2027-02-28'])
  })

  it('the last working day: Friday when the month ends on a weekend', () => {
    expect(between({ rhythm: 'last-working-day', first: d('2026-01-01') }, '2026-01-01', '2026-05-31')).toEqual([
      '2026-01-30', // the 31st is a Saturday
      '2026-02-27', // the 28th is a Saturday
      '2026-03-31',
      '2026-04-30',
      '2026-05-29', // the 31st is a Sunday
    ])
  })
})
