import { isCurrencyCode } from '../money/currency.ts'
import { placeCurrencies } from '../money/currency-places.ts'
import type { MachineValues } from './machine-values.ts'
import type { EvidenceSource } from './reading.ts'
import type { Figure, Stream } from './stream.ts'

/** A currency and what said so. */
export interface CurrencyFinding {
  readonly code: string
  readonly why: string
  readonly source: EvidenceSource
  readonly label: string
}

/** Settles which money a figure is in. */
export interface PageCurrency {
  /** The figure's currency, or null when nothing on the page tells. `label` may name it: "Total (CAD)". */
  of(figure: Figure, label: string): CurrencyFinding | null
  /** The currency of most figures, for reading numbers such as `1.234`. */
  readonly usual: string | null
}

export interface CurrencyContext {
  readonly stream: Stream
  readonly machine: MachineValues
  readonly lang: string | null
  readonly host: string
  /** The household's own currency; the last resort. */
  readonly assumed: string | null
}

// Taxes that are levied in one country, or at a rate of one country (common practice, no single source). MwSt, TVA and
// VAT are not here: several countries with different money use those names.
const TAXES: readonly (readonly [RegExp, string])[] = [
  [/\b(?:HST|QST|TPS|TVQ|TVH)\b|\bPST\b.*%|\bGST\b.*(?<![\d.])5(?:\.0+)?\s*%/, 'CAD'],
  [/\bGST\b.*(?<![\d.])10(?:\.0+)?\s*%/, 'AUD'],
  [/\bGST\b.*(?<![\d.])15(?:\.0+)?\s*%/, 'NZD'],
  [/\bGST\b.*(?<![\d.])9(?:\.0+)?\s*%/, 'SGD'],
  [/\bmva\b/i, 'NOK'],
  [/消費税/, 'JPY'],
  [/增值税/, 'CNY'],
]
const TAX_NAMES = /[TPHQG]ST\b|T[PV][SQHP]\b|mva|消|增/i
// Codes that are also words in capitals: "SHOP ALL", "TRY AGAIN".
const ALSO_WORDS: ReadonlySet<string> = new Set(['ALL', 'TOP', 'TRY', 'CUP', 'MAD', 'PEN', 'COP', 'MOP', 'SOS'])
const MOST_FIGURES = 400
const CODES = /(?<![\p{L}\d])[A-Z]{3}(?![\p{L}\d])/gu
const GENERIC_HOSTS: ReadonlySet<string> = new Set(
  'io co me tv cc ai fm gg to ws sh ac eu gs nu st la ms vc im je tk ly'.split(' '),
)

/** Gathers every witness of the page's currency once, in order of trust. */
export function createPageCurrency(context: CurrencyContext): PageCurrency {
  const figures = context.stream.items.filter((item) => item.kind === 'figure')
  const symbols = figures.flatMap((figure) => figure.marks).filter((mark) => mark.codes.length > 1)
  const witnesses = [
    ...spoken(figures),
    ...written(context.stream),
    ...context.machine.currencies.map(({ code, source, label }) => ({
      code,
      source,
      label,
      why: `the page's data says ${code}`,
    })),
  ]
  const places = placesOf(context)

  function settle(possible: readonly string[] | null): CurrencyFinding | null {
    const fits = ({ code }: { readonly code: string }): boolean => possible === null || possible.includes(code)
    const surely = witnesses.find(fits)
    if (surely) return surely
    const place = agreed(places.filter(fits))
    if (place) return place
    if (possible === null) return null
    const usual = possible.includes('GBP') ? 'GBP' : null
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
    const named = (label.match(CODES) ?? []).find((code) => isCurrencyCode(code) && (possible?.includes(code) ?? true))
    if (named) return { code: named, why: 'named in the label', source: 'label', label }
    if (possible !== null) {
      const usual = figure.marks.find((mark) => mark.usual !== null)?.usual
      return usual && !possible.includes('GBP')
        ? { code: usual, why: 'what the sign usually means', source: 'text', label: figure.text }
        : settle(possible)
    }
    // A bare number is in the money of the page's other amounts.
    const [sign] = symbols
    return witnesses[0] ?? settle(sign ? sign.codes : null)
  }

  const usual = mostCommon(figures.slice(0, MOST_FIGURES).map((figure) => of(figure, '')?.code ?? null))
  return { of, usual }
}

/** What the currency marks of one figure can mean together; null for a bare number. */
function possibleCodes(figure: Figure): readonly string[] | null {
  const [first, ...rest] = figure.marks
  if (!first) return null
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
function written(stream: Stream): CurrencyFinding[] {
  const found = new Map<string, string>()
  for (const item of stream.items) {
    if (item.kind !== 'words' || item.text.length > 80) continue
    for (const code of item.text.match(CODES) ?? []) {
      if (isCurrencyCode(code) && !ALSO_WORDS.has(code)) found.set(code, item.text)
    }
  }
  const [only] = [...found]
  return found.size === 1 && only ? [{ code: only[0], why: 'named on the page', source: 'text', label: only[1] }] : []
}

interface Place extends CurrencyFinding {
  readonly weight: number
}

/** Taxes, the page's language and the end of its host name: each points to a country. */
function placesOf({ stream, lang, host }: CurrencyContext): Place[] {
  const places: Place[] = []
  for (const item of stream.items) {
    if (item.kind !== 'words' || item.text.length > 60 || !TAX_NAMES.test(item.text)) continue
    for (const [pattern, code] of TAXES) {
      if (pattern.test(item.text))
        places.push({ code, why: 'the name of its tax', source: 'label', label: item.text, weight: 4 })
    }
  }
  const locale = lang && /^[a-z]{2,3}(?:[-_][a-z0-9]{2,8})*$/i.test(lang) ? lang.replaceAll('_', '-') : null
  const region = locale ? /-([a-z]{2})\b/i.exec(locale)?.[1] : undefined
  for (const code of locale ? placeCurrencies(region, safeLocale(locale)) : []) {
    // Themes ship as en-US: that says little about the shop.
    const weight = locale?.toLowerCase() === 'en-us' ? 1 : region ? 3 : 1.5
    places.push({ code, why: `the page's language is ${lang}`, source: 'text', label: `lang=${lang}`, weight })
  }
  const end = /\.([a-z]{2})$/i.exec(host)?.[1]?.toLowerCase()
  if (end && !GENERIC_HOSTS.has(end)) {
    for (const code of placeCurrencies(end === 'uk' ? 'GB' : end.toUpperCase(), null)) {
      places.push({ code, why: `the host ends in .${end}`, source: 'text', label: host, weight: 2 })
    }
  }
  return places
}

function safeLocale(locale: string): string | null {
  try {
    return Intl.getCanonicalLocales(locale)[0] ?? null
  } catch {
    return null
  }
}

/** The place with the most weight; nothing when two different currencies weigh the same. */
function agreed(places: readonly Place[]): CurrencyFinding | null {
  const weights = new Map<string, Place>()
  for (const place of places) {
    const known = weights.get(place.code)
    if (!known || known.weight < place.weight) weights.set(place.code, place)
  }
  const [first, second] = [...weights.values()].sort((a, b) => b.weight - a.weight)
  return first && first.weight !== second?.weight ? first : null
}

function mostCommon(codes: readonly (string | null)[]): string | null {
  const counts = new Map<string, number>()
  for (const code of codes) if (code) counts.set(code, (counts.get(code) ?? 0) + 1)
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0] ?? null
}
