import { describe, expect, it } from 'vitest'
import { mayBeCheckout } from '../../src/checkout/may-be-checkout.ts'
import { readCheckout } from '../../src/checkout/read-checkout.ts'
import { gaPages } from './pages/languages/ga.ts'
import { idPages } from './pages/languages/id.ts'
import { jaPages } from './pages/languages/ja.ts'
import { koPages } from './pages/languages/ko.ts'
import { mtPages } from './pages/languages/mt.ts'
import { thPages } from './pages/languages/th.ts'
import { viPages } from './pages/languages/vi.ts'
import { zhPages } from './pages/languages/zh.ts'
import { documentOf, type ShopPage } from './pages/page.ts'
import { inShort } from './pages/short.ts'

const languages: Readonly<Record<string, readonly ShopPage[]>> = {
  Japanese: jaPages,
  Korean: koPages,
  Chinese: zhPages,
  Vietnamese: viPages,
  'Indonesian and Malay': idPages,
  Thai: thPages,
  Maltese: mtPages,
  Irish: gaPages,
}

for (const [language, pages] of Object.entries(languages)) {
  describe(`shops in ${language}`, () => {
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
