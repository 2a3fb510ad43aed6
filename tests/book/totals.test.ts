import { expect, it } from 'vitest'
import { longHousehold } from '../../demo-data/long-household.ts'
import { calendarDate, openBook, sumsOf, Totals } from '../../src/index.ts'

it('adds up to what the book comes to, in pieces of any length, in any order', () => {
  const size = { years: 1, pots: 90, entries: 1500, seed: 3, until: calendarDate('2026-11-25') }
  const { household, entries } = longHousehold(size)
  const book = sumsOf(openBook(household, entries))
  for (const piece of [1, 7, 1500]) {
    const totals = new Totals()
    for (let at = 0; at < entries.length; at += piece) totals.add(entries.slice(at, at + piece).reverse())
    expect(totals.sums()).toEqual(book)
  }
  expect(Object.keys(book).length).toBeGreaterThan(150)
})
