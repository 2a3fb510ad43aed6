import { describe, expect, it } from 'vitest'
import { mayBeCheckout } from '../../src/checkout/may-be-checkout.ts'
import { readCheckout } from '../../src/checkout/read-checkout.ts'
import { csPages } from './pages/languages/cs.ts'
import { itPages } from './pages/languages/it.ts'
import { plPages } from './pages/languages/pl.ts'
import { ptPages } from './pages/languages/pt.ts'
import { roPages } from './pages/languages/ro.ts'
import { skPages } from './pages/languages/sk.ts'
import { documentOf, type ShopPage } from './pages/page.ts'
import { inShort } from './pages/short.ts'

const languages: Readonly<Record<string, readonly ShopPage[]>> = {
  Italian: itPages,
  Portuguese: ptPages,
  Polish: plPages,
  Czech: csPages,
  Slovak: skPages,
  Romanian: roPages,
}

for (const [language, pages] of Object.entries(languages)) {
  describe(`pages: ${language}`, () => {
    it.each(pages.map((page) => [page.name, page] as const))('%s', (_, page) => {
      const document = documentOf(page)
      const reading = readCheckout(document, { url: page.url, ...(page.currency ? { currency: page.currency } : {}) })
      const { stage, total, orderNumber, placeOrder, parts, items } = inShort(reading)
      expect({ stage, total, orderNumber, placeOrder }).toEqual({
        stage: page.stage,
        total: page.total,
        orderNumber: page.orderNumber ?? null,
        placeOrder: page.placeOrder ?? [],
      })
      if (page.parts) expect(parts).toEqual(page.parts)
      if (page.items) expect(items).toEqual(page.items)
      if (['cart', 'checkout', 'confirmation'].includes(page.stage))
        expect(mayBeCheckout(document, page.url)).toBe(true)
    })
  })
}
