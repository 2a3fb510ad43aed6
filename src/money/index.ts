export { allocate } from './allocate.ts'
export {
  type CashRoundingOptions,
  type CashRule,
  cashStep,
  type NationalCashRule,
  nationalCashRules,
  roundForCash,
} from './cash-rounding.ts'
export { type CurrencyCode, currencyCode, currencyCodes, isCurrencyCode, minorDigits } from './currency.ts'
export { formatAmount, formatMoney } from './format.ts'
export { add, type Money, money, negate, ofMinor, subtract, toDecimal } from './money.ts'
export { MoneyError, type MoneyErrorCode } from './money-error.ts'
export { type BreakdownOptions, breakdown, type PieceCount } from './notes.ts'
export { parsePrice } from './price-text.ts'
