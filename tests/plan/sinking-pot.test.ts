import { describe, expect, it } from 'vitest'
import { planSinking, potId, sinkingPot } from '../../src/index.ts'
import { cad, household, pot } from '../book/sample.ts'
import { bookOf, day, type Happened, monthly, paid } from './sample.ts'

const goal = { target: 12_000, due: day('2026-12-20'), everyYears: 1, since: { date: day('2026-01-01'), in: 0 } }
const h = paid([pot('tyres', { kind: 'sinking', fill: { cash: 0, card: 900 }, plan: { goal } })], [monthly])
const filled = (month: string, amount: string): Happened => [`2026-${month}-15`, 'fill', 'tyres', '0', amount]

describe('sinkingPot', () => {
  it('what the book says: what is in, what pays really brought, and since when it is behind', () => {
    const book = bookOf(h, [filled('01', '10.00'), filled('03', '5.00'), filled('04', '7.00')])
    const fund = sinkingPot(book, potId('tyres'), day('2026-05-01'))
    // Four pays brought 22.00: 5.50 each.
    expect(fund).toMatchObject({ in: cad('22.00'), eachPay: cad('5.50'), goal: { due: '2026-12-20' } })
    if (!fund) return
    expect(planSinking(fund, monthly, day('2026-05-01'))).toMatchObject({
      status: 'behind',
      behind: cad('18.00'),
      behindSince: '2026-02-15',
      exact: cad('12.25'),
      // 98.00 at 5.50 takes 18 pays from 15 May 2026.
      reachedOn: '2027-10-15',
    })
  })

  it('once spent it saves for the next year, from that day and with what was left', () => {
    const book = bookOf(h, [filled('01', '130.00'), ['2026-11-30', 'card', 'tyres', '112.00']])
    expect(sinkingPot(book, potId('tyres'), day('2026-12-01'))?.goal).toEqual({
      target: cad('120.00'),
      due: '2027-12-20',
      since: { date: '2026-11-30', in: cad('18.00') },
    })
  })

  it('half of it spent is enough once the date has passed', () => {
    const book = bookOf(h, [filled('01', '130.00'), ['2026-12-01', 'card', 'tyres', '70.00']])
    const due = (today: string) => sinkingPot(book, potId('tyres'), day(today))?.goal.due
    expect([due('2026-12-20'), due('2026-12-21')]).toEqual(['2026-12-20', '2027-12-20'])
  })

  it('what was spent long before is another thing', () => {
    const book = bookOf(h, [filled('01', '130.00'), ['2026-06-01', 'card', 'tyres', '112.00']])
    expect(sinkingPot(book, potId('tyres'), day('2026-12-01'))?.goal.due).toBe('2026-12-20')
  })

  it('a pot without a goal has none', () => {
    expect(sinkingPot(bookOf(household([pot('bread')]), []), potId('bread'), day('2026-12-01'))).toBeNull()
  })
})
