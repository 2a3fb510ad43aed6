import fc from 'fast-check'
import { RRule } from 'rrule'
import { describe, expect, it } from 'vitest'
import { type CalendarDate, calendarDate, type PaySchedule, payDates } from '../../src/index.ts'

const d = calendarDate
const between = (schedule: PaySchedule, from: string, to: string) => payDates(schedule, d(from), d(to))

describe('RFC 5545, 3.8.5.3: the examples of recurrence rules that a pay can follow', () => {
  it('"Every other week" on Tuesday from 2 September 1997', () => {
    expect(between({ rhythm: 'every-two-weeks', first: d('1997-09-02') }, '1997-09-02', '1998-02-17')).toEqual([
      '1997-09-02',
      '1997-09-16',
      '1997-09-30',
      '1997-10-14',
      '1997-10-28',
      '1997-11-11',
      '1997-11-25',
      '1997-12-09',
      '1997-12-23',
      '1998-01-06',
      '1998-01-20',
      '1998-02-03',
      '1998-02-17',
    ])
  })

  it('"Monthly on the 2nd and 15th of the month for 10 occurrences"', () => {
    expect(
      between({ rhythm: 'twice-a-month', first: d('1997-09-02'), days: [2, 15] }, '1997-09-02', '1998-01-15'),
    ).toEqual([
      '1997-09-02',
      '1997-09-15',
      '1997-10-02',
      '1997-10-15',
      '1997-11-02',
      '1997-11-15',
      '1997-12-02',
      '1997-12-15',
      '1998-01-02',
      '1998-01-15',
    ])
  })

  it('"Monthly on the first and last day of the month for 10 occurrences", from 30 September 1997', () => {
    expect(
      between({ rhythm: 'twice-a-month', first: d('1997-09-30'), days: [1, 31] }, '1997-09-30', '1998-02-01'),
    ).toEqual([
      '1997-09-30',
      '1997-10-01',
      '1997-10-31',
      '1997-11-01',
      '1997-11-30',
      '1997-12-01',
      '1997-12-31',
      '1998-01-01',
      '1998-01-31',
      '1998-02-01',
    ])
  })

  it('3.3.10, "the last work day of the month"; its dates worked out from the calendar', () => {
    expect(between({ rhythm: 'last-working-day', first: d('1997-09-29') }, '1997-09-29', '1998-05-31')).toEqual([
      '1997-09-30',
      '1997-10-31',
      '1997-11-28',
      '1997-12-31',
      '1998-01-30',
      '1998-02-27',
      '1998-03-31',
      '1998-04-30',
      '1998-05-29',
    ])
  })
})

// RFC 7529, SKIP=BACKWARD, as in libical's icalrecur_test_rscale.txt: a day the month does not have is its last.
it('RFC 7529: monthly from 31 January 2014, skipped days backward', () => {
  expect(between({ rhythm: 'monthly', first: d('2014-01-31'), day: 31 }, '2014-01-01', '2014-04-30')).toEqual([
    '2014-01-31',
    '2014-02-28',
    '2014-03-31',
    '2014-04-30',
  ])
})

describe('years of 27 fortnightly pays: a pay falls on 1 January, or on 2 January of a leap year', () => {
  const years = (first: string): number[] =>
    Array.from({ length: 41 }, (_, n) => 2020 + n).filter(
      (year) => between({ rhythm: 'every-two-weeks', first: d(first) }, `${year}-01-01`, `${year}-12-31`).length === 27,
    )

  it('Thursdays', () => {
    expect(years('2020-01-02')).toEqual([2020, 2032, 2043, 2054])
    expect(years('2015-01-01').filter((year) => year > 2025)).toEqual([2026, 2037, 2048, 2060])
    expect(between({ rhythm: 'every-two-weeks', first: d('2026-01-01') }, '2026-01-01', '2026-12-31').at(-1)).toBe(
      '2026-12-31',
    )
  })

  it('Fridays', () => {
    expect(years('2010-01-01')).toEqual([2021, 2032, 2044, 2055])
    expect(years('2015-01-02').filter((year) => year > 2025)).toEqual([2027, 2038, 2049, 2060])
    expect(between({ rhythm: 'every-two-weeks', first: d('2026-01-02') }, '2026-01-01', '2026-12-31')).toHaveLength(26)
  })
})

// Public reference implementation: the npm package rrule 2.8.1.
describe('agrees with rrule', () => {
  const utc = (date: string): Date => new Date(`${date}T00:00:00Z`)
  const days = (rule: RRule, from: string, to: string): string[] =>
    rule.between(utc(from), utc(to), true).map((date) => date.toISOString().slice(0, 10))
  const someDay = fc
    .date({ min: utc('1999-01-01'), max: utc('2040-12-31'), noInvalidDate: true })
    .map((date): CalendarDate => d(date.toISOString().slice(0, 10)))
  const WORK = [RRule.MO, RRule.TU, RRule.WE, RRule.TH, RRule.FR]
  const later = (date: string, days: number): CalendarDate =>
    d(new Date(utc(date).getTime() + days * 86_400_000).toISOString().slice(0, 10))
  const check = (make: (first: CalendarDate, day: number) => [PaySchedule, RRule], dayRange: [number, number]) =>
    fc.assert(
      fc.property(
        someDay,
        fc.integer({ min: dayRange[0], max: dayRange[1] }),
        fc.integer({ min: -50, max: 700 }),
        fc.integer({ min: 0, max: 500 }),
        (first, day, skip, length) => {
          const [schedule, rule] = make(first, day)
          const from = later(first, skip)
          const to = later(from, length)
          expect(payDates(schedule, from, to)).toEqual(days(rule, from, to))
        },
      ),
      { seed: 5, numRuns: 120 },
    )

  it('every week and every two weeks', () => {
    for (const [rhythm, interval] of [
      ['weekly', 1],
      ['every-two-weeks', 2],
    ] as const) {
      check((first) => [{ rhythm, first }, new RRule({ freq: RRule.WEEKLY, interval, dtstart: utc(first) })], [1, 1])
    }
  })

  it('monthly on a day, and twice a month', () => {
    check(
      (first, day) => [
        { rhythm: 'monthly', first, day },
        new RRule({ freq: RRule.MONTHLY, bymonthday: day, dtstart: utc(first) }),
      ],
      [1, 28],
    )
    check(
      (first, day) => [
        { rhythm: 'twice-a-month', first, days: [day, 31] },
        new RRule({ freq: RRule.MONTHLY, bymonthday: [day, -1], dtstart: utc(first) }),
      ],
      [1, 27],
    )
  })

  it('the last working day', () => {
    check(
      (first) => [
        { rhythm: 'last-working-day', first },
        new RRule({ freq: RRule.MONTHLY, byweekday: WORK, bysetpos: -1, dtstart: utc(first) }),
      ],
      [1, 1],
    )
  })

  // A weekend is two days, so a pay moved off it is the last (or first) working day among three days of the month.
  it('a day moved before or after a weekend', () => {
    const moved =
      (weekend: 'before' | 'after') =>
      (first: CalendarDate, day: number): [PaySchedule, RRule] => {
        const three = weekend === 'before' ? [day - 2, day - 1, day] : [day, day + 1, day + 2]
        // Well before any pay, so that only the rule decides.
        const begin = d(`${first.slice(0, 4)}-01-01`)
        return [
          { rhythm: 'monthly', first: begin, day, weekend },
          new RRule({
            freq: RRule.MONTHLY,
            byweekday: WORK,
            bymonthday: three,
            bysetpos: weekend === 'before' ? -1 : 1,
            dtstart: utc(begin),
          }),
        ]
      }
    check(moved('before'), [3, 28])
    check(moved('after'), [3, 26])
  })
})
