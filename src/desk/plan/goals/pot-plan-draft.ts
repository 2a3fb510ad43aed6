import { type CalendarDate, isCalendarDate } from '../../../book/calendar-date.ts'
import type { Pot } from '../../../book/household.ts'
import type { EnvelopeWish, Importance, PotGoal, PotPlan } from '../../../book/planning.ts'
import type { CurrencyCode } from '../../../money/currency.ts'
import { ofMinor } from '../../../money/money.ts'
import { type AmountProblem, readAmount } from '../../../ui/amount-text.ts'
import { editText } from '../../../ui/money-text.ts'

export const IMPORTANCES = ['1', '2', '3'] as const
export const SPLITS = ['set', 'cash', 'card', 'learned'] as const
export const WISHES = ['none', 'small', 'large'] as const
export const BUDGETS = ['pay', 'month'] as const

/** What is planned for a pot, while it is typed. */
export interface PotPlanDraft {
  readonly importance: (typeof IMPORTANCES)[number]
  readonly budget: (typeof BUDGETS)[number]
  readonly fillCash: string
  readonly fillCard: string
  readonly monthly: string
  readonly target: string
  readonly due: string
  readonly everyYear: boolean
  /** Yearly interest in per cent. */
  readonly interest: string
  readonly reserveMonths: string
  readonly split: (typeof SPLITS)[number]
  readonly wish: (typeof WISHES)[number]
}

type AmountField = 'fillCash' | 'fillCard' | 'monthly' | 'target'

export type PotPlanProblems = { readonly [F in AmountField]?: AmountProblem } & {
  readonly due?: true
  readonly interest?: true
  readonly reserveMonths?: true
}

/** A pot's plan, for changing it. */
export function planDraftOf(pot: Pot, currency: CurrencyCode): PotPlanDraft {
  const { plan } = pot
  const text = (minor: number | undefined): string => (minor ? editText(ofMinor(currency, minor)) : '')
  const importance = plan?.importance ?? (pot.kind === 'reserve' ? 3 : 2)
  return {
    importance: `${importance}`,
    budget: plan?.monthly === undefined ? 'pay' : 'month',
    fillCash: text(pot.fill.cash),
    fillCard: text(pot.fill.card),
    monthly: text(plan?.monthly),
    target: text(plan?.goal?.target),
    due: plan?.goal?.due ?? '',
    everyYear: plan?.goal?.everyYears !== undefined,
    interest: plan?.goal?.yearlyRate === undefined ? '' : percentText(plan.goal.yearlyRate),
    reserveMonths: plan?.reserveMonths === undefined ? '' : String(plan.reserveMonths),
    split: plan?.split ?? 'set',
    wish: plan?.wish ?? 'none',
  }
}

/** The plan as the worker takes it, or what is wrong with it. */
export function checkPlanDraft(
  draft: PotPlanDraft,
  pot: Pot,
  currency: CurrencyCode,
  language: string,
):
  | { readonly ask: { plan: PotPlan; fill: { cash: number; card: number } }; readonly problems: null }
  | { readonly ask: null; readonly problems: PotPlanProblems } {
  const problems: { -readonly [K in keyof PotPlanProblems]: PotPlanProblems[K] } = {}
  const amount = (field: AmountField): number => {
    if (draft[field].trim() === '') return 0
    const read = readAmount(draft[field], currency, language)
    if (read.ok) return read.money.minor
    problems[field] = read.problem
    return 0
  }
  const fill = {
    cash: pot.sides === 'card' ? 0 : amount('fillCash'),
    card: pot.sides === 'cash' ? 0 : amount('fillCard'),
  }
  const isMonthly = draft.budget === 'month'
  const monthly = isMonthly ? amount('monthly') : 0
  if (isMonthly && monthly === 0) problems.monthly ??= 'empty'
  const goal = pot.kind === 'sinking' ? readGoal(draft, amount('target'), problems) : null
  const months = draft.reserveMonths.trim()
  const hasReserve = pot.kind === 'reserve' && months !== ''
  if (hasReserve && !/^[1-9]\d?$/.test(months)) problems.reserveMonths = true
  if (Object.keys(problems).length > 0) return { ask: null, problems }
  const importance: Importance = draft.importance === '1' ? 1 : draft.importance === '2' ? 2 : 3
  const wish: EnvelopeWish | null = draft.wish === 'none' ? null : draft.wish
  const plan: PotPlan = {
    importance,
    ...(isMonthly ? { monthly } : {}),
    ...(goal ? { goal } : {}),
    ...(hasReserve ? { reserveMonths: Number(months) } : {}),
    ...(draft.split === 'set' ? {} : { split: draft.split }),
    ...(wish ? { wish } : {}),
  }
  return { ask: { plan, fill }, problems: null }
}

function readGoal(
  draft: PotPlanDraft,
  target: number,
  problems: { -readonly [K in keyof PotPlanProblems]: PotPlanProblems[K] },
): PotGoal | null {
  if (draft.target.trim() === '' && draft.due === '') return null
  if (target === 0) problems.target ??= 'empty'
  const due = dueOf(draft.due)
  if (due === null) problems.due = true
  const rate = rateOf(draft.interest)
  if (rate === null) problems.interest = true
  if (due === null) return null
  return {
    target,
    due,
    ...(draft.everyYear ? { everyYears: 1 } : {}),
    ...(rate ? { yearlyRate: rate } : {}),
  }
}

function dueOf(text: string): CalendarDate | null {
  return isCalendarDate(text) ? text : null
}

/** "2.5" per cent is the rate `0.025`; empty is none; null when it cannot be read. */
function rateOf(text: string): string | undefined | null {
  const match = /^(\d{1,2})(?:[.,](\d{1,4}))?\s*%?$/.exec(text.trim())
  if (text.trim() === '') return undefined
  if (!match) return null
  return `0.${(match[1] ?? '').padStart(2, '0')}${match[2] ?? ''}`
}

function percentText(rate: string): string {
  const digits = rate.slice(2).padEnd(2, '0')
  const fraction = digits.slice(2).replace(/0+$/, '')
  return `${Number(digits.slice(0, 2))}${fraction === '' ? '' : `.${fraction}`}`
}
