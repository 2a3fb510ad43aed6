import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { controlKind } from '../../src/checkout/controls.ts'
import { lexicons } from '../../src/checkout/lexicon/index.ts'
import { vocabularyOf } from '../../src/checkout/vocabulary.ts'

// Source: Directive 2011/83/EU, article 8(2), as quoted language by language in the headnotes of the Court of Justice's
// judgment C-249/21 (7 April 2022) on EUR-Lex, and national wordings with their own sources: eu-order-button.json.
interface OrderButton {
  readonly languages: readonly {
    readonly lang: string
    readonly directive_words: string
    readonly national: readonly { readonly text: string }[]
  }[]
  readonly not_sufficient: readonly { readonly lang: string; readonly text: string }[]
}

const published: OrderButton = JSON.parse(readFileSync(new URL('eu-order-button.json', import.meta.url), 'utf8'))
const known = new Set(lexicons.map((lexicon) => lexicon.language))
const every = vocabularyOf(lexicons)
const vocabularyFor = (lang: string) => vocabularyOf(lexicons.filter((lexicon) => lexicon.language === lang))

const accepted = published.languages
  .filter(({ lang }) => known.has(lang))
  .flatMap(({ lang, directive_words, national }) =>
    [directive_words, ...national.map(({ text }) => text)].map((text) => [lang, text] as const),
  )
const insufficient = published.not_sufficient
  .filter(({ lang }) => known.has(lang))
  .map(({ lang, text }) => [lang, text] as const)

describe('the words of an order button (Directive 2011/83/EU art. 8(2), C-249/21)', () => {
  it('covers several languages', () => {
    expect(new Set(accepted.map(([lang]) => lang)).size).toBeGreaterThanOrEqual(5)
    expect(insufficient.length).toBeGreaterThanOrEqual(9)
  })

  it.each(accepted)('%s: "%s" says by itself that it orders with payment', (lang, text) => {
    expect(['pays', 'buys']).toContain(controlKind(text, vocabularyFor(lang)))
    expect(['pays', 'buys']).toContain(controlKind(text.toUpperCase(), every))
    expect(['pays', 'buys']).toContain(controlKind(`  ${text.normalize('NFD')} ›`, every))
  })

  it.each(insufficient)('%s: "%s" does not, by itself', (lang, text) => {
    expect(['pays', 'buys']).not.toContain(controlKind(text, vocabularyFor(lang)))
    expect(['pays', 'buys']).not.toContain(controlKind(text, every))
  })
})
