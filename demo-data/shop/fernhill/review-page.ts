import { writeBasket } from '../basket.ts'
import { type Html, html } from '../html.ts'
import type { Coupon } from '../model.ts'
import { dollars } from '../price-text.ts'
import type { Quote } from '../quote.ts'
import type { Address } from './address.ts'
import { steps } from './address-page.ts'
import { drawing } from './drawings.ts'
import { fernhillLayout, withBasket } from './layout.ts'

/** What the review page is made from. */
export interface Review {
  readonly quote: Quote
  readonly address: Address
  readonly coupon: Coupon | null
  /** The code as typed, and what is to be said about it. */
  readonly typedCode: string
  readonly codeNote: string | null
  readonly complaint: string | null
}

/** Step 2: lines, coupon form, totals table, terms and the button that places the order, in that order. */
export function reviewPage(review: Review): Html {
  const { quote, address, complaint } = review
  const basket = writeBasket(quote.lines)
  const body = html`${steps(2)}<h1>Review your order</h1>
${complaint !== null && html`<p class="complaint" role="alert">${complaint}</p>`}
<div class="columns wide-left">
<div><section class="panel"><h2>Items</h2>${lineTable(quote)}
${quote.savedCents > 0 && html`<p class="saving">You save ${dollars(quote.savedCents)} on this order</p>`}</section>
<section class="panel two"><div><h2>Send to</h2><p>${address.name}<br>${address.street}<br>${address.town} <span class="postcode">${address.postcode}</span></p></div>
<div><h2>Shipping</h2><p>${quote.shipping.label}</p><p><a href="${withBasket('/checkout', basket)}">Change</a></p></div></section></div>
<section class="panel summary"><h2>Order summary</h2>${couponForm(review, basket)}${totals(quote)}${placeForm(review, basket)}</section>
</div>`
  return fernhillLayout({ title: 'Checkout: review', body, basket })
}

function lineTable(quote: Quote): Html {
  const rows = quote.lines.map(
    ({
      product,
      quantity,
    }) => html`<tr><td><div class="item"><span class="thumb tile-${product.group}">${drawing(product.id)}</span>
<span>${product.name}</span></div></td>
<td>${product.oldCents !== undefined && html`<s>${dollars(product.oldCents)}</s> `}${dollars(product.cents)}</td>
<td>${quantity}</td><td class="sum">${dollars(product.cents * quantity)}</td></tr>`,
  )
  return html`<table class="lines"><thead><tr><th>Item</th><th>Price</th><th>Qty</th><th class="sum">Total</th></tr></thead>
<tbody>${rows}</tbody></table>`
}

function couponForm(review: Review, basket: string): Html {
  return html`<form class="coupon" method="get" action="/checkout/review">
<input type="hidden" name="basket" value="${basket}"><input type="hidden" name="shipping" value="${review.quote.shipping.id}">
<label for="coupon">Coupon code</label>
<span><input id="coupon" name="coupon" value="${review.typedCode}" autocomplete="off"><button class="button plain" type="submit">Apply</button></span>
${review.codeNote !== null && html`<p class="note" role="status">${review.codeNote}</p>`}</form>`
}

function totals(quote: Quote): Html {
  const row = (label: string, cents: number): Html =>
    html`<tr><th scope="row">${label}</th><td>${dollars(cents)}</td></tr>`
  return html`<table class="totals"><tbody>
${row('Items', quote.itemsCents)}
${quote.discountCents > 0 && row('Coupon', -quote.discountCents)}
${row('Shipping', quote.shippingCents)}
${quote.taxes.map((tax) => row(tax.label, tax.cents))}
</tbody><tfoot><tr class="order-total"><th scope="row">Order total</th><td>${dollars(quote.totalCents)}</td></tr></tfoot></table>`
}

function placeForm({ quote, coupon }: Review, basket: string): Html {
  return html`<form class="place" method="post" action="/checkout/place">
<input type="hidden" name="basket" value="${basket}"><input type="hidden" name="shipping" value="${quote.shipping.id}">
<input type="hidden" name="coupon" value="${coupon?.code ?? ''}">
<p class="payment"><span>Pay with</span> Card ending in 0017</p>
<label class="choice"><input type="checkbox" name="terms" value="yes" required> <span>I have read the terms of sale.</span></label>
<button class="button wide" type="submit">Place order</button></form>`
}
