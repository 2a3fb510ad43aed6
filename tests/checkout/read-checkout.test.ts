import { describe, expect, it } from 'vitest'
import { mayBeCheckout } from '../../src/checkout/may-be-checkout.ts'
import { readCheckout } from '../../src/checkout/read-checkout.ts'
import { controls, numbers } from './pages/controls.ts'
import { english } from './pages/english.ts'
import { french } from './pages/french.ts'
import { german } from './pages/german.ts'
import { hostile } from './pages/hostile.ts'
import { decoys, makes, signs } from './pages/makes.ts'
import { odd } from './pages/odd.ts'
import { onceMisread } from './pages/once-misread.ts'
import { documentOf, type ShopPage } from './pages/page.ts'
import { platforms } from './pages/platforms.ts'
import { inShort } from './pages/short.ts'

const pages: Readonly<Record<string, readonly ShopPage[]>> = {
  platforms,
  onceMisread,
  english,
  french,
  german,
  hostile,
  makes,
  odd,
  decoys,
  signs,
  controls,
  numbers,
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
