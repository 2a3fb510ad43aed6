import { describe, expect, it } from 'vitest'
import { mayBeCheckout } from '../../src/checkout/may-be-checkout.ts'
import { readCheckout } from '../../src/checkout/read-checkout.ts'
import { arPages } from './pages/languages/ar.ts'
import { faPages } from './pages/languages/fa.ts'
import { hePages } from './pages/languages/he.ts'
import { hiPages } from './pages/languages/hi.ts'
import { ruPages } from './pages/languages/ru.ts'
import { trPages } from './pages/languages/tr.ts'
import { ukPages } from './pages/languages/uk.ts'
import { documentOf, type ShopPage } from './pages/page.ts'
import { inShort } from './pages/short.ts'

const pages: Readonly<Record<string, readonly ShopPage[]>> = {
  Russian: ruPages,
  Ukrainian: ukPages,
  Turkish: trPages,
  Arabic: arPages,
  Hebrew: hePages,
  Persian: faPages,
  Hindi: hiPages,
}

for (const [group, list] of Object.entries(pages)) {
  describe(`pages: ${group}`, () => {
    it.each(list.map((page) => [page.name, page] as const))('%s', (_, page) => {
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
