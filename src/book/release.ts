import type { Book } from './book.ts'
import { BookError } from './book-error.ts'
import type { ReleaseEntry, ReleaseReason, Stamp } from './entry.ts'
import type { OrderId } from './ids.ts'
import { holdPostings } from './order.ts'
import { orderState } from './order-state.ts'
import { entryBase } from './posting.ts'

/**
 * Lets the rest of an order's hold go. An order may be said to be complete although nothing is held any more; otherwise
 * there must be something to let go.
 *
 * @throws BookError `unknown-order`, `bad-amount` when nothing is held
 */
export function releaseOrder(book: Book, stamp: Stamp, order: OrderId, why?: ReleaseReason): ReleaseEntry {
  const held = orderState(book, order).parts.filter((p) => p.held !== 0)
  if (held.length === 0 && why !== 'complete') {
    throw new BookError('bad-amount', 'Nothing is held for this order any more.')
  }
  const base = entryBase(stamp, holdPostings(held.map((p) => [p.pot, -p.held] as const)), [])
  return { ...base, kind: 'release', order, ...(why ? { why } : {}) }
}
