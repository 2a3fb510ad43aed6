import { type Money, ofMinor } from '../money/money.ts'
import { type Book, entriesOfOrder } from './book.ts'
import type { ConfirmEntry, Stamp } from './entry.ts'
import { convert } from './foreign.ts'
import type { OrderId } from './ids.ts'
import { holdPostings } from './order.ts'
import { orderEntries } from './order-index.ts'
import { type OrderState, orderState, orderSums } from './order-state.ts'
import { entryBase, takeAmount } from './posting.ts'
import { spread } from './spread.ts'

/** What a shop's confirmation said. Both may be missing: then the person only said that the order went through. */
export interface Confirmation {
  readonly number?: string
  /** Read from the shop's page, not said by the person. */
  readonly from?: 'page'
  /** The final total, in the currency the shop asked. */
  readonly total?: Money
}

/** The outcome of confirming an order: an entry to append, or nothing to post. */
export type ConfirmAnswer =
  | {
      readonly kind: 'confirmed'
      readonly entry: ConfirmEntry
      /** How much more (or less) is held now than before; zero where the total is the tagged one. */
      readonly change: Money
    }
  /** The very same was confirmed before: one order, nothing to post. */
  | { readonly kind: 'unchanged' }
  /** Another order of this shop bears the number: the page was shown again, and is that order's. */
  | { readonly kind: 'other-order'; readonly order: OrderId }

/**
 * Notes that an order went through, with its number and final total. While nothing is charged, another total than the
 * tagged one changes the hold by the difference, pro rata over its pots; a margin for an estimate stays on top.
 *
 * @throws BookError `unknown-order`, `currency-mismatch`, `bad-amount`
 */
export function confirmOrder(book: Book, stamp: Stamp, order: OrderId, said: Confirmation = {}): ConfirmAnswer {
  const state = orderState(book, order)
  const number = said.number?.trim() ?? ''
  const known = number === '' ? null : orderNumbered(book, state.shop, number)
  if (known !== null && known !== order) return { kind: 'other-order', order: known }
  const { currency } = book.household
  const change = said.total ? changeTo(book, state, said.total) : 0
  const isNew = entriesOfOrder(book, order).every((e) => e.kind !== 'confirm') || (number !== '' && known === null)
  if (!isNew && change === 0) return { kind: 'unchanged' }
  const fromPage = said.from ? { from: said.from } : {}
  const head = { kind: 'confirm', order, ...(number === '' ? {} : { number }), ...fromPage } as const
  if (change === 0)
    return { kind: 'confirmed', entry: { ...entryBase(stamp, [], []), ...head }, change: ofMinor(currency, 0) }
  const held = state.parts.filter((p) => p.held > 0).map((p) => ({ pot: p.pot, amount: p.held }))
  const lines = spread(currency, state.total + change, held)
  const moves = lines.map((l, n) => [l.pot, l.amount - (held[n]?.amount ?? 0)] as const)
  const entry = { ...entryBase(stamp, holdPostings(moves), []), ...head, lines }
  return { kind: 'confirmed', entry, change: ofMinor(currency, change) }
}

/** The order of a shop that a confirmation gave this number, or null. */
export function orderNumbered(book: Book, shop: string, number: string): OrderId | null {
  for (const entry of orderEntries(book)) {
    if (entry.shop !== shop) continue
    const isIt = entriesOfOrder(book, entry.order).some((e) => e.kind === 'confirm' && e.number === number)
    if (isIt) return entry.order
  }
  return null
}

/** By how much the hold must change to be for this final total; 0 where the card has charged already. */
function changeTo(book: Book, state: OrderState, total: Money): number {
  const { foreign, margin = 0, instalments } = state.details
  const { held, charged } = orderSums(state)
  const final =
    foreign && total.currency === foreign.currency
      ? convert(total, book.household.currency, foreign, foreign.fee).total.minor
      : takeAmount(book.household, total)
  const isWhole = charged === 0 && held === state.total && held > 0 && instalments?.reserve !== 'by-part'
  return isWhole ? final + margin - state.total : 0
}
