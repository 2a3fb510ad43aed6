import type { Pot } from '../book/household.ts'

/** Letters as people type them in a hurry: no case, no accents. */
export function fold(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLocaleLowerCase()
}

/** A pot that the first words of a text may mean, and how many of the words name it. */
export interface PotMatch {
  readonly pot: Pot
  readonly words: number
}

/**
 * The pots that the first words may mean, best first: each word must begin the next word of the name. More words and a
 * name's first word count more; a whole name beats a beginning. Pots that fit equally well stay in their order.
 *
 * @example matchPots(pots, ['piano', 'les', 'june'])[0] // {pot: Piano lessons, words: 2}
 */
export function matchPots(pots: readonly Pot[], words: readonly string[]): PotMatch[] {
  const typed = words.map(fold)
  return pots
    .map((pot) => ({ pot, ...score(fold(pot.name).split(/\s+/), typed) }))
    .filter((m) => m.words > 0)
    .sort((a, b) => b.score - a.score)
    .map(({ pot, words: count }) => ({ pot, words: count }))
}

function score(name: readonly string[], typed: readonly string[]): { words: number; score: number } {
  let best = { words: 0, score: 0 }
  for (let start = 0; start < name.length; start++) {
    let words = 0
    let whole = 0
    while (typed[words] && name[start + words]?.startsWith(typed[words] ?? '')) {
      if (name[start + words] === typed[words]) whole += 1
      words += 1
    }
    const isAll = start === 0 && whole === name.length
    const points = words === 0 ? 0 : words * 8 + whole * 2 + (start === 0 ? 1 : 0) + (isAll ? 4 : 0)
    if (points > best.score) best = { words, score: points }
  }
  return best
}

/**
 * Where typing letters in a list leads: the next name that begins with them, else the next with a word that does.
 *
 * @param from the place now; a single letter typed again goes on from there
 * @returns the place, or -1 when no name fits
 */
export function typeAhead(names: readonly string[], typed: string, from: number): number {
  const letters = fold(typed)
  const sameLetter = [...letters].every((c) => c === letters[0])
  const wanted = sameLetter ? (letters[0] ?? '') : letters
  const first = from + (sameLetter ? 1 : 0)
  const order = names.map((_, i) => (i + Math.max(0, first)) % names.length)
  const begins = order.find((i) => fold(names[i] ?? '').startsWith(wanted))
  const within = order.find((i) => fold(names[i] ?? '').includes(` ${wanted}`))
  return begins ?? within ?? -1
}
