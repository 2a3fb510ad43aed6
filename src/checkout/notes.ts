import { isCurrencyCode } from '../money/currency.ts'
import { countIn } from './count-words.ts'
import { type Meaning, meaningOf } from './label.ts'
import type { Words } from './stream.ts'
import { taxCurrencies } from './tax-names.ts'
import type { Vocabulary } from './vocabulary.ts'

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
// A page that never repeats itself must not be kept for ever.
const MOST_KEPT = 20_000
const NONE: readonly string[] = []

const kept = new WeakMap<Vocabulary, Map<string, Notes>>()

/** What these words say. */
export function notesOf(item: Words, words: Vocabulary): Notes {
  if (item.notes?.words === words) return item.notes
  const notes = notesOn(item.text, words)
  item.notes = notes
  return notes
}

function notesOn(text: string, words: Vocabulary): Notes {
  let known = kept.get(words)
  if (!known || known.size > MOST_KEPT) {
    known = new Map()
    kept.set(words, known)
  }
  const before = known.get(text)
  if (before) return before
  const notes = {
    words,
    meaning: meaningOf(text, words),
    codes: text.length <= LONGEST_WITH_CODE ? codesIn(text) : NONE,
    taxes: taxCurrencies(text),
    count: countIn(text, words),
  }
  known.set(text, notes)
  return notes
}

/** The ISO 4217 codes that stand alone in a text. */
export function codesIn(text: string): readonly string[] {
  if (!/[A-Z]{3}/.test(text)) return NONE
  return (text.match(CODES) ?? NONE).filter(isCurrencyCode)
}
