import type { CalendarDate } from './calendar-date.ts'
import { isSlug, type PotId } from './ids.ts'

/*
 * What a household has decided for its orders: what comes again by itself, and how careful holds are. Facts only. Amounts
 * are whole minor units of the household's currency.
 */

/** How often something comes again: every `count` days, weeks, months or years. */
export interface Every {
  readonly unit: 'day' | 'week' | 'month' | 'year'
  readonly count: number
}

/** A subscription or another order that renews itself. */
export interface Renewal {
  /** By the rules of a pot's id. */
  readonly id: string
  readonly name: string
  /** Host name of the shop, without `www.`; absent where it is not known. */
  readonly shop?: string
  readonly pot: PotId
  readonly amount: number
  /** A day it was or will be due; later ones count from here. */
  readonly first: CalendarDate
  readonly every: Every
  /** It ended: nothing is due after this day. */
  readonly end?: CalendarDate
}

/** How the household's orders are held. All of it may be absent. */
export interface OrderRules {
  /** Days after which an authorisation that was not charged is told as lapsed; absent: `HOLD_DAYS`. */
  readonly holdDays?: number
  /** What is held on top of an estimated total, in per cent, a plain decimal text. */
  readonly marginPercent?: string
  /** What the card adds to a charge in another currency, in per cent, a plain decimal text. */
  readonly foreignFeePercent?: string
}

/**
 * Card authorisations that are not charged fall away after some days; shops and banks differ between a few days and a
 * month. Common practice, no source: a household that knows its card better sets `OrderRules.holdDays`.
 */
export const HOLD_DAYS = 14

/** What is wrong with a household's renewals, as a sentence; null when nothing is. */
export function renewalFault(renewals: readonly Renewal[], isPot: (id: PotId) => boolean): string | null {
  const seen = new Set<string>()
  for (const r of renewals) {
    if (!isSlug(r.id)) return `"${r.id}" cannot name a renewal. Use letters, digits, - and _.`
    if (seen.has(r.id)) return `Two renewals have the id "${r.id}". Give one of them another.`
    seen.add(r.id)
    if (r.name.trim() === '') return `The renewal "${r.id}" has no name. Give it one.`
    if (!isPot(r.pot)) return `${r.name} is paid from a pot that does not exist. Choose another.`
    if (!Number.isSafeInteger(r.amount) || r.amount <= 0)
      return `${r.name} costs nothing. Enter what is charged each time.`
    if (!Number.isSafeInteger(r.every.count) || r.every.count < 1 || r.every.count > 1000) {
      return `${r.name} cannot come every ${r.every.count} ${r.every.unit}s. Use a whole number from 1.`
    }
  }
  return null
}
