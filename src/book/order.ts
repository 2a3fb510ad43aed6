import type { Money } from '../money/money.ts'
import type { Book } from './book.ts'
import { BookError } from './book-error.ts'
import type { AdjustEntry, OrderEntry, OrderLine, Posting, PurposeAccount, Stamp } from './entry.ts'
import { findPot } from './household.ts'
import type { OrderId, PotId } from './ids.ts'
import type { OrderDetails } from './order-details.ts'
import { orderState } from './order-state.ts'
import { entryBase, takeAmount } from './posting.ts'

/** What is about to be bought, and from which pots. The lines sum to what the card will be charged. */
export interface Purchase {
  /** Host name of the shop, without `www.`. */
  readonly shop: string
  readonly lines: readonly { readonly pot: PotId; readonly amount: Money }[]
  /** An order tagged before whose total or pots changed: its present hold is replaced, not doubled. */
  readonly order?: OrderId
  /** What else the entry is to keep: items, another currency, a margin, instalments. `purchaseOf` makes it. */
  readonly details?: OrderDetails
}

/**
 * The entry that holds an order's money in its pots. It does not ask whether the pots allow it: `tagOrder` does.
 *
 * @throws BookError `bad-lines`, `unknown-pot`, `archived-pot`, `currency-mismatch`, `bad-amount`, `zero-order`
 */
export function holdOrder(
  book: Book,
  stamp: Stamp,
  order: OrderId,
  purchase: Purchase,
  goOnReason?: string,
): OrderEntry {
  const lines = takeLines(book, purchase)
  refuseZero(purchase, lines)
  const base = entryBase(stamp, holdPostings(lines.map((l) => [l.pot, l.amount] as const)), [])
  return { ...base, kind: 'order', order, shop: purchase.shop, lines, ...extras(purchase, goOnReason) }
}

/**
 * The entry that changes a tagged order's total or pots by posting the difference.
 *
 * @throws BookError what `holdOrder` throws, `unknown-order`, `order-already-charged`
 */
export function adjustOrder(
  book: Book,
  stamp: Stamp,
  order: OrderId,
  purchase: Purchase,
  goOnReason?: string,
): AdjustEntry {
  const state = orderState(book, order)
  if (state.parts.some((p) => p.charged > 0 || p.held !== p.tagged)) {
    throw new BookError(
      'order-already-charged',
      'The card has already charged this order. Tag what is new as its own order.',
    )
  }
  const lines = takeLines(book, purchase)
  refuseZero(purchase, lines)
  const change = new Map<PotId, number>(state.parts.map((p) => [p.pot, -p.held]))
  for (const line of lines) change.set(line.pot, (change.get(line.pot) ?? 0) + line.amount)
  return {
    ...entryBase(stamp, holdPostings([...change]), []),
    kind: 'adjust',
    order,
    lines,
    ...extras(purchase, goOnReason),
  }
}

/**
 * A purchase's lines for the book, one per pot.
 *
 * @throws BookError `bad-lines` (none), `unknown-pot`, `archived-pot`, `currency-mismatch`, `bad-amount`
 */
export function takeLines(book: Book, purchase: Purchase): OrderLine[] {
  const sums = new Map<PotId, number>()
  for (const { pot, amount } of purchase.lines) {
    const found = findPot(book.household, pot)
    if (found.archived) {
      throw new BookError('archived-pot', `${found.name} is archived. Choose another pot, or bring it back.`)
    }
    sums.set(pot, (sums.get(pot) ?? 0) + takeAmount(book.household, amount))
  }
  if (sums.size === 0) throw new BookError('bad-lines', 'The order has no pot. Choose the pot that pays for it.')
  return [...sums].map(([pot, amount]) => ({ pot, amount }))
}

/** An order of nothing holds nothing: no pot pays for it, and nothing would ever be charged. */
function refuseZero(purchase: Purchase, lines: readonly OrderLine[]): void {
  if (purchase.details?.instalments || lines.some((l) => l.amount > 0)) return
  throw new BookError('zero-order', 'This order costs the card nothing, so no pot has to pay for it.')
}

/** Postings that raise or lower what pots hold. */
export function holdPostings(changes: readonly (readonly [PotId, number])[]): Posting<PurposeAccount>[] {
  const sum = changes.reduce((total, [, amount]) => total + amount, 0)
  return [
    ...changes.map(([pot, amount]) => ({ account: `held:${pot}` as const, amount })),
    { account: 'on-order' as const, amount: -sum },
  ]
}

function extras(
  { details }: Purchase,
  goOnReason: string | undefined,
): { goOnReason?: string; details?: OrderDetails } {
  const reason = goOnReason?.trim()
  return { ...(reason ? { goOnReason: reason } : {}), ...(details ? { details } : {}) }
}
