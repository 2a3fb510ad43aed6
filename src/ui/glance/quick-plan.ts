import type { HouseholdView } from '../../background/protocol.ts'
import { hasSide, type Pot } from '../../book/household.ts'
import { allocate } from '../../money/allocate.ts'
import { minorDigits } from '../../money/currency.ts'
import { type Money, ofMinor } from '../../money/money.ts'
import { readAmount } from '../amount-text.ts'

/** How an amount goes to a pot's two sides. */
export interface Split {
  readonly cash: Money
  readonly card: Money
}

/**
 * The usual split of a fill: like the pot's own fill from pay, the part in notes cut to whole units, because the cents of
 * a split would need coins; a pot without a fill takes notes if it keeps notes.
 */
export function usualSplit(pot: Pot, amount: Money): Split {
  const none = ofMinor(amount.currency, 0)
  if (!hasSide(pot, 'card')) return { cash: amount, card: none }
  if (!hasSide(pot, 'cash')) return { cash: none, card: amount }
  if (pot.fill.cash + pot.fill.card === 0) return { cash: amount, card: none }
  if (pot.fill.card === 0) return { cash: amount, card: none }
  const [share = none] = allocate(amount, [pot.fill.cash, pot.fill.card])
  const cash = share.minor - (share.minor % 10 ** minorDigits(amount.currency))
  return { cash: ofMinor(amount.currency, cash), card: ofMinor(amount.currency, amount.minor - cash) }
}

/** The split with as much in notes as the person typed; null when that is no amount or more than the fill. */
export function splitByNotes(amount: Money, notes: string, language: string): Split | null {
  const read = readAmount(notes, amount.currency, language)
  if (!read.ok || read.money.minor > amount.minor) return null
  return { cash: read.money, card: ofMinor(amount.currency, amount.minor - read.money.minor) }
}

/** The side a counter spend comes from unless the person says otherwise. */
export function usualSide(pot: Pot): 'cash' | 'card' {
  return hasSide(pot, 'cash') ? 'cash' : 'card'
}

/** How much of a spend the side does not have free: notes that are spoken for do not count, nor does held card money. */
export function notFree(view: HouseholdView, pot: Pot, side: 'cash' | 'card', amount: Money): Money {
  const balance = view.balances[pot.id]
  if (!balance) return ofMinor(amount.currency, 0)
  const free = side === 'cash' ? balance.freeCash.minor : balance.left.minor
  return ofMinor(amount.currency, Math.max(0, amount.minor - Math.max(0, free)))
}
