import { v7 } from 'uuid'
import { describe, expect, it } from 'vitest'
import { demoHousehold } from '../../demo-data/household.ts'
import {
  allOrders,
  assess,
  balances,
  calendarDate,
  deviceId,
  entryId,
  lastSeenRate,
  money,
  openBook,
  orderSigns,
  orderStory,
  orderSums,
  payDates,
  planFill,
  planYear,
  potId,
  toDecimal,
  unplaced,
} from '../../src/index.ts'

// Every day of two fortnights, so that the demo is right whatever the day it is opened on.
const days = Array.from({ length: 28 }, (_, n) => new Date(Date.UTC(2026, 10, 1 + n)).toISOString().slice(0, 10))

function demoOn(day: string) {
  const today = calendarDate(day)
  const { settings, entries } = demoHousehold({
    now: Date.parse(day),
    today: () => today,
    newId: (msecs) => entryId(v7({ msecs })),
    device: deviceId('demo'),
  })
  const { schedule, isDemo: _, ...rest } = settings
  const household = { ...rest, payDates: payDates(schedule, today, calendarDate('2027-03-01')) }
  return { today, entries, book: openBook(household, entries) }
}

describe('the demo household', () => {
  it.each(days)('opened on %s: no pot is below zero, nothing lies ahead, Piano lessons has 41.20 left', (day) => {
    const { today, entries, book } = demoOn(day)
    expect(entries.every((e) => e.date <= today)).toBe(true)
    for (const [pot, b] of balances(book)) {
      expect(b.left.minor, pot).toBeGreaterThanOrEqual(0)
      expect(b.cash.minor % 5, `${pot} in notes and coins`).toBe(0)
    }
    const piano = balances(book).get(potId('piano-lessons'))
    expect(piano && [piano.left, piano.cash, piano.card, piano.held].map(toDecimal)).toEqual([
      '41.20',
      '38.00',
      '12.50',
      '9.30',
    ])
    expect(unplaced(book).minor).toBeGreaterThanOrEqual(0)
  })

  it('holds the order of 55.90 at Corvid: 14.70 too much', () => {
    const { today, book } = demoOn('2026-11-25')
    const lines = [{ pot: potId('piano-lessons'), amount: money('CAD', '55.90') }]
    const verdict = assess(book, { shop: 'corvid.localhost', lines }, today)
    expect(verdict.outcome).toBe('block')
    expect(verdict.reasons[0]?.short).toEqual(money('CAD', '14.70'))
    expect(verdict.reasons[0]?.nextFill).toEqual({ date: '2026-12-04', amount: money('CAD', '60.00') })
  })

  it("its next pay is planned: every pot has its reason, and its year's costs are met", () => {
    const { today, book } = demoOn('2026-11-25')
    const plan = planFill(book, money('CAD', '724.00'), calendarDate('2026-12-04'))
    const of = (pot: string) => plan.lines.find((line) => line.pot === pot)
    expect(plan.short.minor).toBe(0)
    expect(of('winter-tyres')).toMatchObject({ gets: money('CAD', '60.00'), reason: { code: 'goal', paysLeft: 3 } })
    expect(of('groceries')?.share.rule).toBe('learned')
    expect(of('reserve')?.reason.code).toBe('reserve')
    const year = planYear(book, today)
    // 4 December 2026 to 22 October 2027, the last fortnightly Friday of the twelve months from November.
    expect([year.pays.length, year.pays.at(-1)?.date]).toEqual([24, '2027-10-22'])
    expect(year.costs.map((cost) => [cost.pot, cost.missing.minor])).toEqual([
      ['winter-tyres', 0],
      ['bicycle', 0],
      ['presents', 0],
    ])
  })

  it.each(['2026-11-25', '2026-11-06'])('opened on %s: shows the lives of orders', (day) => {
    const { today, book } = demoOn(day)
    const orders = allOrders(book)
    const signs = (shop: string) => orders.filter((s) => s.shop === shop).map((s) => orderSigns(book, s, today))
    expect(orders.some((s) => new Set(s.parts.map((p) => p.pot)).size > 1)).toBe(true)
    expect(signs('tallow-and-twine.example')).toContainEqual(['part-charged'])
    expect(signs('tallow-and-twine.example')).toContainEqual(['lapsed'])
    expect(signs('lantern-lamps.example')).toEqual([['refund-expected']])
    expect(signs('hub-and-wheel.example')).toEqual([['instalment-ahead']])
    expect(signs('millrace-larder.example')).toContainEqual(['held'])
    expect(lastSeenRate(book, 'EUR')).toMatchObject({ home: '57.71', per: '38.00' })
    expect(orders.filter((s) => s.details.renewal).length).toBeGreaterThan(0)
    expect(orders.filter((s) => orderSums(s).refunded > 0).length).toBe(1)
    // Nothing is asked about that the person of the demo did not do.
    expect(orders.filter((s) => orderSigns(book, s, today).includes('unconfirmed'))).toEqual([])
    for (const s of orders) expect(orderStory(book, s.order).length).toBeGreaterThan(0)
  })

  it('has about three months behind it', () => {
    const { entries } = demoOn('2026-11-25')
    expect(entries[0]?.date).toBe('2026-08-27')
    expect(entries.length).toBeGreaterThan(200)
  })
})
