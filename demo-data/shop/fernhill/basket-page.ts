import { readBasket } from '../basket.ts'
import { type Html, html } from '../html.ts'
import { dollars } from '../price-text.ts'
import { drawing } from './drawings.ts'
import { fernhillLayout, withBasket } from './layout.ts'

/** The basket: a subtotal and no total, since shipping is not known yet. */
export function basketPage(basket: string): Html {
  const lines = readBasket('fernhill', basket)
  if (lines.length === 0) {
    const body = html`<section class="message"><h1>Your basket is empty</h1><p>Nothing in it yet.</p>
<p><a class="button" href="/">See the shelf</a></p></section>`
    return fernhillLayout({ title: 'Basket', body, basket })
  }
  const subtotal = lines.reduce((all, line) => all + line.product.cents * line.quantity, 0)
  const rows = lines.map(
    ({
      product,
      quantity,
    }) => html`<tr><td><div class="item"><span class="thumb tile-${product.group}">${drawing(product.id)}</span>
<a href="${withBasket(`/product/${product.id}`, basket)}">${product.name}</a></div></td>
<td>${product.oldCents !== undefined && html`<s>${dollars(product.oldCents)}</s> `}${dollars(product.cents)}</td>
<td><input type="number" name="quantity-${product.id}" value="${quantity}" min="0" max="99" aria-label="Quantity of ${product.name}"></td>
<td class="sum">${dollars(product.cents * quantity)}</td></tr>`,
  )
  const body = html`<h1>Your basket</h1>
<form method="post" action="/basket/update"><input type="hidden" name="basket" value="${basket}">
<table class="lines"><thead><tr><th>Item</th><th>Price</th><th>Quantity</th><th class="sum">Total</th></tr></thead>
<tbody>${rows}</tbody></table>
<p class="end"><button class="button plain" type="submit">Update quantities</button></p></form>
<section class="basket-foot"><p class="subtotal"><span>Subtotal</span> <strong>${dollars(subtotal)}</strong></p>
<p class="note">Shipping and tax are calculated at checkout.</p>
<p><a class="button" href="${withBasket('/checkout', basket)}">Go to checkout</a></p></section>`
  return fernhillLayout({ title: 'Basket', body, basket })
}
