import { allocate } from '../money/allocate.ts'
import type { CurrencyCode } from '../money/currency.ts'
import { ofMinor } from '../money/money.ts'
import type { OrderLine } from './entry.ts'
import type { PotId } from './ids.ts'

/** A pot and how much of something belongs to it, in minor units. */
interface Share {
  readonly pot: PotId
  readonly amount: number
}

/**
 * Spreads an amount over pots pro rata by largest remainder. Where the amount is not more than the shares' sum, no pot
 * gets more than its share: a quota below a whole number is never rounded above it.
 *
 * @param amount minor units, zero or more
 * @param shares not all of them zero
 */
export function spread(currency: CurrencyCode, amount: number, shares: readonly Share[]): OrderLine[] {
  const parts = allocate(
    ofMinor(currency, amount),
    shares.map((s) => s.amount),
  )
  return shares.map((s, n) => ({ pot: s.pot, amount: parts[n]?.minor ?? 0 }))
}

/** Sums lines of the same pot, in the order the pots first come. */
export function joinLines(...lists: readonly (readonly OrderLine[])[]): OrderLine[] {
  const sums = new Map<PotId, number>()
  for (const { pot, amount } of lists.flat()) sums.set(pot, (sums.get(pot) ?? 0) + amount)
  return [...sums].map(([pot, amount]) => ({ pot, amount }))
}

/** The sum of lines in minor units. */
export function sumOf(lines: readonly { readonly amount: number }[]): number {
  return lines.reduce((sum, line) => sum + line.amount, 0)
}
