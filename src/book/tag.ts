import { assess, type Verdict } from './assess.ts'
import type { Book } from './book.ts'
import type { AdjustEntry, OrderEntry, Stamp } from './entry.ts'
import type { OrderId } from './ids.ts'
import { adjustOrder, holdOrder, type Purchase, takeLines } from './order.ts'
import { findOrder } from './order-state.ts'

/** The outcome of asking for a tag: an entry to append, or none and why. */
export type TagAnswer =
  | { readonly kind: 'tagged'; readonly verdict: Verdict; readonly entry: OrderEntry | AdjustEntry }
  /** The very same tag stands already: nothing to post. */
  | { readonly kind: 'unchanged'; readonly verdict: Verdict }
  /** The verdict is *warn*: ask the person for a reason and try again with it. */
  | { readonly kind: 'needs-reason'; readonly verdict: Verdict }
  | { readonly kind: 'blocked'; readonly verdict: Verdict }

/**
 * Tags an order to its pots if they allow it. An order tagged before is adjusted by the difference. A *block* is never
 * tagged; a *warn* needs the reason why the person goes on.
 *
 * @throws BookError what `assess` and `adjustOrder` throw
 */
export function tagOrder(
  book: Book,
  stamp: Stamp,
  order: OrderId,
  purchase: Omit<Purchase, 'order'>,
  goOnReason?: string,
): TagAnswer {
  const standing = findOrder(book, order)
  const verdict = assess(book, standing ? { ...purchase, order } : purchase, stamp.date)
  if (standing) {
    const lines = takeLines(book, purchase)
    const same = standing.parts.every((p) => lines.some((l) => l.pot === p.pot && l.amount === p.tagged))
    if (same && lines.length === standing.parts.length) return { kind: 'unchanged', verdict }
  }
  if (verdict.outcome === 'block') return { kind: 'blocked', verdict }
  if (verdict.outcome === 'warn' && !goOnReason?.trim()) return { kind: 'needs-reason', verdict }
  const entry = standing
    ? adjustOrder(book, stamp, order, purchase, goOnReason)
    : holdOrder(book, stamp, order, purchase, goOnReason)
  return { kind: 'tagged', verdict, entry }
}
