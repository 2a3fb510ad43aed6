import { type Token, textOf } from './price-tokens.ts'

// Signs that may stand beside a bare number: footnotes, the end of a sentence or of a label.
export const DECORATION = new Set([...'*†‡:;.,=|•'])

/** A text without its brackets. */
interface Unbracketed {
  readonly main: readonly Token[]
  /** The amount itself stood in brackets, which makes it negative. */
  readonly inBrackets: boolean
  /** A remark in brackets. */
  readonly aside: readonly Token[]
  /** A second amount in brackets. */
  readonly restated: readonly Token[] | null
}

/** Takes the brackets out: `(5.00)`, `5.00 (USD)`, `5.00 € (incl. tax)`, `AED 8000 (USD 2179)`. Null when unsound. */
export function unbracket(tokens: readonly Token[]): Unbracketed | null {
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
