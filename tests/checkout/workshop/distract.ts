import { type Chance, type Half, keptFor } from './chance.ts'
import type { Shop } from './plan.ts'

/** Something on a page that shows money, or talks, and is no part of what is to be paid. */
interface Distraction {
  readonly name: string
  readonly make: (shop: Shop) => string
}

const money = (shop: Shop, from = 300, to = 90_000): string => shop.money(shop.price(from, to))

/** The last two are kept for the unseen half. */
const distractions: readonly Distraction[] = [
  { name: 'saving', make: (shop) => `<p class="saved">${shop.put('saved', shop.price(100, 9000))}</p>` },
  { name: 'threshold bar', make: (shop) => `<div role="status">${shop.put('freeOver', shop.price(2000, 9000))}</div>` },
  { name: 'instalment teaser', make: (shop) => `<p>${shop.put('instalment', shop.price(500, 9000))}</p>` },
  { name: 'gift balance', make: (shop) => `<p>${shop.put('giftLeft', shop.price(500, 9000))}</p>` },
  {
    name: 'recommended goods',
    make: (shop) =>
      `<section><h3>${shop.say('related')}</h3><ul>${shop
        .list('goods')
        .map((name) => `<li><a href="/p/9">${name}</a> <s>${money(shop)}</s> <b>${money(shop)}</b></li>`)
        .join('')}</ul></section>`,
  },
  {
    name: 'cookie dialog',
    make: (shop) =>
      `<div role="dialog" aria-modal="true"><p>${shop.say('cookies')}</p><button>${shop.say('accept')}</button></div>`,
  },
  { name: 'review', make: (shop) => `<blockquote>★★★★★ ${shop.say('review')} (${money(shop)})</blockquote>` },
  { name: 'countdown', make: () => '<div class="timer"><span>00</span>:<span>14</span>:<span>59</span></div>' },
  {
    name: 'prices in a script',
    make: (shop) =>
      `<script type="application/json">{"total":"${money(shop)}","label":"${shop.say('total')}"}</script><!-- ${shop.say('due')}: ${money(shop)} -->`,
  },
  {
    name: 'hidden drawer',
    make: (shop) =>
      `<div style="display:none"><h2>${shop.say('cart')}</h2><p>${shop.say('items')}: ${money(shop)}</p><p>${shop.say('total')}: ${money(shop)}</p><button>${shop.say('pay')}</button></div>`,
  },
  {
    name: 'template',
    make: (shop) => `<template><p>${shop.say('due')}: ${money(shop)}</p><button>${shop.say('pay')}</button></template>`,
  },
  {
    name: 'small cart in the head',
    make: (shop) => `<header><a href="/cart">${shop.say('cart')} <span>${money(shop)}</span></a></header>`,
  },
  {
    name: 'legal foot',
    make: (shop) =>
      `<footer><p>© Lanternhouse Ltd. 12 Quay Lane. +44 20 7946 0018. ${shop.put('freeOver', shop.price(2000, 9000))}</p></footer>`,
  },
  { name: 'newsletter', make: () => '<form action="/news"><input type="email" name="news"><button>OK</button></form>' },
  {
    name: 'voucher field',
    make: (shop) =>
      `<form><input name="coupon" placeholder="${shop.say('discount')}"><button>${shop.say('apply')}</button></form>`,
  },
  {
    name: 'closed details',
    make: (shop) => `<details><summary>?</summary><p>${shop.say('total')}: ${money(shop)}</p></details>`,
  },
  {
    name: 'a bundle with a total of its own',
    make: (shop) =>
      `<section><h3>${shop.say('related')}</h3><p>${shop.list('goods').join(' + ')}</p><p>${shop.say('total')}: <b>${money(shop)}</b></p><button>${shop.say('addToCart')}</button></section>`,
  },
  {
    name: 'something to add for a price',
    make: (shop) =>
      `<label><input type="checkbox" name="wrap"> ${shop.list('goods')[2] ?? ''} + ${money(shop, 100, 900)}</label>`,
  },
  {
    name: 'a choice of currencies',
    make: (shop) =>
      `<select name="currency"><option selected>${shop.currency}</option><option>USD $</option><option>GBP £</option><option>JPY ¥</option></select>`,
  },
  {
    name: 'a small cart beside',
    make: (shop) =>
      `<aside class="mini-cart"><h4>${shop.say('cart')}</h4><p>${shop.list('goods')[0] ?? ''} × 1 ${money(shop)}</p><p>${shop.say('items')}: ${money(shop)}</p><a href="/cart">${shop.say('cart')}</a></aside>`,
  },
  {
    name: 'ways to pay with fees',
    make: (shop) =>
      `<ul><li><label><input type="radio" name="paid-by"> ${shop.say('card')} (+ ${money(shop, 50, 300)})</label></li></ul>`,
  },
  {
    name: 'things looked at before',
    make: (shop) =>
      `<section><div class="slider">${shop
        .list('goods')
        .map((name) => `<div class="slide"><img alt="${name}"><div>${name}</div><div>${money(shop)}</div></div>`)
        .join('')}</div></section>`,
  },
  {
    name: 'old price by style',
    make: (shop) => `<p><span style="text-decoration: line-through">${money(shop)}</span></p>`,
  },
  {
    name: 'text for screen readers alone',
    make: (shop) => `<p class="sr-only">${shop.say('cart')}: ${money(shop)}</p>`,
  },
]

/** The markup of some distractions, and their names. */
export function distract(chance: Chance, shop: Shop, half: Half): { html: string[]; traits: string[] } {
  const allowed = half === 'unseen' ? distractions : keptFor(half, distractions.slice(0, -1))
  const chosen = chance.shuffled(allowed).slice(0, chance.int(0, 5))
  return { html: chosen.map((each) => each.make(shop)), traits: chosen.map((each) => `beside: ${each.name}`) }
}
