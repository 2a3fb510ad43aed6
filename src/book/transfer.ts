import type { Money } from '../money/money.ts'
import { BookError } from './book-error.ts'
import type { Stamp, TransferEntry } from './entry.ts'
import { findAccount, type Household } from './household.ts'
import type { AccountId } from './ids.ts'
import { entryBase, placeOf, takeAmount } from './posting.ts'

/**
 * Money moved between two accounts of the household: a credit card paid off, savings moved. The pots paid when they were
 * charged, so none is touched.
 *
 * @param lineOf which of the two accounts' statements `stamp.line` stands in
 * @throws BookError `unknown-account`, `bad-lines` (from and to are the same), `currency-mismatch`, `bad-amount`
 * @example transferMoney(household, stamp, accountId('main'), accountId('visa'), money('CAD', '310.45'))
 */
export function transferMoney(
  household: Household,
  stamp: Stamp,
  from: AccountId,
  to: AccountId,
  amount: Money,
  lineOf?: AccountId,
): TransferEntry {
  const moved = takeAmount(household, amount)
  if (moved === 0) throw new BookError('bad-amount', 'A transfer of nothing changes nothing. Enter an amount.')
  if (from === to) throw new BookError('bad-lines', 'The money would stay where it is. Choose another account.')
  const places = [
    { account: placeOf(findAccount(household, from)), amount: -moved },
    { account: placeOf(findAccount(household, to)), amount: moved },
  ]
  const entry = { ...entryBase(stamp, [], places), kind: 'transfer', from, to } as const
  return lineOf === undefined ? entry : { ...entry, lineOf }
}
