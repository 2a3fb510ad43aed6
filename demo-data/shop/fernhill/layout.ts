import { readBasket } from '../basket.ts'
import { type Html, html, iconLink, markup } from '../html.ts'
import { dollars } from '../price-text.ts'

const FERN =
  '<svg viewBox="0 0 40 40" width="40" height="40" fill="none" stroke="#8fb573" stroke-width="2.6" stroke-linecap="round"><path d="M20 37C20 26 19 14 25 4M20 31c-6 0-9-3-10-7M20 31c6-1 9-4 10-8M20 23c-5-1-7-3-8-7M20.500 23c5 0 7-3 8-6M21 16c-4-1-5-3-5-6M22 15c3 0 5-2 6-4"/></svg>'
const GROUPS = [
  { id: 'seeds', label: 'Seeds & bulbs' },
  { id: 'tools', label: 'Tools' },
  { id: 'growing', label: 'Growing' },
]

/** The shelves a visitor can choose from. */
export const fernhillGroups: readonly { readonly id: string; readonly label: string }[] = GROUPS

/** The path with the basket in its query, when there is one. */
export function withBasket(path: string, basket: string): string {
  return basket === '' ? path : `${path}${path.includes('?') ? '&' : '?'}basket=${basket}`
}

/**
 * A whole page of the garden shop. `quiet` leaves the shelves, the basket and the free-shipping line away, as some
 * checkouts do, so that the page's own sums are the only ones on it.
 */
export function fernhillLayout(parts: { title: string; body: Html; basket: string; quiet?: boolean }): Html {
  const { title, body, basket, quiet = false } = parts
  return html`<!doctype html>
<html lang="en-CA">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title} – Fernhill Garden Supply</title>
${iconLink(FERN)}
<link rel="stylesheet" href="/fernhill.css">
</head>
<body>
${quiet ? null : html`<p class="strip">Free standard shipping from $75.00 · Open all winter</p>`}
<header class="top">
<a class="logo" href="${withBasket('/', basket)}">${markup(FERN)}<span>Fernhill<small>Garden Supply</small></span></a>
${quiet ? null : navigation(basket)}
${quiet ? null : miniBasket(basket)}
</header>
<main>${body}</main>
<footer><p><strong>Fernhill Garden Supply</strong> · Nursery Road, Wexcombe</p><p>An invented shop. Nothing is sold here.</p></footer>
</body>
</html>`
}

function navigation(basket: string): Html {
  const links = GROUPS.map(({ id, label }) => html`<a href="${withBasket(`/?group=${id}`, basket)}">${label}</a>`)
  return html`<nav aria-label="Shelves">${links}<a href="/strange/plain">Almanac</a></nav>`
}

// Shows the subtotal on every page, as shops do: not what is to be paid.
function miniBasket(basket: string): Html {
  const lines = readBasket('fernhill', basket)
  const count = lines.reduce((all, line) => all + line.quantity, 0)
  const cents = lines.reduce((all, line) => all + line.quantity * line.product.cents, 0)
  return html`<a class="mini-basket" href="${withBasket('/basket', basket)}">
<span class="mini-basket-label">Basket</span> <span class="mini-basket-count">${count}</span>
<span class="mini-basket-total">${dollars(cents)}</span></a>`
}
