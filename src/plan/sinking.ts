import { Decimal } from 'decimal.js'
import { addDays, type CalendarDate } from '../book/calendar-date.ts'
import { type Money, ofMinor, sameCurrency } from '../money/money.ts'
import { type PayTimes, paysAfter } from './pay-times.ts'
import { PlanError } from './plan-error.ts'
import { roundUp } from './round-up.ts'
import { periodsToReach, sinkingPayment } from './sinking-payment.ts'

/** A pot that saves for a known cost. */
export interface SinkingPot {
  readonly goal: {
    readonly target: Money
    readonly due: CalendarDate
    /** When saving began and what was in then; without it there is no course to be behind of. */
    readonly since?: { readonly date: CalendarDate; readonly in: Money }
    /** Yearly interest as a decimal text, `0.025`; paid in equal parts with each pay. */
    readonly yearlyRate?: string
  }
  /** What is in already. */
  readonly in: Money
  /** What each pay brings at present, for the day the target is reached at that rate. */
  readonly eachPay?: Money
  /** What was in at the end of earlier days, ascending: tells since when it is behind. */
  readonly history?: readonly { readonly date: CalendarDate; readonly in: Money }[]
}

/**
 * *reached*: nothing more is needed. *overdue*: the due date has passed. *no-pay-left*: it is due before the next pay.
 * *behind*, *on-track*, *ahead*: of an even course since saving began; without a beginning, of what the present rate comes
 * to by the due date. *open*: nothing tells.
 */
export type SinkingStatus = 'reached' | 'overdue' | 'no-pay-left' | 'behind' | 'on-track' | 'ahead' | 'open'

/** What a sinking fund needs of each pay to be full by its due date, and how it stands. */
export interface SinkingPlan {
  readonly status: SinkingStatus
  readonly target: Money
  readonly due: CalendarDate
  readonly in: Money
  /** What is missing today, interest aside; nothing when the target is reached. */
  readonly toGo: Money
  /** The pays that still count: after today, up to and including the due date. */
  readonly pays: readonly CalendarDate[]
  /** What each of them must bring, to the cent, rounded up. Without a pay left it is all that is missing. */
  readonly exact: Money
  /** The same rounded up to `roundTo`, but never more than what is missing. */
  readonly eachPay: Money
  /** How many pays it takes at `eachPay`, and what the last of them brings. */
  readonly payCount: number
  readonly lastPay: Money
  /** What an even course would have in by today; null where no beginning is known. */
  readonly course: Money | null
  /** How much is missing to the course (or by the due date); nothing when it is not behind. */
  readonly behind: Money
  /** The first pay from which on it was behind without a break; null where it is not, or no history tells. */
  readonly behindSince: CalendarDate | null
  readonly ahead: Money
  /** The pay that reaches the target at the present rate; null without a rate, or when none within thirty years does. */
  readonly reachedOn: CalendarDate | null
}

/** How each pay of a sinking fund is rounded. */
export interface SinkingOptions {
  /** Minor units that each pay is rounded up to a multiple of, such as a note the household can use. Absent: 1. */
  readonly roundTo?: number
}

/** Rates are looked ahead this far. */
const MOST_YEARS = 30

/**
 * What each remaining pay must bring to a sinking fund, and how it stands. A pay on the due date counts; one on the day
 * of planning does not, for it is being placed now.
 *
 * @throws PlanError `bad-goal` (a target of nothing, a bad rate), `bad-options`; MoneyError `currency-mismatch`
 * @example 300.00 by 1 June with 150.00 in and 12 fortnightly pays left: `eachPay` is 12.50.
 */
export function planSinking(
  pot: SinkingPot,
  schedule: PayTimes,
  today: CalendarDate,
  options: SinkingOptions = {},
): SinkingPlan {
  const { goal } = pot
  const roundTo = options.roundTo ?? 1
  check(pot, roundTo)
  const { currency } = goal.target
  const of = (minor: number): Money => ofMinor(currency, minor)
  const pays = paysAfter(schedule, today, goal.due)
  const toGo = Math.max(0, goal.target.minor - pot.in.minor)
  const rate = ratePerPay(schedule, today, goal.yearlyRate)
  const { exact, each } = evenShare(goal.target.minor, pot.in.minor, pays.length, rate, roundTo)
  const payCount = each === 0 ? 0 : Math.ceil(toGo / each)
  const reachedOn = toGo === 0 ? today : dayReached(pot, schedule, today, rate)
  const course = courseToday(pot, schedule, today)
  const standing = stand(pot, pays, course, reachedOn, rate)
  const status =
    toGo === 0 ? 'reached' : goal.due < today ? 'overdue' : pays.length === 0 ? 'no-pay-left' : standing.status
  return {
    status,
    target: goal.target,
    due: goal.due,
    in: pot.in,
    toGo: of(toGo),
    pays,
    exact: of(exact),
    eachPay: of(each),
    payCount,
    lastPay: of(toGo - each * Math.max(0, payCount - 1)),
    course: course ? of(course.before) : null,
    behind: of(standing.behind),
    behindSince: standing.behind > 0 ? behindSince(pot, schedule, today) : null,
    ahead: of(standing.ahead),
    reachedOn,
  }
}

/**
 * What each of so many pays must bring, in minor units: to the cent, and rounded up to a step, never more than is missing.
 * Without a pay it is all that is missing.
 */
export function evenShare(
  target: number,
  alreadyIn: number,
  pays: number,
  rate: Decimal.Value,
  roundTo: number,
): { readonly exact: number; readonly each: number } {
  const toGo = Math.max(0, target - alreadyIn)
  if (toGo === 0) return { exact: 0, each: 0 }
  if (pays === 0) return { exact: toGo, each: toGo }
  const needed = new Decimal(rate).isZero()
    ? Math.ceil(toGo / pays)
    : Math.max(0, sinkingPayment(target, alreadyIn, pays, rate).ceil().toNumber())
  return { exact: needed, each: Math.min(toGo, roundUp(needed, roundTo)) }
}

/** The interest of one pay: the yearly rate in as many equal parts as there are pays in a year from today. */
export function ratePerPay(schedule: PayTimes, today: CalendarDate, yearlyRate: string | undefined): Decimal.Value {
  if (yearlyRate === undefined || Number(yearlyRate) === 0) return 0
  const pays = paysAfter(schedule, today, addDays(today, 365)).length
  return pays === 0 ? 0 : new Decimal(yearlyRate).div(pays)
}

function check({ goal, in: alreadyIn, eachPay }: SinkingPot, roundTo: number): void {
  for (const m of [alreadyIn, goal.since?.in, eachPay]) if (m) sameCurrency(goal.target, m)
  if (goal.target.minor <= 0) {
    throw new PlanError('bad-goal', 'A sinking fund needs a target above zero. Enter what the cost will be.')
  }
  if (goal.yearlyRate !== undefined && !/^0(\.\d+)?$/.test(goal.yearlyRate)) {
    throw new PlanError('bad-goal', `"${goal.yearlyRate}" is not a rate. Write 2.5 % as 0.025.`)
  }
  if (!Number.isSafeInteger(roundTo) || roundTo < 1) {
    throw new PlanError('bad-options', `Amounts cannot be rounded up to ${roundTo}. Give a whole number above zero.`)
  }
}

function dayReached(
  pot: SinkingPot,
  schedule: PayTimes,
  today: CalendarDate,
  rate: Decimal.Value,
): CalendarDate | null {
  if (!pot.eachPay || pot.eachPay.minor <= 0) return null
  const { target } = pot.goal
  const count = periodsToReach(target.minor, pot.in.minor, pot.eachPay.minor, rate, MOST_YEARS * 53)
  if (count === null) return null
  const last = addDays(today, MOST_YEARS * 366)
  // No rhythm is slower than one pay in 31 days, weekends aside.
  const guess = addDays(today, Math.min(MOST_YEARS * 366, count * 31 + 31))
  return paysAfter(schedule, today, guess)[count - 1] ?? paysAfter(schedule, today, last)[count - 1] ?? null
}

interface Course {
  /** In by the pays before today, and in once the pay of today is placed as well. */
  readonly before: number
  readonly after: number
}

/** Where an even course from the beginning to the due date stands; a pay of today may or may not be placed yet. */
function courseToday({ goal }: SinkingPot, schedule: PayTimes, today: CalendarDate): Course | null {
  if (!goal.since) return null
  const all = paysAfter(schedule, goal.since.date, goal.due)
  const passed = all.filter((date) => date < today).length
  const isPayDay = all.includes(today)
  return { before: courseAt(goal, passed, all.length), after: courseAt(goal, passed + (isPayDay ? 1 : 0), all.length) }
}

function courseAt(goal: SinkingPot['goal'], passed: number, all: number): number {
  const start = goal.since?.in.minor ?? 0
  if (all === 0) return start
  // Rounded down, so that odd cents make nobody late.
  return start + Math.floor(((goal.target.minor - start) * passed) / all)
}

function stand(
  pot: SinkingPot,
  pays: readonly CalendarDate[],
  course: Course | null,
  reachedOn: CalendarDate | null,
  rate: Decimal.Value,
): { status: SinkingStatus; behind: number; ahead: number } {
  const { target, due } = pot.goal
  const alreadyIn = pot.in.minor
  if (course) {
    const [behind, ahead] = [Math.max(0, course.before - alreadyIn), Math.max(0, alreadyIn - course.after)]
    return { status: behind > 0 ? 'behind' : ahead > 0 ? 'ahead' : 'on-track', behind, ahead }
  }
  if (!pot.eachPay) return { status: 'open', behind: 0, ahead: 0 }
  if (reachedOn !== null && reachedOn <= due) {
    const isEarly = pays.some((date) => date > reachedOn)
    const spare = pays.filter((date) => date > reachedOn).length * pot.eachPay.minor
    return { status: isEarly ? 'ahead' : 'on-track', behind: 0, ahead: isEarly ? spare : 0 }
  }
  let sum = new Decimal(alreadyIn)
  for (const _ of pays) sum = sum.times(new Decimal(rate).plus(1)).plus(pot.eachPay.minor)
  return { status: 'behind', behind: Math.max(0, target.minor - sum.floor().toNumber()), ahead: 0 }
}

function behindSince(pot: SinkingPot, schedule: PayTimes, today: CalendarDate): CalendarDate | null {
  const { goal, history } = pot
  if (!goal.since || !history) return null
  const all = paysAfter(schedule, goal.since.date, goal.due)
  let since: CalendarDate | null = null
  for (const [index, pay] of all.entries()) {
    if (pay >= today) break
    let had = goal.since.in.minor
    for (const { date, in: then } of history) if (date <= pay) had = then.minor
    if (had >= courseAt(goal, index + 1, all.length)) since = null
    else since ??= pay
  }
  return since
}
