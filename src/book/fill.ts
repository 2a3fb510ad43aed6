import type { Money } from '../money/money.ts'
import { BookError } from './book-error.ts'
import type { FillEntry, OpeningEntry, PayEntry, Stamp } from './entry.ts'
import { findAccount, findPot, type Household, hasSide, type Pot } from './household.ts'
import type { AccountId, PotId } from './ids.ts'
import { entryBase, placeOf, takeAmount } from './posting.ts'

/** What goes into a pot, by side. A side left out gets nothing. */
export interface Sides {
  readonly cash?: Money
  readonly card?: Money
}

/**
 * The amounts a pot starts with: notes found in its envelope, and its part of the bank balance.
 *
 * @throws BookError `unknown-pot`, `wrong-side` (notes for a card-only pot), `currency-mismatch`, `bad-amount`
 */
export function openPot(
  household: Household,
  stamp: Stamp,
  pot: PotId,
  sides: Sides,
  account?: AccountId,
): OpeningEntry {
  const { cash, card } = takeSides(household, pot, sides)
  const place = placeOf(findAccount(household, account))
  const base = entryBase(
    stamp,
    [
      { account: `cash:${pot}`, amount: cash },
      { account: `card:${pot}`, amount: card },
      { account: 'outside', amount: -cash - card },
    ],
    [
      { account: 'notes', amount: cash },
      { account: place, amount: card },
      { account: 'world', amount: -cash - card },
    ],
  )
  return { ...base, kind: 'opening' }
}

/** Pay reaches an account; no pot has it yet. @throws BookError `unknown-account`, `currency-mismatch`, `bad-amount` */
export function receivePay(household: Household, stamp: Stamp, amount: Money, account?: AccountId): PayEntry {
  const pay = takeAmount(household, amount)
  const base = entryBase(
    stamp,
    [
      { account: 'unplaced', amount: pay },
      { account: 'outside', amount: -pay },
    ],
    [
      { account: placeOf(findAccount(household, account)), amount: pay },
      { account: 'world', amount: -pay },
    ],
  )
  return { ...base, kind: 'pay' }
}

/**
 * Fills a pot. From `unplaced` (the usual way) the card part only gets a name, and the cash part is drawn from the
 * account as notes. From `outside` it is new money: notes in the hand, or a payment that reached the account just now.
 *
 * @throws BookError `unknown-pot`, `archived-pot`, `unknown-account`, `wrong-side`, `currency-mismatch`, `bad-amount`
 *   (nothing on either side)
 */
export function fillPot(
  household: Household,
  stamp: Stamp,
  pot: PotId,
  sides: Sides,
  from: 'unplaced' | 'outside' = 'unplaced',
  account?: AccountId,
): FillEntry {
  const { cash, card } = takeSides(household, pot, sides)
  if (findPot(household, pot).archived) {
    throw new BookError('archived-pot', `${findPot(household, pot).name} is archived. Bring it back before filling it.`)
  }
  if (cash + card === 0) throw new BookError('bad-amount', 'A fill of nothing changes nothing. Enter an amount.')
  const place = placeOf(findAccount(household, account))
  const base = entryBase(
    stamp,
    [
      { account: `cash:${pot}`, amount: cash },
      { account: `card:${pot}`, amount: card },
      { account: from, amount: -cash - card },
    ],
    from === 'unplaced'
      ? [
          { account: 'notes', amount: cash },
          { account: place, amount: -cash },
        ]
      : [
          { account: 'notes', amount: cash },
          { account: place, amount: card },
          { account: 'world', amount: -cash - card },
        ],
  )
  return { ...base, kind: 'fill', pot }
}

function takeSides(household: Household, id: PotId, sides: Sides): { cash: number; card: number } {
  const pot = findPot(household, id)
  return { cash: takeSide(household, pot, 'cash', sides.cash), card: takeSide(household, pot, 'card', sides.card) }
}

function takeSide(household: Household, pot: Pot, side: 'cash' | 'card', m: Money | undefined): number {
  const amount = m === undefined ? 0 : takeAmount(household, m)
  if (amount > 0 && !hasSide(pot, side)) {
    throw new BookError('wrong-side', `${pot.name} keeps no ${side} side. Put the money on its other side.`)
  }
  return amount
}
