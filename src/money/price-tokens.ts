import { type CurrencyMark, currencyMark, longestName } from './currency-names.ts'
import { type RawNumber, readNumber, startsNumber } from './price-number.ts'

/** White space before a token; a `break` is a line break, or more than one space. */
type Gap = '' | 'space' | 'break'

/** One thing in a price text. */
export type Token =
  | { readonly kind: 'number'; readonly gap: Gap; readonly number: RawNumber }
  | { readonly kind: 'currency'; readonly gap: Gap; readonly money: CurrencyMark }
  | { readonly kind: 'word'; readonly gap: Gap; readonly text: string }
  | { readonly kind: 'sign'; readonly gap: Gap; readonly text: string }

/** What a reading of a text may take for money, and how the locale writes decimals when unusually. */
export interface Vocabulary {
  /** Names of one locale, besides the ones everybody knows. */
  readonly extra: ReadonlyMap<string, CurrencyMark>
  /** Whether a mark that is too short to be believed among words may be believed. */
  readonly believes: (money: CurrencyMark) => boolean
  readonly extraMark: string | null
}

/** The text of a sign or word; empty for numbers and money. */
export const textOf = (token: Token | undefined): string =>
  token?.kind === 'sign' || token?.kind === 'word' ? token.text : ''

const LETTER = /^[\p{L}\p{M}]$/u
// Scripts written without spaces between words: a name for money may touch other letters there.
const SPACELESS =
  /^[\p{sc=Han}\p{sc=Hiragana}\p{sc=Katakana}\p{sc=Hangul}\p{sc=Thai}\p{sc=Lao}\p{sc=Khmer}\p{sc=Myanmar}ー]$/u
const isLetter = (char: string | undefined): boolean => char !== undefined && LETTER.test(char)

/** Whether a letter belongs to a script written without spaces between words. */
export const isSpaceless = (char: string): boolean => SPACELESS.test(char)

/**
 * Cuts a normalised text into numbers, names for money, words and signs, from left to right, the longest name first.
 * Time grows with the length of the text times the longest name.
 *
 * @param text in the alphabet of `normalisePrice`
 */
export function priceTokens(text: string, vocabulary: Vocabulary): Token[] {
  const chars = Array.from(text)
  const tokens: Token[] = []
  let at = 0
  let gap: Gap = ''
  while (at < chars.length) {
    const char = chars[at] ?? ''
    if (char === ' ' || char === '\n') {
      gap = char === ' ' ? 'space' : 'break'
      at += 1
      continue
    }
    const found = tokenAt(chars, at, gap, tokens, vocabulary)
    tokens.push(found.token)
    at = found.end
    gap = ''
  }
  return tokens
}

function tokenAt(chars: readonly string[], at: number, gap: Gap, before: readonly Token[], vocabulary: Vocabulary) {
  if (startsNumber(chars, at)) {
    const { number, end } = readNumber(chars, at, vocabulary.extraMark)
    const token: Token = { kind: 'number', gap, number }
    return { token, end }
  }
  const named = nameAt(chars, at, before, vocabulary)
  if (named) {
    const token: Token = { kind: 'currency', gap, money: named.money }
    return { token, end: named.end }
  }
  const end = isLetter(chars[at]) ? wordEnd(chars, at) : at + 1
  const text = chars.slice(at, end).join('')
  const token: Token = { kind: end > at && isLetter(chars[at]) ? 'word' : 'sign', gap, text }
  return { token, end }
}

function wordEnd(chars: readonly string[], at: number): number {
  if (isSpaceless(chars[at] ?? '')) return at + 1
  let end = at + 1
  // An apostrophe or point between two letters stays in the word: `l'unité`, `P.V.P`.
  const inside = (i: number) => ["'", '.'].includes(chars[i] ?? '') && isLetter(chars[i + 1])
  while ((isLetter(chars[end]) && !isSpaceless(chars[end] ?? '')) || inside(end)) end += 1
  return end
}

function nameAt(
  chars: readonly string[],
  at: number,
  before: readonly Token[],
  vocabulary: Vocabulary,
): { money: CurrencyMark; end: number } | null {
  const reach = vocabulary.extra.size > 0 ? Math.max(longestName, 60) : longestName
  for (let end = Math.min(chars.length, at + reach); end > at; end -= 1) {
    const last = chars[end - 1]
    if (last === ' ' || last === '\n') continue
    const name = chars.slice(at, end).join('').replaceAll('\n', ' ')
    if (!endsThere(chars, end)) continue
    const next = skipPoint(chars, end, name)
    const fits = (money: CurrencyMark) =>
      (money.trust === 'full' || vocabulary.believes(money)) &&
      (money.side !== 'after' || before.at(-1)?.kind === 'number') &&
      (money.side !== 'before' || numberFollows(chars, next))
    const money = [currencyMark(name), vocabulary.extra.get(name)].find((found) => found && fits(found))
    if (money) return { money, end: next }
  }
  return null
}

/** A name that ends in a letter must not go on: `kr` is not in `kraft`. Symbols and spaceless scripts may touch. */
function endsThere(chars: readonly string[], end: number): boolean {
  const last = chars[end - 1] === '.' ? chars[end - 2] : chars[end - 1]
  if (!isLetter(last) || isSpaceless(last ?? '')) return true
  const next = chars[end]
  return !isLetter(next) || isSpaceless(next ?? '')
}

/** The point of an abbreviation belongs to it (`Rs.500`, `kr. 12`), except behind a code: `EUR.50` is half a euro. */
function skipPoint(chars: readonly string[], end: number, name: string): number {
  if (chars[end] !== '.' || !isLetter(chars[end - 1])) return end
  const digitNext = /^\d$/.test(chars[end + 1] ?? '')
  return digitNext && /^[A-Z]{3}$/.test(name) ? end : end + 1
}

function numberFollows(chars: readonly string[], at: number): boolean {
  let next = at
  while ([' ', '\n', '-', '–', '(', '+'].includes(chars[next] ?? '')) next += 1
  return startsNumber(chars, next)
}
