import type { OwnCommands } from '../../src/background/protocol.ts'
import { type CalendarDate, isCalendarDate } from '../../src/book/calendar-date.ts'
import type { PaySchedule } from '../../src/book/planning.ts'
import { type CurrencyCode, isCurrencyCode } from '../../src/money/currency.ts'
import { checkPot, type PotDraft, type PotProblems, potDraftFrom } from '../../src/ui/pot-draft.ts'

export const RHYTHMS = ['none', 'weekly', 'every-two-weeks', 'twice-a-month', 'monthly', 'last-working-day'] as const
export type Rhythm = (typeof RHYTHMS)[number]

/** The first run while it is typed. */
export interface FirstRunDraft {
  readonly currency: CurrencyCode
  readonly rhythm: Rhythm
  /** `YYYY-MM-DD`, or what the date field gives while it is not whole. */
  readonly nextPay: string
  /** Twice a month: the other day. */
  readonly otherDay: string
  readonly pots: readonly (PotDraft & { readonly row: number })[]
}

/** What is wrong with it. `pots` goes by row. */
export interface FirstRunProblems {
  readonly nextPay?: 'missing' | 'past'
  readonly otherDay?: 'bad'
  readonly noPots?: true
  readonly pots: ReadonlyMap<number, PotProblems>
}

export type FirstRunCheck =
  | { readonly ask: OwnCommands['household.create']['ask']; readonly problems: null }
  | { readonly ask: null; readonly problems: FirstRunProblems }

/**
 * Checks the whole first run.
 *
 * @param today the next pay cannot lie before it
 * @param timeZone IANA name, for the household's "today"
 */
export function checkFirstRun(
  draft: FirstRunDraft,
  today: CalendarDate,
  timeZone: string,
  language: string,
): FirstRunCheck {
  const { currency, rhythm, nextPay } = draft
  const problems: { -readonly [K in keyof Omit<FirstRunProblems, 'pots'>]: FirstRunProblems[K] } = {}
  const pots = []
  const wrongPots = new Map<number, PotProblems>()
  for (const row of draft.pots) {
    const others = draft.pots.filter((p) => p !== row).map((p) => p.name)
    const taken = pots.map((p) => p.id)
    const checked = checkPot(row, others, taken, currency, language)
    if (checked.problems) wrongPots.set(row.row, checked.problems)
    else pots.push(checked.pot)
  }
  if (draft.pots.length === 0) problems.noPots = true
  let schedule: PaySchedule | null = null
  if (rhythm !== 'none') {
    if (!isCalendarDate(nextPay)) problems.nextPay = 'missing'
    else if (nextPay < today) problems.nextPay = 'past'
    else schedule = scheduleOf(rhythm, nextPay, Number(draft.otherDay))
    if (rhythm === 'twice-a-month' && !isDay(draft.otherDay)) problems.otherDay = 'bad'
  }
  if (wrongPots.size > 0 || Object.keys(problems).length > 0) {
    return { ask: null, problems: { ...problems, pots: wrongPots } }
  }
  return { ask: { currency, timeZone, schedule, pots }, problems: null }
}

function scheduleOf(rhythm: Exclude<Rhythm, 'none'>, first: CalendarDate, otherDay: number): PaySchedule {
  const day = Number(first.slice(8))
  if (rhythm === 'monthly') return { rhythm, first, day }
  if (rhythm === 'twice-a-month') return { rhythm, first, days: [day, otherDay] }
  return { rhythm, first }
}

function isDay(text: string): boolean {
  return /^\d{1,2}$/.test(text.trim()) && Number(text) >= 1 && Number(text) <= 31
}

/** What was kept of an earlier start, or the given beginning. */
export function firstRunFrom(kept: unknown, beginning: FirstRunDraft): FirstRunDraft {
  if (typeof kept !== 'object' || kept === null) return beginning
  const fields = new Map<string, unknown>(Object.entries(kept))
  const text = (field: string): string => {
    const value = fields.get(field)
    return typeof value === 'string' ? value : ''
  }
  const pots = fields.get('pots')
  const currency = text('currency')
  return {
    currency: isCurrencyCode(currency) ? currency : beginning.currency,
    rhythm: RHYTHMS.find((r) => r === text('rhythm')) ?? 'none',
    nextPay: text('nextPay'),
    otherDay: text('otherDay'),
    pots: Array.isArray(pots) ? pots.map((pot, row) => ({ ...potDraftFrom(pot), row })) : beginning.pots,
  }
}
