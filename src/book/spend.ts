import type { Money } from '../money/money.ts'
import { BookError } from './book-error.ts'
import type { SpendEntry, Stamp } from './entry.ts'
import { findAccount, findPot, type Household, hasSide } from './household.ts'
import type { AccountId, PotId } from './ids.ts'
import { entryBase, placeOf, takeAmount } from './posting.ts'

/**
 * Money spent away from a tagged order: notes at a counter (`cash`), or the card in a shop (`card`). It records what
 * happened, so it is taken even when the pot had too little.
 *
 * @throws BookError `unknown-pot`, `unknown-account`, `wrong-side`, `currency-mismatch`, `bad-amount` (zero or less)
 */
export function spendFrom(
  household: Household,
  stamp: Stamp,
  pot: PotId,
  side: 'cash' | 'card',
  amount: Money,
  purpose: string,
  account?: AccountId,
): SpendEntry {
  const found = findPot(household, pot)
  const spent = takeAmount(household, amount)
  if (spent === 0) throw new BookError('bad-amount', 'A spend of nothing changes nothing. Enter an amount.')
  if (!hasSide(found, side)) {
    throw new BookError('wrong-side', `${found.name} keeps no ${side} side, so nothing can be spent from it.`)
  }
  const base = entryBase(
    stamp,
    [
      { account: `${side}:${pot}`, amount: -spent },
      { account: 'outside', amount: spent },
    ],
    [
      { account: side === 'cash' ? 'notes' : placeOf(findAccount(household, account)), amount: -spent },
      { account: 'world', amount: spent },
    ],
  )
  return { ...base, kind: 'spend', pot, purpose: purpose.trim() }
}
