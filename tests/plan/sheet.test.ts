import { describe, expect, it } from 'vitest'
import { append, entryId, potId, potSheet, reverse } from '../../src/index.ts'
import { cad, household, pot, stamp, uuid } from '../book/sample.ts'
import { bookOf, day } from './sample.ts'

describe('potSheet', () => {
  const h = household([pot('bread'), pot('books')])
  const book = bookOf(h, [
    ['2026-01-05', 'fill', 'bread', '40.00', '10.00'],
    ['2026-01-20', 'cash', 'bread', '5.50'],
    ['2026-02-03', 'cash', 'bread', '4.00'],
    ['2026-02-01', 'fill', 'books', '1.00', '0'],
    ['2026-02-02', 'order', 'bread', '3.00'],
    ['2026-03-01', 'fill', 'bread', '20.00', '0'],
  ])
  const sheet = (b = book) => potSheet(b, potId('bread'), day('2026-02-01'), day('2026-02-28'))

  it('what was carried in, each line by day, what remains on both sides, what is carried out', () => {
    const { carriedIn, lines, carriedOut } = sheet()
    expect(carriedIn).toEqual({ cash: cad('34.50'), card: cad('10.00'), held: cad('0'), left: cad('44.50') })
    expect(
      lines.map((l) => [l.date, l.entry.kind, l.cash.minor, l.card.minor, l.held.minor, l.after.left.minor]),
    ).toEqual([
      ['2026-02-02', 'order', 0, 0, 300, 4150],
      ['2026-02-02', 'charge', 0, -300, -300, 4150],
      ['2026-02-03', 'spend', -400, 0, 0, 3750],
    ])
    expect(carriedOut).toEqual({ cash: cad('30.50'), card: cad('7.00'), held: cad('0'), left: cad('37.50') })
  })

  it('sheets follow one another: what one carries out the next carries in', () => {
    const january = potSheet(book, potId('bread'), day('2026-01-01'), day('2026-01-31'))
    const march = potSheet(book, potId('bread'), day('2026-03-01'), day('2026-03-31'))
    expect([january.carriedIn.left, january.carriedOut]).toEqual([cad('0'), sheet().carriedIn])
    expect(march.carriedIn).toEqual(sheet().carriedOut)
  })

  it('a mistake taken back within the sheet leaves no line; one of an earlier sheet is taken back where it was', () => {
    const at = (date: string) => ({ ...stamp(99), date: day(date) })
    const within = append(book, reverse(book, at('2026-02-04'), entryId(uuid(3))))
    expect(sheet(within).lines.map((l) => l.entry.kind)).toEqual(['order', 'charge'])
    expect(sheet(within).carriedOut.cash).toEqual(cad('34.50'))
    const later = append(book, reverse(book, at('2026-02-04'), entryId(uuid(2))))
    expect(
      sheet(later)
        .lines.map((l) => [l.entry.kind, l.cash.minor])
        .at(-1),
    ).toEqual(['reversal', 550])
    expect(sheet(later).carriedIn.cash).toEqual(cad('34.50'))
  })

  it('an unknown pot is an error', () => {
    expect(() => potSheet(book, potId('none'), day('2026-02-01'), day('2026-02-28'))).toThrow(
      expect.objectContaining({ code: 'unknown-pot' }),
    )
  })
})
