import type { CalendarDate } from './calendar-date.ts'

/*
 * What a household has decided for its planning: how pay arrives, what its pots save for, who comes first. Facts only; the
 * plan room works with them. Amounts are whole minor units of the household's currency.
 */

interface ScheduleBase {
  /** The first pay: nothing before it is a pay date. */
  readonly first: CalendarDate
  /** The last day on which this rhythm holds; absent while it goes on. */
  readonly until?: CalendarDate
  /** Where a pay goes that falls on a Saturday, a Sunday or a day off; absent: it stays. */
  readonly weekend?: 'before' | 'after'
  /** Days on which the bank does not pay, such as public holidays; none are known by themselves. */
  readonly daysOff?: readonly CalendarDate[]
}

/** How pay arrives. */
export type PaySchedule =
  | (ScheduleBase & { readonly rhythm: 'weekly' | 'every-two-weeks' })
  /** On two days of each month; a day past the month's end means its last day. */
  | (ScheduleBase & { readonly rhythm: 'twice-a-month'; readonly days: readonly [number, number] })
  /** On one day of each month; a day past the month's end means its last day. */
  | (ScheduleBase & { readonly rhythm: 'monthly'; readonly day: number })
  /** The last day of each month that is neither a Saturday, a Sunday nor a day off. */
  | (ScheduleBase & { readonly rhythm: 'last-working-day' })

/** Someone whose pay the household lives on. */
export interface Earner {
  readonly id: string
  readonly name: string
  /** The usual net pay; 0 where it is not known. */
  readonly pay: number
  /** One rhythm, or several one after another. */
  readonly schedules: readonly PaySchedule[]
}

/** A known cost a sinking fund saves for. */
export interface PotGoal {
  readonly target: number
  readonly due: CalendarDate
  /** Comes again every so many years once it is spent; absent: once. */
  readonly everyYears?: number
  /** When saving began, and what was in then: the course it is measured against. */
  readonly since?: { readonly date: CalendarDate; readonly in: number }
  /** Yearly interest as a decimal text, `0.025`; absent: none. */
  readonly yearlyRate?: string
}

/** 1: the household cannot do without; 2: it would be missed; 3: it can wait. */
export type Importance = 1 | 2 | 3

/** How the slip is to fill an envelope: with small notes, or with large ones; without a wish, with few pieces. */
export type EnvelopeWish = 'small' | 'large'

/** What is planned for a pot. All of it may be absent: then each pay brings the pot's `fill`. */
export interface PotPlan {
  /** Absent: 2, and 3 for a reserve. */
  readonly importance?: Importance
  /** What a month brings, over its pays; absent: each pay brings the pot's `fill`. */
  readonly monthly?: number
  readonly goal?: PotGoal
  /** A reserve's target, in months of the household's spending. */
  readonly reserveMonths?: number
  /** Which side a fill goes to; absent: in the proportion of the pot's `fill`. */
  readonly split?: 'cash' | 'card' | 'learned'
  readonly wish?: EnvelopeWish
}

/** Where notes are fetched, and which notes and coins it gives, by value. */
export interface SlipBankSetting {
  readonly kind: 'counter' | 'machine'
  readonly gives: readonly number[]
}

/** How the household plans. */
export interface Planning {
  /** Whether sinking funds come before the pots of importance 1 or right after them. */
  readonly sinkingFunds: 'first' | 'after-essentials'
  /** What a pay brings to a goal or a month's budget is rounded up to a multiple of this. 1: to the cent. */
  readonly roundTo: number
  /** Where notes are fetched; absent: at a counter, which gives every note and coin. */
  readonly bank?: SlipBankSetting
}
