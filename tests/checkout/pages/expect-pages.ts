import { describe, expect, it } from 'vitest'
import { mayBeCheckout } from '../../../src/checkout/may-be-checkout.ts'
import { readCheckout } from '../../../src/checkout/read-checkout.ts'
import { documentOf, type ShopPage } from './page.ts'
import { inShort } from './short.ts'

/** One test a page: the reader says what a person reading the page would say, and the first look lets it through. */
export function expectPages(groups: Readonly<Record<string, readonly ShopPage[]>>): void {
  for (const [group, pages] of Object.entries(groups)) {
    describe(`pages: ${group}`, () => {
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
}
