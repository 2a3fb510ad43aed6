import { type Book, entriesOfOrder } from './book.ts'
import { BookError } from './book-error.ts'
import type { CalendarDate } from './calendar-date.ts'
import type { ReleaseReason } from './entry.ts'
import type { OrderId, PotId } from './ids.ts'
import type { OrderDetails } from './order-details.ts'

/** One pot's part of an order, in minor units. */
export interface OrderPart {
  readonly pot: PotId
  /** What was tagged to the pot, after adjustments. */
  readonly tagged: number
  /** What is still held of it. */
  readonly held: number
  readonly charged: number
  readonly refunded: number
  /** Money back that is expected and not posted yet. */
  readonly expected: number
}

/** An order as the book has it now. */
export interface OrderState {
  readonly order: OrderId
  readonly shop: string
  readonly date: CalendarDate
  /** In minor units: the sum of the parts' `tagged`. */
  readonly total: number
  readonly parts: readonly OrderPart[]
  /** The shop's order number, where a confirmation said one. */
  readonly number: string | null
  /** Whether it is known that the shop took it: by its confirmation, or because the card was charged. */
  readonly isConfirmed: boolean
  /** Why the rest of its hold was let go, where it was. */
  readonly released: ReleaseReason | 'released' | null
  /** The day of its latest step. */
  readonly lastStep: CalendarDate
  /** What its latest tag kept beside the lines. */
  readonly details: OrderDetails
  /** Which instalments were held after the order, counted from 0. */
  readonly heldParts: readonly number[]
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

type Counting = { -readonly [K in keyof OrderPart]: OrderPart[K] }

/** Like `orderState`, but null when there is no such order or its tag was taken back. */
export function findOrder(book: Book, order: OrderId): OrderState | null {
  const entries = entriesOfOrder(book, order)
  const first = entries.find((e) => e.kind === 'order')
  if (first?.kind !== 'order') return null
  const parts = new Map<PotId, Counting>()
  const part = (pot: PotId): Counting => {
    const found = parts.get(pot) ?? { pot, tagged: 0, held: 0, charged: 0, refunded: 0, expected: 0 }
    parts.set(pot, found)
    return found
  }
  let number: string | null = null
  let isConfirmed = false
  let released: OrderState['released'] = null
  let details: OrderDetails = {}
  const heldParts: number[] = []
  for (const entry of entries) {
    switch (entry.kind) {
      case 'order':
      case 'adjust':
        details = entry.details ?? {}
        for (const p of parts.values()) p.tagged = 0
        for (const line of entry.lines) part(line.pot).tagged += line.amount
        break
      case 'confirm':
        isConfirmed = true
        number = entry.number ?? number
        if (entry.lines) {
          for (const p of parts.values()) p.tagged = 0
          for (const line of entry.lines) part(line.pot).tagged += line.amount
        }
        break
      case 'instalment':
        heldParts.push(entry.part)
        for (const line of entry.lines) part(line.pot).tagged += line.amount
        break
      case 'charge':
        isConfirmed = true
        for (const line of entry.lines) part(line.pot).charged += line.amount
        break
      case 'release':
        released = entry.why ?? 'released'
        break
      case 'expect':
        for (const line of entry.lines) part(line.pot).expected += line.amount
        break
      case 'refund':
        for (const line of entry.lines) {
          const p = part(line.pot)
          p.refunded += line.amount
          p.expected = Math.max(0, p.expected - line.amount)
        }
        break
      default:
    }
    for (const { account, amount } of entry.postings) {
      for (const pot of book.household.pots) if (account === `held:${pot.id}`) part(pot.id).held += amount
    }
  }
  const kept = [...parts.values()].filter((p) => p.tagged || p.held || p.charged || p.refunded || p.expected)
  return {
    order,
    shop: first.shop,
    date: first.date,
    total: kept.reduce((sum, p) => sum + p.tagged, 0),
    parts: kept,
    number,
    isConfirmed,
    released,
    lastStep: entries.at(-1)?.date ?? first.date,
    details,
    heldParts,
  }
}

/** An order's figures over all its pots, in minor units. */
export function orderSums(state: OrderState): Omit<OrderPart, 'pot'> {
  const sum = (key: 'tagged' | 'held' | 'charged' | 'refunded' | 'expected'): number =>
    state.parts.reduce((all, p) => all + p[key], 0)
  return {
    tagged: sum('tagged'),
    held: sum('held'),
    charged: sum('charged'),
    refunded: sum('refunded'),
    expected: sum('expected'),
  }
}
