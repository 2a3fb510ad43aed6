import { add, type Money, ofMinor, subtract } from '../../money/money.ts'
import type { StatementLine } from '../statement-line.ts'
import type { AccountStatement, StatementBalance } from './opened.ts'

/** Opening and closing balance from a column of running balances, and whether the lines lead from one to the other. */
export type CsvBalances = Pick<AccountStatement, 'opening' | 'closing' | 'check'>

/**
 * Takes the balance of the oldest line less its amount for the opening one, that of the newest for the closing one. Banks
 * list oldest or newest first: whichever way the balances run on by more of the amounts, and by days if that does not tell.
 */
export function csvBalances(lines: readonly StatementLine[]): CsvBalances {
  const booked = lines.filter((line) => line.status === 'booked')
  if (!booked.some((line) => line.balance)) return { opening: null, closing: null, check: { outcome: 'unknown' } }
  const [down, up] = [stepsKept(booked), stepsKept([...booked].reverse())]
  const [first, last] = [booked[0], booked.at(-1)]
  const newestFirst = up === down ? (first?.date ?? '') > (last?.date ?? '') : up > down
  const ordered = newestFirst ? [...booked].reverse() : booked
  const start = ordered.findIndex((line) => line.balance)
  const end = ordered.findLastIndex((line) => line.balance)
  const [from, to] = [ordered[start], ordered[end]]
  if (!from?.balance || !to?.balance) return { opening: null, closing: null, check: { outcome: 'unknown' } }
  const before = sum(ordered.slice(0, start + 1), from.balance)
  const between = sum(ordered.slice(start + 1, end + 1), from.balance)
  if (before === null || between === null) return { opening: null, closing: null, check: { outcome: 'unknown' } }
  const opening: StatementBalance = { amount: subtract(from.balance, before), date: from.date, from: 'worked-out' }
  const closing: StatementBalance = { amount: to.balance, date: to.date, from: 'statement' }
  const by = subtract(to.balance, add(from.balance, between))
  return { opening, closing, check: by.minor === 0 ? { outcome: 'agrees' } : { outcome: 'differs', by } }
}

function stepsKept(lines: readonly StatementLine[]): number {
  return lines.filter((line, i) => {
    const before = lines[i - 1]?.balance
    return before && line.balance && before.minor + line.amount.minor === line.balance.minor
  }).length
}

function sum(lines: readonly StatementLine[], like: Money): Money | null {
  let minor = 0
  for (const { amount } of lines) {
    if (amount.currency !== like.currency) return null
    minor += amount.minor
  }
  return ofMinor(like.currency, minor)
}
