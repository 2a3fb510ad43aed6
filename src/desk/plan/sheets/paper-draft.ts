import { type CalendarDate, isCalendarDate } from '../../../book/calendar-date.ts'
import type { CurrencyCode } from '../../../money/currency.ts'
import { toDecimal } from '../../../money/money.ts'
import { type AmountProblem, readAmount } from '../../../ui/amount-text.ts'

/** A line of a paper sheet while it is typed in. */
export interface PaperDraft {
  readonly date: string
  readonly purpose: string
  readonly way: 'in' | 'out'
  readonly side: 'cash' | 'card'
  readonly amount: string
}

export interface PaperProblems {
  readonly date?: true
  readonly amount?: AmountProblem
}

/** A line as the worker takes it, without its id and pot. */
export type PaperLine = Omit<PaperDraft, 'date'> & { readonly date: CalendarDate }

/** The line to go on with after another: the same day, nothing else. */
export function nextDraft(before: PaperDraft): PaperDraft {
  return { ...before, purpose: '', amount: '' }
}

/** Whether nothing was typed into a line; it is then left out. */
export function isBlank(draft: PaperDraft): boolean {
  return draft.purpose.trim() === '' && draft.amount.trim() === ''
}

/** Checks a typed line. */
export function checkPaper(
  draft: PaperDraft,
  currency: CurrencyCode,
  language: string,
): { readonly line: PaperLine; readonly problems: null } | { readonly line: null; readonly problems: PaperProblems } {
  const read = readAmount(draft.amount, currency, language)
  const isDay = isCalendarDate(draft.date)
  if (read.ok && read.money.minor > 0 && isCalendarDate(draft.date)) {
    return { line: { ...draft, date: draft.date, amount: toDecimal(read.money) }, problems: null }
  }
  const amount = read.ok ? (read.money.minor > 0 ? null : 'empty') : read.problem
  return { line: null, problems: { ...(isDay ? {} : { date: true as const }), ...(amount ? { amount } : {}) } }
}
