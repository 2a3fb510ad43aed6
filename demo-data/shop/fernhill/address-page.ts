import { readBasket } from '../basket.ts'
import { shops } from '../catalogue.ts'
import { type Html, html } from '../html.ts'
import { dollars } from '../price-text.ts'
import { shippingCents } from '../quote.ts'
import { type Address, addressFields } from './address.ts'
import { fernhillLayout } from './layout.ts'

/** The three steps, with the present one marked. */
export function steps(current: 1 | 2 | 3): Html {
  const items = ['Address', 'Review', 'Done'].map(
    (label, index) =>
      html`<li${index + 1 === current && html` aria-current="step"`}><span>${index + 1}</span> ${label}</li>`,
  )
  return html`<ol class="steps">${items}</ol>`
}

/** Step 1: address and way of sending. Shows the subtotal and what each way costs, but no total yet. */
export function addressPage(basket: string, address: Address, complaint: string | null): Html {
  const subtotal = readBasket('fernhill', basket).reduce((all, line) => all + line.product.cents * line.quantity, 0)
  const fields = addressFields.map(
    ({ key, label, hint }) => html`<label class="field">${label}
<input name="${key}" value="${address[key]}" autocomplete="${hint}" required></label>`,
  )
  const options = shops.fernhill.shipping.map(
    (
      option,
      index,
    ) => html`<label class="choice"><input type="radio" name="shipping" value="${option.id}"${index === 0 && html` checked`}>
<span>${option.label}</span> <span class="sum">${dollars(shippingCents(option, subtotal))}</span></label>`,
  )
  const body = html`${steps(1)}<h1>Where shall we send it?</h1>
${complaint !== null && html`<p class="complaint" role="alert">${complaint}</p>`}
<form class="columns" method="post" action="/checkout/address"><input type="hidden" name="basket" value="${basket}">
<div class="panel"><h2>Address</h2>${fields}</div>
<div class="panel"><h2>Shipping</h2>${options}
<p class="subtotal"><span>Subtotal</span> <strong>${dollars(subtotal)}</strong></p>
<p class="note">Shipping and tax are added on the next page.</p>
<button class="button wide" type="submit">Continue to review</button></div></form>`
  return fernhillLayout({ title: 'Checkout: address', body, basket })
}
