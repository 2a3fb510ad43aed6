import type { CalendarDate } from '../book/calendar-date.ts'
import type { Household } from '../book/household.ts'
import { fillIn } from '../book/say.ts'
import { formatAmount } from '../money/format.ts'
import type { Money } from '../money/money.ts'
import { planSentences } from './sentences.en.ts'

/** Keys of the sentences a plan is explained in. */
export type PlanSentenceKey = keyof typeof planSentences

/** Bases of the sentences that come in plural forms. */
export type CountedSentence = {
  [K in PlanSentenceKey]: K extends `${infer Base}_one` ? Base : never
}[PlanSentenceKey]

/** A form that some language has of a counted sentence, by CLDR's plural rules: `plan_sinking_few`. */
export type CountedForm = `${CountedSentence}_${Intl.LDMLPluralRule}`

/**
 * How to speak of a plan: a BCP 47 locale for figures and dates, and a sentence per key with `{names}` in it. A plural
 * form that the language does not have is empty, and its `_other` is said.
 */
export interface PlanSpeech {
  readonly locale: string
  readonly sentence: (key: PlanSentenceKey | CountedForm) => string
}

/** English, the language the library speaks by itself. */
export const englishPlanSpeech: PlanSpeech = {
  locale: 'en-GB',
  sentence: (key) => (isEnglish(key) ? planSentences[key] : ''),
}

function isEnglish(key: string): key is PlanSentenceKey {
  return Object.hasOwn(planSentences, key)
}

/** Fills in sentences of one speech, with amounts and days as its readers write them. */
export class Speaker {
  constructor(
    readonly speech: PlanSpeech,
    /** Days of another year than this day's are told with their year. */
    private readonly today: CalendarDate,
  ) {}

  say(key: PlanSentenceKey | CountedForm, values: Readonly<Record<string, string>> = {}): string {
    return fillIn(this.speech.sentence(key), values)
  }

  /** A sentence by a count, by the plural rules of the language. */
  count(base: CountedSentence, count: number, values: Readonly<Record<string, string>>): string {
    const form = `${base}_${new Intl.PluralRules(this.speech.locale).select(count)}` as const
    return this.say(this.speech.sentence(form) === '' ? `${base}_other` : form, values)
  }

  amount(m: Money): string {
    return formatAmount(m, this.speech.locale)
  }

  /** A day as "1 June", or "1 June 2028" in another year. */
  day(date: CalendarDate): string {
    const hasYear = date.slice(0, 4) !== this.today.slice(0, 4)
    return new Intl.DateTimeFormat(this.speech.locale, {
      day: 'numeric',
      month: 'long',
      // A calendar date is an instant only to be formatted, in UTC, so that no zone shifts it.
      timeZone: 'UTC',
      ...(hasYear ? { year: 'numeric' } : {}),
    }).format(new Date(`${date}T00:00:00Z`))
  }

  number(n: number): string {
    return new Intl.NumberFormat(this.speech.locale).format(n)
  }

  percent(part: number, all: number): string {
    return new Intl.NumberFormat(this.speech.locale, { style: 'percent' }).format(part / all)
  }

  /** An amount that comes with each pay: "12.50 a fortnight", or "each pay" where several rhythms run. */
  rate(m: Money, household: Household): string {
    const running = (household.earners ?? []).flatMap((earner) =>
      earner.schedules.filter((s) => s.until === undefined || s.until >= this.today),
    )
    const [only] = running
    const rhythm = running.length === 1 && only ? RHYTHM[only.rhythm] : 'plan_rhythm_pay'
    return this.say(rhythm, { amount: this.amount(m) })
  }
}

const RHYTHM = {
  weekly: 'plan_rhythm_weekly',
  'every-two-weeks': 'plan_rhythm_fortnight',
  'twice-a-month': 'plan_rhythm_half_month',
  monthly: 'plan_rhythm_month',
  'last-working-day': 'plan_rhythm_month',
} as const
