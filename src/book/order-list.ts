import { type Book, isReversed } from './book.ts'
import { addDays, type CalendarDate } from './calendar-date.ts'
import { instalmentsOf } from './instalment.ts'
import { orderEntries } from './order-index.ts'
import { findOrder, type OrderState, orderSums } from './order-state.ts'
import { HOLD_DAYS } from './ordering.ts'

/**
 * What an order waits for: to be known as placed, to be charged, to be charged the rest, a hold that has lapsed, an
 * instalment whose day has come or is to come, money back. None of these: it is past.
 */
export type OrderSign =
  | 'unconfirmed'
  | 'held'
  | 'part-charged'
  | 'lapsed'
  | 'instalment-due'
  | 'instalment-ahead'
  | 'refund-expected'

/** Every order that stands, the latest day first; of one day, the one entered last. */
export function allOrders(book: Book): OrderState[] {
  return orderEntries(book)
    .filter((entry) => !isReversed(book, entry.id))
    .map((entry) => findOrder(book, entry.order))
    .filter((state) => state !== null)
    .reverse()
    .sort((a, b) => (a.date < b.date ? 1 : a.date > b.date ? -1 : 0))
}

/** What an order waits for on a day. */
export function orderSigns(book: Book, state: OrderState, today: CalendarDate): OrderSign[] {
  const { held, charged, expected } = orderSums(state)
  const signs: OrderSign[] = []
  if (held > 0 && !state.isConfirmed) signs.push('unconfirmed')
  if (held > 0) signs.push(hasLapsed(book, state, today) ? 'lapsed' : charged > 0 ? 'part-charged' : 'held')
  if (state.released === null) {
    const ahead = instalmentsOf(state).filter((p) => p.state === 'to-come')
    if (ahead.some((p) => p.date <= today)) signs.push('instalment-due')
    else if (ahead.length > 0) signs.push('instalment-ahead')
  }
  if (expected > 0) signs.push('refund-expected')
  return signs
}

/**
 * Orders whose hold stands longer than authorisations commonly do (`OrderRules.holdDays`, else `HOLD_DAYS` after the
 * latest step): to be asked about. Nothing is let go by itself.
 */
export function lapsedHolds(book: Book, today: CalendarDate): OrderState[] {
  return allOrders(book).filter((state) => orderSums(state).held > 0 && hasLapsed(book, state, today))
}

/** The last day on which an order's hold is taken to stand. */
export function holdsUntil(book: Book, state: OrderState): CalendarDate {
  return addDays(state.lastStep, book.household.ordering?.holdDays ?? HOLD_DAYS)
}

function hasLapsed(book: Book, state: OrderState, today: CalendarDate): boolean {
  return today > holdsUntil(book, state)
}
