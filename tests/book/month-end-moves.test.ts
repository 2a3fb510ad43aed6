import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  accountId,
  agreeBalance,
  append,
  balanceOf,
  balances,
  calendarDate,
  chargeOrder,
  countedAmount,
  countPot,
  holdOrder,
  postedLines,
  potId,
  reverse,
  type SettleEnd,
  seenOnStatement,
  settleMove,
  spendFrom,
  transferMoney,
} from '../../src/index.ts'
import { bookWith, cad, grow, household, one, order, pot, stamp } from './sample.ts'

const a = potId('a')
const b = potId('b')
const c = potId('c')
const main = accountId('main')
const visa = accountId('visa')
const h = household([pot('a'), pot('b'), pot('c', { sides: 'card' })], {
  accounts: [
    { id: main, name: 'Bank account', kind: 'bank' },
    { id: visa, name: 'Visa', kind: 'credit' },
  ],
})
const place = `bank:${main}` as const
const debt = `credit:${visa}` as const
const start = bookWith(h, [
  ['a', '50.00', '30.00'],
  ['b', '20.00', '10.00'],
])

describe('a count', () => {
  const pieces = [
    { denomination: 2000, count: 2 },
    { denomination: 500, count: 1 },
    { denomination: 10, count: 0 },
  ]

  it('records what was found and posts nothing until told to', () => {
    const entry = countPot(start, stamp(5), a, pieces)
    expect(entry).toMatchObject({ expected: 5000, postings: [], places: [], pieces: pieces.slice(0, 2) })
    expect(countedAmount(start, entry)).toEqual(cad('45.00'))
    expect(balances(append(start, entry)).get(a)?.cash).toEqual(cad('50.00'))
  })

  it('posts short and over when told to, so that the book says what was counted', () => {
    const short = append(start, countPot(start, stamp(5), a, pieces, { post: true }))
    expect(balances(short).get(a)?.cash).toEqual(cad('45.00'))
    expect(balanceOf(short, 'over-short')).toBe(500)
    const over = append(short, countPot(short, stamp(6), a, [{ denomination: 5000, count: 1 }], { post: true }))
    expect([balanceOf(over, 'over-short'), balanceOf(over, 'notes')]).toEqual([0, 7000])
    const back = append(over, reverse(over, stamp(7), stamp(6).id))
    expect(balances(back).get(a)?.cash).toEqual(cad('45.00'))
  })

  it('refuses notes that do not exist, half pieces and a pot without an envelope', () => {
    const fails =
      (p: { denomination: number; count: number }[], id = a) =>
      () =>
        countPot(start, stamp(5), id, p)
    expect(fails([{ denomination: 3000, count: 1 }])).toThrow(expect.objectContaining({ code: 'unknown-piece' }))
    expect(fails([{ denomination: 2000, count: 1.5 }])).toThrow(expect.objectContaining({ code: 'bad-count' }))
    expect(fails([{ denomination: 2000, count: -1 }])).toThrow(expect.objectContaining({ code: 'bad-count' }))
    expect(fails([pieces[0], pieces[0]].flatMap((p) => (p ? [p] : [])))).toThrow(
      expect.objectContaining({ code: 'bad-count' }),
    )
    expect(fails([{ denomination: 2000, count: 1 }], c)).toThrow(expect.objectContaining({ code: 'wrong-side' }))
    const odd = countPot(start, stamp(5), a, [{ denomination: 3000, count: 1 }], { denominations: [3000] })
    expect(countedAmount(start, odd)).toEqual(cad('30.00'))
  })
})

describe('a settling move', () => {
  it('goes between envelopes and over the bank, notes one way and card the other', () => {
    const book = grow(
      start,
      (k) => settleMove(k, stamp(5), { pot: a }, { pot: b }, [{ denomination: 2000, count: 1 }]),
      (k) => settleMove(k, stamp(6), { pot: a }, { account: main }, [{ denomination: 1000, count: 1 }]),
      (k) => settleMove(k, stamp(7), { account: main }, { pot: b }, [{ denomination: 500, count: 3 }]),
    )
    const now = balances(book)
    expect([now.get(a)?.cash.minor, now.get(a)?.card.minor, now.get(a)?.left.minor]).toEqual([2000, 6000, 8000])
    expect([now.get(b)?.cash.minor, now.get(b)?.card.minor, now.get(b)?.left.minor]).toEqual([5500, -2500, 3000])
    expect(balanceOf(book, 'notes')).toBe(7500)
    expect(balanceOf(book, place)).toBe(3500)
  })

  it('refuses what moves nothing or is no settling', () => {
    const fails =
      (from: SettleEnd, to: SettleEnd, count = 1) =>
      () =>
        settleMove(start, stamp(5), from, to, [{ denomination: 2000, count }])
    expect(fails({ pot: a }, { pot: a })).toThrow(expect.objectContaining({ code: 'bad-lines' }))
    expect(fails({ account: main }, { account: visa })).toThrow(expect.objectContaining({ code: 'bad-lines' }))
    expect(fails({ pot: a }, { pot: b }, 0)).toThrow(expect.objectContaining({ code: 'bad-count' }))
  })

  it('is refused by the book, however it was made, when a pot would have more or less left', () => {
    const entry = settleMove(start, stamp(5), { pot: a }, { pot: b }, [{ denomination: 2000, count: 1 }])
    const borrowed = { ...entry, postings: entry.postings.filter((p) => p.account.startsWith('cash:')) }
    expect(() => append(start, borrowed)).toThrow(expect.objectContaining({ code: 'left-changes' }))
    const fed = {
      ...entry,
      postings: [
        { account: 'unplaced' as const, amount: -100 },
        { account: `card:${a}` as const, amount: 100 },
      ],
    }
    expect(() => append(start, fed)).toThrow(expect.objectContaining({ code: 'left-changes' }))
  })

  it('changes no left in any row of moves', () => {
    const ends: SettleEnd[] = [{ pot: a }, { pot: b }, { pot: c }, { account: main }]
    const moves = fc.array(
      fc.record({
        from: fc.integer({ min: 0, max: 3 }),
        to: fc.integer({ min: 0, max: 3 }),
        count: fc.integer({ min: 1, max: 9 }),
      }),
      { maxLength: 12 },
    )
    fc.assert(
      fc.property(moves, (list) => {
        let book = start
        list.forEach(({ from, to, count }, n) => {
          const [f, t] = [ends[from], ends[to]]
          if (f === undefined || t === undefined || from === to) return
          book = append(book, settleMove(book, stamp(10 + n), f, t, [{ denomination: 500, count }]))
        })
        for (const [id, before] of balances(start)) expect(balances(book).get(id)?.left).toEqual(before.left)
      }),
      { seed: 4, numRuns: 100 },
    )
  })
})

describe('a transfer', () => {
  it('pays a credit card off and leaves every pot alone', () => {
    const book = grow(
      start,
      (k) => holdOrder(k, stamp(5), order(1), one('a', '25.00')),
      (k) => chargeOrder(k, stamp(6), order(1), cad('25.00'), visa),
    )
    expect(balanceOf(book, debt)).toBe(-2500)
    const paid = append(book, transferMoney(h, stamp(7), main, visa, cad('25.00')))
    expect([balanceOf(paid, debt), balanceOf(paid, place)]).toEqual([0, 1500])
    expect([...balances(paid)]).toEqual([...balances(book)])
    expect(() => transferMoney(h, stamp(8), main, main, cad('1.00'))).toThrow(
      expect.objectContaining({ code: 'bad-lines' }),
    )
    expect(() => transferMoney(h, stamp(8), main, visa, cad('0.00'))).toThrow(
      expect.objectContaining({ code: 'bad-amount' }),
    )
  })
})

describe('what a statement shows', () => {
  it('is remembered by the line, until the entry is taken back', () => {
    const spend = spendFrom(h, { ...stamp(5), line: 'L1' }, a, 'card', cad('3.00'), 'x')
    const book = grow(
      start,
      () => spend,
      (k) => seenOnStatement(k, stamp(6), 'L2', [stamp(1).id]),
    )
    expect([...postedLines(book)]).toEqual(['L1', 'L2'])
    expect(() => seenOnStatement(book, stamp(7), 'L1', [stamp(1).id])).toThrow(
      expect.objectContaining({ code: 'line-posted' }),
    )
    expect(() => seenOnStatement(book, stamp(7), 'L3', [stamp(9).id])).toThrow(
      expect.objectContaining({ code: 'unknown-entry' }),
    )
    expect([...postedLines(append(book, reverse(book, stamp(8), stamp(5).id)))]).toEqual(['L2'])
  })

  it('agrees at a balance, which moves no money', () => {
    const entry = agreeBalance(start, stamp(5), main, calendarDate('2026-11-30'), cad('40.00'))
    expect(entry).toMatchObject({ balance: 4000, on: '2026-11-30', postings: [], places: [] })
    expect(() => append(start, { ...entry, postings: [{ account: 'unplaced', amount: 0 }] })).toThrow(
      expect.objectContaining({ code: 'unbalanced' }),
    )
  })
})
