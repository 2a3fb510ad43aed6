import { describe, expect, it } from 'vitest'
import { mayBeCheckout } from '../../src/checkout/may-be-checkout.ts'
import { readCheckout } from '../../src/checkout/read-checkout.ts'
import { daPages } from './pages/languages/da.ts'
import { etPages } from './pages/languages/et.ts'
import { fiPages } from './pages/languages/fi.ts'
import { isPages } from './pages/languages/is.ts'
import { nbPages } from './pages/languages/nb.ts'
import { svPages } from './pages/languages/sv.ts'
import { documentOf, type ShopPage } from './pages/page.ts'
import { inShort } from './pages/short.ts'

const pages: Readonly<Record<string, readonly ShopPage[]>> = {
  Swedish: svPages,
  Danish: daPages,
  Norwegian: nbPages,
  Finnish: fiPages,
  Estonian: etPages,
  Icelandic: isPages,
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
