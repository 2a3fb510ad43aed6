import type { CurrencyMark } from './currency-names.ts'
import { DECORATION, unbracket } from './price-brackets.ts'
import { isWhole, joinCents, onceOnly } from './price-joins.ts'
import { mayStandAlone, type RawNumber } from './price-number.ts'
import { isSign, signAfter, signBefore } from './price-sign.ts'
import { isSpaceless, type Token, textOf } from './price-tokens.ts'
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
const FORBIDDEN = new Set([...'%‰‱#~〜≈≃≅≥≤<>±∓√№×÷^@\\_{}?¢'])
// Fractions, circled and other numbers that are no decimal digits; raised ones are footnotes.
const ODD_NUMBER = /^[\p{Nl}\p{No}]$/u
const FOOTNOTE = /^[⁰¹²³⁴-⁹]$/u
const isForbidden = (token: Token): boolean => {
  const text = textOf(token)
  return FORBIDDEN.has(text) || (ODD_NUMBER.test(text) && !FOOTNOTE.test(text))
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
  if ([...tokens, ...parts.aside].some(isForbidden)) return null
  const around = surroundings(tokens, at, found.number)
  if (!around || saysBound([...tokens, ...parts.aside], around.first) || touchesWord(tokens, at, around)) return null
  const { marks, signs } = around
  if (signs.length > 1 || (parts.inBrackets && signs.includes('plus'))) return null
  const rest = [...tokens.slice(0, around.first), ...tokens.slice(around.end), ...parts.aside]
  if (marks.length === 0 && !standsAlone(found.number, rest, signs)) return null
  // `(3)` counts something; `(3.00)` is an amount.
  if (marks.length === 0 && parts.inBrackets && isWhole(found.number)) return null
  if (rest.some((token) => contradicts(token, marks)) || textOf(tokens[around.first - 1]) === '/') return null
  if (found.number.loose && rest.some((token) => token.kind === 'word')) return null
  const restated = parts.restated && priceShape(parts.restated.filter(isNoEstimate))
  if (parts.restated && (!restated || restated.marks.length === 0)) return null
  return { number: found.number, marks, negative: parts.inBrackets || signs.includes('minus'), restated }
}

/** Another currency elsewhere in the text, as in `USD/CAD 1.35`. */
const contradicts = (token: Token, marks: readonly CurrencyMark[]): boolean =>
  token.kind === 'currency' && !marks.some((mark) => mark.codes.some((code) => token.money.codes.includes(code)))

/** Words and signs such as `ca.` and `≈` are fit for an amount that is only restated. */
const isNoEstimate = (token: Token): boolean =>
  token.kind !== 'word' && !['≈', '~', '.', ':', '='].includes(textOf(token))

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
    if (token.kind === 'currency') marks.push(narrowed(token.money, tokens[first]))
    else if (isSign(token)) {
      const sign = signBefore(tokens, first - 1)
      if (sign === null) return null
      signs.push(sign)
    } else if (!label) break
    first -= 1
  }
  let end = at + 1
  for (let token = tokens[end]; token; token = tokens[end]) {
    if (token.kind === 'currency') marks.push(narrowed(token.money, tokens[end + 1]))
    else if (isSign(token)) {
      const sign = signAfter(tokens, end, isWhole(number))
      if (sign === null) return null
      if (sign === 'remark') break
      signs.push(sign)
    } else break
    end += 1
  }
  return { first, end, marks, signs }
}

/**
 * A shared name that the next word narrows down in a way that is not understood (`pesos mexicanos`, `£E`) stays money,
 * but no hint may say which.
 */
function narrowed(money: CurrencyMark, next: Token | undefined): CurrencyMark {
  if (next?.kind !== 'word' || money.codes.length < 2) return money
  const touches = next.gap === '' && next.text.length < 3
  return money.general || touches ? { ...money, codes: [], usual: null, decimals: 2 } : money
}

/** Whether letters touch the amount so that it is another thing: `12K`, `A12`, `5 million`, `XY$5`. */
function touchesWord(tokens: readonly Token[], at: number, around: Surroundings): boolean {
  const next = tokens[at + 1]
  const before = tokens[at - 1]
  if (multiplies(next)) return true
  if (next?.kind === 'word' && next.gap === '' && !isSpaceless(next.text)) return true
  if (before?.kind === 'word' && tokens[at]?.gap === '' && !isSpaceless(before.text)) return true
  const outer = tokens[around.end]
  if (multiplies(outer) && !isSpaceless(textOf(outer))) return true
  const prefix = tokens[around.first - 1]
  return (
    prefix?.kind === 'word' && tokens[around.first]?.gap === '' && prefix.text.length < 4 && !isSpaceless(prefix.text)
  )
}

/** Whether a number without any name for money may be an amount: nothing beside it, and no phone number or time. */
function standsAlone(number: RawNumber, rest: readonly Token[], signs: readonly string[]): boolean {
  if (number.loose || !rest.every((token) => DECORATION.has(textOf(token)))) return false
  // A date such as `12.10.`
  if (number.marks.length > 0 && textOf(rest.at(-1)) === '.') return false
  return mayStandAlone(number) && !(number.marks.includes(' ') && signs.includes('plus'))
}
