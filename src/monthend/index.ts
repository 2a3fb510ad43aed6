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
export {
  type EnvelopeCount,
  type EnvelopeTarget,
  type SettledEnvelope,
  type Settlement,
  type SettleOptions,
  type SettleRest,
  settle,
} from './settle.ts'
export type { SettleMove, SettlePlace } from './settle-moves.ts'
export type * from './statement-line.ts'
