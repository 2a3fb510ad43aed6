import { type Money, ofMinor } from '../money/money.ts'
import { type Book, balanceOf, sidesAt } from './book.ts'
import type { PotId } from './ids.ts'

/**
 * A pot's figures. `left` = cash + card - held is what the pot may still spend by any means; `spokenFor` =
 * max(0, held - card) are the notes online orders have already spent; `freeCash` = cash - spokenFor may be spent at a
 * counter (it is negative when more notes are spoken for than there are).
 */
export interface PotBalance {
  readonly cash: Money
  readonly card: Money
  readonly held: Money
  readonly left: Money
  readonly spokenFor: Money
  readonly freeCash: Money
}

/** Every pot's figures, in the household's order of pots. */
export function balances(book: Book): ReadonlyMap<PotId, PotBalance> {
  return new Map(
    book.household.pots.map((pot, place) => {
      const { cash, card, held } = sidesAt(book, place)
      return [pot.id, figures(book, cash, card, held)]
    }),
  )
}

/** One pot's figures. @throws BookError `unknown-pot` */
export function potBalance(book: Book, pot: PotId): PotBalance {
  return figures(book, balanceOf(book, `cash:${pot}`), balanceOf(book, `card:${pot}`), balanceOf(book, `held:${pot}`))
}

/** The figures that follow from a pot's three balances in minor units. */
export function figures(book: Book, cash: number, card: number, held: number): PotBalance {
  const { currency } = book.household
  // The book checked its currency and every amount when it took them in; this runs for every pot at every look.
  const of = (minor: number): Money => ({ currency, minor: minor + 0 })
  const spokenFor = Math.max(0, held - card)
  return {
    cash: of(cash),
    card: of(card),
    held: of(held),
    left: of(cash + card - held),
    spokenFor: of(spokenFor),
    freeCash: of(cash - spokenFor),
  }
}

/** Bank money that no pot has yet; negative when pots were filled with more than came in. */
export function unplaced(book: Book): Money {
  return ofMinor(book.household.currency, balanceOf(book, 'unplaced'))
}
