import { describe, expect, it } from 'vitest'
import {
  accountId,
  append,
  balanceOf,
  balances,
  chargeOrder,
  type Entry,
  entriesOf,
  entryId,
  fillPot,
  findEntry,
  findOrder,
  holdOrder,
  isReversed,
  lastUndoable,
  openBook,
  openPot,
  potBalance,
  potId,
  receivePay,
  refundOrder,
  releaseOrder,
  reverse,
  spendFrom,
  tagOrder,
  toDecimal,
} from '../../src/index.ts'
import { bookWith, cad, grow, household, one, order, pot, stamp, uuid } from './sample.ts'

const h = household([pot('a'), pot('b'), pot('notes', { sides: 'cash' }), pot('plastic', { sides: 'card' })], {
  accounts: [
    { id: accountId('main'), name: 'Bank', kind: 'bank' },
    { id: accountId('visa'), name: 'Card', kind: 'credit' },
  ],
})
const a = potId('a')
const code = (c: string) => expect.objectContaining({ name: 'BookError', code: c })

describe('append', () => {
  it('keeps the earlier book as it was', () => {
    const before = bookWith(h, [['a', '10.00', '5.00']])
    const after = append(before, spendFrom(h, stamp(5), a, 'cash', cad('4.00'), 'bread'))
    expect([before, after].map((b) => toDecimal(potBalance(b, a).left))).toEqual(['15.00', '11.00'])
    expect([before.length, after.length]).toEqual([1, 2])
  })

  it('branches: two books grown from one know nothing of each other', () => {
    const base = bookWith(h, [['a', '10.00', '5.00']])
    const left = append(base, spendFrom(h, stamp(5), a, 'cash', cad('1.00'), 'x'))
    const right = append(base, spendFrom(h, stamp(6), a, 'cash', cad('2.00'), 'y'))
    expect([left, right].map((b) => toDecimal(potBalance(b, a).cash))).toEqual(['9.00', '8.00'])
    expect(findEntry(left, entryId(uuid(6)))).toBeUndefined()
    expect([...entriesOf(right)].map((e) => e.id)).toEqual([uuid(1), uuid(6)])
  })

  it('takes the same entry once and refuses another under its id', () => {
    const entry = fillPot(h, stamp(1), a, { card: cad('5.00') })
    const book = openBook(h, [entry])
    expect(append(book, { ...entry })).toBe(book)
    expect(() => append(book, fillPot(h, stamp(1), a, { card: cad('6.00') }))).toThrow(code('id-reused'))
  })

  it('refuses entries that do not balance, and keeps nothing of them', () => {
    const good = spendFrom(h, stamp(2), a, 'cash', cad('4.00'), 'bread')
    const book = bookWith(h, [['a', '10.00', '0.00']])
    const odd = (postings: Entry['postings'], places: Entry['places']): Entry => ({ ...good, postings, places })
    expect(() => append(book, odd(good.postings.slice(0, 1), good.places))).toThrow(code('unbalanced'))
    expect(() => append(book, odd(good.postings, []))).toThrow(code('sides-disagree'))
    expect(() =>
      append(
        book,
        odd(
          [
            { account: `cash:${potId('nobody')}`, amount: -400 },
            { account: 'outside', amount: 400 },
          ],
          good.places,
        ),
      ),
    ).toThrow(code('unknown-pot'))
    expect(() =>
      append(
        book,
        odd(
          [
            { account: 'outside', amount: 0.5 },
            { account: 'unplaced', amount: -0.5 },
          ],
          [],
        ),
      ),
    ).toThrow(code('bad-amount'))
    expect(toDecimal(potBalance(book, a).cash)).toBe('10.00')
    expect(book.length).toBe(1)
  })

  it('refuses steps of an order nobody tagged, and the same order twice', () => {
    const book = bookWith(h, [['a', '10.00', '10.00']])
    const tagged = grow(book, (b) => holdOrder(b, stamp(3), order(1), one('a', '5.00')))
    const charge = chargeOrder(tagged, stamp(4), order(1), cad('5.00'))
    expect(() => append(book, charge)).toThrow(code('unknown-order'))
    expect(() => append(tagged, holdOrder(tagged, stamp(5), order(1), one('a', '5.00')))).toThrow(code('id-reused'))
  })
})

describe('the sides of a pot', () => {
  it('a pot of one side takes nothing on the other', () => {
    expect(() => fillPot(h, stamp(1), potId('notes'), { card: cad('1.00') })).toThrow(code('wrong-side'))
    expect(() => fillPot(h, stamp(1), potId('plastic'), { cash: cad('1.00') })).toThrow(code('wrong-side'))
    expect(() => spendFrom(h, stamp(1), potId('plastic'), 'cash', cad('1.00'), 'x')).toThrow(code('wrong-side'))
    expect(() => openPot(h, stamp(1), potId('notes'), { card: cad('1.00') })).toThrow(code('wrong-side'))
  })

  it('card sides and unplaced money are what the accounts hold, cash sides the notes', () => {
    const book = openBook(h, [
      openPot(h, stamp(1), a, { cash: cad('20.00'), card: cad('30.00') }),
      receivePay(h, stamp(2), cad('500.00')),
      fillPot(h, stamp(3), a, { cash: cad('60.00'), card: cad('40.00') }),
    ])
    const charged = grow(
      book,
      (b) => holdOrder(b, stamp(4), order(1), one('a', '45.00')),
      (b) => chargeOrder(b, stamp(5), order(1), cad('45.00'), accountId('visa')),
    )
    const card = h.pots.reduce((sum, p) => sum + balanceOf(charged, `card:${p.id}`), 0)
    const bank = balanceOf(charged, `bank:${accountId('main')}`)
    const debt = -balanceOf(charged, `credit:${accountId('visa')}`)
    expect(debt).toBe(4500)
    expect(card + balanceOf(charged, 'unplaced')).toBe(bank - debt)
    expect(balanceOf(charged, 'notes')).toBe(8000)
  })

  it('a negative card side speaks for notes too', () => {
    const book = grow(bookWith(h, [['a', '30.00', '10.00']]), () =>
      spendFrom(h, stamp(3), a, 'card', cad('25.00'), 'in a shop'),
    )
    const b = potBalance(book, a)
    expect([b.card, b.left, b.spokenFor, b.freeCash].map(toDecimal)).toEqual(['-15.00', '15.00', '15.00', '15.00'])
  })
})

describe('the life of an order', () => {
  const start = bookWith(h, [
    ['a', '20.00', '100.00'],
    ['b', '0.00', '100.00'],
  ])
  const lines = {
    shop: 's',
    lines: [
      { pot: a, amount: cad('30.00') },
      { pot: potId('b'), amount: cad('10.00') },
    ],
  }
  const tagged = grow(start, (b) => holdOrder(b, stamp(10), order(1), lines))

  it('a charge without its own split goes pro rata, odd cents by largest remainder', () => {
    const book = grow(tagged, (b) => chargeOrder(b, stamp(11), order(1), cad('39.99')))
    expect(findOrder(book, order(1))?.parts.map((p) => [p.pot, p.held, p.charged])).toEqual([
      ['a', 1, 2999],
      ['b', 0, 1000],
    ])
  })

  it('an overrun is taken from the card side and not from the other pot', () => {
    const book = grow(tagged, (b) => chargeOrder(b, stamp(11), order(1), cad('60.00')))
    expect(findOrder(book, order(1))?.parts.map((p) => [p.held, p.charged])).toEqual([
      [0, 4500],
      [0, 1500],
    ])
    expect(balances(book).get(a)?.left).toEqual(cad('75.00'))
  })

  it('what is not charged is let go by a release, and a refund goes back where it came from', () => {
    const book = grow(
      tagged,
      (b) => chargeOrder(b, stamp(11), order(1), cad('20.00')),
      (b) => releaseOrder(b, stamp(12), order(1)),
      (b) => refundOrder(b, stamp(13), order(1), cad('8.00')),
    )
    expect(findOrder(book, order(1))?.parts.map((p) => [p.held, p.charged, p.refunded])).toEqual([
      [0, 1500, 600],
      [0, 500, 200],
    ])
    expect(() => releaseOrder(book, stamp(14), order(1))).toThrow(code('bad-amount'))
    expect(() => refundOrder(book, stamp(14), order(1), cad('12.01'))).toThrow(code('bad-amount'))
  })

  it('an adjusted tag holds the new sum, not both', () => {
    const reply = tagOrder(tagged, stamp(11), order(1), {
      shop: 's',
      lines: [{ pot: potId('b'), amount: cad('55.00') }],
    })
    const book = reply.kind === 'tagged' ? append(tagged, reply.entry) : tagged
    expect(reply.kind).toBe('tagged')
    expect([a, potId('b')].map((id) => toDecimal(potBalance(book, id).held))).toEqual(['0.00', '55.00'])
    expect(findOrder(book, order(1))?.total).toBe(5500)
  })

  it('tagging the same again posts nothing', () => {
    expect(tagOrder(tagged, stamp(11), order(1), lines).kind).toBe('unchanged')
  })

  it('a charged order is not adjusted any more', () => {
    const book = grow(tagged, (b) => chargeOrder(b, stamp(11), order(1), cad('40.00')))
    expect(() => tagOrder(book, stamp(12), order(1), one('a', '1.00'))).toThrow(code('order-already-charged'))
  })
})

describe('taking back', () => {
  it('is found although the clock went backwards in between, so that its id comes first', () => {
    const book = bookWith(h, [['a', '10.00', '5.00']])
    const spend = spendFrom(h, stamp(50), a, 'cash', cad('1.00'), 'x')
    const back = reverse(append(book, spend), stamp(20), spend.id)
    const held = holdOrder(book, stamp(60), order(1), one('a', '2.00'))
    const charge = chargeOrder(append(book, held), stamp(30), order(1), cad('2.00'))
    const all = [...entriesOf(book), spend, back, held, charge]
    expect(toDecimal(potBalance(openBook(h, all), a).left)).toBe('13.00')
    const without = all.filter((entry) => entry !== held)
    expect(() => openBook(h, without)).toThrow(code('unknown-order'))
  })

  it('reverses exactly, once, and never a reversal', () => {
    const book = bookWith(h, [['a', '10.00', '5.00']])
    const first = entryId(uuid(1))
    const undone = grow(book, (b) => reverse(b, stamp(2), first))
    expect(toDecimal(potBalance(undone, a).left)).toBe('0.00')
    expect(isReversed(undone, first)).toBe(true)
    expect(() => reverse(undone, stamp(3), first)).toThrow(code('already-reversed'))
    expect(() => reverse(undone, stamp(3), entryId(uuid(2)))).toThrow(code('not-reversible'))
    expect(() => reverse(undone, stamp(3), entryId(uuid(99)))).toThrow(code('unknown-entry'))
  })

  it('refuses a reversal that takes back another amount', () => {
    const book = bookWith(h, [['a', '10.00', '5.00']])
    const forged = { ...reverse(book, stamp(2), entryId(uuid(1))), postings: [], places: [] }
    expect(() => append(book, forged)).toThrow(code('unbalanced'))
  })

  it('undo finds the latest entry that stands', () => {
    const book = grow(bookWith(h, [['a', '10.00', '5.00']]), () => spendFrom(h, stamp(2), a, 'cash', cad('1.00'), 'x'))
    expect(lastUndoable(book)?.id).toBe(uuid(2))
    const undone = grow(book, (b) => reverse(b, stamp(3), entryId(uuid(2))))
    expect(lastUndoable(undone)?.id).toBe(uuid(1))
  })

  it('an order that later steps rest on is taken back from its latest step', () => {
    const book = grow(
      bookWith(h, [['a', '0.00', '50.00']]),
      (b) => holdOrder(b, stamp(2), order(1), one('a', '5.00')),
      (b) => chargeOrder(b, stamp(3), order(1), cad('5.00')),
    )
    expect(() => reverse(book, stamp(4), entryId(uuid(2)))).toThrow(code('not-reversible'))
    const back = grow(
      book,
      (b) => reverse(b, stamp(4), entryId(uuid(3))),
      (b) => reverse(b, stamp(5), entryId(uuid(2))),
    )
    expect(toDecimal(potBalance(back, a).left)).toBe('50.00')
    expect(findOrder(back, order(1))).toBeNull()
  })
})
