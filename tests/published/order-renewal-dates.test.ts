import fc from 'fast-check'
import rrule from 'rrule'
import { describe, expect, it } from 'vitest'
import { addDays, type CalendarDate, calendarDate, dueDates, type Every, nextDue, potId } from '../../src/index.ts'

const { RRule } = rrule
const day = calendarDate

/** The days an RFC 5545 rule gives, by the rrule package 2.8.1 (BSD-3-Clause). */
function byRule(first: string, every: Every, to: string): string[] {
  const freq = { day: RRule.DAILY, week: RRule.WEEKLY, month: RRule.MONTHLY, year: RRule.YEARLY }[every.unit]
  const rule = new RRule({
    freq,
    interval: every.count,
    dtstart: new Date(`${first}T00:00:00Z`),
    until: new Date(`${to}T00:00:00Z`),
  })
  return rule.all().map((d) => d.toISOString().slice(0, 10))
}

describe('days on which a renewal is due', () => {
  // Source: RFC 5545, section 3.8.5.3, "Every other week on Tuesday" from 2 September 1997 (the first twelve).
  it('every other week, as RFC 5545 writes it', () => {
    const due = dueDates(day('1997-09-02'), { unit: 'week', count: 2 }, day('1997-09-02'), day('1998-02-17'))
    expect(due).toEqual([
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

  // Source: RFC 7529, SKIP=BACKWARD, monthly from 31 January 2014 (libical, icalrecur_test_rscale.txt).
  it('the 31st of every month, by RFC 7529 with SKIP=BACKWARD', () => {
    const due = dueDates(day('2014-01-31'), { unit: 'month', count: 1 }, day('2014-01-01'), day('2014-04-30'))
    expect(due).toEqual(['2014-01-31', '2014-02-28', '2014-03-31', '2014-04-30'])
  })

  // Source: sources.md 7.1: leap days of a yearly rule without SKIP are 2012, 2016, 2020, 2024; with SKIP=BACKWARD the
  // years between have the month's last day.
  it('every 29 February, and the 28th in the years between', () => {
    const due = dueDates(day('2012-02-29'), { unit: 'year', count: 1 }, day('2012-01-01'), day('2017-01-01'))
    expect(due).toEqual(['2012-02-29', '2013-02-28', '2014-02-28', '2015-02-28', '2016-02-29'])
    expect(dueDates(day('2012-02-29'), { unit: 'year', count: 4 }, day('2012-01-01'), day('2024-12-31'))).toEqual(
      byRule('2012-02-29', { unit: 'year', count: 4 }, '2024-12-31'),
    )
  })

  const firsts = fc.integer({ min: 0, max: 5000 }).map((n) => addDays(day('2010-01-01'), n))
  const everys = fc.record({
    unit: fc.constantFrom('day', 'week', 'month', 'year'),
    count: fc.integer({ min: 1, max: 14 }),
  })

  it('are those of the rrule package wherever no month is too short', () => {
    const early = firsts.filter((d) => Number(d.slice(8)) <= 28)
    fc.assert(
      fc.property(early, everys, (first, every) => {
        const to = addDays(first, 1500)
        expect(dueDates(first, every, first, to)).toEqual(byRule(first, every, to))
      }),
      { numRuns: 300, seed: 11 },
    )
  })

  it('where months are too short: rrule’s days are among ours, and ours between are months’ last days', () => {
    const late = firsts.filter((d) => Number(d.slice(8)) > 28)
    fc.assert(
      fc.property(late, fc.integer({ min: 1, max: 5 }), (first, count) => {
        const to = addDays(first, 1500)
        const every = { unit: 'month', count } as const
        const ours = dueDates(first, every, first, to)
        const theirs = new Set(byRule(first, every, to))
        for (const d of theirs) expect(ours).toContain(d)
        for (const d of ours) if (!theirs.has(d)) expect(addDays(d, 1).slice(8)).toBe('01')
      }),
      { numRuns: 200, seed: 12 },
    )
  })

  it('a window gives what the whole list gives within it', () => {
    fc.assert(
      fc.property(firsts, everys, fc.nat(900), fc.nat(400), (first, every, skip, length) => {
        const [from, to] = [addDays(first, skip), addDays(first, skip + length)]
        const all = dueDates(first, every, first, to)
        expect(dueDates(first, every, from, to)).toEqual(all.filter((d) => d >= from))
        const renewal = { id: 'x', name: 'x', pot: potId('p'), amount: 1, first, every }
        const next: CalendarDate | null = nextDue(renewal, from)
        expect(next !== null && next >= from).toBe(true)
        if (next !== null && next <= to) expect(dueDates(first, every, from, to)[0]).toBe(next)
      }),
      { numRuns: 300, seed: 13 },
    )
  })
})
