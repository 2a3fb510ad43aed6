import { isCurrencyCode } from '../money/currency.ts'
import { countIn } from './count-words.ts'
import { type Meaning, meaningOf } from './label.ts'
import type { Words } from './stream.ts'
import { taxCurrencies } from './tax-names.ts'
import { oncePerText, type Vocabulary } from './vocabulary.ts'

/** What a run of words says by itself, in the languages it is read in: worked out once for each distinct text. */
export interface Notes {
  readonly words: Vocabulary
  readonly meaning: Meaning | null
  /** ISO 4217 codes in it, where the text is short. */
  readonly codes: readonly string[]
  /** The currencies of the places whose taxes it names. */
  readonly taxes: readonly string[]
  /** How many of a thing it says, and whether it names the thing too. */
  readonly count: { readonly quantity: number; readonly named: boolean } | null
}

const CODES = /(?<![\p{L}\d])[A-Z]{3}(?![\p{L}\d])/gu
const LONGEST_WITH_CODE = 80
const NONE: readonly string[] = []

/** What these words say. */
export function notesOf(item: Words, words: Vocabulary): Notes {
  if (item.notes?.words === words) return item.notes
  const notes = notesOn(item.text, words)
  item.notes = notes
  return notes
}

const notesOn = oncePerText((text, words): Notes => {
  return {
    words,
    meaning: meaningOf(text, words),
    codes: text.length <= LONGEST_WITH_CODE ? codesIn(text) : NONE,
    taxes: taxCurrencies(text),
    count: countIn(text, words),
  }
})

/** The ISO 4217 codes that stand alone in a text. */
export function codesIn(text: string): readonly string[] {
  if (!/[A-Z]{3}/.test(text)) return NONE
  return (text.match(CODES) ?? NONE).filter(isCurrencyCode)
}
