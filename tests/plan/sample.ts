import {
  append,
  type Book,
  type CalendarDate,
  calendarDate,
  chargeOrder,
  type Entry,
  fillPot,
  type Household,
  holdOrder,
  openBook,
  orderId,
  type PaySchedule,
  type Pot,
  potId,
  receivePay,
  spendFrom,
} from '../../src/index.ts'
import { cad, household, stamp, uuid } from '../book/sample.ts'

export const day: (text: string) => CalendarDate = calendarDate

/** Paid every second Friday; the example of the issue lies between its pays. */
export const fortnightly: PaySchedule = { rhythm: 'every-two-weeks', first: day('2026-01-02') }

export const monthly: PaySchedule = { rhythm: 'monthly', first: day('2026-01-15'), day: 15 }

/** A household of one earner. */
export function paid(
  pots: readonly Pot[],
  schedules: readonly PaySchedule[],
  changes: Partial<Household> = {},
): Household {
  return household(pots, { earners: [{ id: 'ingrid', name: 'Ingrid', pay: 72_400, schedules }], ...changes })
}

/** What happened, one line each: a day, what, a pot, an amount, a side. */
export type Happened =
  | readonly [date: string, what: 'fill', pot: string, cash: string, card: string]
  | readonly [date: string, what: 'cash' | 'card' | 'order', pot: string, amount: string]
  | readonly [date: string, what: 'pay', amount: string]

/** A book in which these things happened, in this order. */
export function bookOf(h: Household, happened: readonly Happened[]): Book {
  let book = openBook(h, [])
  let n = 0
  const post = (make: (at: ReturnType<typeof stamp>) => Entry, date: string): void => {
    n += 1
    book = append(book, make(stamp(n, day(date))))
  }
  for (const one of happened) {
    const [date] = one
    switch (one[1]) {
      case 'pay':
        post((at) => receivePay(h, at, cad(one[2])), date)
        break
      case 'fill':
        post((at) => fillPot(h, at, potId(one[2]), { cash: cad(one[3]), card: cad(one[4]) }, 'outside'), date)
        break
      case 'cash':
      case 'card':
        post(
          (at) => spendFrom(h, at, potId(one[2]), one[1] === 'cash' ? 'cash' : 'card', cad(one[3]), 'something'),
          date,
        )
        break
      case 'order': {
        const order = orderId(uuid(900_000 + n))
        const lines = [{ pot: potId(one[2]), amount: cad(one[3]) }]
        post((at) => holdOrder(book, at, order, { shop: 'corvid.example', lines }), date)
        post((at) => chargeOrder(book, at, order, cad(one[3])), date)
      }
    }
  }
  return book
}
