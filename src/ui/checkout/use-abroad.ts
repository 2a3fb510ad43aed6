import type { HouseholdView } from '../../background/protocol.ts'
import { type Converted, convert, type SeenRate } from '../../book/foreign.ts'
import type { CurrencyCode } from '../../money/currency.ts'
import type { Money } from '../../money/money.ts'
import { type OrderDraft, plainNumber } from './order-draft.ts'

/** The rate an order abroad is converted with, and what comes of it. */
export interface Abroad {
  /** What the field shows: so much of the household's currency for one of the shop's. */
  readonly shown: string
  /** So much of the household's currency for `per` of the shop's, exactly. */
  readonly rate: string
  readonly per: string
  readonly isRateSeen: boolean
  readonly isSeenUsed: boolean
  readonly fee: string
  readonly converted: Converted | null
}

/** The rate as typed; else the last one seen on a charge, with the card's fee in it; else none. */
export function useAbroad(of: {
  readonly total: Money | null
  readonly home: CurrencyCode
  readonly view: HouseholdView
  readonly draft: OrderDraft
  readonly seen: SeenRate | null
}): Abroad {
  const { total, home, draft, seen } = of
  const isSeenUsed = draft.rate === null && seen !== null && seen.currency === total?.currency
  const rate = draft.rate ?? (isSeenUsed ? seen.home : '')
  const per = isSeenUsed ? seen.per : '1'
  const usualFee = isSeenUsed ? '0' : (of.view.household.ordering?.foreignFeePercent ?? '')
  const fee = draft.fee ?? usualFee
  const shown = isSeenUsed ? quotient(seen) : rate
  return {
    shown,
    rate,
    per,
    isRateSeen: isSeenUsed,
    isSeenUsed,
    fee,
    converted: converted(total, home, rate, per, fee),
  }
}

/** For reading only: what is reckoned with stays the exact pair. */
function quotient({ home, per }: SeenRate): string {
  return String(Number((Number(home) / Number(per)).toFixed(5)))
}

function converted(total: Money | null, home: CurrencyCode, rate: string, per: string, fee: string): Converted | null {
  const [plainRate, plainFee] = [plainNumber(rate), plainNumber(fee === '' ? '0' : fee)]
  if (!total || total.currency === home || plainRate === null || plainFee === null || Number(plainRate) === 0)
    return null
  return convert(total, home, { home: plainRate, per }, plainFee)
}
