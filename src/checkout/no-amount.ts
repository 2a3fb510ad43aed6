import type { PlacedToken } from './figure.ts'

/** `TK20261125`: capitals that are no code, glued to many digits without a mark, number a thing and price nothing. */
export function isReference(before: PlacedToken | undefined, { text, reach }: PlacedToken): boolean {
  if (!before?.money || reach > 0 || !/^\d{6,}$/.test(text)) return false
  return /^\p{Lu}{2,}$/u.test(before.text) && !before.money.codes.includes(before.text)
}

/** `$5O.9O`, `46.O0`: letters glued to the last digit, or where decimals stand, make it no number, whatever they look like. */
export function isGarbled(tokens: readonly PlacedToken[], next: number, end: number): boolean {
  const [last, first, second, third] = [next - 1, next, next + 1, next + 2].map((at) =>
    at < end ? tokens[at] : undefined,
  )
  if (last?.kind !== 'number') return false
  if (isGlued(first) && first?.kind === 'word' && !first.money) return ALPHABETIC.test(first.text)
  if (first?.kind !== 'point' || !isGlued(first) || second?.kind !== 'word' || !isGlued(second)) return false
  return /^[oо]{2}$/iu.test(second.text) || (second.text.length === 1 && third?.kind === 'number' && isGlued(third))
}

const ALPHABETIC = /^[\p{Script=Latin}\p{Script=Cyrillic}\p{Script=Greek}]/u

function isGlued(token: PlacedToken | undefined): boolean {
  return token !== undefined && !token.first && !token.gap
}
