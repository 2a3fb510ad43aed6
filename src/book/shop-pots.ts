import { type Book, entriesOf, isReversed } from './book.ts'
import type { PotId } from './ids.ts'

/** How a pot stands to a shop. */
export interface ShopPot {
  readonly pot: PotId
  /** Orders of this shop that went to the pot and stand. */
  readonly usedHere: number
}

/**
 * The pots that can be chosen for an order at a shop, likeliest first: those this shop's orders went to (later orders
 * weigh more: each earlier one half of the next), then the household's own order. Archived pots are left out, pots kept
 * in notes only come last.
 */
export function potsForShop(book: Book, shop: string): ShopPot[] {
  const weight = new Map<PotId, number>()
  const used = new Map<PotId, number>()
  for (const entry of entriesOf(book)) {
    if (entry.kind !== 'order' || entry.shop !== shop || isReversed(book, entry.id)) continue
    for (const [pot, w] of weight) weight.set(pot, w / 2)
    for (const { pot } of entry.lines) {
      weight.set(pot, (weight.get(pot) ?? 0) + 1)
      used.set(pot, (used.get(pot) ?? 0) + 1)
    }
  }
  const rank = (pot: { id: PotId; sides: string }): number => (pot.sides === 'cash' ? -1 : (weight.get(pot.id) ?? 0))
  return book.household.pots
    .filter((pot) => !pot.archived)
    .map((pot) => ({ pot, rank: rank(pot) }))
    .sort((a, b) => b.rank - a.rank)
    .map(({ pot }) => ({ pot: pot.id, usedHere: used.get(pot.id) ?? 0 }))
}
