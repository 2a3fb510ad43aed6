/**
 * The form in which words are compared: no case, no accents of European scripts, one kind of apostrophe and space.
 * The advice beside the EU's order-button words is the source: fold case without a locale, collapse white space.
 *
 * @example plain('Zahlungspflichtig\u00a0BESTELLEN ') // 'zahlungspflichtig bestellen'
 */
export function plain(text: string): string {
  if (PLAIN_ASCII.test(text)) return text.toLowerCase().replace(/\s+/gu, ' ').trim()
  return text
    .toLowerCase()
    .normalize('NFD')
    .replace(/[\u0300-\u036f\u200b-\u200f\u061c\u2060\ufeff\u00ad]/gu, '')
    .normalize('NFC')
    .replace(/ß/gu, 'ss')
    .replace(/[‘’ʼ´`]/gu, "'")
    .replace(/\s+/gu, ' ')
    .trim()
}

const PLAIN_ASCII = /^[\x20-\x5f\x61-\x7e\n\t]*$/

/** White space collapsed and trimmed; invisible direction marks dropped. What evidence and labels show. */
export function tidy(text: string): string {
  return text
    .replace(/[\u200b-\u200f\u061c\u2060\ufeff\u00ad]/gu, '')
    .replace(/\s+/gu, ' ')
    .trim()
}

/** Where phrases were found in a text: the longest one, and where it begins. */
export interface Hit {
  readonly length: number
  readonly at: number
}

/** Finds phrases of one list in plain text. */
export interface PhraseFinder {
  /** The longest phrase found, or null. */
  longest(text: string): Hit | null
  /** The first phrase found, or null. */
  first(text: string): Hit | null
  /** Whether the whole text is one of the phrases. */
  whole(text: string): boolean
}

/** A list of phrases of one language. Phrases of languages without spaces match anywhere in a text. */
export interface PhraseList {
  readonly phrases: readonly string[]
  readonly spaced: boolean
}

const NOTHING: PhraseFinder = { longest: () => null, first: () => null, whole: () => false }

/**
 * Builds a finder. A `*` at either end of a word stands for more letters (`versand*`, `*steuer`); a space matches
 * spaces and hyphens. Phrases match whole words only, unless the language writes without spaces.
 */
export function phraseFinder(lists: readonly PhraseList[]): PhraseFinder {
  const sources = lists.flatMap(({ phrases, spaced }) => phrases.map((phrase) => phraseSource(phrase, spaced)))
  if (sources.length === 0) return NOTHING
  // Longest first: of the phrases that begin at one place, the alternation then takes the longest.
  sources.sort((a, b) => b.length - a.length)
  const union = sources.join('|')
  const anywhere = new RegExp(union, 'gu')
  const entire = new RegExp(`^(?:${union})$`, 'u')
  return {
    longest(text) {
      let best: Hit | null = null
      for (const match of text.matchAll(anywhere)) {
        if (!best || match[0].length > best.length) best = { length: match[0].length, at: match.index }
      }
      return best
    },
    first(text) {
      for (const match of text.matchAll(anywhere)) return { length: match[0].length, at: match.index }
      return null
    },
    whole: (text) => entire.test(text),
  }
}

function phraseSource(phrase: string, spaced: boolean): string {
  const body = plain(phrase)
    .replace(/[.+?^${}()|[\]\\/]/gu, '\\$&')
    .replace(/\*/gu, '[\\p{L}\\p{M}]*')
    .replace(/ /gu, '[ \\-]+')
  if (!spaced) return body
  const before = /^[\p{L}*]/u.test(phrase) ? '(?<![\\p{L}\\p{M}])' : ''
  const after = /[\p{L}*]$/u.test(phrase) ? '(?![\\p{L}\\p{M}])' : ''
  return `${before}${body}${after}`
}
