export { agreeBalance, postedLines, seenOnStatement } from './agree.ts'
export { assess, type Outcome, type Reason, type Verdict, type VerdictLine } from './assess.ts'
export { balances, type PotBalance, potBalance, unplaced } from './balances.ts'
export {
  append,
  type Book,
  balanceOf,
  entriesOf,
  findEntry,
  isReversed,
  openBook,
  openBookAt,
  sumsOf,
  withHousehold,
} from './book.ts'
export { BookError, type BookErrorCode } from './book-error.ts'
export { addDays, type CalendarDate, calendarDate, dayNumber, isCalendarDate, sayDate } from './calendar-date.ts'
export { toCarry } from './carry.ts'
export { chargeOrder, refundOrder, releaseOrder } from './charge.ts'
export { type ClosedMonth, closedMonths, closeMonth, type Dated, datedFor, reopenMonth } from './close.ts'
export { closedThrough } from './closed-through.ts'
export { type CountOptions, countedAmount, countPot } from './count.ts'
export type * from './entry.ts'
export { fillPot, openPot, receivePay, type Sides } from './fill.ts'
export {
  findAccount,
  findPot,
  type Household,
  hasSide,
  type Pot,
  type PotKind,
  type PotRule,
  type PotSides,
  type RealAccount,
} from './household.ts'
export {
  type AccountId,
  accountId,
  type DeviceId,
  deviceId,
  type EntryId,
  entryId,
  isSlug,
  isUuidV7,
  type OrderId,
  orderId,
  type PotId,
  potId,
} from './ids.ts'
export { isMonthName, type Month, type MonthName, monthAfter, monthName, monthNamed, monthOf } from './month.ts'
export { balanceAt, type PotMonth, potMonth, potMonths, type SideFigures } from './month-figures.ts'
export { type AccountSummary, digestOf, type MonthSummary, summarise } from './month-summary.ts'
export { type NextFill, nextFill } from './next-fill.ts'
export { adjustOrder, holdOrder, type Purchase } from './order.ts'
export { findOrder, type OrderPart, type OrderState, orderState } from './order-state.ts'
export type * from './planning.ts'
export { lastUndoable, reverse } from './reverse.ts'
export { englishSpeech, fillIn, type SentenceKey, type Speech, sayReason } from './say.ts'
export { settleMove } from './settle-entry.ts'
export { potsForShop, type ShopPot } from './shop-pots.ts'
export { spendFrom } from './spend.ts'
export { sweepPot } from './sweep.ts'
export { type TagAnswer, tagOrder } from './tag.ts'
export { transferMoney } from './transfer.ts'
