import { describe, expect, it } from 'vitest'
import {
  append,
  type Book,
  breakdown,
  calendarDate,
  countPot,
  fillPot,
  openBook,
  openPot,
  potId,
  reverse,
  settleMove,
  spendFrom,
} from '../../src/index.ts'
import { compareCounts } from '../../src/monthend/count-compare.ts'
import { countedPieces } from '../../src/monthend/count-pieces.ts'
import { cad, grow, household, pot, stamp } from '../book/sample.ts'

const a = potId('a')
const b = potId('b')
const h = household([pot('a'), pot('b')])
const day = calendarDate
const start = openBook(h, [
  openPot(h, stamp(1), a, { cash: cad('200.00') }),
  openPot(h, stamp(2), b, { cash: cad('80.00') }),
])
const spend = (n: number, amount: string, purpose = 'bread', date = '2026-11-25', side: 'cash' | 'card' = 'cash') =>
  spendFrom(h, stamp(n, day(date)), a, side, cad(amount), purpose)
const pieces = (amount: string) => breakdown(cad(amount)) ?? []
const compare = (book: Book, found: Record<string, string>) =>
  compareCounts(
    book,
    Object.entries(found).map(([id, amount]) => ({ pot: potId(id), pieces: pieces(amount) })),
  )
const causes = (book: Book, found: Record<string, string>) => compare(book, found).pots[0]?.causes

describe('counted envelopes', () => {
  it('are over or short by pot and together', () => {
    expect(compare(start, { a: '195.00', b: '80.00' })).toMatchObject({
      pots: [
        { pot: 'a', expected: cad('200.00'), counted: cad('195.00'), over: cad('-5.00') },
        { pot: 'b', over: cad('0.00'), causes: [] },
      ],
      over: cad('-5.00'),
      counted: cad('275.00'),
    })
  })

  it('name notes that lie in another envelope', () => {
    expect(causes(start, { a: '180.00', b: '100.00' })).toContainEqual({
      code: 'other-pot',
      pot: b,
      amount: cad('20.00'),
    })
  })

  it('name a purchase entered twice', () => {
    const book = grow(
      start,
      () => spend(3, '12.40'),
      () => spend(4, '12.40', 'bread', '2026-11-26'),
    )
    expect(causes(book, { a: '187.60' })?.[0]).toMatchObject({
      code: 'entered-twice',
      entries: [stamp(3).id, stamp(4).id],
    })
    // A month apart it is no double.
    const apart = grow(
      start,
      () => spend(3, '12.40', 'bread', '2026-10-20'),
      () => spend(4, '12.40'),
    )
    expect(causes(apart, { a: '187.60' })?.map((c) => c.code)).not.toContain('entered-twice')
  })

  // Common practice, no source: a difference divisible by nine hints at swapped digits (54 for 45) or a slipped point.
  it('name swapped digits and a slipped point, whose differences are divisible by nine', () => {
    const swapped = grow(start, () => spend(3, '54.00'))
    expect(causes(swapped, { a: '155.00' })).toEqual([
      { code: 'swapped-digits', entry: stamp(3).id, wrote: cad('54.00'), meant: cad('45.00') },
    ])
    const slipped = grow(start, () => spend(3, '50.00'))
    expect(causes(slipped, { a: '195.00' })).toContainEqual({
      code: 'slipped-point',
      entry: stamp(3).id,
      wrote: cad('50.00'),
      meant: cad('5.00'),
    })
    const filled = grow(start, () => fillPot(h, stamp(3), a, { cash: cad('63.00') }, 'outside'))
    expect(causes(filled, { a: '236.00' })?.[0]).toMatchObject({ code: 'swapped-digits', meant: cad('36.00') })
    expect(causes(start, { a: '191.00' })).toEqual([{ code: 'divisible-by-nine' }])
    expect(causes(start, { a: '195.00' })?.map((c) => c.code)).not.toContain('divisible-by-nine')
  })

  it('name the other side, a fill not put in, and a forgotten purchase of the usual size', () => {
    const card = grow(start, () => spend(3, '15.00', 'x', '2026-11-25', 'card'))
    expect(causes(card, { a: '185.00' })).toContainEqual({
      code: 'other-side',
      entry: stamp(3).id,
      amount: cad('15.00'),
    })
    const filled = grow(start, () => fillPot(h, stamp(3), a, { cash: cad('40.00') }, 'outside'))
    expect(causes(filled, { a: '200.00' })).toContainEqual({
      code: 'fill-not-put-in',
      entry: stamp(3).id,
      amount: cad('40.00'),
    })
    const usual = grow(
      start,
      () => spend(3, '4.75', 'coffee', '2026-11-03'),
      () => spend(4, '4.75', 'coffee', '2026-11-17'),
    )
    const short = compareCounts(usual, [{ pot: a, pieces: pieces('185.75') }])
    expect(short.pots[0]?.causes).toContainEqual({
      code: 'forgotten-spend',
      purpose: 'coffee',
      amount: cad('4.75'),
      times: 2,
    })
  })

  it('look no further back than the last count', () => {
    const book = grow(
      start,
      () => spend(3, '54.00'),
      (k) => countPot(k, stamp(4), a, pieces('146.00')),
      () => spend(5, '6.00'),
    )
    expect(causes(book, { a: '149.00' })).toEqual([{ code: 'divisible-by-nine' }])
  })

  it('refuse a note that does not exist', () => {
    expect(() => compareCounts(start, [{ pot: a, pieces: [{ denomination: 3000, count: 1 }] }])).toThrow(
      expect.objectContaining({ code: 'unknown-piece' }),
    )
  })
})

describe('the pieces in an envelope', () => {
  const counted = grow(
    start,
    (k) => countPot(k, stamp(5), a, [{ denomination: 5000, count: 4 }]),
    (k) => countPot(k, stamp(6), b, [{ denomination: 2000, count: 4 }]),
  )

  it('are the last count, with what settling moved since', () => {
    const book = grow(counted, (k) =>
      settleMove(k, stamp(7), { pot: a }, { pot: b }, [{ denomination: 5000, count: 1 }]),
    )
    const now = countedPieces(book)
    expect(now.get(a)).toMatchObject({
      pieces: [{ denomination: 5000, count: 3 }],
      isStale: false,
      ticks: [{ id: stamp(7).id }],
    })
    expect(now.get(b)?.pieces).toEqual([
      { denomination: 5000, count: 1 },
      { denomination: 2000, count: 4 },
    ])
    const back = append(book, reverse(book, stamp(8), stamp(7).id))
    expect(countedPieces(back).get(a)?.pieces).toEqual([{ denomination: 5000, count: 4 }])
  })

  it('are not known any more once notes were spent', () => {
    const book = grow(counted, () => spend(7, '5.00'))
    expect(countedPieces(book).get(a)?.isStale).toBe(true)
    expect(countedPieces(book).get(b)?.isStale).toBe(false)
    expect(countedPieces(start).size).toBe(0)
  })
})
