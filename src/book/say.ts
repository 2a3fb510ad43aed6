import { formatAmount } from '../money/format.ts'
import { ofMinor } from '../money/money.ts'
import type { Reason } from './assess.ts'
import { sayDate } from './calendar-date.ts'
import { findPot, type Household } from './household.ts'
import { englishSentences } from './sentences.en.ts'
import { sayList, setApart } from './set-apart.ts'

/** Keys of the sentences a verdict is told in. */
export type SentenceKey = keyof typeof englishSentences

/** How to speak: a BCP 47 locale for figures and dates, and a sentence per key with `{names}` in it. */
export interface Speech {
  readonly locale: string
  readonly sentence: (key: SentenceKey) => string
}

/** English, the language the library speaks by itself. */
export const englishSpeech: Speech = { locale: 'en-GB', sentence: (key) => englishSentences[key] }

const JUDGEMENT: Record<Reason['code'], SentenceKey> = {
  fits: 'reason_fits',
  'uses-notes': 'reason_uses_notes',
  'below-floor': 'reason_below_floor',
  'below-zero': 'reason_below_zero',
  'cash-only': 'reason_cash_only',
  'renewal-ahead': 'reason_renewal_ahead',
}

/**
 * A reason in sentences a person can read, with its figures: what the pot has, what the order does to it, and when it is
 * filled next (said only where waiting would help). Amounts carry no currency sign: they are all of the book's currency.
 *
 * @example "Piano lessons has 41.20 left: 38.00 cash, 12.50 card, 9.30 held. This order of 55.90 is 14.70 too much.
 *   Next fill: Friday 4 December, 60.00."
 */
export function sayReason(household: Household, reason: Reason, speech: Speech = englishSpeech): string {
  const pot = findPot(household, reason.pot)
  const say = (key: SentenceKey, values: Record<string, string>): string => fillIn(speech.sentence(key), values)
  const text = (m: Parameters<typeof formatAmount>[0]): string => formatAmount(m, speech.locale)
  const said = [
    say('reason_state', {
      pot: pot.name,
      left: text(reason.before.left),
      cash: text(reason.before.cash),
      card: text(reason.before.card),
      held: text(reason.before.held),
    }),
    say(JUDGEMENT[reason.code], {
      pot: pot.name,
      amount: text(reason.amount),
      after: text(reason.after.left),
      short: text(reason.short),
      notes: text(reason.notesSpokenFor),
      floor: text(ofMinor(household.currency, pot.floor)),
      ahead: sayAhead(reason, speech),
    }),
  ]
  if (reason.nextFill && reason.outcome !== 'allow' && reason.code !== 'cash-only') {
    said.push(
      say('reason_next_fill', {
        date: sayDate(reason.nextFill.date, speech.locale),
        amount: text(reason.nextFill.amount),
      }),
    )
  }
  return said.join(' ')
}

/** "Film club 12.99 on Friday 4 December and Cloud storage 3.50 on Saturday 5 December" */
function sayAhead(reason: Reason, speech: Speech): string {
  const said = (reason.ahead ?? []).map((due) =>
    fillIn(speech.sentence('reason_due'), {
      name: due.name,
      amount: formatAmount(due.amount, speech.locale),
      date: sayDate(due.date, speech.locale),
    }),
  )
  return sayList(said, speech.locale)
}

/**
 * Puts values into a sentence's `{names}`; in a sentence that runs right to left each is set apart. A name without a value
 * stays as it is, so that a gap is seen.
 */
export function fillIn(sentence: string, values: Readonly<Record<string, string>>): string {
  return sentence.replace(/\{(\w+)\}/g, (whole, name: string) => setApart(values[name] ?? whole, sentence))
}
