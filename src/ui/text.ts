import { englishSpeech, fillIn, type Speech } from '../book/say.ts'
import { sayList, setApart } from '../book/set-apart.ts'
import type desk from '../locales/en/desk.json'
import type messages from '../locales/en/messages.json'
import type monthend from '../locales/en/monthend.json'
import type orders from '../locales/en/orders.json'
import type plan from '../locales/en/plan.json'
import type safe from '../locales/en/safe.json'
import { locale, message } from './browser.ts'

/** Keys of the files in `src/locales/en`: `messages` for popup and panel and what all share, the others for the desk. */
export type TextKey =
  | keyof typeof messages
  | keyof typeof desk
  | keyof typeof orders
  | keyof typeof plan
  | keyof typeof monthend
  | keyof typeof safe

type BaseOf<K> = K extends `${infer Base}_other` ? Base : never
/** Keys that come in plural forms: `found` for `found_one` and `found_other`. */
export type PluralKey = BaseOf<TextKey>

type Values = Readonly<Record<string, string>>

/**
 * A text of the extension in the person's language, with `{names}` filled in. A key without a text shows as itself, so
 * that a gap is seen.
 *
 * @example t('tag_to', {pot: 'Piano lessons'}) // Tag to Piano lessons
 */
export function t(key: TextKey, values: Values = {}): string {
  return fillIn(message(key) || key, values)
}

/**
 * A text that depends on a count, by the plural rules of the person's language. `{count}` is the count itself.
 *
 * @example tn('archived_show', 2) // Show 2 archived pots
 */
export function tn(base: PluralKey, count: number, values: Values = {}): string {
  const form = new Intl.PluralRules(locale()).select(count)
  const sentence = message(`${base}_${form}`) || message(`${base}_other`) || base
  return fillIn(sentence, { count: new Intl.NumberFormat(locale()).format(count), ...values })
}

/** Several names as one phrase: "Books, Gifts and Groceries". */
export function listText(names: readonly string[], type: 'conjunction' | 'disjunction' = 'conjunction'): string {
  return sayList(names, locale(), type)
}

/** Short texts in a row with points between them: "Ingunn · 724.00 · every two weeks". Empty ones are left out. */
export function dotted(parts: readonly string[]): string {
  const around = message('undo')
  return parts
    .filter((part) => part !== '')
    .map((part) => setApart(part, around))
    .join(' · ')
}

/** How verdicts are told: the engine's sentences in the browser's language. */
export function speech(): Speech {
  return { locale: locale(), sentence: (key) => message(key) || englishSpeech.sentence(key) }
}
