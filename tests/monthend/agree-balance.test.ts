import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  accountId,
  append,
  type Book,
  calendarDate,
  chargeOrder,
  type Entry,
  fillPot,
  holdOrder,
  type Money,
  ofMinor,
  openBook,
  openPot,
  potId,
  receivePay,
  reverse,
  seenOnStatement,
  spendFrom,
  transferMoney,
} from '../../src/index.ts'
import { explainBalance, explainBalances, type StatementClose } from '../../src/monthend/agree-balance.ts'
import type { StatementLine } from '../../src/monthend/statement-line.ts'
import { cad, grow, household, one, order, pot, stamp } from '../book/sample.ts'
import { line } from './statement-lines.ts'

const a = potId('a')
const main = accountId('main')
const visa = accountId('visa')
const day = calendarDate
const h = household([pot('a')], {
  accounts: [
    { id: main, name: 'Bank account', kind: 'bank' },
    { id: visa, name: 'Visa', kind: 'credit' },
  ],
})
const start = openBook(h, [openPot(h, stamp(1, day('2026-11-01')), a, { cash: cad('20.00'), card: cad('100.00') })])
const from = (n: number, date: string, id?: string) => ({
  ...stamp(n, day(date)),
  ...(id === undefined ? {} : { line: id }),
})
const spend = (n: number, date: string, amount: string, id?: string, account = main): Entry =>
  spendFrom(h, from(n, date, id), a, 'card', cad(amount), 'x', account)
const close = (closing: string, lines: StatementLine[], opening: string | null = '100.00'): StatementClose => ({
  account: main,
  opening: opening === null ? null : cad(opening),
  closing: cad(closing),
  on: day('2026-11-30'),
  lines,
})
const told = (book: Book, statement: StatementClose) =>
  explainBalance(book, statement).items.map((i) => [i.code, i.amount.minor])

describe('a closing balance', () => {
  it('agrees when every line is in the book and every entry on the statement', () => {
    const book = grow(start, () => spend(2, '2026-11-05', '8.00', 'L'))
    const found = explainBalance(book, close('92.00', [line('L', '2026-11-05', '-8.00', 'X')]))
    expect(found).toMatchObject({ items: [], difference: cad('0.00'), unexplained: cad('0.00'), isAgreed: true })
  })

  it('is explained line by line, down to zero', () => {
    const book = grow(
      start,
      () => spend(2, '2026-11-05', '8.00', 'L'),
      () => spend(3, '2026-11-06', '3.00'),
      () => spend(4, '2026-11-07', '5.00', 'M'),
      () => spend(5, '2026-12-02', '1.00'),
    )
    const statement = close('79.50', [
      line('L', '2026-11-05', '-8.00', 'X'),
      line('M', '2026-11-07', '-5.50', 'X'),
      line('N', '2026-11-09', '-7.00', 'X'),
      line('P', '2026-11-29', '-2.00', 'X', { status: 'pending' }),
    ])
    expect(told(book, statement)).toEqual([
      ['not-on-statement', 300],
      ['other-amount', -50],
      ['not-in-book', -700],
      ['after', 100],
    ])
    expect(explainBalance(book, statement)).toMatchObject({
      book: cad('83.00'),
      difference: cad('-3.50'),
      unexplained: cad('0.00'),
      isAgreed: false,
    })
  })

  it('names a statement that does not add up, and what differed before it', () => {
    expect(told(start, close('90.00', [line('N', '2026-11-09', '-7.00', 'X')]))).toEqual([
      ['statement-gap', -300],
      ['not-in-book', -700],
    ])
    expect(told(start, close('104.00', [], '104.00'))).toEqual([['before', 400]])
    expect(explainBalance(start, close('104.00', [], null))).toMatchObject({
      items: [],
      unexplained: cad('4.00'),
      isAgreed: false,
    })
  })

  it('does not mind what was taken back, and counts its line as missing again', () => {
    const book = grow(
      start,
      () => spend(2, '2026-11-05', '8.00', 'L'),
      (k) => reverse(k, stamp(3, day('2026-12-01')), stamp(2).id),
    )
    expect(told(book, close('92.00', [line('L', '2026-11-05', '-8.00', 'X')]))).toEqual([['not-in-book', -800]])
    expect(told(book, close('100.00', []))).toEqual([])
  })

  it('knows one withdrawal for two fills, and last month’s entries', () => {
    const book = grow(
      start,
      () => receivePay(h, from(2, '2026-11-02', 'P'), cad('200.00')),
      () => fillPot(h, stamp(3, day('2026-11-03')), a, { cash: cad('40.00') }),
      () => fillPot(h, stamp(4, day('2026-11-03')), a, { cash: cad('20.00') }),
      (k) => seenOnStatement(k, stamp(5, day('2026-11-30')), 'W', [stamp(3).id, stamp(4).id]),
    )
    const lines = [line('P', '2026-11-02', '200.00', 'PAY'), line('W', '2026-11-04', '-60.00', 'ABM')]
    expect(explainBalance(book, close('240.00', lines))).toMatchObject({ isAgreed: true, items: [] })
    // The next statement starts from there.
    const next = { ...close('240.00', [], '240.00'), on: day('2026-12-31') }
    expect(explainBalance(book, next)).toMatchObject({ isAgreed: true, items: [] })
  })

  it('sees a transfer on each account’s own statement', () => {
    const book = grow(
      start,
      () => spend(2, '2026-11-05', '30.00', 'V', visa),
      () => transferMoney(h, from(3, '2026-11-20', 'T'), main, visa, cad('30.00'), main),
    )
    const bank = close('70.00', [line('T', '2026-11-20', '-30.00', 'VISA')])
    const card: StatementClose = {
      account: visa,
      opening: cad('0.00'),
      closing: cad('-30.00'),
      on: day('2026-11-30'),
      lines: [line('V', '2026-11-05', '-30.00', 'X')],
    }
    expect(explainBalance(book, bank).isAgreed).toBe(true)
    expect(told(book, card)).toEqual([['not-on-statement', -3000]])
    const paid = append(book, seenOnStatement(book, stamp(4), 'U', [stamp(3).id], visa))
    const later = {
      ...card,
      closing: cad('0.00'),
      lines: [...card.lines, line('U', '2026-11-21', '30.00', 'THANK YOU')],
    }
    expect(explainBalance(paid, later).isAgreed).toBe(true)
  })
})

describe('all closing balances', () => {
  it('are the card sides and what is unplaced', () => {
    const book = grow(
      start,
      () => receivePay(h, from(2, '2026-11-02', 'P'), cad('200.00')),
      (k) => holdOrder(k, stamp(3, day('2026-11-03')), order(1), one('a', '25.00')),
      (k) => chargeOrder(k, from(4, '2026-11-04', 'C'), order(1), cad('25.00'), visa),
    )
    const bank = close('300.00', [line('P', '2026-11-02', '200.00', 'PAY')])
    const card = { ...close('-25.00', [line('C', '2026-11-04', '-25.00', 'CORVID')], '0.00'), account: visa }
    expect(explainBalances(book, [bank, card])).toMatchObject({
      closing: cad('275.00'),
      cardSides: cad('75.00'),
      unplaced: cad('200.00'),
      difference: cad('0.00'),
      missing: [],
      isAgreed: true,
    })
    expect(explainBalances(book, [bank])).toMatchObject({ missing: ['visa'], difference: cad('0.00'), isAgreed: false })
  })
})

describe('in any month', () => {
  it('items and what they leave are the difference, and with an opening balance nothing is left', () => {
    const step = fc.record({
      minor: fc.integer({ min: 1, max: 5000 }),
      date: fc.integer({ min: 1, max: 30 }),
      on: fc.constantFrom('both', 'book', 'statement', 'differs', 'later'),
    })
    fc.assert(
      fc.property(fc.array(step, { maxLength: 12 }), fc.integer({ min: -500, max: 500 }), (steps, off) => {
        let book = start
        const lines: StatementLine[] = []
        const cents = (minor: number): Money => ofMinor('CAD', minor)
        steps.forEach(({ minor, date, on }, n) => {
          const when = on === 'later' ? '2026-12-05' : `2026-11-${String(date).padStart(2, '0')}`
          const id = `L${n}`
          if (on !== 'statement') {
            const known = on === 'both' || on === 'differs' ? id : undefined
            book = append(book, spendFrom(h, from(10 + n, when, known), a, 'card', cents(minor), 'x'))
          }
          if (on === 'both' || on === 'statement' || on === 'differs') {
            const amount = on === 'differs' ? -minor - 7 : -minor
            lines.push({ ...line(id, when, '0.00', 'X'), amount: cents(amount) })
          }
        })
        const closing = 10_000 + off + lines.reduce((sum, l) => sum + l.amount.minor, 0)
        const statement: StatementClose = {
          account: main,
          opening: cents(10_000 + off),
          closing: cents(closing),
          on: day('2026-11-30'),
          lines,
        }
        const found = explainBalance(book, statement)
        expect(found.items.reduce((sum, i) => sum + i.amount.minor, found.unexplained.minor)).toBe(
          found.difference.minor,
        )
        expect(found.unexplained.minor).toBe(0)
        expect(explainBalance(book, { ...statement, opening: null }).unexplained.minor).toBe(off)
      }),
      { seed: 3, numRuns: 200 },
    )
  })
})
