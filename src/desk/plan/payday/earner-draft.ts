import { type CalendarDate, isCalendarDate } from '../../../book/calendar-date.ts'
import type { Earner, PaySchedule } from '../../../book/planning.ts'
import type { CurrencyCode } from '../../../money/currency.ts'
import { ofMinor } from '../../../money/money.ts'
import { changeRhythm } from '../../../plan/change-rhythm.ts'
import { readAmount } from '../../../ui/amount-text.ts'
import { editText } from '../../../ui/money-text.ts'
import { slugOf } from '../../../ui/slug-of.ts'

export const RHYTHMS = ['weekly', 'every-two-weeks', 'twice-a-month', 'monthly', 'last-working-day'] as const
export const WEEKENDS = ['stays', 'before', 'after'] as const

/** An earner while being typed. Another first day begins a new rhythm; the one before holds until the day before it. */
export interface EarnerDraft {
  readonly id: string | null
  readonly name: string
  readonly pay: string
  readonly rhythm: (typeof RHYTHMS)[number]
  readonly first: string
  readonly otherDay: string
  readonly weekend: (typeof WEEKENDS)[number]
  /** Days on which the bank does not pay, in order. */
  readonly daysOff: readonly CalendarDate[]
}

export interface EarnerProblems {
  readonly name?: true
  readonly pay?: true
  readonly first?: true
  readonly otherDay?: true
}

export const blankEarner: EarnerDraft = {
  id: null,
  name: '',
  pay: '',
  rhythm: 'monthly',
  first: '',
  otherDay: '',
  weekend: 'before',
  daysOff: [],
}

/** An earner of the household, for changing them. */
export function earnerDraftOf(earner: Earner, currency: CurrencyCode): EarnerDraft {
  const schedule = earner.schedules.at(-1)
  return {
    id: earner.id,
    name: earner.name,
    pay: earner.pay === 0 ? '' : editText(ofMinor(currency, earner.pay)),
    rhythm: schedule?.rhythm ?? 'monthly',
    first: schedule?.first ?? '',
    otherDay: schedule?.rhythm === 'twice-a-month' ? String(schedule.days[1]) : '',
    weekend: schedule?.weekend ?? 'stays',
    daysOff: schedule?.daysOff ?? [],
  }
}

/** The household's earners with the one that was typed, or what is wrong with it. */
export function checkEarner(
  draft: EarnerDraft,
  earners: readonly Earner[],
  currency: CurrencyCode,
  language: string,
):
  | { readonly earners: readonly Earner[]; readonly problems: null }
  | { readonly earners: null; readonly problems: EarnerProblems } {
  const pay = draft.pay.trim() === '' ? ofMinor(currency, 0) : moneyOf(draft.pay, currency, language)
  const first = isCalendarDate(draft.first) ? draft.first : null
  const day = /^\d{1,2}$/.test(draft.otherDay.trim()) ? Number(draft.otherDay) : 0
  const needsDay = draft.rhythm === 'twice-a-month' && (day < 1 || day > 31)
  if (draft.name.trim() === '' || pay === null || first === null || needsDay) {
    return {
      earners: null,
      problems: {
        ...(draft.name.trim() === '' ? { name: true as const } : {}),
        ...(pay === null ? { pay: true as const } : {}),
        ...(first === null ? { first: true as const } : {}),
        ...(needsDay ? { otherDay: true as const } : {}),
      },
    }
  }
  const before = earners.find((earner) => earner.id === draft.id)
  const taken = earners.map((earner) => earner.id)
  const schedules = schedulesOf(before, scheduleOf(draft, first, day, before?.schedules.at(-1)))
  const earner = { id: before?.id ?? slugOf(draft.name, taken), name: draft.name.trim(), pay: pay.minor, schedules }
  return {
    earners: before ? earners.map((one) => (one === before ? earner : one)) : [...earners, earner],
    problems: null,
  }
}

function moneyOf(text: string, currency: CurrencyCode, language: string) {
  const read = readAmount(text, currency, language)
  return read.ok ? read.money : null
}

/** The same beginning is the same rhythm put right; another one is a change, and what was before stays as it was. */
function schedulesOf(before: Earner | undefined, next: PaySchedule): readonly PaySchedule[] {
  const last = before?.schedules.at(-1)
  if (!before || !last) return [next]
  return last.first === next.first ? [...before.schedules.slice(0, -1), next] : changeRhythm(before.schedules, next)
}

function scheduleOf(
  draft: EarnerDraft,
  first: CalendarDate,
  otherDay: number,
  last: PaySchedule | undefined,
): PaySchedule {
  const daysOff = draft.daysOff.length > 0 ? { daysOff: draft.daysOff } : {}
  const base = { first, ...daysOff, ...(draft.weekend === 'stays' ? {} : { weekend: draft.weekend }) }
  // A first pay that is itself the last of two days, or a day of the month kept from before, stays what it was.
  const day = last?.rhythm === 'monthly' && last.first === first ? last.day : Number(first.slice(8))
  if (draft.rhythm === 'monthly') return { ...base, rhythm: 'monthly', day }
  if (draft.rhythm === 'twice-a-month') {
    const own = last?.rhythm === 'twice-a-month' && last.first === first ? last.days[0] : Number(first.slice(8))
    return { ...base, rhythm: 'twice-a-month', days: [own, otherDay] }
  }
  return { ...base, rhythm: draft.rhythm }
}
