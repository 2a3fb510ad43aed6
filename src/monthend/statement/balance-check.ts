import { add, type Money, subtract, toDecimal } from '../../money/money.ts'
import type { StatementLine } from '../statement-line.ts'
import type { BalanceCheck, StatementBalance, StatementRemark } from './opened.ts'

/** Opening balance plus booked lines against the closing balance, all in one currency. */
export function checkBalance(
  opening: StatementBalance | null,
  closing: StatementBalance | null,
  lines: readonly StatementLine[],
): BalanceCheck {
  if (!opening || !closing || opening.from !== 'statement' || closing.from !== 'statement')
    return { outcome: 'unknown' }
  const expected = addBooked(opening.amount, lines)
  if (expected === null || expected.currency !== closing.amount.currency) return { outcome: 'unknown' }
  const by = subtract(closing.amount, expected)
  return by.minor === 0 ? { outcome: 'agrees' } : { outcome: 'differs', by }
}

/** The remark that goes with a check that differs. */
export function balanceRemark(account: string, check: BalanceCheck): StatementRemark[] {
  if (check.outcome !== 'differs') return []
  const by = `${toDecimal(check.by)} ${check.by.currency}`
  const message = `The booked lines of ${account || 'the account'} do not lead to its closing balance: it differs by ${by}.`
  return [{ code: 'balance-differs', message, row: null }]
}

/** The balance before the first booked line, worked out from the closing one. */
export function openingFrom(
  closing: StatementBalance | null,
  lines: readonly StatementLine[],
): StatementBalance | null {
  if (!closing) return null
  const zero: Money = { currency: closing.amount.currency, minor: 0 }
  const moved = addBooked(zero, lines)
  return moved && { amount: subtract(closing.amount, moved), date: null, from: 'worked-out' }
}

function addBooked(start: Money, lines: readonly StatementLine[]): Money | null {
  let sum = start
  for (const line of lines) {
    if (line.status !== 'booked') continue
    if (line.amount.currency !== sum.currency) return null
    sum = add(sum, line.amount)
  }
  return sum
}
