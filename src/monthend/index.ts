export {
  type BalanceExplanation,
  type BalanceItem,
  type BalancesExplanation,
  explainBalance,
  explainBalances,
  type StatementClose,
} from './agree-balance.ts'
export { closingEntries, type Leftover, leftovers, type SweepChoice } from './close-plan.ts'
export type { CountCause } from './count-causes.ts'
export { type CountComparison, type CountFinding, compareCounts } from './count-compare.ts'
export { type CountedPieces, countedPieces } from './count-pieces.ts'
export { piecesOfMove, type SettleStart, settleStart, tickedMoves } from './count-plan.ts'
export { settleTargets } from './count-targets.ts'
export { ordersToMatch, unseenEntries, whatElseToMatch } from './match-book.ts'
export { matchStatement } from './match-statement.ts'
export type * from './match-types.ts'
export { MonthendError, type MonthendErrorCode } from './monthend-error.ts'
export { type NewLines, newLines } from './new-lines.ts'
export { readStatement } from './read-statement.ts'
export {
  type BySide,
  type MonthPoint,
  type Picture,
  type PotReview,
  type Review,
  review,
  type WentAhead,
} from './review.ts'
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
export type { CsvReading } from './statement/csv.ts'
export type { DateOrder } from './statement/csv-dates.ts'
export type { CsvAmount, CsvMapping } from './statement/csv-mapping.ts'
export {
  type OpenedStatement,
  openStatement,
  openStatementInSteps,
  type StatementOptions,
} from './statement/open-statement.ts'
export type { AccountStatement, BalanceCheck, StatementBalance, StatementRemark } from './statement/opened.ts'
export type { StatementFormat } from './statement/recognise.ts'
export type { Progress } from './statement/utf.ts'
export type * from './statement-line.ts'
