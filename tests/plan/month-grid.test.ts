import { describe, expect, it } from 'vitest'
import { append, entryId, monthGrid, monthOf, potId, reverse } from '../../src/index.ts'
import { cad, household, pot, stamp, uuid } from '../book/sample.ts'
import { bookOf, day } from './sample.ts'

describe('monthGrid', () => {
  const h = household([pot('bread'), pot('books'), pot('old', { archived: true })], { monthStartDay: 10 })
  const book = bookOf(h, [
    ['2026-01-10', 'fill', 'bread', '40.00', '10.00'],
    ['2026-02-09', 'cash', 'bread', '12.00'],
    ['2026-02-10', 'order', 'bread', '8.00'],
    ['2026-02-11', 'fill', 'books', '0', '20.00'],
  ])
  const first = monthOf(day('2026-01-15'), 10)

  it('what was filled and spent by the household month', () => {
    const grid = monthGrid(book, first, 3)
    expect(grid.months).toEqual(['2026-01', '2026-02', '2026-03'])
    const figures = grid.rows.map((row) => [row.pot, ...row.cells.map((c) => [c.filled.minor, c.spent.minor])])
    expect(figures).toEqual([
      ['bread', [5000, 1200], [0, 800], [0, 0]],
      ['books', [0, 0], [2000, 0], [0, 0]],
    ])
    expect(grid.sum).toEqual({ filled: cad('70.00'), spent: cad('20.00') })
    expect(grid.totals.map((c) => c.filled)).toEqual([cad('50.00'), cad('20.00'), cad('0')])
  })

  it('what was taken back never was', () => {
    const back = append(book, reverse(book, { ...stamp(99), date: day('2026-03-20') }, entryId(uuid(2))))
    expect(monthGrid(back, first, 3).rows[0]?.cells.map((c) => c.spent.minor)).toEqual([0, 800, 0])
    expect(potId('bread')).toBe('bread')
  })
})
