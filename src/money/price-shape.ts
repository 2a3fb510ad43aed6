import type { CurrencyMark } from './currency-names.ts'
import type { RawNumber } from './price-number.ts'
import { isSign, signAfter, signBefore } from './price-sign.ts'
import { isSpaceless, type Token } from './price-tokens.ts'
import { multiplies, saysBound } from './price-words.ts'

/** One amount with what stands around it: the number as written, its names for money, whether it is below zero. */
export interface PriceShape {
  readonly number: RawNumber
  /** Empty for a bare number. */
  readonly marks: readonly CurrencyMark[]
  readonly negative: boolean
  /** Another amount in brackets, to be compared: `AED 8000 (USD 2179)`. */
  readonly restated: PriceShape | null
}

// Signs that make a figure something else than a price: shares, roots, comparisons, estimates, identifiers, minor units.
const FORBIDDEN = new Set([...'%‰‱#~≈≃≅≥≤<>№×÷^@\\_{}?¢'])
// Signs that may stand beside a bare number: footnotes, the end of a sentence or of a label.
const DECORATION = new Set([...'*†‡:;.,=|•'])

const textOf = (token: Token | undefined): string =>
  token?.kind === 'sign' || token?.kind === 'word' ? token.text : ''

interface Unbracketed {
  readonly main: readonly Token[]
  readonly inBrackets: boolean
  readonly aside: readonly Token[]
  readonly restated: readonly Token[] | null
}

/** Takes the brackets out: `(5.00)`, `5.00 (USD)`, `5.00 € (incl. tax)`, `AED 8000 (USD 2179)`. Null when unsound. */
function unbracket(tokens: readonly Token[]): Unbracketed | null {
  const open = tokens.findIndex((token) => textOf(token) === '(')
  const close = tokens.findIndex((token) => textOf(token) === ')')
  if (open < 0 && close < 0) return { main: tokens, inBrackets: false, aside: [], restated: null }
  const inside = tokens.slice(open + 1, close)
  const before = tokens.slice(0, open)
  const after = tokens.slice(close + 1)
  if (open < 0 || close < open || [...inside, ...after].some((token) => '()'.includes(textOf(token) || ' ')))
    return null
  const outside = [...before, ...after]
  if (inside.some((token) => token.kind === 'number')) {
    if (before.some((token) => token.kind === 'number')) {
      return { main: outside, inBrackets: false, aside: [], restated: inside }
    }
    const sound = (token: Token) => token.kind === 'currency' || DECORATION.has(textOf(token))
    const ofAmount = (token: Token) => token.kind === 'currency' || token.kind === 'number' || textOf(token) === '-'
    if (!outside.every(sound) || !inside.every(ofAmount)) return null
    return { main: [...before, ...inside, ...after], inBrackets: true, aside: [], restated: null }
  }
  if (inside.every((token) => token.kind === 'currency')) {
    return { main: [...before, ...inside, ...after], inBrackets: false, aside: [], restated: null }
  }
  return { main: outside, inBrackets: false, aside: inside, restated: null }
}

/** Two digits, nothing else: they can be cents that stand apart. */
const isCents = (number: RawNumber): boolean =>
  number.groups.length === 1 && number.groups[0]?.length === 2 && number.raised === null && !number.dashed

const isWhole = (number: RawNumber): boolean =>
  number.raised === null && !number.dashed && (number.groups.length === 1 || number.groups.at(-1)?.length === 3)

/** Joins cents that stand behind the symbol or a space: `1250€60`, `35€ 99`, `$12 99`. */
function joinCents(tokens: readonly Token[]): readonly Token[] {
  const first = tokens.findIndex((token) => token.kind === 'number')
  const whole = tokens[first]
  const behind = tokens[first + 1]?.kind === 'currency'
  const at = behind ? first + 2 : first + 1
  const cents = tokens[at]
  if (whole?.kind !== 'number' || cents?.kind !== 'number' || !isWhole(whole.number) || !isCents(cents.number))
    return tokens
  const next = tokens[at + 1]
  if (next?.kind === 'word' || next?.kind === 'number') return tokens
  const apart = !behind && (tokens[first - 1]?.kind !== 'currency' || next?.kind === 'currency')
  if (apart || (behind && tokens[first + 1]?.gap)) return tokens
  const number = { ...whole.number, raised: cents.number.groups.join('') }
  return [
    ...tokens.slice(0, first),
    { ...whole, number },
    ...(behind ? tokens.slice(first + 1, at) : []),
    ...tokens.slice(at + 1),
  ]
}

/** The same price said twice or three times over (once for the eye, once for a screen reader) is one price. */
function onceOnly(tokens: readonly Token[]): readonly Token[] {
  for (const times of [2, 3]) {
    const length = tokens.length / times
    if (!Number.isInteger(length)) continue
    const part = tokens.slice(0, length)
    const same = tokens.every((token, i) => sameToken(token, part[i % length]))
    if (same && part.some((token) => token.kind === 'currency')) return part
  }
  return tokens
}

function sameToken(a: Token, b: Token | undefined): boolean {
  if (a.kind === 'currency') return b?.kind === 'currency' && a.money === b.money
  if (a.kind === 'number') return b?.kind === 'number' && JSON.stringify(a.number) === JSON.stringify(b.number)
  return a.kind === b?.kind && a.text === b.text
}

/**
 * Finds the one amount in a text and what belongs to it. Null when there is none, more than one, or anything beside it
 * that makes it something other than a price.
 */
export function priceShape(all: readonly Token[]): PriceShape | null {
  const parts = unbracket(all)
  if (!parts || all.some((token) => '%‰'.includes(textOf(token) || ' '))) return null
  const tokens = joinCents(onceOnly(parts.main))
  const at = tokens.findIndex((token) => token.kind === 'number')
  const found = tokens[at]
  if (found?.kind !== 'number' || tokens.some((token, i) => token.kind === 'number' && i !== at)) return null
  if ([...tokens, ...parts.aside].some((token) => FORBIDDEN.has(textOf(token)))) return null
  const around = surroundings(tokens, at, found.number)
  if (!around || saysBound([...tokens, ...parts.aside], around.first) || touchesWord(tokens, at, around)) return null
  const { marks, signs } = around
  if (signs.length > 1 || (parts.inBrackets && signs.includes('plus'))) return null
  const rest = [...tokens.slice(0, around.first), ...tokens.slice(around.end), ...parts.aside]
  if (marks.length === 0 && !standsAlone(found.number, rest, signs)) return null
  if (found.number.loose && rest.some((token) => token.kind === 'word')) return null
  const restated =
    parts.restated &&
    priceShape(parts.restated.filter((token) => token.kind !== 'word' && !'≈~.:='.includes(textOf(token) || ' ')))
  if (parts.restated && (!restated || restated.marks.length === 0)) return null
  return { number: found.number, marks, negative: parts.inBrackets || signs.includes('minus'), restated }
}

interface Surroundings {
  readonly first: number
  readonly end: number
  readonly marks: readonly CurrencyMark[]
  readonly signs: readonly ('plus' | 'minus')[]
}

/** The names for money and the signs that touch the number, on both sides. */
function surroundings(tokens: readonly Token[], at: number, number: RawNumber): Surroundings | null {
  const marks: CurrencyMark[] = []
  const signs: ('plus' | 'minus')[] = []
  let first = at
  for (let token = tokens[first - 1]; token; token = tokens[first - 1]) {
    // A name for money in a label: `Total (USD): 12.50`.
    const label = textOf(token) === ':' && marks.length === 0 && tokens[first - 2]?.kind === 'currency'
    if (token.kind === 'currency') marks.push(token.money)
    else if (isSign(token)) {
      const sign = signBefore(tokens, first - 1)
      if (sign === null) return null
      signs.push(sign)
    } else if (!label) break
    first -= 1
  }
  let end = at + 1
  for (let token = tokens[end]; token; token = tokens[end]) {
    if (token.kind === 'currency') marks.push(token.money)
    else if (isSign(token)) {
      const sign = signAfter(tokens, end, number.marks.length === 0)
      if (sign === null) return null
      if (sign === 'remark') break
      signs.push(sign)
    } else break
    end += 1
  }
  return { first, end, marks, signs }
}

/** Whether letters touch the amount so that it is another thing: `12K`, `A12`, `5 million`, `XY$5`. */
function touchesWord(tokens: readonly Token[], at: number, around: Surroundings): boolean {
  const next = tokens[at + 1]
  const before = tokens[at - 1]
  if (multiplies(next)) return true
  if (next?.kind === 'word' && !next.gap && !isSpaceless(next.text)) return true
  if (before?.kind === 'word' && !tokens[at]?.gap && !isSpaceless(before.text)) return true
  const outer = tokens[around.end]
  if (multiplies(outer) && !isSpaceless(textOf(outer))) return true
  const prefix = tokens[around.first - 1]
  return prefix?.kind === 'word' && !tokens[around.first]?.gap && prefix.text.length < 4 && !isSpaceless(prefix.text)
}

/** Whether a number without any name for money may be an amount: nothing beside it, and no phone number or time. */
function standsAlone(number: RawNumber, rest: readonly Token[], signs: readonly string[]): boolean {
  if (number.loose || !rest.every((token) => DECORATION.has(textOf(token)))) return false
  const digits = number.groups.join('')
  const spaced = number.marks.includes(' ')
  if (number.marks.includes(':') && (number.groups[0]?.length ?? 0) < 3) return false
  // A date such as `12.10.`
  if (number.marks.length > 0 && textOf(rest.at(-1)) === '.') return false
  if (spaced && (signs.includes('plus') || (digits.length > 8 && number.marks.every((mark) => mark === ' '))))
    return false
  return number.marks.length > 0 || (digits.length < 10 && !/^0\d{6}/.test(digits))
}
