import { describe, expect, it } from 'vitest'
import { mayBeCheckout } from '../../src/checkout/may-be-checkout.ts'
import { readCheckout } from '../../src/checkout/read-checkout.ts'
import { bgPages } from './pages/languages/bg.ts'
import { elPages } from './pages/languages/el.ts'
import { hrPages } from './pages/languages/hr.ts'
import { huPages } from './pages/languages/hu.ts'
import { ltPages } from './pages/languages/lt.ts'
import { lvPages } from './pages/languages/lv.ts'
import { slPages } from './pages/languages/sl.ts'
import { documentOf, type ShopPage } from './pages/page.ts'
import { inShort } from './pages/short.ts'

const pages: Readonly<Record<string, readonly ShopPage[]>> = {
  Hungarian: huPages,
  'Croatian, Serbian, Bosnian': hrPages,
  Slovenian: slPages,
  Bulgarian: bgPages,
  Greek: elPages,
  Latvian: lvPages,
  Lithuanian: ltPages,
}

for (const [language, list] of Object.entries(pages)) {
  describe(`pages: ${language}`, () => {
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
