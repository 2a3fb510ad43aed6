import { parse } from 'csv-parse/sync'
import { describe, expect, it } from 'vitest'
import { safeCell, sheetsCsv } from '../../src/desk/safe/sheets-csv.ts'
import { entriesOf, holdOrder, openBook, openPot, potBalance, potId, spendFrom, toDecimal } from '../../src/index.ts'
import { cad, household, one, order, pot, stamp } from '../book/sample.ts'

const columns = ['Day', 'Pot', 'What', 'Cash ±', 'Card ±', 'Held ±', 'Cash', 'Card', 'Left'] as const
const h = household([pot('a'), pot('b', { name: '=cmd|" /C calc"!A0' })])
const book = (() => {
  const first = openBook(h, [
    openPot(h, stamp(1), potId('a'), { cash: cad('20.00'), card: cad('5.00') }),
    openPot(h, stamp(2), potId('b'), { card: cad('9.00') }),
    spendFrom(h, stamp(3), potId('a'), 'cash', cad('1.50'), 'bread, "rye"\nand salt'),
  ])
  const entries = [...entriesOf(first), holdOrder(first, stamp(4), order(1), one('b', '3.00'))]
  return openBook(h, entries)
})()
const text = sheetsCsv(book, { columns, say: (entry) => ('purpose' in entry ? entry.purpose : entry.kind) })

describe('sheets for a spreadsheet', () => {
  // csv-parse is an independent reader of RFC 4180.
  const rows: string[][] = parse(text)

  it('are read by another library as they were meant', () => {
    expect(rows[0]).toEqual([...columns])
    expect(rows.length).toBe(1 + 4)
    expect(rows[3]).toEqual([
      '2026-11-25',
      'a',
      'bread, "rye"\nand salt',
      '-1.50',
      '0.00',
      '0.00',
      '18.50',
      '5.00',
      '23.50',
    ])
  })

  it('end each pot with what the book has', () => {
    for (const id of ['a', 'b'] as const) {
      const { cash, card, left } = potBalance(book, potId(id))
      const name = safeCell(h.pots.find((p) => p.id === id)?.name ?? '')
      expect(
        rows
          .filter((row) => row[1] === name)
          .at(-1)
          ?.slice(6),
      ).toEqual([cash, card, left].map(toDecimal))
    }
  })

  it('keep RFC 4180 line ends', () => {
    expect(text.endsWith('\r\n')).toBe(true)
    expect(text.replaceAll('\r\n', '').replace('"bread, ""rye""\nand salt"', '')).not.toMatch(/[\r\n]/)
  })

  // OWASP, CSV injection: first characters, full-width ones (from memory there), and what may stand before them.
  it.each([
    '=1+1',
    '+1',
    '-1+1',
    '@SUM(A1)',
    '\t=1',
    '\r=1',
    '\n=1',
    '\uff1d1+1',
    ' =1',
    '\u00a0=1',
    "=cmd|' /C calc'!A0",
    '+5.00',
  ])('a text that a spreadsheet would run is given an apostrophe: %j', (cell) =>
    expect(safeCell(cell)).toBe(`'${cell}`),
  )
  it.each(['-5.00', '5.00', 'bread', 'a;=1', "'=1+1", '12-3'])('and one it would not is left alone: %j', (cell) =>
    expect(safeCell(cell)).toBe(cell),
  )
})
