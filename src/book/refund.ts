import { type Money, ofMinor, toDecimal } from '../money/money.ts'
import type { Book } from './book.ts'
import { BookError } from './book-error.ts'
import type { ExpectEntry, OrderLine, RefundEntry, Stamp } from './entry.ts'
import { findAccount } from './household.ts'
import type { AccountId, OrderId, PotId } from './ids.ts'
import { type OrderState, orderState, orderSums } from './order-state.ts'
import { ownLines } from './own-lines.ts'
import { entryBase, placeOf, takeAmount } from './posting.ts'
import { spread, sumOf } from './spread.ts'

/** Which part of an order is refunded. */
export interface RefundHow {
  /** Places in the order's list of items. */
  readonly items?: readonly number[]
  /** What each pot gets back; they sum to the refund. */
  readonly lines?: readonly { readonly pot: PotId; readonly amount: Money }[]
}

/**
 * Money back from a shop, to the card sides of the pots it came from: by the items it is for, by lines, else to those
 * that expect it, else pro rata to what each paid. No pot gets back more than it paid.
 *
 * @throws BookError `unknown-order`, `unknown-account`, `currency-mismatch`, `bad-split`, `bad-amount` (zero, or more than
 *   was charged)
 */
export function refundOrder(
  book: Book,
  stamp: Stamp,
  order: OrderId,
  amount: Money,
  account?: AccountId,
  how: RefundHow = {},
): RefundEntry {
  const state = orderState(book, order)
  const lines = refundLines(book, state, amount, how)
  const refunded = sumOf(lines)
  const base = entryBase(
    stamp,
    [
      ...lines.map((l) => ({ account: `card:${l.pot}` as const, amount: l.amount })),
      { account: 'outside', amount: -refunded },
    ],
    [
      { account: placeOf(findAccount(book.household, account)), amount: refunded },
      { account: 'world', amount: -refunded },
    ],
  )
  return { ...base, kind: 'refund', order, lines, ...itemsOf(how) }
}

/**
 * A refund the shop announced. It is listed and changes no figure: money that has not come cannot be spent.
 *
 * @throws BookError what `refundOrder` throws; `bad-amount` also for more than is still to come back at most
 */
export function expectRefund(
  book: Book,
  stamp: Stamp,
  order: OrderId,
  amount: Money,
  how: RefundHow = {},
): ExpectEntry {
  const state = orderState(book, order)
  // A return may be announced before the card is charged: what is held will be charged, and can come back.
  const lines = refundLines(book, state, amount, how, (p) => p.charged + p.held - p.refunded - p.expected)
  return { ...entryBase(stamp, [], []), kind: 'expect', order, lines, ...itemsOf(how) }
}

function refundLines(
  book: Book,
  state: OrderState,
  amount: Money,
  how: RefundHow,
  roomOf = (p: OrderState['parts'][number]): number => p.charged - p.refunded,
): OrderLine[] {
  const wanted = takeAmount(book.household, amount)
  const rooms = state.parts.map((p) => ({ pot: p.pot, amount: Math.max(0, roomOf(p)) })).filter((p) => p.amount > 0)
  if (wanted > sumOf(rooms)) {
    const most = toDecimal(ofMinor(amount.currency, sumOf(rooms)))
    throw new BookError(
      'bad-amount',
      `The refund of ${toDecimal(amount)} is larger than the ${most} this order can still get back. Check the amount.`,
    )
  }
  if (wanted === 0) throw new BookError('bad-amount', 'A refund of nothing changes nothing. Enter an amount.')
  const own = ownLines(book, state, amount, how)
  const { expected } = orderSums(state)
  const awaited = state.parts.filter((p) => p.expected > 0).map((p) => ({ pot: p.pot, amount: p.expected }))
  const { currency } = book.household
  const lines = own ?? spread(currency, wanted, expected >= wanted ? awaited : rooms)
  if (how.lines) {
    const over = lines.find((l) => l.amount > (rooms.find((r) => r.pot === l.pot)?.amount ?? 0))
    if (over)
      throw new BookError('bad-split', 'A pot cannot get back more than it paid for this order. Mend the parts.')
  }
  return fitted(book, lines, rooms).filter((l) => l.amount > 0)
}

/** Lines cut to what each pot has room for; what is cut goes to the pots that still have room. */
function fitted(book: Book, lines: readonly OrderLine[], rooms: readonly OrderLine[]): OrderLine[] {
  const roomOf = (pot: PotId): number => rooms.find((r) => r.pot === pot)?.amount ?? 0
  const cut = lines.map((l) => ({ pot: l.pot, amount: Math.min(l.amount, roomOf(l.pot)) }))
  const over = sumOf(lines) - sumOf(cut)
  if (over === 0) return cut
  const free = rooms.map((r) => ({ pot: r.pot, amount: r.amount - (cut.find((l) => l.pot === r.pot)?.amount ?? 0) }))
  const more = spread(book.household.currency, over, free)
  return more.map((m) => ({ pot: m.pot, amount: m.amount + (cut.find((l) => l.pot === m.pot)?.amount ?? 0) }))
}

function itemsOf(how: RefundHow): { items?: readonly number[] } {
  return how.items && how.items.length > 0 ? { items: how.items } : {}
}
