import type { Token } from './price-tokens.ts'

const MINUS = new Set(['-', '–'])
const signText = (token: Token | undefined): string | null => (token?.kind === 'sign' ? token.text : null)

/** A plus, a minus or a dash. */
export const isSign = (token: Token | undefined): boolean => ['+', '-', '–', '—'].includes(signText(token) ?? '')

/**
 * What a sign before the number says: `-5`, `$ -5`, `- $5` are negative. A dash that parts words from the price
 * (`Total - $5`) or joins them (`sku-5`) says nothing that can be relied on: null.
 */
export function signBefore(tokens: readonly Token[], at: number): 'plus' | 'minus' | null {
  const token = tokens[at]
  const text = signText(token)
  if (text === '+') return 'plus'
  if (!token || !MINUS.has(text ?? '')) return null
  const before = tokens[at - 1]
  if (before === undefined || signText(before) === ':') return 'minus'
  const parts = token.gap !== '' && (tokens[at + 1]?.gap ?? '') !== ''
  const joins = before.kind !== 'currency' && token.gap === ''
  return parts || joins ? null : 'minus'
}

/**
 * What a dash behind the number says: a minus when it touches (`5,00-`, `5,00 €-`), nothing when it starts a remark
 * (`5 € – limited offer`), and null when it could be the middle of a range, an "or more", or stand for absent cents
 * (`50- Kč`, `50 kr.-`).
 *
 * @param whole whether the number has no decimals
 */
export function signAfter(tokens: readonly Token[], at: number, whole: boolean): 'minus' | 'remark' | null {
  const token = tokens[at]
  const next = tokens[at + 1]
  const text = signText(token)
  if (!token || text === '+') return null
  if (token.gap !== '') return next?.kind === 'word' && next.gap !== '' ? 'remark' : null
  if (text !== '-' || next?.kind === 'word' || next?.kind === 'number') return null
  const beside = next?.kind === 'currency' || tokens[at - 1]?.kind === 'currency'
  return beside && whole ? null : 'minus'
}
