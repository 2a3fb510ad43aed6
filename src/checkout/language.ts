import { KEPT_WITH } from './kept-with.ts'
import type { Lexicon } from './lexicon/lexicon.ts'
import { type Phrases, phraseIndex, plain } from './words.ts'

const MOST_TEXTS = 400
const LONGEST_TEXT = 60
// A page's own word for its language is believed unless another language explains clearly more of its labels.
const BELIEVED = 0.7
const CLOSE = 0.6

const everyWord = new WeakMap<readonly Lexicon[], Phrases<string>>()

/**
 * The lexicons that suit a page: that of its `lang` where its labels and buttons speak that language, else those that
 * explain most of them. A theme's `lang` is often wrong, and a page may mix two languages. All of them when nothing tells.
 *
 * @param texts short texts of the page: labels, buttons, headings
 * @param lexicons the languages to choose from
 * @example lexiconsFor('en', ['Sous-total', 'Livraison', 'Montant à régler'], lexicons)[0]?.language // 'fr'
 */
export function lexiconsFor(
  lang: string | null,
  texts: Iterable<string>,
  lexicons: readonly Lexicon[],
): readonly Lexicon[] {
  if (lexicons.length === 1) return lexicons
  const words = everyWord.get(lexicons) ?? phraseIndex(lexicons.map(allOf))
  everyWord.set(lexicons, words)
  const scores = new Map<string, number>()
  let count = 0
  for (const text of texts) {
    if (text.length > LONGEST_TEXT) continue
    count += 1
    if (count > MOST_TEXTS) break
    for (const [language, hit] of words.longest(plain(text))) {
      scores.set(language, (scores.get(language) ?? 0) + hit.length)
    }
  }
  const best = Math.max(0, ...scores.values())
  if (best === 0) return lexicons
  const subtag = lang?.trim().toLowerCase().split(/[-_]/u)[0] ?? ''
  const declared = KEPT_WITH[subtag] ?? subtag
  const reaches = (share: number) => (lexicon: Lexicon) => (scores.get(lexicon.language) ?? 0) >= share * best
  const own = lexicons.filter((lexicon) => lexicon.language === declared && reaches(BELIEVED)(lexicon))
  return own.length > 0 ? own : lexicons.filter(reaches(CLOSE))
}

function allOf(lexicon: Lexicon): { key: string; phrases: string[]; spaced: boolean } {
  const { labels, controls, stages } = lexicon
  const phrases = [labels, controls, stages].flatMap((lists) => Object.values(lists).flat())
  return { key: lexicon.language, phrases: [...new Set(phrases)], spaced: lexicon.spaced }
}
