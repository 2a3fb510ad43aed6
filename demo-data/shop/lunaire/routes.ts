import { asset, json, page, type Reply, type ShopContext, type ShopRequest, textOf } from '../exchange.ts'
import type { PlacedOrder } from '../model.ts'
import { dollarsFrench } from '../price-text.ts'
import { type Quote, quoteBasket } from '../quote.ts'
import { lunaireShell } from './page.ts'

const ASSETS: Readonly<Record<string, URL>> = {
  '/lunaire.css': new URL('./lunaire.css', import.meta.url),
  '/scripts/choice.js': new URL('./scripts/choice.js', import.meta.url),
  '/scripts/element.js': new URL('./scripts/element.js', import.meta.url),
  '/scripts/order-form.js': new URL('./scripts/order-form.js', import.meta.url),
  '/scripts/order-state.js': new URL('./scripts/order-state.js', import.meta.url),
  '/scripts/shop.js': new URL('./scripts/shop.js', import.meta.url),
  '/scripts/thanks.js': new URL('./scripts/thanks.js', import.meta.url),
  '/scripts/total.js': new URL('./scripts/total.js', import.meta.url),
}

/**
 * Papeterie Lunaire: one page on which a script draws choice and checkout. `/` and `/commande` are that page, `/devis` the
 * late total, `POST /commandes` the order, `/merci/NUMBER` the confirmation, drawn by the same script.
 *
 * The button that pays stays enabled while the total is on its way, as in many shops.
 */
export function lunaireRoutes(request: ShopRequest, { ledger, delayMs }: ShopContext): Reply | null {
  const { method, path, query, body } = request
  if (method === 'POST') {
    if (path !== '/commandes') return null
    const order = ledger.placeQuote(quoteBasket('lunaire', textOf(body, 'basket'), textOf(body, 'shipping')))
    return json(orderForScript(order), 201)
  }
  const file = ASSETS[path]
  if (file !== undefined) return asset(file)
  switch (path) {
    case '/':
    case '/commande':
      return page(lunaireShell())
    case '/devis':
      return {
        ...json(quoteForScript(quoteBasket('lunaire', query.get('basket') ?? '', query.get('shipping')))),
        delayMs,
      }
  }
  const order = ledger.find('lunaire', path.replace(/^\/(merci|commandes)\//, ''))
  if (order === null) return null
  return path.startsWith('/merci/') ? page(lunaireShell()) : json(orderForScript(order))
}

function quoteForScript(quote: Quote): unknown {
  return {
    lines: [
      { label: 'Articles', amount: dollarsFrench(quote.itemsCents) },
      { label: 'Livraison', amount: dollarsFrench(quote.shippingCents) },
      ...quote.taxes.map((tax) => ({ label: tax.label, amount: dollarsFrench(tax.cents) })),
    ],
    total: dollarsFrench(quote.totalCents),
  }
}

function orderForScript(order: PlacedOrder): unknown {
  const total = dollarsFrench(Number(order.total.replace('.', '')))
  return { number: order.number, total, items: order.items.map(({ name, quantity }) => ({ name, quantity })) }
}
