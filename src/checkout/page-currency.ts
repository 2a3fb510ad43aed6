import type { CurrencyMark } from '../money/currency-names.ts'
import { codesIn, notesOf } from './notes.ts'
import { agreed, type CurrencyContext, type CurrencyFinding, placesOf } from './places.ts'
import type { Figure } from './stream.ts'

/** Settles which money a figure is in. */
export interface PageCurrency {
  /** The figure's currency, or null when nothing on the page tells. `label` may name it: "Total (CAD)". */
  of(figure: Figure, label: string): CurrencyFinding | null
  /** The currency of most figures, for reading numbers such as `1.234`. */
  readonly usual: string | null
}

// Codes that are also words in capitals: "SHOP ALL", "TRY AGAIN".
const ALSO_WORDS: ReadonlySet<string> = new Set(['ALL', 'TOP', 'TRY', 'CUP', 'MAD', 'PEN', 'COP', 'MOP', 'SOS'])

const MOST_FIGURES = 400

// A region in the page's language, a national host name, the name of a tax; not a bare language, nor the `en-US` of a theme.
const SURE_PLACE = 2

/** Gathers every witness of the page's currency once, in order of trust. */
export function createPageCurrency(context: CurrencyContext): PageCurrency {
  const figures = context.stream.items.filter((item) => item.kind === 'figure')
  const witnesses = [
    ...spoken(figures),
    ...written(context),
    ...context.machine.currencies.map(({ code, source, label }) => ({
      code,
      source,
      label,
      why: `the page's data says ${code}`,
    })),
  ]
  const places = placesOf(context)

  function settle(possible: readonly string[] | null, text: string): CurrencyFinding | null {
    const fits = ({ code }: { readonly code: string }): boolean => possible === null || possible.includes(code)
    const surely = witnesses.find(fits)
    if (surely) return surely
    const place = agreed(places.filter(fits))
    if (place) return place
    if (possible === null) return null
    // An Arabic "pound" is not Britain's.
    const usual = possible.includes('GBP') && /£|pound|gbp/iu.test(text) ? 'GBP' : null
    if (usual) return { code: usual, why: 'what the sign usually means', source: 'text', label: '£' }
    const { assumed } = context
    if (assumed === null || !possible.includes(assumed)) return null
    return {
      code: assumed,
      why: "assumed: the sign fits the household's own currency and nothing else tells",
      source: 'text',
      label: 'assumed',
    }
  }

  function of(figure: Figure, label: string): CurrencyFinding | null {
    const possible = possibleCodes(figure)
    if (possible?.length === 0) return null
    const [only] = possible ?? []
    if (only && possible?.length === 1)
      return { code: only, why: 'written beside the amount', source: 'text', label: figure.text }
    const named = codesIn(label).find((code) => possible?.includes(code) ?? true)
    if (named) return { code: named, why: 'named in the label', source: 'label', label }
    if (possible !== null) {
      const usual = figure.marks.find((mark) => mark.usual !== null)?.usual
      if (!usual || possible.includes('GBP')) return settle(possible, figure.text)
      // "руб." is usually the Russian rouble, but not in a shop of Belarus.
      const place = agreed(places.filter(({ code }) => possible.includes(code)))
      return place ?? { code: usual, why: 'what the sign usually means', source: 'text', label: figure.text }
    }
    // A bare number is in the money of the page's other amounts.
    const sign = sharedSign(figures)
    const sample = figures.find((each) => sign && each.marks.includes(sign))?.text ?? ''
    const known = witnesses[0] ?? settle(sign ? sign.codes : null, sample)
    // Decimals, or a dash for them (`350,-`), are money even on a page that names none: its country's.
    return known ?? (figure.bare === 'decimal' ? agreed(places.filter(({ weight }) => weight >= SURE_PLACE)) : null)
  }

  const usual = mostCommon(figures.slice(0, MOST_FIGURES).map((figure) => of(figure, '')?.code ?? null))
  return { of, usual }
}

/** The first sign of the page that several currencies share. */
function sharedSign(figures: readonly Figure[]): CurrencyMark | null {
  for (const { marks } of figures) for (const mark of marks) if (mark.codes.length > 1) return mark
  return null
}

/** What the currency marks of one figure can mean together; null for a bare number. */
function possibleCodes(figure: Figure): readonly string[] | null {
  const [first, ...rest] = figure.marks
  if (!first) return null
  if (rest.length === 0) return first.codes
  return rest.reduce<readonly string[]>((codes, mark) => codes.filter((code) => mark.codes.includes(code)), first.codes)
}

/** Currencies that other amounts of the page name outright; none when they disagree. */
function spoken(figures: readonly Figure[]): CurrencyFinding[] {
  const counts = new Map<string, number>()
  for (const figure of figures) {
    const codes = possibleCodes(figure)
    const [only] = codes ?? []
    if (only && codes?.length === 1 && !figure.about && figure.remark === null)
      counts.set(only, (counts.get(only) ?? 0) + 1)
  }
  return [...counts]
    .sort((a, b) => b[1] - a[1])
    .map(([code]) => ({ code, why: 'written beside other amounts of the page', source: 'text' as const, label: code }))
}

/** A code in a short text of its own: "Currency: CAD", "All prices in CAD". A list of several says nothing. */
function written({ stream, words }: CurrencyContext): CurrencyFinding[] {
  const found = new Map<string, string>()
  for (const item of stream.items) {
    if (item.kind !== 'words') continue
    for (const code of notesOf(item, words).codes) if (!ALSO_WORDS.has(code)) found.set(code, item.text)
  }
  const [only] = [...found]
  return found.size === 1 && only ? [{ code: only[0], why: 'named on the page', source: 'text', label: only[1] }] : []
}

function mostCommon(codes: readonly (string | null)[]): string | null {
  const counts = new Map<string, number>()
  for (const code of codes) if (code) counts.set(code, (counts.get(code) ?? 0) + 1)
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0] ?? null
}
