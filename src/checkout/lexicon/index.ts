import { de } from './de.ts'
import { en } from './en.ts'
import { es } from './es.ts'
import { fr } from './fr.ts'
import type { Lexicon } from './lexicon.ts'
import { nl } from './nl.ts'

export type { ControlKind, LabelKind, Lexicon, StageWords } from './lexicon.ts'

/** Every language the reader knows. To add one: a file beside these, and its name here. */
export const lexicons: readonly Lexicon[] = [en, fr, de, es, nl]

/**
 * The lexicons that suit a page's `lang`: that language alone, or all of them when the page does not say or its language
 * is not known. A theme's `lang` is often wrong, so the reader comes back with all of them when one gave nothing.
 *
 * @example lexiconsFor('fr-CA') // [fr]
 */
export function lexiconsFor(lang: string | null): readonly Lexicon[] {
  const language = lang?.trim().toLowerCase().split(/[-_]/u)[0]
  const own = lexicons.filter((lexicon) => lexicon.language === language)
  return own.length > 0 ? own : lexicons
}
