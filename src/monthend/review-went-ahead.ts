import { type Book, entriesOf, isReversed } from '../book/book.ts'
import type { OrderEntry } from '../book/entry.ts'
import type { OrderId } from '../book/ids.ts'
import type { Month } from '../book/month.ts'
import { ofMinor } from '../money/money.ts'
import type { WentAhead } from './review.ts'

/** A month's orders and changes of orders that went on against a warning, with the reasons given, by day. */
export function wentAhead(book: Book, month: Month): WentAhead[] {
  const orders = new Map<OrderId, OrderEntry>()
  const found: WentAhead[] = []
  for (const entry of entriesOf(book)) {
    if (entry.kind !== 'order' && entry.kind !== 'adjust') continue
    if (entry.kind === 'order') orders.set(entry.order, entry)
    const isIn = entry.date >= month.from && entry.date <= month.to
    if (!isIn || entry.goOnReason === undefined || isReversed(book, entry.id)) continue
    found.push({
      entry: entry.id,
      order: entry.order,
      date: entry.date,
      shop: orders.get(entry.order)?.shop ?? '',
      amount: ofMinor(
        book.household.currency,
        entry.lines.reduce((sum, l) => sum + l.amount, 0),
      ),
      pots: entry.lines.map((l) => l.pot),
      reason: entry.goOnReason,
    })
  }
  return found.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
}
