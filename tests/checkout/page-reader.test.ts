import fc from 'fast-check'
import { JSDOM } from 'jsdom'
import { describe, expect, it } from 'vitest'
import { lexicons } from '../../src/checkout/lexicon/index.ts'
import { createPageReader, type PageReader, readPage } from '../../src/checkout/page-reader.ts'
import type { CheckoutReading } from '../../src/checkout/reading.ts'
import { type Mutation, mutate } from './page-mutations.ts'
import { english } from './pages/english.ts'

const url = 'https://thimble.example/checkout'
const words = lexicons.filter(({ language }) => language === 'en' || language === 'fr')

const everyChange = { childList: true, subtree: true, characterData: true, attributes: true }

/** A reader that is told of every change, as the guard does it. */
function watched(window: JSDOM['window'], document: Document): { reader: PageReader; read: () => CheckoutReading } {
  const reader = createPageReader(document)
  const observer = new window.MutationObserver(() => {})
  observer.observe(document, everyChange)
  return {
    reader,
    read() {
      reader.changed(observer.takeRecords())
      reader.lookForRoots()
      const reading = reader.read({ url }, words)
      for (const source of reader.takeSources()) observer.observe(source, everyChange)
      return reading
    },
  }
}

/** Readings as plain data in which one element is one number, so that only the very same element is equal. */
function numbering(): (reading: CheckoutReading) => unknown {
  const numbers = new Map<Element, number>()
  const numberOf = (element: Element | null): number | null => {
    if (element === null) return null
    const number = numbers.get(element) ?? numbers.size
    numbers.set(element, number)
    return number
  }
  return ({ placeOrder, evidence, ...rest }) => ({
    ...rest,
    placeOrder: placeOrder.map(numberOf),
    evidence: evidence.map((each) => ({ ...each, element: numberOf(each.element) })),
  })
}

const mutation: fc.Arbitrary<Mutation> = fc.record({ kind: fc.nat(11), place: fc.nat(10_000), value: fc.nat(10_000) })

describe('a page read again', () => {
  it('reads as if it were read for the first time, whatever was changed', () => {
    const { window } = new JSDOM('')
    fc.assert(
      fc.property(
        fc.nat(english.length - 1),
        fc.array(mutation, { minLength: 1, maxLength: 12 }),
        (which, mutations) => {
          const document = new window.DOMParser().parseFromString(
            `<!doctype html><html lang="en-CA"><body>${english[which]?.body}</body></html>`,
            'text/html',
          )
          const { read } = watched(window, document)
          const numbered = numbering()
          read()
          const done: string[] = []
          for (const [index, each] of mutations.entries()) {
            done.push(mutate(document, each))
            // Several changes may come before the next reading.
            if (index % 3 === 1) continue
            expect(numbered(read()), done.join('\n')).toEqual(numbered(readPage(document, { url }, words)))
          }
        },
      ),
      { seed: 20_261_125, numRuns: 40 },
    )
  }, 60_000)
})
