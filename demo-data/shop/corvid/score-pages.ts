import { findProduct } from '../basket.ts'
import { shops } from '../catalogue.ts'
import { type Html, html } from '../html.ts'
import type { PlacedOrder } from '../model.ts'
import { dollars } from '../price-text.ts'
import { cover } from './covers.ts'
import { corvidLayout } from './layout.ts'

/** All scores. */
export function scoreListPage(basket: string): Html {
  const carry = basket === '' ? '' : `?basket=${basket}`
  const cards = shops.corvid.products.map(
    ({ id, name, note, group, cents }) => html`<li><a href="/score/${id}${carry}">${cover(id)}<strong>${name}</strong>
<span>${note}</span><span class="quiet">${group}</span><span class="price">${dollars(cents)}</span></a></li>`,
  )
  const body = html`<h1>New on the music stand</h1><ul class="scores">${cards}</ul>`
  return corvidLayout({ title: 'Scores', body, basket })
}

/** One score, with its form to add it. @throws ShopError `unknown-product` */
export function scorePage(basket: string, id: string): Html {
  const { name, note, group, cents } = findProduct('corvid', id)
  const body = html`<article class="score"><div>${cover(id)}</div>
<div><h1>${name}</h1><p>${note}</p><p class="quiet">${group}</p><p class="price big">${dollars(cents)}</p>
<p>Engraved by hand on cream paper, bound to stay open on the stand. Page turns fall where a hand is free.</p>
<form method="post" action="/basket/add"><input type="hidden" name="basket" value="${basket}">
<input type="hidden" name="product" value="${id}"><input type="hidden" name="quantity" value="1">
<button type="submit">Add to basket</button></form></div></article>`
  return corvidLayout({ title: name, body, basket })
}

/** The order has arrived. */
export function thanksPage(order: PlacedOrder): Html {
  const items = order.items.map((item) => html`<li>${item.quantity} × ${item.name}</li>`)
  const body = html`<section class="thanks"><h1>Thank you. It is on its way to the stand.</h1>
<dl><dt>Order number</dt><dd>${order.number}</dd><dt>Paid by card ending in 0017</dt><dd>CA$${order.total}</dd></dl>
<ul>${items}</ul><p><a href="/">More scores</a></p></section>`
  return corvidLayout({ title: `Order ${order.number}`, body, basket: '' })
}
