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
    .replace(
      /[\u0300-\u036f\u200b-\u200f\u202a-\u202e\u061c\u2060\u2066-\u2069\ufeff\u00ad\u0640\u064b-\u0655\u0670\u093c]/gu,
      '',
    )
    .normalize('NFC')
    .replace(/[ßı\u0649\u06cc\u06a9\u0901\u0911]/gu, (letter) => FOLDED[letter] ?? letter)
    .replace(/(?<=[א-ת])(?:["״”]|'')(?=[א-ת])/gu, '')
    .replace(/[‘’ʼ´`׳]/gu, "'")
    .replace(/\s+/gu, ' ')
    .trim()
}

// Letters that shops write in two ways: German ß, Turkish ı (capitals lose it), Arabic and Persian yeh and kaf, Hindi
// nasals. Vowel signs, hamza and nukta fall with the accents; gershayim inside a Hebrew word is left out by many.
const FOLDED: Readonly<Record<string, string>> = {
  ß: 'ss',
  ı: 'i',
  '\u0649': '\u064a',
  '\u06cc': '\u064a',
  '\u06a9': '\u0643',
  '\u0901': '\u0902',
  '\u0911': '\u0906',
}

const TIDY_ALREADY = /^[\x21-\x7e]+(?: [\x21-\x7e]+)*$/
const PLAIN_ASCII = /^[\x20-\x5f\x61-\x7e\n\t]*$/

/** White space collapsed and trimmed; invisible direction marks dropped. What evidence and labels show. */
export function tidy(text: string): string {
  if (TIDY_ALREADY.test(text)) return text
  return text
    .replace(/[\u200b-\u200f\u202a-\u202e\u061c\u2060\u2066-\u2069\ufeff\u00ad]/gu, '')
    .replace(/\s+/gu, ' ')
    .trim()
}

/** Where a phrase was found in a text, and how long it is. */
export interface Hit {
  readonly length: number
  readonly at: number
}

/** The phrases of one language for one purpose. Languages without spaces match anywhere in a text. */
export interface PhraseList<Key> {
  readonly key: Key
  readonly phrases: readonly string[]
  readonly spaced: boolean
}

/** Finds phrases in plain text (see `plain`), each under the key of its list. */
export interface Phrases<Key> {
  /** The longest phrase found under each key. */
  longest(text: string): ReadonlyMap<Key, Hit>
  /** Everything found, in the order of the text. */
  all(text: string): readonly (readonly [Key, Hit])[]
  /** Whether some word of the text is the first of a phrase; a cheap question that most texts of a page answer with no. */
  mayKnow(text: string): boolean
  /** What is found at the very start. */
  atStart(text: string): readonly (readonly [Key, Hit])[]
}

/** Finds the phrases of one list in plain text. */
export interface PhraseFinder {
  /** The longest phrase found, or null. */
  longest(text: string): Hit | null
  /** The first phrase found, or null. */
  first(text: string): Hit | null
  /** Whether the text begins with a phrase. */
  begins(text: string): boolean
  /** Everything found, in the order of the text. */
  all(text: string): Iterable<Hit>
}

interface Entry<Key> {
  readonly key: Key
  readonly text: string
  /** More letters may follow (`versand*`) or stand in front (`*steuer`). */
  readonly open: 'end' | 'start' | null
  readonly spaced: boolean
}

const LETTER = /[\p{L}\p{M}]/u

/**
 * Makes phrases searchable: by their first word, not by one large pattern, because thirty languages have many thousands.
 * A `*` at the end or start stands for more letters of that word; a space also matches a hyphen. Phrases match whole words
 * only, unless the language writes without spaces.
 */
export function phraseIndex<Key>(lists: readonly PhraseList<Key>[]): Phrases<Key> {
  const byStart = new Map<string, Entry<Key>[]>()
  const bySign = new Map<string, Entry<Key>[]>()
  // By the two letters at their closed end: most words are told apart from all of these at once.
  const open = new Map<string, Entry<Key>[]>()
  for (const { key, phrases, spaced } of lists) {
    for (const phrase of phrases) {
      const entry = entryOf(key, phrase, spaced)
      if (entry.text === '') continue
      if (entry.open) put(open, `${entry.open}${closedEnd(entry.text, entry.open)}`, entry)
      else if (spaced) put(byStart, startOf(entry.text), entry)
      else put(bySign, entry.text.charAt(0), entry)
    }
  }

  function openAt(word: string, side: 'start' | 'end'): readonly Entry<Key>[] {
    return (word.length > 1 ? open.get(`${side}${closedEnd(word, side)}`) : undefined) ?? []
  }

  // A list, not a generator: this runs for every short text of a page.
  function mayKnow(text: string): boolean {
    const flat = flatten(text)
    for (let at = 0, end = 0; at < flat.length; at = end) {
      end = wordEnd(flat, at)
      const word = flat.slice(at, end)
      if (byStart.has(word) || bySign.has(flat.charAt(at))) return true
      if (open.size > 0 && (openAt(word, 'end').length > 0 || openAt(word, 'start').length > 0)) return true
    }
    return false
  }

  const all = (text: string): readonly (readonly [Key, Hit])[] => search(text, text.length)

  function search(text: string, before: number): readonly (readonly [Key, Hit])[] {
    const flat = flatten(text)
    const last = Math.min(before, flat.length)
    let found: (readonly [Key, Hit])[] | null = null
    const add = (key: Key, at: number, length: number): void => {
      found ??= []
      found.push([key, { at, length }])
    }
    for (let at = 0; at < last; ) {
      if (flat.charCodeAt(at) === SPACE) {
        at += 1
        continue
      }
      const end = wordEnd(flat, at)
      const word = flat.slice(at, end)
      for (const entry of byStart.get(word) ?? []) if (fits(flat, at, entry)) add(entry.key, at, entry.text.length)
      if (open.size > 0) {
        for (const entry of openAt(word, 'end')) if (word.startsWith(entry.text)) add(entry.key, at, word.length)
        for (const entry of openAt(word, 'start')) if (word.endsWith(entry.text)) add(entry.key, at, word.length)
      }
      at = end
    }
    for (let at = 0; bySign.size > 0 && at < last; at += 1) {
      for (const entry of bySign.get(flat.charAt(at)) ?? []) {
        if (flat.startsWith(entry.text, at)) add(entry.key, at, entry.text.length)
      }
    }
    return found ?? NOTHING
  }

  return {
    longest(text) {
      const best = new Map<Key, Hit>()
      for (const [key, hit] of all(text)) if (hit.length > (best.get(key)?.length ?? 0)) best.set(key, hit)
      return best
    },
    all,
    mayKnow,
    atStart: (text) => search(text, 1),
  }
}

const SPACE = 0x20
const NOTHING: readonly never[] = []

function put<Value>(lists: Map<string, Value[]>, key: string, value: Value): void {
  const list = lists.get(key)
  if (list) list.push(value)
  else lists.set(key, [value])
}

/** `versand*` is known by its first two letters, `*steuer` by its last two. */
function closedEnd(text: string, open: 'start' | 'end'): string {
  return open === 'end' ? text.slice(0, 2) : text.slice(-2)
}

/** The same for a single purpose. */
export function phraseFinder(lists: readonly Omit<PhraseList<true>, 'key'>[]): PhraseFinder {
  const index = phraseIndex(lists.map((list) => ({ ...list, key: true as const })))
  return {
    longest: (text) => index.longest(text).get(true) ?? null,
    all: (text) => index.all(text).map(([, hit]) => hit),
    begins: (text) => index.atStart(text).length > 0,
    first(text) {
      let first: Hit | null = null
      for (const [, hit] of index.all(text)) {
        if (!first || hit.at < first.at || (hit.at === first.at && hit.length > first.length)) first = hit
      }
      return first
    },
  }
}

/** Where the word at `at` ends; a sign is a word of its own. */
function wordEnd(text: string, at: number): number {
  let end = at
  while (end < text.length && isLetter(text, end)) end += 1
  return Math.max(end, at + 1)
}

function isLetter(text: string, at: number): boolean {
  const code = text.charCodeAt(at)
  if (code < 0x80) return code >= 0x61 && code <= 0x7a
  return (code >= 0xd800 && code <= 0xdfff) || LETTER.test(text.charAt(at))
}

/** Same length, so that places in it are places in the text. */
function flatten(text: string): string {
  return !/[-\u2010\u2011]/.test(text) ? text : text.replace(/[-\u2010\u2011]/gu, ' ')
}

function entryOf<Key>(key: Key, phrase: string, spaced: boolean): Entry<Key> {
  const open = phrase.endsWith('*') ? 'end' : phrase.startsWith('*') ? 'start' : null
  return { key, text: flatten(plain(phrase.replaceAll('*', ''))).trim(), open, spaced }
}

/** The word a phrase begins with, or its first sign. */
function startOf(text: string): string {
  return /^[\p{L}\p{M}]+/u.exec(text)?.[0] ?? Array.from(text)[0] ?? ''
}

function fits(flat: string, at: number, { text }: Entry<unknown>): boolean {
  if (!flat.startsWith(text, at)) return false
  const next = flat[at + text.length]
  return next === undefined || !LETTER.test(next) || !LETTER.test(text.at(-1) ?? '')
}
