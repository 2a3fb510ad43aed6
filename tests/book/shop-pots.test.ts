import { describe, expect, it } from 'vitest'
import { type Book, holdOrder, potsForShop, reverse } from '../../src/index.ts'
import { bookWith, grow, household, one, order, pot, stamp } from './sample.ts'

const h = household([pot('notes', { sides: 'cash' }), pot('a'), pot('b'), pot('c'), pot('old', { archived: true })])
const start = bookWith(h, [
  ['a', '0.00', '100.00'],
  ['b', '0.00', '100.00'],
  ['c', '0.00', '100.00'],
])
const buy = (n: number, id: string, shop: string) => (book: Book) =>
  holdOrder(book, stamp(100 + n), order(n), { ...one(id, '1.00'), shop })
const at = (book: Book, shop: string) => potsForShop(book, shop).map((p) => [p.pot, p.usedHere])

describe('potsForShop', () => {
  it('keeps the household order for a shop never used, notes-only pots last, archived ones out', () => {
    expect(at(start, 'x')).toEqual([
      ['a', 0],
      ['b', 0],
      ['c', 0],
      ['notes', 0],
    ])
  })

  it('puts the pot of this shop first; later orders weigh more', () => {
    const book = grow(start, buy(1, 'c', 'x'), buy(2, 'c', 'x'), buy(3, 'b', 'x'), buy(4, 'a', 'y'))
    // c: 1/4 + 1/2, b: 1
    expect(at(book, 'x')).toEqual([
      ['b', 1],
      ['c', 2],
      ['a', 0],
      ['notes', 0],
    ])
    expect(at(book, 'y')[0]).toEqual(['a', 1])
  })

  it('forgets an order that was taken back', () => {
    const book = grow(start, buy(1, 'c', 'x'), (b) => reverse(b, stamp(200), stamp(101).id))
    expect(at(book, 'x')[0]).toEqual(['a', 0])
  })
})
