export { changeRhythm } from './change-rhythm.ts'
export type { FillEffect } from './fill-effect.ts'
export { type LearntBudget, learnBudget, type MonthSpend } from './learn-budget.ts'
export { type MonthCell, type MonthGrid, monthGrid } from './month-grid.ts'
export { type PayDay, payDates, payDays } from './pay-dates.ts'
export type { PayTimes } from './pay-times.ts'
export { type ExpectedPay, type PayMonth, payMonths, paysAhead } from './pays-ahead.ts'
export type { PieceWish } from './piece-wish.ts'
export { PlanError, type PlanErrorCode } from './plan-error.ts'
export { type FillLine, type FillPlan, planFill } from './plan-fill.ts'
export { type DueCost, type PlannedPay, planYear, type YearPlan } from './plan-year.ts'
export type { MonthlyNeed } from './reserve.ts'
export { sayFillLine, sayShare } from './say-fill.ts'
export { sayLearnt } from './say-learnt.ts'
export { saySinking } from './say-sinking.ts'
export { potSheet, type Sheet, type SheetFigures, type SheetLine } from './sheet.ts'
export type { SideShare } from './side.ts'
export { planSinking, type SinkingOptions, type SinkingPlan, type SinkingPot, type SinkingStatus } from './sinking.ts'
export { sinkingPot } from './sinking-pot.ts'
export { englishPlanSpeech, type PlanSentenceKey, type PlanSpeech } from './speech.ts'
export {
  type CarriedEnvelope,
  type ComeBack,
  comeBack,
  type LeftAtHome,
  type TakeAlong,
  type TripReturn,
  type TripSpend,
  takeAlong,
  tripEntries,
} from './take-along.ts'
export type { FillReason } from './want.ts'
export {
  type CashFill,
  type SlipBank,
  type SlipEnvelope,
  type SlipOptions,
  type SlipRest,
  type WithdrawalSlip,
  withdrawalSlip,
} from './withdrawal-slip.ts'
