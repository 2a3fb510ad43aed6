import type { Lexicon } from './lexicon.ts'

/** Letters that shops of one language write in two ways: what stands in the lists (patterns need `g`), and what is written instead. */
export type Spelling = readonly [from: string | RegExp, to: string]

/**
 * A lexicon with every phrase in each of its usual spellings, so that the lists need to hold only one of them. For letters
 * that folding leaves alone: Turkish `ı`, which capitals turn into `i`; Arabic hamza, often left out; Hebrew gershayim.
 *
 * @example alsoSpelt(tr, [['ı', 'i']]) // "alışveriş" is found in "ALIŞVERİŞ" too
 */
export function alsoSpelt(lexicon: Lexicon, spellings: readonly Spelling[]): Lexicon {
  const more = (phrases: readonly string[]): readonly string[] => {
    let all = [...new Set(phrases)]
    for (const [from, to] of spellings)
      all = [...new Set([...all, ...all.map((phrase) => phrase.replaceAll(from, to))])]
    return all
  }
  return {
    language: lexicon.language,
    spaced: lexicon.spaced,
    labels: eachList(lexicon.labels, more),
    rates: more(lexicon.rates),
    bounds: more(lexicon.bounds),
    included: more(lexicon.included),
    excluded: more(lexicon.excluded),
    plus: more(lexicon.plus),
    later: more(lexicon.later),
    quantity: more(lexicon.quantity),
    orderNumber: more(lexicon.orderNumber),
    otherNumber: more(lexicon.otherNumber),
    controls: eachList(lexicon.controls, more),
    stages: eachList(lexicon.stages, more),
    terms: more(lexicon.terms),
  }
}

function eachList<Key extends string>(
  lists: Readonly<Record<Key, readonly string[]>>,
  more: (phrases: readonly string[]) => readonly string[],
): Record<Key, readonly string[]> {
  const made: Record<Key, readonly string[]> = { ...lists }
  for (const key in lists) made[key] = more(lists[key])
  return made
}
