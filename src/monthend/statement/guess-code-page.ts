import { type CodePage, codePages } from './code-pages.ts'

/** The pages that are guessed, the likeliest first: equal evidence goes to the earlier one. */
const GUESSED = [
  'windows-1252',
  'iso-8859-15',
  'windows-1250',
  'iso-8859-2',
  'windows-1251',
  'windows-1253',
  'cp850',
  'cp852',
  'macintosh',
] as const satisfies readonly CodePage[]

/** Rare where they are letters of the page at all, so a sign of the wrong page; from general knowledge, no source. */
const RARE = new Set([...'ÿÐðÞþΰΐŸƒ¤¦¬¨¸¯ˇ˘˙˛˝'])
const LETTER = /\p{L}/u
const HIGH_LETTER = /^[\u0080-\uFFFF]$/u
/** How many words with letters beyond ASCII are looked at. */
const WORDS = 2000

/**
 * Guesses which single-byte encoding a text is in from what its upper bytes would say: letters make words, a sign in the
 * middle of a word, a capital behind a small letter or a byte without meaning speak against a page. No source: evidence
 * only, so the caller shows the answer.
 *
 * @returns the page, and `sure: false` when a page of other letters explains the bytes just as well
 */
export function guessCodePage(bytes: Uint8Array): { page: CodePage; sure: boolean } {
  const words = highWords(bytes)
  const scored = GUESSED.map((page) => ({ page, faults: faultsOf(words, codePages[page]) }))
  const least = Math.min(...scored.map((s) => s.faults))
  const best = scored.filter((s) => s.faults === least)
  const page = best[0]?.page ?? 'windows-1252'
  const read = (p: CodePage): string => words.map((w) => decodeWord(w, codePages[p])).join(' ')
  return { page, sure: best.every((other) => read(other.page) === read(page)) }
}

/** The words of the file that hold a byte above ASCII, with the bytes that touch them, each once. */
function highWords(bytes: Uint8Array): number[][] {
  const found = new Map<string, number[]>()
  for (let i = 0; i < bytes.length && found.size < WORDS; i++) {
    if ((bytes[i] ?? 0) < 0x80) continue
    let start = i
    while (start > 0 && i - start < 40 && isWordByte(bytes[start - 1])) start -= 1
    let end = i + 1
    while (end < bytes.length && end - i < 40 && isWordByte(bytes[end])) end += 1
    const word = [...bytes.subarray(start, end)]
    found.set(word.join(), word)
    i = end
  }
  return [...found.values()]
}

function isWordByte(byte: number | undefined): boolean {
  return byte !== undefined && (byte >= 0x80 || (byte >= 0x41 && byte <= 0x5a) || (byte >= 0x61 && byte <= 0x7a))
}

function decodeWord(word: readonly number[], upper: string): string {
  return word.map((b) => (b < 0x80 ? String.fromCharCode(b) : upper.charAt(b - 0x80))).join('')
}

function faultsOf(words: readonly number[][], upper: string): number {
  return words.reduce((sum, word) => sum + faultsIn(decodeWord(word, upper)), 0)
}

function faultsIn(word: string): number {
  let faults = 0
  let high = 0
  let ascii = 0
  for (let i = 0; i < word.length; i++) {
    const char = word.charAt(i)
    const [before, after] = [word.charAt(i - 1), word.charAt(i + 1)]
    if (LETTER.test(char)) {
      if (HIGH_LETTER.test(char)) high += 1
      else ascii += 1
      if (isSmall(before) && isCapital(char)) faults += 2
      if (char === 'ς' && LETTER.test(after)) faults += 2
      if (RARE.has(char)) faults += 1
    } else {
      if (char === '\uFFFD' || (char >= '\u0080' && char < '\u00A0')) faults += 5
      else if (LETTER.test(before) && LETTER.test(after) && char !== '’' && char !== '\u00AD') faults += 3
      else if (/[\u2500-\u25FF]/u.test(char)) faults += 3
      else if (RARE.has(char)) faults += 2
      else if ((LETTER.test(before) || LETTER.test(after)) && !/[\p{P}\u00A0€£]/u.test(char)) faults += 1
    }
  }
  // Latin words are mostly ASCII letters; Greek and Cyrillic words have none.
  const latin = /\p{Script=Latin}/u.test(word.replace(/[A-Za-z]/g, ''))
  if (latin && high > 3 && high > ascii) faults += 3
  if (!latin && high > 0 && ascii > 0) faults += 3
  return faults
}

function isSmall(char: string): boolean {
  return char !== '' && char !== char.toUpperCase()
}

function isCapital(char: string): boolean {
  return char !== '' && char !== char.toLowerCase()
}
