import { findProduct } from '../basket.ts'
import { shops } from '../catalogue.ts'
import { type Html, html } from '../html.ts'
import type { Product } from '../model.ts'
import { dollars } from '../price-text.ts'
import { drawing } from './drawings.ts'
import { fernhillGroups, fernhillLayout, withBasket } from './layout.ts'

/** The shelf, or one group of it. */
export function productListPage(basket: string, group: string | null): Html {
  const chosen = fernhillGroups.find((candidate) => candidate.id === group)
  const products = shops.fernhill.products.filter((product) => chosen === undefined || product.group === chosen.id)
  const cards = products.map(
    (product) => html`<li class="card"><a href="${withBasket(`/product/${product.id}`, basket)}">
<span class="tile tile-${product.group}">${drawing(product.id)}</span>
<span class="card-name">${product.name}</span><span class="note">${product.note}</span>
${price(product)}</a></li>`,
  )
  const intro = html`<section class="hero"><div><h1>Good tools, good seed, good soil.</h1>
<p>A small nursery on a north-facing hill. Everything here has been through our own beds first.</p></div>
${drawing('hero')}</section>`
  const body = html`${chosen === undefined ? intro : html`<h1>${chosen.label}</h1>`}<ul class="cards">${cards}</ul>`
  return fernhillLayout({ title: chosen?.label ?? 'The shelf', body, basket })
}

/** One product, with its form to add it. @throws ShopError `unknown-product` */
export function productPage(basket: string, id: string): Html {
  const product = findProduct('fernhill', id)
  const saved = (product.oldCents ?? product.cents) - product.cents
  const body = html`<p class="crumbs"><a href="${withBasket('/', basket)}">The shelf</a> / ${product.name}</p>
<article class="product">
<div class="tile tile-${product.group}">${drawing(product.id)}</div>
<div><h1>${product.name}</h1><p class="note">${product.note}</p>
<p class="product-price">${price(product)}</p>
${saved > 0 && html`<p class="saving">You save ${dollars(saved)}</p>`}
<p>Packed by hand and sent within two days. If it does not suit your garden, send it back within sixty.</p>
<form class="add" method="post" action="/basket/add">
<input type="hidden" name="basket" value="${basket}"><input type="hidden" name="product" value="${product.id}">
<label>Quantity <input type="number" name="quantity" value="1" min="1" max="99" required></label>
<button class="button" type="submit">Add to basket</button>
</form></div>
</article>`
  return fernhillLayout({ title: product.name, body, basket })
}

function price(product: Product): Html {
  if (product.oldCents === undefined) return html`<span class="price">${dollars(product.cents)}</span>`
  return html`<span class="price"><s>${dollars(product.oldCents)}</s> ${dollars(product.cents)}</span>`
}
