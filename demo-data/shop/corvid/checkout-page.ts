import { writeBasket } from '../basket.ts'
import { shops } from '../catalogue.ts'
import { type Html, html, jsonForScript } from '../html.ts'
import { priceParts } from '../price-text.ts'
import type { Quote } from '../quote.ts'
import { cover } from './covers.ts'
import { corvidLayout } from './layout.ts'

/** The checkout: one element, its first figures as data, and the covers put into its slots. */
export function checkoutPage(quote: Quote): Html {
  const basket = writeBasket(quote.lines)
  const covers = shops.corvid.products.map(({ id }) => html`<div slot="cover-${id}">${cover(id)}</div>`)
  const body = html`<h1>Checkout</h1>
<cv-checkout><script type="application/json">${jsonForScript(quoteForElements(quote))}</script>${covers}</cv-checkout>
<noscript><p>The checkout needs JavaScript.</p></noscript>`
  const head = html`<script type="module" src="/elements/checkout.js"></script>`
  return corvidLayout({ title: 'Checkout', body, basket, head })
}

/** The checkout of an empty basket. */
export function emptyPage(): Html {
  const body = html`<section class="message"><h1>Your basket is empty</h1><p><a class="button" href="/">See the scores</a></p></section>`
  return corvidLayout({ title: 'Basket', body, basket: '' })
}

/** What the elements show: every price as its digits before and after the mark. */
export function quoteForElements(quote: Quote): unknown {
  return {
    basket: writeBasket(quote.lines),
    lines: quote.lines.map(({ product, quantity }) => ({
      id: product.id,
      name: product.name,
      note: product.note,
      quantity,
      price: priceParts(product.cents * quantity),
    })),
    options: shops.corvid.shipping.map(({ id, label, cents }) => ({
      id,
      label,
      price: priceParts(cents),
      chosen: id === quote.shipping.id,
    })),
    rows: [
      { label: 'Scores', price: priceParts(quote.itemsCents) },
      { label: 'Postage', price: priceParts(quote.shippingCents) },
      ...quote.taxes.map((tax) => ({ label: tax.label, price: priceParts(tax.cents) })),
    ],
    total: priceParts(quote.totalCents),
  }
}
