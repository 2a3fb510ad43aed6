import { isCurrencyCode, minorDigits } from './currency.ts'
import { type CurrencyMark, currencyMark } from './currency-names.ts'
import { normalisePrice } from './price-normalise.ts'

/** What a hint names: a code in any case, or a symbol. Null when it names no money. */
export function hintedMark(hint: string | undefined): CurrencyMark | null {
  if (hint === undefined) return null
  const name = normalisePrice(hint)
  const code = name.toUpperCase()
  return isCurrencyCode(code) ? currencyMark(code) : currencyMark(name.replace(/\.$/, ''))
}

/** What all marks of one price can mean together: `$` and `AUD` are AUD. Null when they contradict each other. */
export function commonMark(marks: readonly CurrencyMark[]): CurrencyMark | null {
  const [first, ...others] = marks
  if (!first || others.length === 0) return first ?? null
  const codes = first.codes.filter((code) => others.every((other) => other.codes.includes(code)))
  if (codes.length === 0) return null
  const usual =
    codes.length === 1 ? (codes[0] ?? null) : (marks.find((m) => codes.includes(m.usual ?? ''))?.usual ?? null)
  return { ...first, codes, usual }
}

// ISO 4217 gives the Iraqi dinar three decimals, CLDR none, and shops write `25,000 IQD` for twenty-five thousand: only the
// locale can tell.
const inPractice: ReadonlyMap<string, readonly number[]> = new Map([['IQD', [0]]])

/** Every number of decimals that the money can have; empty when nothing is known. */
export function decimalsOf(codes: readonly string[], decimals: number | null): number[] {
  if (decimals !== null) return [decimals]
  return codes.flatMap((code) => (isCurrencyCode(code) ? [minorDigits(code), ...(inPractice.get(code) ?? [])] : []))
}
