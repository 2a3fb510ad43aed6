import { allocate } from '../money/allocate.ts'
import { type Money, ofMinor } from '../money/money.ts'
import type { Book } from './book.ts'
import { BookError } from './book-error.ts'
import type { ChargeEntry, OrderLine, RefundEntry, ReleaseEntry, Stamp } from './entry.ts'
import { findAccount } from './household.ts'
import type { AccountId, OrderId, PotId } from './ids.ts'
import { type OrderState, orderState } from './order-state.ts'
import { entryBase, placeOf, takeAmount } from './posting.ts'

/**
 * What the card posted against an order. Each pot's hold goes down by its part of the charge, as far as it reaches; an
 * overrun is taken from the pot's card side and does not use another pot's hold. Without lines of its own the charge is
 * spread over the order's pots pro rata to what was tagged, by largest remainder.
 *
 * @throws BookError `unknown-order`, `unknown-account`, `currency-mismatch`, `bad-amount`
 */
export function chargeOrder(book: Book, stamp: Stamp, order: OrderId, amount: Money, account?: AccountId): ChargeEntry {
  const state = orderState(book, order)
  const lines = spread(book, state, amount)
  const charged = takeAmount(book.household, amount)
  const holds = lines.map((line) => {
    const part = state.parts.find((p) => p.pot === line.pot)
    return { pot: line.pot, amount: Math.min(line.amount, part?.held ?? 0) }
  })
  const base = entryBase(
    stamp,
    [
      ...lines.map((l) => ({ account: `card:${l.pot}` as const, amount: -l.amount })),
      { account: 'outside', amount: charged },
      ...holds.map((h) => ({ account: `held:${h.pot}` as const, amount: -h.amount })),
      { account: 'on-order', amount: holds.reduce((sum, h) => sum + h.amount, 0) },
    ],
    [
      { account: placeOf(findAccount(book.household, account)), amount: -charged },
      { account: 'world', amount: charged },
    ],
  )
  return { ...base, kind: 'charge', order, lines }
}

/** Lets the rest of an order's hold go. @throws BookError `unknown-order`, `bad-amount` when nothing is held */
export function releaseOrder(book: Book, stamp: Stamp, order: OrderId): ReleaseEntry {
  const held = orderState(book, order).parts.filter((p) => p.held !== 0)
  if (held.length === 0) throw new BookError('bad-amount', 'Nothing is held for this order any more.')
  const base = entryBase(
    stamp,
    [
      ...held.map((p) => ({ account: `held:${p.pot}` as const, amount: -p.held })),
      { account: 'on-order', amount: held.reduce((sum, p) => sum + p.held, 0) },
    ],
    [],
  )
  return { ...base, kind: 'release', order }
}

/**
 * Money back from a shop, to the card sides of the pots the order was charged to, pro rata to what each paid.
 *
 * @throws BookError `unknown-order`, `unknown-account`, `currency-mismatch`, `bad-amount` (more than was charged)
 */
export function refundOrder(book: Book, stamp: Stamp, order: OrderId, amount: Money, account?: AccountId): RefundEntry {
  const state = orderState(book, order)
  const refunded = takeAmount(book.household, amount)
  const open = state.parts.map((p) => ({ pot: p.pot, amount: p.charged - p.refunded })).filter((p) => p.amount > 0)
  if (refunded > open.reduce((sum, p) => sum + p.amount, 0)) {
    throw new BookError('bad-amount', 'The refund is larger than what this order was charged. Check the amount.')
  }
  const lines = prorate(amount, open)
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
  return { ...base, kind: 'refund', order, lines }
}

function spread(book: Book, state: OrderState, amount: Money): OrderLine[] {
  takeAmount(book.household, amount)
  const parts = state.parts.filter((p) => p.tagged > 0)
  const shares = parts.length > 0 ? parts : state.parts
  return prorate(
    amount,
    shares.map((p) => ({ pot: p.pot, amount: p.tagged || 1 })),
  )
}

function prorate(amount: Money, shares: readonly { pot: PotId; amount: number }[]): OrderLine[] {
  if (shares.length === 0) return []
  const parts = allocate(
    ofMinor(amount.currency, amount.minor),
    shares.map((s) => s.amount),
  )
  return shares.map((s, i) => ({ pot: s.pot, amount: parts[i]?.minor ?? 0 }))
}
