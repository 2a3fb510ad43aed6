import { describe, expect, it } from 'vitest'
import { calendarDate, monthOf, type Pot, planYear } from '../../src/index.ts'
import { cad, pot } from '../book/sample.ts'
import { bookOf, day, fortnightly, monthly, paid } from './sample.ts'

describe('planYear', () => {
  const tyres = pot('tyres', {
    kind: 'sinking',
    plan: { goal: { target: 12_000, due: day('2026-06-20'), everyYears: 1 } },
  })
  const h = paid([pot('bread', { plan: { monthly: 30_000 } }), tyres], [monthly])

  it('plans every pay from where the one before left the pots', () => {
    const plan = planYear(bookOf(h, []), day('2026-01-15'))
    // The pay of today is being placed now.
    expect(plan.pays.map((p) => p.date).slice(0, 2)).toEqual(['2026-02-15', '2026-03-15'])
    expect(plan.months).toHaveLength(12)
    const put = plan.pays.map((p) => p.plan.lines.map((l) => l.gets.minor))
    expect(put.map(([bread]) => bread)).toEqual(Array(11).fill(30_000))
    // 120.00 over the five pays to 15 June; then the same cost a year later, over twelve.
    expect(put.map(([, fund]) => fund)).toEqual([2400, 2400, 2400, 2400, 2400, 1000, 1000, 1000, 1000, 1000, 1000])
    expect(plan.costs).toEqual([
      { pot: 'tyres', due: '2026-06-20', target: cad('120.00'), in: cad('120.00'), missing: cad('0') },
    ])
    expect(plan.pays[0]?.plan.pay).toEqual(cad('724.00'))
  })

  it('27 fortnightly pays in 2026 from a Thursday, and what a third pay of a month leaves unplaced', () => {
    const thursdays = paid(
      [pot('bread', { plan: { monthly: 60_000 } }), pot('outings', { fill: { cash: 0, card: 20_000 } })],
      [{ rhythm: 'every-two-weeks', first: day('2026-01-01') }],
    )
    const plan = planYear(bookOf(thursdays, []), calendarDate('2025-12-31'), 13)
    const of2026 = plan.pays.filter((p) => p.date >= '2026-01-01')
    expect(of2026).toHaveLength(27)
    const january = of2026.filter((p) => p.month === monthOf(day('2026-01-01'), 1))
    // Three pays: 200.00 of bread each, and 200.00 for outings: 324.00 without a pot.
    expect(january.map((p) => p.plan.unplaced)).toEqual([cad('324.00'), cad('324.00'), cad('324.00')])
    const february = of2026.filter((p) => p.month === monthOf(day('2026-02-01'), 1))
    expect(february.map((p) => p.plan.unplaced)).toEqual([cad('224.00'), cad('224.00')])
  })

  it('a cost that the pays cannot reach is said with what will be missing', () => {
    const poor = paid([tyres], [monthly], {
      earners: [{ id: 'i', name: 'I', pay: 2_000, schedules: [monthly] }],
    })
    expect(planYear(bookOf(poor, []), day('2026-01-20')).costs[0]).toMatchObject({
      in: cad('100.00'),
      missing: cad('20.00'),
    })
  })

  it('where no earner says what a pay brings, the median of the pays in the book', () => {
    const unknown = paid([pot('bread')], [monthly], {
      earners: [{ id: 'i', name: 'I', pay: 0, schedules: [monthly] }],
    })
    const book = bookOf(unknown, [
      ['2026-01-15', 'pay', '100.00'],
      ['2026-02-15', 'pay', '900.00'],
      ['2026-03-15', 'pay', '120.00'],
    ])
    expect(planYear(book, day('2026-03-20')).pays[0]).toMatchObject({ isUsual: false, plan: { pay: cad('120.00') } })
  })

  it('a year of 40 pots and two earners is planned within 50 ms', () => {
    const pots: Pot[] = Array.from({ length: 40 }, (_, n) =>
      pot(`p${n}`, {
        kind: n % 4 === 0 ? 'sinking' : 'everyday',
        fill: { cash: 500, card: 500 },
        plan: {
          importance: n % 2 === 0 ? 1 : 2,
          ...(n % 4 === 0
            ? {
                goal: {
                  target: 100_000 + n,
                  due: day(`2026-${String((n % 12) + 1).padStart(2, '0')}-20`),
                  everyYears: 1,
                },
              }
            : { monthly: 4_000 }),
        },
      }),
    )
    const earners = [
      { id: 'a', name: 'A', pay: 150_000, schedules: [fortnightly] },
      { id: 'b', name: 'B', pay: 90_000, schedules: [monthly] },
    ]
    const big = paid(pots, [], { earners })
    const history = Array.from({ length: 52 }, (_, week) =>
      pots.map((p) => [dayOf(week * 7), 'card', p.id, '1.00'] as const),
    ).flat()
    const book = bookOf(big, history)
    // Time of this process alone, and the best of many: the machine may be busy with other things, the plan is not.
    const times = Array.from({ length: 25 }, () => {
      const start = process.cpuUsage()
      planYear(book, day('2026-01-01'))
      const { user, system } = process.cpuUsage(start)
      return (user + system) / 1000
    }).sort((x, y) => x - y)
    const [best = Number.POSITIVE_INFINITY, median] = [times[0], times[12]]
    console.log(
      `planYear: 40 pots, 38 pays, ${history.length} entries: best ${best.toFixed(1)} ms, median ${median?.toFixed(1)} ms`,
    )
    expect(best).toBeLessThan(50)
  })
})

function dayOf(days: number): string {
  return new Date(Date.UTC(2025, 0, 1 + days)).toISOString().slice(0, 10)
}
