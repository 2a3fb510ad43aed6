import { shops } from '../catalogue.ts'
import { type Html, html, iconLink, jsonForScript, markup } from '../html.ts'
import { amountText, dollarsFrench } from '../price-text.ts'
import { drawings } from './drawings.ts'

const MOON =
  '<svg viewBox="0 0 32 32" width="32" height="32"><circle cx="16" cy="16" r="16" fill="#1f2547"/><path d="M21 5a12 12 0 1 0 5 17A10 10 0 0 1 21 5z" fill="#e9d49a"/></svg>'
const PHASES =
  '<svg class="phases" viewBox="0 0 260 28" aria-hidden="true"><g fill="#e9d49a"><path d="M20 4a10 10 0 0 1 0 20 14 14 0 0 0 0-20zM72 4a10 10 0 0 1 0 20z"/><circle cx="130" cy="14" r="12"/><path d="M188 4a10 10 0 0 0 0 20zM240 4a10 10 0 0 0 0 20 14 14 0 0 1 0-20z"/></g><g fill="none" stroke="#e9d49a" stroke-opacity=".35"><circle cx="20" cy="14" r="10"/><circle cx="72" cy="14" r="10"/><circle cx="188" cy="14" r="10"/><circle cx="240" cy="14" r="10"/></g></svg>'

/** The page the script draws on; it carries the catalogue as data and, for machines, as JSON-LD with prices in CAD. */
export function lunaireShell(): Html {
  const { products, shipping } = shops.lunaire
  const catalogue = {
    products: products.map(({ id, name, note, cents }) => ({ id, name, note, price: dollarsFrench(cents) })),
    shipping: shipping.map(({ id, label, cents }) => ({
      id,
      label,
      price: cents === 0 ? 'gratuit' : dollarsFrench(cents),
    })),
  }
  const machineData = products.map(({ id, name, note, cents }) => ({
    '@context': 'https://schema.org',
    '@type': 'Product',
    sku: id,
    name,
    description: note,
    offers: { '@type': 'Offer', price: amountText(cents), priceCurrency: 'CAD' },
  }))
  const head = html`<script type="application/ld+json">${jsonForScript(machineData)}</script>
<script type="application/json" id="catalogue">${jsonForScript(catalogue)}</script>
<script type="module" src="/scripts/shop.js"></script>`
  const body = html`<div id="shop"><noscript><p class="message">Cette boutique a besoin de JavaScript.</p></noscript></div>
${drawings.map(({ id, svg }) => html`<template id="drawing-${id}">${svg}</template>`)}`
  return layout('Papeterie Lunaire', head, body)
}

/** A short notice in the dress of the shop, such as a page that is not there. */
export function lunaireMessage(title: string, text: string): Html {
  const body = html`<section class="message"><h1>${title}</h1><p>${text}</p><p><a href="/">Retour à la papeterie</a></p></section>`
  return layout(`${title} – Papeterie Lunaire`, null, body)
}

function layout(title: string, head: Html | null, body: Html): Html {
  return html`<!doctype html>
<html lang="fr-CA">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
${iconLink(MOON)}
<link rel="stylesheet" href="/lunaire.css">
${head}
</head>
<body>
<header>${markup(PHASES)}<a class="name" href="/">Papeterie Lunaire</a><p>Papier, encre et lettres lentes, depuis Val-des-Cendres</p></header>
<main>${body}</main>
<footer><p>Boutique inventée&nbsp;: rien n’est vendu ici.</p><p lang="en">An invented shop. Nothing is sold here.</p></footer>
</body>
</html>`
}
