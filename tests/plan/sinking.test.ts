import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  calendarDate,
  englishPlanSpeech,
  money,
  ofMinor,
  planSinking,
  type SinkingPot,
  saySinking,
} from '../../src/index.ts'
import { cad } from '../book/sample.ts'
import { day, fortnightly, monthly, paid } from './sample.ts'

/** 300.00 by 1 June 2026, of which 150.00 is in. */
const example: SinkingPot = { goal: { target: cad('300.00'), due: day('2026-06-01') }, in: cad('150.00') }
const today = day('2025-12-20')

describe('planSinking', () => {
  it('the example: 12.50 a fortnight, 12 pays left', () => {
    const schedule = { ...fortnightly, first: day('2025-12-19') }
    const plan = planSinking(example, schedule, day('2025-12-19'))
    expect(plan.pays).toHaveLength(11)
    const before = planSinking(example, schedule, day('2025-12-18'))
    expect([before.pays.length, before.eachPay, before.exact]).toEqual([12, cad('12.50'), cad('12.50')])
    const h = paid([], [schedule])
    expect(saySinking(h, before, day('2026-01-01'), null)).toBe(
      '12.50 a fortnight: 300.00 by 1 June, 12 pays left, 150.00 in. Nothing tells yet whether this is on track.',
    )
  })

  it('a pay on the due date counts, one on the day of planning does not', () => {
    const plan = planSinking(
      { ...example, goal: { ...example.goal, due: day('2026-01-30') } },
      fortnightly,
      day('2026-01-02'),
    )
    expect(plan.pays).toEqual(['2026-01-16', '2026-01-30'])
  })

  it('rounds up to a note; the last pay brings the rest', () => {
    const plan = planSinking(example, fortnightly, today, { roundTo: 500 })
    expect(plan.pays).toHaveLength(11)
    expect([plan.exact, plan.eachPay, plan.payCount, plan.lastPay]).toEqual([
      cad('13.64'),
      cad('15.00'),
      10,
      cad('15.00'),
    ])
    const uneven = planSinking({ ...example, in: cad('152.00') }, fortnightly, today, { roundTo: 500 })
    expect([uneven.eachPay, uneven.payCount, uneven.lastPay]).toEqual([cad('15.00'), 10, cad('13.00')])
  })

  it('by an even course since saving began: on track, behind since a day, ahead', () => {
    const schedule = monthly
    const goal = {
      target: cad('120.00'),
      due: day('2026-12-15'),
      since: { date: day('2026-01-01'), in: cad('0') },
    }
    const at = (now: string, amount: string, history: [string, string][] = []) =>
      planSinking(
        { goal, in: cad(amount), history: history.map(([date, m]) => ({ date: day(date), in: cad(m) })) },
        schedule,
        day(now),
      )
    expect(at('2026-04-01', '30.00')).toMatchObject({ status: 'on-track', course: cad('30.00') })
    expect(at('2026-04-01', '42.00')).toMatchObject({ status: 'ahead', ahead: cad('12.00') })
    const filled: [string, string][] = [
      ['2026-01-15', '10.00'],
      ['2026-03-15', '20.00'],
    ]
    expect(at('2026-04-01', '20.00', filled)).toMatchObject({
      status: 'behind',
      behind: cad('10.00'),
      behindSince: '2026-02-15',
    })
    const caughtUp: [string, string][] = [
      ['2026-01-15', '5.00'],
      ['2026-02-15', '20.00'],
    ]
    expect(at('2026-04-01', '20.00', caughtUp)).toMatchObject({ status: 'behind', behindSince: '2026-03-15' })
    // On a pay day the pay may or may not be placed yet: neither is behind or ahead.
    expect(at('2026-04-15', '30.00').status).toBe('on-track')
    expect(at('2026-04-15', '40.00').status).toBe('on-track')
  })

  it('without a beginning, by what the present rate comes to', () => {
    const at = (rate: string) => planSinking({ ...example, eachPay: cad(rate) }, fortnightly, today)
    expect(at('13.64')).toMatchObject({ status: 'on-track', reachedOn: '2026-05-22' })
    expect(at('10.00')).toMatchObject({ status: 'behind', behind: cad('40.00'), reachedOn: '2026-07-17' })
    expect(at('50.00')).toMatchObject({ status: 'ahead', reachedOn: '2026-01-30' })
    expect(planSinking(example, fortnightly, today).status).toBe('open')
  })

  it('bad input: due date passed, target reached, no pay before it, no rate, a target of nothing', () => {
    const with_ = (changes: Partial<SinkingPot['goal']>, amount = '150.00') =>
      planSinking({ goal: { ...example.goal, ...changes }, in: cad(amount) }, fortnightly, today)
    expect(with_({ due: day('2025-12-01') })).toMatchObject({ status: 'overdue', toGo: cad('150.00'), pays: [] })
    expect(with_({}, '300.00')).toMatchObject({ status: 'reached', toGo: cad('0'), eachPay: cad('0'), payCount: 0 })
    expect(with_({}, '310.00').status).toBe('reached')
    expect(with_({ due: day('2025-12-24') })).toMatchObject({ status: 'no-pay-left', eachPay: cad('150.00') })
    expect(() => with_({ target: cad('0') })).toThrow(expect.objectContaining({ code: 'bad-goal' }))
    expect(() => with_({ yearlyRate: '2.5 %' })).toThrow(expect.objectContaining({ code: 'bad-goal' }))
    expect(() => planSinking(example, fortnightly, today, { roundTo: 0 })).toThrow(
      expect.objectContaining({ code: 'bad-options' }),
    )
    expect(() => planSinking({ ...example, in: money('EUR', '1.00') }, fortnightly, today)).toThrow(
      expect.objectContaining({ code: 'currency-mismatch' }),
    )
  })

  it('a change of rhythm in mid-month, several earners, and days written down by hand', () => {
    const before = { ...monthly, until: day('2026-03-15') }
    const after = { ...fortnightly, first: day('2026-03-27') }
    const goal = { ...example.goal, due: day('2026-04-24') }
    expect(planSinking({ ...example, goal }, [before, after], day('2026-02-20')).pays).toEqual([
      '2026-03-15',
      '2026-03-27',
      '2026-04-10',
      '2026-04-24',
    ])
    // Two earners paid on one day fill the pots once.
    const both = planSinking({ ...example, goal }, [monthly, fortnightly], day('2026-03-12'))
    expect(both.pays).toEqual(['2026-03-13', '2026-03-15', '2026-03-27', '2026-04-10', '2026-04-15', '2026-04-24'])
    const byHand = planSinking({ ...example, goal }, [day('2026-04-01'), day('2026-05-01')], day('2026-03-12'))
    expect(byHand.pays).toEqual(['2026-04-01'])
  })

  it('interest makes each pay smaller and the day earlier, never later', () => {
    const far = {
      ...example,
      goal: { ...example.goal, target: cad('9000.00'), due: day('2036-06-01') },
      eachPay: cad('30.00'),
    }
    const plain = planSinking(far, fortnightly, today)
    const interest = planSinking({ ...far, goal: { ...far.goal, yearlyRate: '0.03' } }, fortnightly, today)
    expect(interest.exact.minor).toBeLessThan(plain.exact.minor)
    expect(String(interest.reachedOn) < String(plain.reachedOn)).toBe(true)
  })

  it('what each pay brings reaches the target by the due date, and one cent less does not', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 5_000_000 }),
        fc.integer({ min: 0, max: 5_000_000 }),
        fc.integer({ min: 1, max: 1500 }),
        fc.constantFrom(1, 5, 500, 2000),
        (target, alreadyIn, days, roundTo) => {
          const due = calendarDate(new Date(Date.UTC(2026, 0, 1 + days)).toISOString().slice(0, 10))
          const pot = { goal: { target: ofMinor('CAD', target), due }, in: ofMinor('CAD', alreadyIn) }
          const plan = planSinking(pot, fortnightly, day('2026-01-01'), { roundTo })
          const toGo = Math.max(0, target - alreadyIn)
          expect(plan.exact.minor * plan.pays.length).toBeGreaterThanOrEqual(plan.pays.length === 0 ? 0 : toGo)
          if (toGo > 0 && plan.pays.length > 0) {
            expect((plan.exact.minor - 1) * plan.pays.length).toBeLessThan(toGo)
            expect(plan.payCount).toBeLessThanOrEqual(plan.pays.length)
            expect(plan.eachPay.minor * (plan.payCount - 1) + plan.lastPay.minor).toBe(toGo)
            expect(plan.eachPay.minor % roundTo === 0 || plan.eachPay.minor === toGo).toBe(true)
          }
        },
      ),
      { seed: 6, numRuns: 300 },
    )
  })

  it('says how it stands', () => {
    const h = paid([], [fortnightly])
    const say = (pot: SinkingPot, roundTo = 1) =>
      saySinking(h, planSinking(pot, fortnightly, today, { roundTo }), today, pot.eachPay ?? null, englishPlanSpeech)
    expect(say({ ...example, eachPay: cad('10.00') }, 500)).toBe(
      '15.00 a fortnight: 300.00 by 1 June 2026, 11 pays left, 150.00 in. ' +
        'To the cent it would be 13.64; the last pay brings 15.00. 40.00 behind. ' +
        'At 10.00 a fortnight it is reached on 17 July 2026.',
    )
    expect(say({ ...example, in: cad('300.00') })).toBe('All of 300.00 is in, 1 June 2026 can come.')
    expect(say({ ...example, goal: { ...example.goal, due: day('2025-12-01') } })).toBe(
      '300.00 was due on 1 December and 150.00 is in: 150.00 is missing. Enter what was paid, or move the date.',
    )
  })
})
