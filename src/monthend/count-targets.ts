import { potBalance } from '../book/balances.ts'
import type { Book } from '../book/book.ts'
import type { SettleEntry } from '../book/entry.ts'
import { ofMinor } from '../money/money.ts'
import type { EnvelopeTarget } from './settle.ts'

/**
 * What each envelope should hold after settling: the pot's wish for its two sides, from what it has left.
 *
 * - A pot kept in notes only, or whose fills all go to cash, holds all it has left.
 * - A pot without a cash side, or whose fills all go to the card, holds nothing.
 * - Every other pot keeps its notes, less those that online orders have spoken for.
 *
 * A pot below zero holds nothing. Targets are proposals: the person may set others before `settle` is asked.
 *
 * @param ticks moves made of this settling already: an envelope that has given notes must not want less for it
 * @example settle(counts, settleTargets(book))
 */
export function settleTargets(book: Book, ticks: readonly SettleEntry[] = []): EnvelopeTarget[] {
  const { household } = book
  return household.pots.map(({ id, sides, plan }) => {
    const { cash, left } = potBalance(book, id)
    const moved = ticks
      .flatMap((tick) => tick.postings)
      .reduce((sum, p) => sum + (p.account === `cash:${id}` ? p.amount : 0), 0)
    const most = Math.max(0, left.minor)
    const isCash = sides === 'cash' || (sides === 'both' && plan?.split === 'cash')
    const isCard = sides === 'card' || (sides === 'both' && plan?.split === 'card')
    const wish = isCash ? most : isCard ? 0 : Math.max(0, Math.min(cash.minor - moved, most))
    return { pot: id, cash: ofMinor(household.currency, wish) }
  })
}
