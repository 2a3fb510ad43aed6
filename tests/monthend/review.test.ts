import { describe, expect, it } from 'vitest'
import {
  calendarDate,
  chargeOrder,
  closedThrough,
  countPot,
  fillPot,
  holdOrder,
  monthName,
  openBook,
  openPot,
  potId,
  refundOrder,
  settleMove,
  spendFrom,
} from '../../src/index.ts'
import { closingEntries, leftovers } from '../../src/monthend/close-plan.ts'
import { review } from '../../src/monthend/review.ts'
import { cad, grow, household, one, order, pot, stamp } from '../book/sample.ts'

const a = potId('a')
const b = potId('b')
const h = household([pot('a'), pot('b', { rule: 'warn' })])
const day = calendarDate
const at = (n: number, date: string) => stamp(n, day(date))
const book = grow(
  openBook(h, [openPot(h, at(1, '2026-09-10'), a, { cash: cad('10.00'), card: cad('5.00') })]),
  () => fillPot(h, at(2, '2026-09-15'), a, { cash: cad('40.00') }, 'outside'),
  () => spendFrom(h, at(3, '2026-09-20'), a, 'cash', cad('30.00'), 'x'),
  () => fillPot(h, at(4, '2026-11-06'), a, { cash: cad('60.00'), card: cad('20.00') }, 'outside'),
  () => fillPot(h, at(5, '2026-11-06'), b, { card: cad('50.00') }, 'outside'),
  () => spendFrom(h, at(6, '2026-11-08'), a, 'cash', cad('71.50'), 'x'),
  (k) => holdOrder(k, at(7, '2026-11-10'), order(1), one('b', '56.00'), 'the boots are gone tomorrow'),
  (k) => chargeOrder(k, at(8, '2026-11-12'), order(1), cad('56.00')),
  (k) => refundOrder(k, at(9, '2026-11-20'), order(1), cad('16.00')),
  (k) => holdOrder(k, at(10, '2026-11-28'), order(2), one('b', '4.00')),
  (k) => countPot(k, at(11, '2026-11-29'), a, [{ denomination: 500, count: 1 }], { post: true }),
  (k) => settleMove(k, at(12, '2026-11-29'), { pot: a }, { pot: b }, [{ denomination: 500, count: 1 }]),
)

describe('a month looked back on', () => {
  const found = review(book, monthName('2026-11'))

  it('sets actual against budgeted, cash and card apart, over and under', () => {
    const [first, second] = found.pots
    expect(first).toMatchObject({
      budgeted: { cash: cad('60.00'), card: cad('20.00'), both: cad('80.00') },
      actual: { cash: cad('71.50'), card: cad('0.00'), both: cad('71.50') },
      under: { cash: cad('-11.50'), card: cad('20.00'), both: cad('8.50') },
      carriedIn: { cash: cad('20.00'), card: cad('5.00') },
      counted: cad('-3.50'),
      carriedOut: { cash: cad('0.00'), card: cad('30.00') },
    })
    // 56.00 charged, 16.00 back; 4.00 held still.
    expect(second).toMatchObject({
      actual: { card: cad('40.00') },
      under: { both: cad('10.00') },
      held: cad('4.00'),
      left: cad('6.00'),
    })
    expect(found.all).toMatchObject({ budgeted: { both: cad('130.00') }, actual: { both: cad('111.50') } })
  })

  it('draws three and twelve months, from the first month of the book', () => {
    expect(found.threeMonths.map((p) => p.pot)).toEqual([null, 'a', 'b'])
    expect(found.threeMonths[1]?.points.map((p) => [p.month, p.actual.minor])).toEqual([
      ['2026-09', 3000],
      ['2026-10', 0],
      ['2026-11', 7150],
    ])
    expect(found.threeMonths[1]?.averageActual).toEqual(cad('33.83'))
    expect(found.twelveMonths[0]?.points.map((p) => p.month)).toEqual(['2026-09', '2026-10', '2026-11'])
    const later = review(book, monthName('2027-01'))
    expect(later.threeMonths[0]?.points.map((p) => p.month)).toEqual(['2026-11', '2026-12', '2027-01'])
  })

  it('tells which orders went ahead against a warning, and why', () => {
    expect(found.wentAhead).toMatchObject([
      {
        order: order(1),
        shop: 'corvid.example',
        amount: cad('56.00'),
        pots: ['b'],
        reason: 'the boots are gone tomorrow',
      },
    ])
    expect(review(book, monthName('2026-10')).wentAhead).toEqual([])
  })

  it('of an empty book is empty', () => {
    expect(review(openBook(h, []), monthName('2026-11'))).toMatchObject({
      threeMonths: [{ points: [] }, {}, {}],
      wentAhead: [],
    })
  })
})

describe('closing', () => {
  it('offers what is left over, and no more', () => {
    // b: cash 5.00, card 5.00, held 4.00.
    expect(leftovers(book, monthName('2026-11'))).toMatchObject([
      { pot: 'a', cash: cad('0.00'), card: cad('30.00') },
      { pot: 'b', cash: cad('5.00'), card: cad('1.00') },
    ])
  })

  it('makes the sweeps and the sign-off together', () => {
    const entries = closingEntries(book, at(20, '2026-12-01'), monthName('2026-11'), [
      { id: stamp(21).id, pot: a, to: { pot: b }, cash: cad('0.00'), card: cad('10.00') },
      { id: stamp(22).id, pot: a, to: { debt: 'Dentist' }, cash: cad('0.00'), card: cad('20.00') },
    ])
    expect(entries.map((e) => [e.kind, e.date])).toEqual([
      ['sweep', '2026-11-30'],
      ['sweep', '2026-11-30'],
      ['close', '2026-12-01'],
    ])
    const closed = grow(book, ...entries.map((e) => () => e))
    expect(closedThrough(closed)).toBe('2026-11-30')
    const sweeps = review(closed, monthName('2026-11')).pots.map((p) => [p.swept.minor, p.left.minor])
    expect(sweeps).toEqual([
      [-3000, 0],
      [1000, 1600],
    ])
    expect(() =>
      closingEntries(book, at(20, '2026-12-01'), monthName('2026-11'), [
        { id: stamp(21).id, pot: a, to: { pot: b }, cash: cad('0.00'), card: cad('20.00') },
        { id: stamp(22).id, pot: a, to: { pot: b }, cash: cad('0.00'), card: cad('20.00') },
      ]),
    ).toThrow(expect.objectContaining({ code: 'bad-amount' }))
  })
})
