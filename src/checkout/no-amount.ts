import type { PlacedToken } from './figure.ts'

/** `TK20261125`: capitals that are no code, glued to many digits without a mark, number a thing and price nothing. */
export function isReference(before: PlacedToken | undefined, { text, reach }: PlacedToken): boolean {
  if (!before?.money || reach > 0 || !/^\d{6,}$/.test(text)) return false
  return /^\p{Lu}{2,}$/u.test(before.text) && !before.money.codes.includes(before.text)
}

/** `$5O.9O`: letters of an alphabet glued to the last digit make it no number, whatever they look like. */
export function isGarbled(last: PlacedToken | undefined, next: PlacedToken | undefined): boolean {
  if (last?.kind !== 'number' || next?.kind !== 'word' || next.first || next.gap || next.money) return false
  return /^[\p{Script=Latin}\p{Script=Cyrillic}\p{Script=Greek}]/u.test(next.text)
}
