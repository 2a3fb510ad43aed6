import { type Money, ofMinor, toDecimal } from '../money/money.ts'
import type { Book } from './book.ts'
import { BookError } from './book-error.ts'
import type { OrderLine } from './entry.ts'
import { findPot } from './household.ts'
import type { PotId } from './ids.ts'
import type { OrderState } from './order-state.ts'
import { joinLines, spread, sumOf } from './spread.ts'

/**
 * The pots that bear a charge or get a refund as the caller said it: by lines of its own, or by the items it is for.
 * Null where neither is said.
 *
 * @throws BookError `bad-split`, `unknown-pot`, `currency-mismatch`, `bad-amount`
 */
export function ownLines(
  book: Book,
  state: OrderState,
  amount: Money,
  how: {
    readonly lines?: readonly { readonly pot: PotId; readonly amount: Money }[]
    readonly items?: readonly number[]
  },
): OrderLine[] | null {
  if (how.lines) {
    const lines = joinLines(
      how.lines.map(({ pot, amount: part }) => {
        findPot(book.household, pot)
        if (part.currency !== amount.currency || part.minor < 0) {
          throw new BookError('bad-split', `${toDecimal(part)} ${part.currency} cannot be a part. Give zero or more.`)
        }
        return { pot, amount: part.minor }
      }),
    )
    if (sumOf(lines) !== amount.minor) {
      const parts = toDecimal(ofMinor(amount.currency, sumOf(lines)))
      throw new BookError(
        'bad-split',
        `The pots' parts come to ${parts}, not to ${toDecimal(amount)}. Mend one of them.`,
      )
    }
    return lines
  }
  if (!how.items || how.items.length === 0) return null
  const shares = joinLines(
    how.items.map((place) => {
      const item = state.details.items?.[place]
      if (!item) throw new BookError('bad-split', `This order has no item ${place + 1}. Choose from its own items.`)
      return { pot: item.pot, amount: item.amount }
    }),
  )
  return spread(
    book.household.currency,
    amount.minor,
    shares.some((s) => s.amount > 0) ? shares : shares.map((s) => ({ ...s, amount: 1 })),
  )
}

/**
 * What each item of an order costs its pot, with its part of shipping, tax and the rest, in the household's currency. An
 * order that was not split by item has none.
 */
export function itemCosts(book: Book, state: OrderState): Money[] {
  const items = state.details.items ?? []
  const costs = items.map(() => ofMinor(book.household.currency, 0))
  for (const { pot, tagged, charged } of state.parts) {
    const places = items.map((item, n) => ({ item, n })).filter(({ item }) => item.pot === pot)
    if (places.length === 0) continue
    const worth = places.map(({ item }) => item.amount)
    const weights = worth.some((w) => w > 0) ? worth : worth.map(() => 1)
    const lines = spread(
      book.household.currency,
      charged || tagged,
      weights.map((w) => ({ pot, amount: w })),
    )
    for (const [k, { n }] of places.entries()) costs[n] = ofMinor(book.household.currency, lines[k]?.amount ?? 0)
  }
  return costs
}
