import type { RawNumber } from './price-number.ts'
import type { Token } from './price-tokens.ts'

/** Two digits, nothing else: they can be cents that stand apart. */
const isCents = (number: RawNumber): boolean =>
  number.groups.length === 1 && number.groups[0]?.length === 2 && number.raised === null && !number.dashed

/** Written without decimals, as far as one can see. */
export const isWhole = (number: RawNumber): boolean =>
  number.raised === null && !number.dashed && (number.groups.length === 1 || number.groups.at(-1)?.length === 3)

/** Joins cents that stand behind the symbol or a space: `1250€60`, `35€ 99`, `$12 99`. */
export function joinCents(tokens: readonly Token[]): readonly Token[] {
  const first = tokens.findIndex((token) => token.kind === 'number')
  const whole = tokens[first]
  const behind = tokens[first + 1]?.kind === 'currency'
  const at = behind ? first + 2 : first + 1
  const cents = tokens[at]
  if (whole?.kind !== 'number' || cents?.kind !== 'number' || !isWhole(whole.number) || !isCents(cents.number))
    return tokens
  const next = tokens[at + 1]
  if (next?.kind === 'word' || next?.kind === 'number' || cents.gap === 'break') return tokens
  const apart = !behind && (tokens[first - 1]?.kind !== 'currency' || next?.kind === 'currency')
  if (apart || (behind && tokens[first + 1]?.gap !== '')) return tokens
  const number = { ...whole.number, raised: cents.number.groups.join('') }
  return [
    ...tokens.slice(0, first),
    { ...whole, number },
    ...(behind ? tokens.slice(first + 1, at) : []),
    ...tokens.slice(at + 1),
  ]
}

/** The same price said twice or three times over (once for the eye, once for a screen reader) is one price. */
export function onceOnly(tokens: readonly Token[]): readonly Token[] {
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
