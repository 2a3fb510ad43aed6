import { placeCurrencies } from '../money/currency-places.ts'
import type { MachineValues } from './machine-values.ts'
import { notesOf } from './notes.ts'
import type { EvidenceSource } from './reading.ts'
import type { Stream } from './stream.ts'
import type { Vocabulary } from './vocabulary.ts'

/** A currency and what said so. */
export interface CurrencyFinding {
  readonly code: string
  readonly why: string
  readonly source: EvidenceSource
  readonly label: string
}

export interface CurrencyContext {
  readonly stream: Stream
  readonly words: Vocabulary
  readonly machine: MachineValues
  readonly lang: string | null
  readonly host: string
  /** The household's own currency; the last resort. */
  readonly assumed: string | null
}

const GENERIC_HOSTS: ReadonlySet<string> = new Set(
  'io co me tv cc ai fm gg to ws sh ac eu gs nu st la ms vc im je tk ly'.split(' '),
)

interface Place extends CurrencyFinding {
  readonly weight: number
}

/** Taxes, the page's language and the end of its host name: each points to a country. */
export function placesOf({ stream, words, lang, host }: CurrencyContext): Place[] {
  const places: Place[] = []
  for (const item of stream.items) {
    if (item.kind !== 'words') continue
    for (const code of notesOf(item, words).taxes) {
      places.push({ code, why: 'the name of its tax', source: 'label', label: item.text, weight: 4 })
    }
  }
  const locale = lang && /^[a-z]{2,3}(?:[-_][a-z0-9]{2,8})*$/i.test(lang) ? lang.replaceAll('_', '-') : null
  const region = locale ? /-([a-z]{2})\b/i.exec(locale)?.[1] : undefined
  const pays = new Set(locale ? placeCurrencies(region, safeLocale(locale)) : [])
  for (const [index, code] of [...pays].entries()) {
    // Themes ship as en-US: that says little about the shop.
    // Surest first: `ru-BY` is Belarus before it is the home of Russian.
    const weight = (locale?.toLowerCase() === 'en-us' ? 1 : region ? 3 : 1.5) - index
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
export function agreed(places: readonly Place[]): CurrencyFinding | null {
  const weights = new Map<string, Place>()
  for (const place of places) {
    const known = weights.get(place.code)
    if (!known || known.weight < place.weight) weights.set(place.code, place)
  }
  const [first, second] = [...weights.values()].sort((a, b) => b.weight - a.weight)
  return first && first.weight !== second?.weight ? first : null
}
