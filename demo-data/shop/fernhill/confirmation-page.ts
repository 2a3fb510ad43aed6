import { type Html, html } from '../html.ts'
import type { PlacedOrder } from '../model.ts'
import { steps } from './address-page.ts'
import { fernhillLayout } from './layout.ts'

/** Step 3: the order number, what was bought and what the card pays. The basket is empty again. */
export function confirmationPage(order: PlacedOrder): Html {
  const items = order.items.map((item) => html`<li>${item.quantity} × ${item.name}</li>`)
  const body = html`${steps(3)}<section class="panel thanks"><h1>Thank you for your order</h1>
<p>Your order number is <strong class="order-number">${order.number}</strong>.</p>
<ul>${items}</ul>
<p>Your card ending in 0017 pays <strong>$${order.total}</strong>. We write to you when the parcel leaves the hill.</p>
<p><a class="button plain" href="/">Back to the shelf</a></p></section>`
  return fernhillLayout({ title: `Order ${order.number}`, body, basket: '' })
}
