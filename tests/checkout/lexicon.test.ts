import { describe, expect, it } from 'vitest'
import { lexicons } from '../../src/checkout/lexicon/index.ts'
import { plain } from '../../src/checkout/words.ts'

const TOTALS = ['dueNow', 'payable', 'grandTotal', 'total', 'paid'] as const
const ORDERING = ['pays', 'buys', 'completes', 'vague'] as const

describe.each(lexicons.map((lexicon) => [lexicon.language, lexicon] as const))('the words of %s', (_, lexicon) => {
  const lists = [
    ...Object.entries(lexicon.labels),
    ...Object.entries(lexicon.controls),
    ...Object.entries(lexicon.stages),
    ...Object.entries({
      rates: lexicon.rates,
      bounds: lexicon.bounds,
      included: lexicon.included,
      excluded: lexicon.excluded,
      later: lexicon.later,
      quantity: lexicon.quantity,
      orderNumber: lexicon.orderNumber,
      otherNumber: lexicon.otherNumber,
      terms: lexicon.terms,
    }),
  ]

  it('has words in every list, each once', () => {
    for (const [name, phrases] of lists) {
      expect(phrases.length, name).toBeGreaterThan(0)
      // With and without an accent folds to the same words: that is more than needed, but no mistake.
      const wrong = phrases.filter((phrase, index) => plain(phrase) === '' || phrases.indexOf(phrase) !== index)
      expect(wrong, name).toEqual([])
    }
  })

  it('is a BCP 47 language', () => {
    expect(Intl.getCanonicalLocales(lexicon.language)).toEqual([lexicon.language])
  })

  it('never calls the same words a total and something else', () => {
    const others = Object.entries(lexicon.labels).filter(([kind]) => !TOTALS.some((total) => total === kind))
    for (const total of TOTALS) {
      for (const phrase of lexicon.labels[total]) {
        for (const [kind, phrases] of others)
          expect(phrases.map(plain), `"${phrase}" is ${total} and ${kind}`).not.toContain(plain(phrase))
      }
    }
  })

  it('never says that the same words order and do not order', () => {
    const no = new Set([...lexicon.controls.other, ...lexicon.controls.addToCart].map(plain))
    for (const kind of ORDERING)
      expect(
        lexicon.controls[kind].filter((phrase) => no.has(plain(phrase))),
        kind,
      ).toEqual([])
  })
})
