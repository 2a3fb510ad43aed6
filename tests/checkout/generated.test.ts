import fc from 'fast-check'
import { JSDOM } from 'jsdom'
import { expect, it } from 'vitest'
import { readCheckout } from '../../src/checkout/read-checkout.ts'
import { generatedPage } from './pages/generated.ts'

it('reads the total and the button of made-up checkouts, whatever their layout, labels and decoys', () => {
  fc.assert(
    fc.property(generatedPage, ({ html, lang, url, amount, currency, button }) => {
      const { document } = new JSDOM(`<html lang="${lang}"><body>${html}</body></html>`, { url }).window
      const reading = readCheckout(document, { url })
      expect(reading.total).toEqual({ amount, currency })
      expect(reading.placeOrder.map((control) => control.textContent)).toEqual([button])
    }),
    { numRuns: 80 },
  )
}, 60_000)
