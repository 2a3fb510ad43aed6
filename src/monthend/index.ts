export {
  type BalanceExplanation,
  type BalanceItem,
  type BalancesExplanation,
  explainBalance,
  explainBalances,
  type StatementClose,
} from './agree-balance.ts'
export { ordersToMatch, unseenEntries, whatElseToMatch } from './match-book.ts'
export { matchStatement } from './match-statement.ts'
export type * from './match-types.ts'
export type * from './statement-line.ts'
