import { describe, expect, it } from 'vitest'
import { accountId, calendarDate, entryId, money, potId } from '../../src/index.ts'
import { matchStatement } from '../../src/monthend/match-statement.ts'
import type { EntryToMatch, MatchOptions, StatementMatching } from '../../src/monthend/match-types.ts'
import { cad, order, uuid } from '../book/sample.ts'
import { held, line, pots } from './statement-lines.ts'

const CORVID = 'corvid-books.example'
const FINCH = 'finch-garden.example'
const entry = (n: number, date: string, amount: string, more: Partial<EntryToMatch> = {}): EntryToMatch => ({
  entry: entryId(uuid(n)),
  account: accountId('main'),
  date: calendarDate(date),
  amount: cad(amount),
  text: '',
  kind: 'cash',
  ...more,
})
const told = (m: StatementMatching) =>
  m.matches.map((x) => [x.kind, x.lines.join('+'), [...x.orders, ...x.entries].length, x.isSure] as const)
const codes = (m: StatementMatching, at = 0) => m.matches[at]?.reasons.map((r) => r.code)

describe('one line and one order', () => {
  it('are put together by amount, name and day, with the reasons', () => {
    const m = matchStatement(
      [line('L', '2026-11-12', '-55.90', 'CORVID BOOKS 0042 TORONTO')],
      [held(1, '2026-11-10', '55.90', CORVID)],
    )
    expect(told(m)).toEqual([['charge', 'L', 1, true]])
    expect(m.matches[0]).toMatchObject({
      parts: [{ line: 'L', order: order(1), amount: cad('55.90') }],
      difference: cad('0.00'),
      reasons: [{ code: 'same-amount' }, { code: 'name', likeness: 100 }, { code: 'days', days: 2 }],
    })
    expect([m.untagged, m.uncharged, m.isProven]).toEqual([[], [], true])
  })

  it('are asked about when only the amount agrees', () => {
    const m = matchStatement(
      [line('L', '2026-11-12', '-55.90', 'QK SERVICES')],
      [held(1, '2026-11-10', '55.90', CORVID)],
    )
    expect(told(m)).toEqual([['charge', 'L', 1, false]])
  })

  it('are sure by the order number, whatever the name', () => {
    const m = matchStatement(
      [line('L', '2026-11-12', '-55.90', 'QK SERVICES', { text: 'ref A12-9981' })],
      [held(1, '2026-11-10', '55.90', CORVID, { number: 'A12-9981' })],
    )
    expect(told(m)).toEqual([['charge', 'L', 1, true]])
    expect(codes(m)).toContain('order-number')
  })

  it('are named with the difference when the charge is another, and never sure', () => {
    const m = matchStatement(
      [line('L', '2026-11-12', '-58.40', 'CORVID BOOKS')],
      [held(1, '2026-11-10', '55.90', CORVID)],
    )
    expect(told(m)).toEqual([['charge', 'L', 1, false]])
    expect(m.matches[0]).toMatchObject({ difference: cad('-2.50'), completes: [] })
    expect(codes(m)?.[0]).toBe('other-amount')
  })

  it('are no match beyond the days or with the money going the other way', () => {
    const orders = [held(1, '2026-11-10', '55.90', CORVID)]
    for (const l of [
      line('L', '2027-02-12', '-55.90', 'CORVID BOOKS'),
      line('L', '2026-11-01', '-55.90', 'CORVID BOOKS'),
    ]) {
      expect(matchStatement([l], orders).matches).toEqual([])
    }
    expect(matchStatement([line('L', '2026-11-12', '90.00', 'CORVID BOOKS')], orders).matches).toEqual([])
  })

  it('let the rest of a margin go, and the difference a rate makes', () => {
    const margin = matchStatement(
      [line('L', '2026-11-12', '-52.00', 'FINCH GARDEN')],
      [held(1, '2026-11-10', '57.20', FINCH, { margin: cad('5.20') })],
    )
    expect(margin.matches[0]).toMatchObject({ isSure: true, completes: [order(1)], difference: cad('5.20') })
    const foreign = matchStatement(
      [
        line('L', '2026-11-12', '-76.31', 'FINCH GARDEN', {
          original: { amount: money('EUR', '-50.00'), rate: '1.489' },
        }),
      ],
      [held(1, '2026-11-10', '75.40', FINCH, { foreign: money('EUR', '50.00') })],
    )
    expect(foreign.matches[0]).toMatchObject({ isSure: true, completes: [order(1)] })
    expect(codes(foreign)?.[0]).toBe('foreign-amount')
    const unsaid = matchStatement(
      [line('L', '2026-11-12', '-76.31', 'FINCH GARDEN')],
      [held(1, '2026-11-10', '75.40', FINCH, { foreign: money('EUR', '50.00') })],
    )
    expect(unsaid.matches[0]).toMatchObject({ isSure: false, difference: cad('-0.91') })
    expect(codes(unsaid)?.[0]).toBe('within-rate')
  })

  it('ask when a cancelled order is charged', () => {
    const m = matchStatement(
      [line('L', '2026-11-12', '-55.90', 'CORVID BOOKS')],
      [held(1, '2026-11-10', '55.90', CORVID, { isOff: true })],
    )
    expect(told(m)).toEqual([['charge', 'L', 1, false]])
    expect(codes(m)).toContain('was-cancelled')
  })
})

describe('the best over all lines', () => {
  it('gives up the nearest pair where both lines fit better crosswise', () => {
    // Line by line, M (nearest day to order 2) would take it and leave L without an order.
    const m = matchStatement(
      [line('L', '2026-11-16', '-20.00', 'CORVID BOOKS'), line('M', '2026-11-14', '-20.00', 'CORVID BOOKS')],
      [
        held(1, '2026-11-09', '20.00', CORVID, { pots: pots('a') }),
        held(2, '2026-11-15', '20.00', CORVID, { pots: pots('b') }),
      ],
    )
    expect(m.matches.map((x) => [x.lines[0], x.orders[0]])).toEqual([
      ['L', order(2)],
      ['M', order(1)],
    ])
  })

  it('asks which of two orders it was when their pots differ, and does not when nothing differs', () => {
    const lines = [line('L', '2026-11-12', '-20.00', 'CORVID BOOKS')]
    const two = (a: string, b: string) => [
      held(1, '2026-11-10', '20.00', CORVID, { pots: pots(a) }),
      held(2, '2026-11-10', '20.00', CORVID, { pots: pots(b) }),
    ]
    const differ = matchStatement(lines, two('a', 'b'))
    expect(told(differ)).toEqual([['charge', 'L', 1, false]])
    expect(codes(differ)).toContain('could-be-other')
    expect(differ.uncharged.map((u) => u.order)).toEqual([order(2)])
    expect(told(matchStatement(lines, two('a', 'a')))).toEqual([['charge', 'L', 1, true]])
  })
})

describe('sums', () => {
  it('find one order charged in several lines, as parts are shipped', () => {
    const m = matchStatement(
      [
        line('L', '2026-11-12', '-19.99', 'CORVID BOOKS'),
        line('M', '2026-11-14', '-7.99', 'CORVID BOOKS'),
        line('N', '2026-11-14', '-31.00', 'FINCH GARDEN'),
        line('O', '2026-11-20', '-4.99', 'CORVID BOOKS'),
      ],
      [held(1, '2026-11-10', '32.97', CORVID), held(2, '2026-11-11', '31.00', FINCH)],
    )
    expect(told(m)).toEqual([
      ['charge', 'L+M+O', 1, true],
      ['charge', 'N', 1, true],
    ])
    expect(m.matches[0]?.parts.map((p) => p.amount)).toEqual([cad('19.99'), cad('7.99'), cad('4.99')])
    expect(codes(m)?.[0]).toBe('sum-of-lines')
  })

  it('find several orders in one line', () => {
    const m = matchStatement(
      [line('L', '2026-11-12', '-43.50', 'CORVID BOOKS')],
      [
        held(1, '2026-11-10', '12.50', CORVID),
        held(2, '2026-11-11', '31.00', CORVID),
        held(3, '2026-11-11', '8.00', CORVID),
      ],
    )
    expect(told(m)).toEqual([['charge', 'L', 2, true]])
    expect(m.matches[0]?.parts.map((p) => [p.order, p.amount])).toEqual([
      [order(1), cad('12.50')],
      [order(2), cad('31.00')],
    ])
    expect(m.uncharged).toEqual([{ order: order(3), amount: cad('8.00'), days: 1 }])
  })

  it('prefer the plain line for the plain order, and still use a sum where two orders need it', () => {
    const lines = [
      line('L', '2026-11-12', '-50.00', 'CORVID BOOKS'),
      line('M', '2026-11-12', '-30.00', 'CORVID BOOKS'),
      line('N', '2026-11-12', '-20.00', 'CORVID BOOKS'),
    ]
    const alone = matchStatement(lines, [held(1, '2026-11-10', '50.00', CORVID)])
    expect(told(alone)).toEqual([['charge', 'L', 1, true]])
    expect(alone.untagged.map((u) => u.line)).toEqual(['M', 'N'])
    const two = matchStatement(lines, [held(1, '2026-11-10', '50.00', CORVID), held(2, '2026-11-10', '50.00', CORVID)])
    expect(two.matches.map((x) => x.lines.join('+'))).toEqual(['L', 'M+N'])
  })

  it('ask where several sets sum to the same', () => {
    const m = matchStatement(
      [
        line('L', '2026-11-12', '-10.00', 'CORVID BOOKS'),
        line('M', '2026-11-12', '-10.00', 'CORVID BOOKS'),
        line('N', '2026-11-12', '-5.00', 'CORVID BOOKS'),
      ],
      [held(1, '2026-11-10', '15.00', CORVID)],
    )
    expect(m.matches).toHaveLength(1)
    expect(m.matches[0]?.isSure).toBe(false)
    expect(codes(m)).toContain('several-ways')
  })

  it('name a part of an order whose rest has not come', () => {
    const m = matchStatement(
      [line('L', '2026-11-12', '-40.00', 'CORVID BOOKS')],
      [held(1, '2026-11-10', '90.00', CORVID)],
    )
    expect(told(m)).toEqual([['charge', 'L', 1, false]])
    expect(m.matches[0]?.reasons[0]).toEqual({ code: 'part-of', of: cad('90.00') })
  })
})

describe('money back', () => {
  it('goes to the order it was announced for', () => {
    const m = matchStatement(
      [line('L', '2026-11-22', '12.00', 'CORVID BOOKS')],
      [
        held(1, '2026-10-10', '55.90', CORVID, { held: cad('0.00'), charged: cad('55.90'), expected: cad('12.00') }),
        held(2, '2026-10-20', '40.00', CORVID, { held: cad('0.00'), charged: cad('40.00') }),
      ],
    )
    expect(m.matches[0]).toMatchObject({ kind: 'refund', orders: [order(1)], isSure: true })
    expect(codes(m)).toContain('expected-refund')
  })

  it('may be the whole order, charged in the same statement', () => {
    const m = matchStatement(
      [line('L', '2026-11-12', '-20.00', 'CORVID BOOKS'), line('M', '2026-11-19', '20.00', 'CORVID BOOKS')],
      [held(1, '2026-11-10', '20.00', CORVID)],
    )
    expect(told(m)).toEqual([
      ['charge', 'L', 1, true],
      ['refund', 'M', 1, true],
    ])
  })

  it('is asked about before anything was charged, and when it is only a part', () => {
    expect(
      told(
        matchStatement([line('M', '2026-11-19', '20.00', 'CORVID BOOKS')], [held(1, '2026-11-10', '20.00', CORVID)]),
      ),
    ).toEqual([['refund', 'M', 1, false]])
    const part = matchStatement(
      [line('L', '2026-11-22', '12.00', 'CORVID BOOKS')],
      [held(1, '2026-10-10', '55.90', CORVID, { held: cad('0.00'), charged: cad('55.90') })],
    )
    expect(told(part)).toEqual([['refund', 'L', 1, false]])
    expect(part.matches[0]?.reasons[0]).toEqual({ code: 'part-of', of: cad('55.90') })
  })
})

describe('what the book has already', () => {
  const options = (entries: EntryToMatch[], more: Partial<MatchOptions> = {}): MatchOptions => ({
    entries,
    accounts: { bank: accountId('main'), card: accountId('visa') },
    ...more,
  })

  it('is shown by a line: notes drawn, pay, a spend by card', () => {
    const m = matchStatement(
      [
        line('L', '2026-11-07', '-260.00', 'ABM WITHDRAWAL', { kind: 'cash' }),
        line('M', '2026-11-06', '2140.00', 'LAMPLIGHT PAYROLL', { kind: 'pay' }),
        line('N', '2026-11-09', '-18.40', 'HERON FOODS', { kind: 'card' }),
      ],
      [],
      options([
        entry(1, '2026-11-06', '-260.00'),
        entry(2, '2026-11-06', '2140.00', { kind: 'pay' }),
        entry(3, '2026-11-08', '-18.40', { kind: 'spend', text: 'Heron' }),
      ]),
    )
    expect(told(m)).toEqual([
      ['seen', 'L', 1, true],
      ['seen', 'M', 1, true],
      ['seen', 'N', 1, true],
    ])
  })

  it('is one withdrawal for many fills', () => {
    const m = matchStatement(
      [line('L', '2026-11-07', '-260.00', 'ABM', { kind: 'cash', account: 'bank' })],
      [],
      options([
        entry(1, '2026-11-06', '-120.00'),
        entry(2, '2026-11-06', '-80.00'),
        entry(3, '2026-11-06', '-60.00'),
        entry(4, '2026-11-06', '-35.00'),
      ]),
    )
    expect(told(m)).toEqual([['seen', 'L', 3, true]])
    expect(codes(m)).toEqual(['sum-of-entries', 'bank-says'])
    expect(m.unseen).toEqual([])
  })

  it('is not taken for a purchase by card, nor for another account', () => {
    const entries = options([entry(1, '2026-11-06', '-60.00')])
    expect(matchStatement([line('L', '2026-11-07', '-60.00', 'HERON', { kind: 'card' })], [], entries).matches).toEqual(
      [],
    )
    expect(
      matchStatement([line('L', '2026-11-07', '-60.00', 'ABM', { account: 'card' })], [], entries).matches,
    ).toEqual([])
  })

  it('is not posted again, nor while it is pending', () => {
    const m = matchStatement(
      [
        line('L', '2026-11-12', '-55.90', 'CORVID BOOKS'),
        line('M', '2026-11-13', '-8.00', 'CORVID BOOKS', { status: 'pending' }),
        line('L', '2026-11-12', '-55.90', 'CORVID BOOKS'),
      ],
      [held(1, '2026-11-10', '55.90', CORVID), held(2, '2026-11-12', '8.00', CORVID)],
      { posted: new Set(['L']) },
    )
    expect([m.matches, m.untagged, m.pending]).toEqual([[], [], ['M']])
    // Still held, though no line is new: the card has not charged the second one.
    expect(m.uncharged.map((u) => u.order)).toContain(order(2))
    expect(new Set(m.posted)).toEqual(new Set(['L']))
  })

  it('is one transfer for two lines of two accounts', () => {
    const m = matchStatement(
      [
        line('L', '2026-11-20', '-310.45', 'TRANSFER', { account: 'bank' }),
        line('M', '2026-11-21', '310.45', 'PAYMENT THANK YOU', { account: 'card' }),
      ],
      [],
      options([]),
    )
    expect(told(m)).toEqual([['transfer', 'L+M', 0, true]])
  })
})

describe('what is left over', () => {
  it('is a renewal when one is due', () => {
    const renewal = {
      renewal: 'paper',
      name: 'Wren Daily',
      due: calendarDate('2026-11-15'),
      amount: cad('9.00'),
      pot: potId('fun'),
    }
    const m = matchStatement([line('L', '2026-11-16', '-9.00', 'WREN DAILY')], [], { renewals: [renewal] })
    expect(m.matches[0]).toMatchObject({ kind: 'renewal', isSure: true, renewal })
    const dearer = matchStatement([line('L', '2026-11-16', '-9.50', 'WREN DAILY')], [], { renewals: [renewal] })
    expect(dearer.matches[0]).toMatchObject({ kind: 'renewal', isSure: false, difference: cad('-0.50') })
  })

  it('is named: a charge no one tagged, with the pots that like texts went to', () => {
    const m = matchStatement(
      [line('L', '2026-11-16', '-9.00', 'CORVID BKS 221'), line('M', '2026-11-17', '-3.00', 'OWL PARKING')],
      [],
      {
        habits: [
          { text: CORVID, isShop: true, pot: potId('fun') },
          { text: CORVID, isShop: true, pot: potId('school') },
          { text: CORVID, isShop: true, pot: potId('school') },
          { text: 'Finch', isShop: false, pot: potId('garden') },
        ],
      },
    )
    expect(m.untagged.map((u) => u.suggestions.map((s) => s.pot))).toEqual([['school', 'fun'], []])
  })

  it('is named: the same charge twice', () => {
    const m = matchStatement(
      [line('L', '2026-11-12', '-55.90', 'CORVID BOOKS'), line('M', '2026-11-12', '-55.90', 'CORVID BOOKS')],
      [held(1, '2026-11-10', '55.90', CORVID)],
    )
    expect(m.matches.map((x) => [x.lines[0], x.isSure])).toEqual([['L', true]])
    expect(m.untagged).toMatchObject([{ line: 'M', twin: 'L' }])
  })
})

describe('a matching', () => {
  it('refuses a statement of another currency', () => {
    const euro = { ...line('L', '2026-11-12', '-55.90', 'CORVID BOOKS'), amount: money('EUR', '-55.90') }
    expect(() => matchStatement([euro], [held(1, '2026-11-10', '55.90', CORVID)])).toThrow(
      expect.objectContaining({ code: 'other-currency' }),
    )
  })

  it('of nothing is nothing', () => {
    expect(matchStatement([], [])).toMatchObject({ matches: [], untagged: [], uncharged: [], isProven: true })
    expect(matchStatement([], [held(1, '2026-11-10', '55.90', CORVID)]).matches).toEqual([])
  })
})
