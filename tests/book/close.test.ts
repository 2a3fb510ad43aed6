import { describe, expect, it } from 'vitest'
import {
  accountId,
  append,
  balances,
  calendarDate,
  closedMonths,
  closedThrough,
  closeMonth,
  datedFor,
  digestOf,
  entriesOf,
  findEntry,
  lastUndoable,
  monthName,
  monthNamed,
  openBook,
  potId,
  potMonths,
  reopenMonth,
  reverse,
  settleMove,
  spendFrom,
  summarise,
  sweepPot,
  unplaced,
} from '../../src/index.ts'
import { bookWith, cad, grow, household, pot, stamp } from './sample.ts'

const a = potId('a')
const b = potId('b')
const day = calendarDate
const november = monthName('2026-11')
const h = household([pot('a'), pot('b')])
const start = bookWith(h, [
  ['a', '50.00', '30.00'],
  ['b', '20.00', '0.00'],
])
const spend = (n: number, date: string, amount = '10.00') =>
  spendFrom(h, stamp(n, day(date)), a, 'cash', cad(amount), 'x')
const closed = (book = start) => append(book, closeMonth(book, stamp(50, day('2026-12-02')), november))

describe('months', () => {
  it('start on the household day', () => {
    expect(monthNamed({ monthStartDay: 1 }, '2026-11')).toEqual({
      name: '2026-11',
      from: '2026-11-01',
      to: '2026-11-30',
    })
    expect(monthNamed({ monthStartDay: 25 }, '2028-02')).toMatchObject({ from: '2028-02-25', to: '2028-03-24' })
    expect(monthNamed({ monthStartDay: 28 }, '2026-12').to).toBe('2027-01-27')
    expect(() => monthNamed({ monthStartDay: 1 }, '2026-13')).toThrow(expect.objectContaining({ code: 'bad-date' }))
  })
})

describe('closing a month', () => {
  it('signs off figures that add up, with the accounts they are in', () => {
    const book = grow(
      start,
      () => spend(3, '2026-11-27'),
      (k) => settleMove(k, stamp(4, day('2026-11-28')), { pot: a }, { pot: b }, [{ denomination: 500, count: 2 }]),
      (k) => sweepPot(k, stamp(5, day('2026-12-01')), november, a, { cash: cad('5.00') }, { pot: b }),
    )
    const entry = closeMonth(book, stamp(6, day('2026-12-01')), november)
    expect(entry).toMatchObject({ through: '2026-11-30', month: '2026-11' })
    const [first, second] = entry.summary.pots
    expect(first).toMatchObject({
      filled: { cash: 5000, card: 3000 },
      spent: { cash: 1000, card: 0 },
      settled: { cash: -1000, card: 1000 },
      swept: { cash: -500, card: 0 },
      carriedOut: { cash: 2500, card: 4000 },
    })
    expect(second).toMatchObject({ swept: { cash: 500, card: 0 }, carriedOut: { cash: 3500, card: -1000 } })
    const cards = entry.summary.pots.reduce((sum, p) => sum + p.carriedOut.card, entry.summary.unplaced)
    expect(cards).toBe(entry.summary.accounts.reduce((sum, x) => sum + x.balance, 0))
    expect(entry.digest).toMatch(/^[0-9a-f]{64}$/)
  })

  it('gives the next month what the last one carried out', () => {
    const book = grow(
      start,
      () => spend(3, '2026-11-27'),
      () => spend(4, '2026-12-05', '7.00'),
    )
    const months = potMonths(book, november, monthName('2027-01'))
    expect([...months.keys()]).toEqual(['2026-11', '2026-12', '2027-01'])
    expect(months.get(monthName('2026-12'))?.[0]).toMatchObject({
      carriedIn: { cash: 4000, card: 3000 },
      spent: { cash: 700, card: 0 },
      carriedOut: { cash: 3300, card: 3000 },
    })
    expect(months.get(monthName('2027-01'))?.[0]).toMatchObject({ carriedIn: { cash: 3300, card: 3000 }, held: 0 })
  })

  it('counts a late reversal in the month it is made, against what it takes back', () => {
    const book = grow(closed(grow(start, () => spend(3, '2026-11-27'))), (k) =>
      reverse(k, stamp(60, day('2026-12-03')), stamp(3).id),
    )
    const months = potMonths(book, november, monthName('2026-12'))
    expect(months.get(november)?.[0]?.spent.cash).toBe(1000)
    expect(months.get(monthName('2026-12'))?.[0]?.spent.cash).toBe(-1000)
  })

  it('refuses a month that runs still, one that is closed, and what is no month', () => {
    expect(() => closeMonth(start, stamp(9, day('2026-11-29')), november)).toThrow(
      expect.objectContaining({ code: 'month-not-over' }),
    )
    expect(() => closeMonth(closed(), stamp(51, day('2026-12-03')), november)).toThrow(
      expect.objectContaining({ code: 'month-closed' }),
    )
    expect(() => closeMonth(closed(), stamp(51, day('2026-12-03')), monthName('2026-10'))).toThrow(
      expect.objectContaining({ code: 'month-closed' }),
    )
  })

  it('freezes the month: a late entry is refused there and dated into the open one with a reference', () => {
    const book = closed()
    expect(() => append(book, spend(70, '2026-11-29'))).toThrow(expect.objectContaining({ code: 'month-closed' }))
    const dated = datedFor(book, day('2026-11-29'), day('2026-12-04'))
    expect(dated).toEqual({ date: '2026-12-04', happened: '2026-11-29' })
    const late = append(book, spendFrom(h, { ...stamp(70), ...dated }, a, 'cash', cad('4.00'), 'found a receipt'))
    expect(findEntry(late, stamp(70).id)).toMatchObject(dated)
    expect(datedFor(book, day('2026-12-01'), day('2026-12-04'))).toEqual({ date: '2026-12-01' })
    expect(datedFor(start, day('2026-01-01'), day('2026-12-04'))).toEqual({ date: '2026-01-01' })
    // Closed on its very last day, the month is over for that day too.
    const early = append(start, closeMonth(start, stamp(50, day('2026-11-30')), november))
    expect(datedFor(early, day('2026-11-30'), day('2026-11-30'))).toEqual({
      date: '2026-12-01',
      happened: '2026-11-30',
    })
  })

  it('takes the same entry twice without a word, frozen or not', () => {
    const once = grow(start, () => spend(3, '2026-11-27'))
    const book = closed(once)
    expect(append(book, spend(3, '2026-11-27'))).toBe(book)
  })

  it('is opened again with a reason, and the months after it with it', () => {
    const december = append(closed(), closeMonth(closed(), stamp(51, day('2027-01-02')), monthName('2026-12')))
    expect(closedThrough(december)).toBe('2026-12-31')
    expect(() => reopenMonth(december, stamp(52), november, ' ')).toThrow(
      expect.objectContaining({ code: 'bad-reason' }),
    )
    const open = append(december, reopenMonth(december, stamp(52, day('2027-01-03')), november, 'a receipt turned up'))
    expect(closedThrough(open)).toBe('2026-10-31')
    expect(closedMonths(open)).toEqual([])
    expect(() => reopenMonth(open, stamp(53), november, 'again')).toThrow(
      expect.objectContaining({ code: 'month-open' }),
    )
    const again = append(open, closeMonth(open, stamp(54, day('2027-01-04')), november))
    expect(closedMonths(again).map((m) => [m.entry.id, m.agrees])).toEqual([[stamp(54).id, true]])
  })

  it('is taken back by opening it, not by a reversal, and undo does not reach past it', () => {
    expect(() => reverse(closed(), stamp(60), stamp(50).id)).toThrow(
      expect.objectContaining({ code: 'not-reversible' }),
    )
    expect(lastUndoable(closed())).toBeNull()
  })

  it('loses nothing of another device, and tells which sign-off no longer holds', () => {
    const book = closed()
    expect(closedMonths(book)[0]?.agrees).toBe(true)
    const merged = openBook(h, [...entriesOf(book), spend(20, '2026-11-20')])
    expect(merged.length).toBe(book.length + 1)
    expect(closedMonths(merged)[0]?.agrees).toBe(false)
  })

  it('signs figures, not names: a pot renamed later changes nothing, a cent does', () => {
    const month = monthNamed(h, november)
    const renamed = openBook(household([pot('a', { name: 'Aa' }), pot('b')]), entriesOf(start))
    expect(digestOf(summarise(renamed, month))).toBe(digestOf(summarise(start, month)))
    const other = grow(start, () => spend(3, '2026-11-27', '0.01'))
    expect(digestOf(summarise(other, month))).not.toBe(digestOf(summarise(start, month)))
  })
})

describe('sweeping', () => {
  const swept = (sides: { cash?: string; card?: string }, to: Parameters<typeof sweepPot>[5], book = start) =>
    sweepPot(
      book,
      stamp(40, day('2026-12-02')),
      november,
      a,
      { ...(sides.cash ? { cash: cad(sides.cash) } : {}), ...(sides.card ? { card: cad(sides.card) } : {}) },
      to,
    )

  it('dates a sweep at the month end, and only in an open month that is over', () => {
    expect(swept({ cash: '5.00' }, { pot: b }).date).toBe('2026-11-30')
    expect(() => sweepPot(start, stamp(40), november, a, { cash: cad('5.00') }, { pot: b })).toThrow(
      expect.objectContaining({ code: 'month-not-over' }),
    )
    expect(() => swept({ cash: '5.00' }, { pot: b }, closed())).toThrow(
      expect.objectContaining({ code: 'month-closed' }),
    )
  })

  it('moves both sides to another pot and nothing else', () => {
    const after = balances(append(start, swept({ cash: '50.00', card: '12.00' }, { pot: b })))
    expect([after.get(a)?.cash.minor, after.get(a)?.card.minor]).toEqual([0, 1800])
    expect([after.get(b)?.cash.minor, after.get(b)?.card.minor]).toEqual([7000, 1200])
  })

  it('brings notes to the bank for a pot without an envelope, and draws them for one without a card side', () => {
    const sided = household([pot('a'), pot('b', { sides: 'card' }), pot('c', { sides: 'cash' })])
    const book = openBook(sided, entriesOf(bookWith(household([pot('a')]), [['a', '50.00', '30.00']])))
    const banked = append(book, swept({ cash: '20.00', card: '5.00' }, { pot: b }, book))
    expect(balances(banked).get(b)).toMatchObject({ cash: cad('0.00'), card: cad('25.00') })
    expect(summarise(banked, monthNamed(sided, november)).accounts[0]?.balance).toBe(5000)
    const drawn = append(book, swept({ cash: '20.00', card: '5.00' }, { pot: potId('c') }, book))
    expect(balances(drawn).get(potId('c'))).toMatchObject({ cash: cad('25.00'), card: cad('0.00') })
    expect(summarise(drawn, monthNamed(sided, november)).accounts[0]?.balance).toBe(2500)
  })

  it('pays a debt out of the house, or a credit card of the household', () => {
    const out = append(start, swept({ cash: '20.00', card: '5.00' }, { debt: 'Dentist' }))
    expect([balances(out).get(a)?.left.minor, unplaced(out).minor]).toEqual([5500, 0])
    const visa = household([pot('a'), pot('b')], {
      accounts: [...h.accounts, { id: accountId('visa'), name: 'Visa', kind: 'credit' }],
    })
    const book = openBook(visa, entriesOf(start))
    const paid = append(book, swept({ card: '30.00' }, { account: accountId('visa') }, book))
    expect(unplaced(paid).minor).toBe(3000)
    expect(summarise(paid, monthNamed(visa, november)).accounts.map((x) => x.balance)).toEqual([0, 3000])
    expect(() => swept({ card: '1.00' }, { account: accountId('main') }, book)).toThrow(
      expect.objectContaining({ code: 'bad-lines' }),
    )
  })

  it('leaves alone what is not left', () => {
    for (const sides of [{ cash: '50.01' }, { cash: '50.00', card: '30.01' }, {}]) {
      expect(() => swept(sides, { pot: b })).toThrow(expect.objectContaining({ code: 'bad-amount' }))
    }
    expect(() => swept({ cash: '1.00' }, { pot: a })).toThrow(expect.objectContaining({ code: 'bad-lines' }))
    expect(() => swept({ cash: '1.00' }, { debt: ' ' })).toThrow(expect.objectContaining({ code: 'bad-reason' }))
  })

  it('is taken back at the same month end, when that is open', () => {
    const book = append(start, swept({ cash: '5.00' }, { pot: b }))
    expect(reverse(book, stamp(60, day('2026-12-09')), stamp(40).id).date).toBe('2026-11-30')
    expect(() => reverse(closed(book), stamp(60, day('2026-12-09')), stamp(40).id)).toThrow(
      expect.objectContaining({ code: 'month-closed' }),
    )
  })
})
