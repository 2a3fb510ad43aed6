import { type Book, entriesOf } from './book.ts'
import type { Entry } from './entry.ts'
import type { OrderId } from './ids.ts'
import { instalmentsOf } from './instalment.ts'
import { findOrder, type OrderState } from './order-state.ts'

/**
 * The entries among the given ones that later entries are likely to name, so that a book opened at its latest entries
 * (`openBookAt`) keeps them at hand: every step of an order that still holds money, waits for money back or has
 * instalments to come, and the closing and opening of months. Reversed steps come along with their reversals, which say that they are gone.
 *
 * @param entries those that are about to leave, in their order; all of this book
 */
export function toCarry(book: Book, entries: readonly Entry[]): Entry[] {
  const open = new Map<OrderId, boolean>()
  const isOpen = (order: OrderId): boolean => {
    const known = open.get(order) ?? isToGoOn(findOrder(book, order))
    open.set(order, known)
    return known
  }
  const reversed = new Map<string, Entry>()
  for (const entry of entriesOf(book)) if (entry.kind === 'reversal') reversed.set(entry.reverses, entry)
  const kept = new Set<Entry>()
  for (const entry of entries) {
    const isNamed = entry.kind === 'close' || entry.kind === 'reopen' || ('order' in entry && isOpen(entry.order))
    if (!isNamed) continue
    kept.add(entry)
    const reversal = reversed.get(entry.id)
    if (reversal) kept.add(reversal)
  }
  // A reversal that stays in the window is at hand there already.
  return entries.filter((entry) => kept.has(entry))
}

function isToGoOn(state: OrderState | null): boolean {
  if (!state) return false
  const isWaiting = state.parts.some((part) => part.held !== 0 || part.expected > 0)
  return isWaiting || (state.released === null && instalmentsOf(state).some((part) => part.state === 'to-come'))
}
