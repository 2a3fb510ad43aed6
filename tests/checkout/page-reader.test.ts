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

  it('asks anew what styles hide, by a class, a rule or an ancestor', () => {
    const { window } = new JSDOM(
      '<html lang="en-CA"><head><style>.off { display: none }</style></head><body><h1>Checkout</h1><dl><dt>Subtotal</dt><dd>$5.00</dd><dt>Order total</dt><dd id="sum">$6.00</dd></dl><button>Place order</button></body></html>',
    )
    const { document } = window
    const { read } = watched(window, document)
    const sum = document.getElementById('sum')
    const sheet = document.querySelector('style')
    if (!sum || !sheet) throw new Error('The page is not as it was written.')
    const steps: readonly (readonly [change: () => void, total: string | null])[] = [
      [() => {}, '6.00'],
      [() => sum.classList.add('off'), null],
      [() => sum.classList.remove('off'), '6.00'],
      [() => sheet.append('#sum { visibility: hidden }'), null],
      [() => sheet.remove(), '6.00'],
      [() => document.body.setAttribute('style', 'opacity: 0.01'), null],
      [() => document.body.removeAttribute('style'), '6.00'],
    ]
    for (const [index, [change, total]] of steps.entries()) {
      change()
      const numbered = numbering()
      const reading = read()
      expect(reading.total?.amount ?? null, `step ${index}`).toBe(total)
      expect(numbered(reading)).toEqual(numbered(readPage(document, { url }, words)))
    }
  })

  it('walks anew where a page is exchanged, and comes to an end with thousands of changes', () => {
    const { window } = new JSDOM('<html lang="en-CA"><body><p>Total: €5.00</p></body></html>')
    const { document } = window
    const { read } = watched(window, document)
    expect(read().total?.amount).toBe('5.00')
    for (let count = 0; count < 6_000; count += 1) document.body.append(document.createElement('i'))
    document.body.innerHTML = '<p>Total: €7.00</p>'
    expect(read().total?.amount).toBe('7.00')
    const other = document.createElement('html')
    other.innerHTML = '<body><p>Total: €8.00</p></body>'
    document.documentElement.replaceWith(other)
    expect(read().total?.amount).toBe('8.00')
  })
})
