import {
  accountId,
  append,
  type Book,
  type CalendarDate,
  calendarDate,
  deviceId,
  type Entry,
  entryId,
  fillPot,
  type Household,
  type Money,
  money,
  type OrderId,
  openBook,
  orderId,
  type Pot,
  potId,
  type Stamp,
} from '../../src/index.ts'

/** A day every test of the book may call today. */
export const today: CalendarDate = calendarDate('2026-11-25')

export const cad = (amount: string): Money<'CAD'> => money('CAD', amount)

/** The n-th UUIDv7 of a test, sorting by n. */
export function uuid(n: number): string {
  return `0193b000-0000-7000-8000-${String(n).padStart(12, '0')}`
}

export function order(n: number): OrderId {
  return orderId(`0193b000-0000-7000-9000-${String(n).padStart(12, '0')}`)
}

/** A stamp for the n-th entry. */
export function stamp(n: number, date: CalendarDate = today): Stamp {
  return { id: entryId(uuid(n)), device: deviceId('laptop'), date }
}

export function pot(id: string, changes: Partial<Pot> = {}): Pot {
  return {
    id: potId(id),
    name: id,
    kind: 'everyday',
    rule: 'block',
    sides: 'both',
    floor: 0,
    fill: { cash: 0, card: 0 },
    archived: false,
    ...changes,
  }
}

export function household(pots: readonly Pot[], changes: Partial<Household> = {}): Household {
  return {
    currency: 'CAD',
    timeZone: 'America/Toronto',
    monthStartDay: 1,
    pots,
    accounts: [{ id: accountId('main'), name: 'Bank account', kind: 'bank' }],
    payDates: [],
    ...changes,
  }
}

/** A book whose pots were filled from outside with the given cash and card. */
export function bookWith(h: Household, fills: readonly (readonly [string, string, string])[]): Book {
  const entries: Entry[] = fills.map(([id, cash, card], n) =>
    fillPot(h, stamp(n + 1), potId(id), { cash: cad(cash), card: cad(card) }, 'outside'),
  )
  return openBook(h, entries)
}

/** Appends what `make` makes of the book so far, one after another. */
export function grow(book: Book, ...make: ((book: Book) => Entry)[]): Book {
  return make.reduce((b, m) => append(b, m(b)), book)
}

export const one = (id: string, amount: string) => ({
  shop: 'corvid.example',
  lines: [{ pot: potId(id), amount: cad(amount) }],
})
