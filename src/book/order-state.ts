import { type Book, entriesOfOrder } from './book.ts'
import { BookError } from './book-error.ts'
import type { CalendarDate } from './calendar-date.ts'
import type { OrderId, PotId } from './ids.ts'

/** One pot's part of an order, in minor units. */
export interface OrderPart {
  readonly pot: PotId
  /** What was tagged to the pot, after adjustments. */
  readonly tagged: number
  /** What is still held of it. */
  readonly held: number
  readonly charged: number
  readonly refunded: number
}

/** An order as the book has it now. */
export interface OrderState {
  readonly order: OrderId
  readonly shop: string
  readonly date: CalendarDate
  /** In minor units: the sum of the parts' `tagged`. */
  readonly total: number
  readonly parts: readonly OrderPart[]
}

/**
 * Follows an order through its entries. An order whose tag was taken back is unknown.
 *
 * @throws BookError `unknown-order`
 */
export function orderState(book: Book, order: OrderId): OrderState {
  const state = findOrder(book, order)
  if (!state) throw new BookError('unknown-order', `There is no order ${order} in the book. Tag it to a pot first.`)
  return state
}

/** Like `orderState`, but null when there is no such order or its tag was taken back. */
export function findOrder(book: Book, order: OrderId): OrderState | null {
  const entries = entriesOfOrder(book, order)
  const first = entries.find((e) => e.kind === 'order')
  if (first?.kind !== 'order') return null
  const parts = new Map<PotId, { pot: PotId; tagged: number; held: number; charged: number; refunded: number }>()
  const part = (pot: PotId) => {
    const found = parts.get(pot) ?? { pot, tagged: 0, held: 0, charged: 0, refunded: 0 }
    parts.set(pot, found)
    return found
  }
  for (const entry of entries) {
    if (entry.kind === 'order' || entry.kind === 'adjust') {
      for (const p of parts.values()) p.tagged = 0
      for (const line of entry.lines) part(line.pot).tagged += line.amount
    }
    if (entry.kind === 'charge') for (const line of entry.lines) part(line.pot).charged += line.amount
    if (entry.kind === 'refund') for (const line of entry.lines) part(line.pot).refunded += line.amount
    for (const { account, amount } of entry.postings) {
      for (const pot of book.household.pots) if (account === `held:${pot.id}`) part(pot.id).held += amount
    }
  }
  const kept = [...parts.values()].filter((p) => p.tagged || p.held || p.charged || p.refunded)
  return {
    order,
    shop: first.shop,
    date: first.date,
    total: kept.reduce((sum, p) => sum + p.tagged, 0),
    parts: kept,
  }
}
