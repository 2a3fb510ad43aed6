export { agreeBalance, linesByEntry, postedLines, type ShownBy, seenOnStatement } from './agree.ts'
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
export { answerCharge, type ChargeAnswer, type ChargeHow, chargeOrder } from './charge.ts'
export { type ClosedMonth, closedMonths, closeMonth, type Dated, datedFor, reopenMonth } from './close.ts'
export { closedThrough } from './closed-through.ts'
export { type ConfirmAnswer, type Confirmation, confirmOrder, orderNumbered } from './confirm.ts'
export { type CountOptions, countedAmount, countPot } from './count.ts'
export { type Due, dueAhead } from './due-ahead.ts'
export type * from './entry.ts'
export { fillPot, openPot, receivePay, type Sides } from './fill.ts'
export { type Converted, convert, lastSeenRate, type Rate, type SeenRate } from './foreign.ts'
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
export { holdInstalment, type InstalmentAhead, instalmentsAhead, instalmentsOf, type PartState } from './instalment.ts'
export { isMonthName, type Month, type MonthName, monthAfter, monthName, monthNamed, monthOf } from './month.ts'
export { balanceAt, type PotMonth, potMonth, potMonths, type SideFigures } from './month-figures.ts'
export { type AccountSummary, digestOf, type MonthSummary, summarise } from './month-summary.ts'
export { type NextFill, nextFill } from './next-fill.ts'
export { adjustOrder, holdOrder, type Purchase } from './order.ts'
export type * from './order-details.ts'
export { allOrders, holdsUntil, lapsedHolds, type OrderSign, orderSigns } from './order-list.ts'
export { findOrder, type OrderPart, type OrderState, orderState, orderSums } from './order-state.ts'
export { orderStory, type StoryCode, type StoryLine } from './order-story.ts'
export { type Every, HOLD_DAYS, type OrderRules, type Renewal } from './ordering.ts'
export { itemCosts } from './own-lines.ts'
export type * from './planning.ts'
export { type OrderWish, type WorkedOut, workOut } from './purchase.ts'
export { expectRefund, type RefundHow, refundOrder } from './refund.ts'
export { releaseOrder } from './release.ts'
export { type Removal, smallestRemoval } from './removal.ts'
export { type DueRenewal, dueDates, dueRenewals, fundFor, nextDue, type RenewalFund } from './renewal.ts'
export { lastUndoable, reverse } from './reverse.ts'
export { englishSpeech, fillIn, type SentenceKey, type Speech, sayReason } from './say.ts'
export { sayStory } from './say-story.ts'
export { settleMove } from './settle-entry.ts'
export { potsForShop, type ShopPot } from './shop-pots.ts'
export { spendFrom } from './spend.ts'
export {
  type SharedCost,
  type SharedKind,
  type Split,
  type SplitHow,
  type SplitItem,
  type SplitLine,
  splitOrder,
} from './split.ts'
export { sweepable, sweepPot } from './sweep.ts'
export { type TagAnswer, tagOrder } from './tag.ts'
export { Totals } from './totals.ts'
export { transferMoney } from './transfer.ts'
