import { findProduct, readBasket, readQuantity, writeBasket } from '../basket.ts'
import { asset, json, page, type Reply, type ShopContext, type ShopRequest, seeOther } from '../exchange.ts'
import type { Html } from '../html.ts'
import { quoteBasket } from '../quote.ts'
import { checkoutPage, emptyPage, quoteForElements } from './checkout-page.ts'
import { scoreListPage, scorePage, thanksPage } from './score-pages.ts'

// The strictest of the three: nothing inline runs or styles, as in shops that take care.
const POLICY =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; form-action 'self'; base-uri 'none'"

const ASSETS: Readonly<Record<string, URL>> = {
  '/corvid.css': new URL('./corvid.css', import.meta.url),
  '/elements/checkout.js': new URL('./elements/checkout.js', import.meta.url),
  '/elements/checkout-style.js': new URL('./elements/checkout-style.js', import.meta.url),
  '/elements/summary.js': new URL('./elements/summary.js', import.meta.url),
  '/elements/pay-button.js': new URL('./elements/pay-button.js', import.meta.url),
  '/elements/price.js': new URL('./elements/price.js', import.meta.url),
}

/**
 * Corvid Sheet Music: the checkout is web components with open shadow roots, `<cv-summary>` and `<cv-pay-button>` inside
 * `<cv-checkout>`. `/quote` prices a changed basket, `/stock` is the check before paying, `POST /order` places the order,
 * `POST /saved-baskets` is what the decoy button “Save basket” calls.
 */
export function corvidRoutes(request: ShopRequest, context: ShopContext): Reply | null {
  return request.method === 'POST' ? post(request, context) : get(request, context)
}

function get({ path, query }: ShopRequest, { ledger }: ShopContext): Reply | null {
  const basket = writeBasket(readBasket('corvid', query.get('basket') ?? ''))
  const [, section = '', id = ''] = path.split('/')
  const file = ASSETS[path]
  if (file !== undefined) return asset(file)
  switch (path) {
    case '/':
      return strict(scoreListPage(basket))
    case '/checkout':
      if (basket === '') return strict(emptyPage())
      return strict(checkoutPage(quoteBasket('corvid', basket, query.get('shipping'))))
    case '/quote':
      return json(quoteForElements(quoteBasket('corvid', basket, query.get('shipping'))))
    case '/stock':
      return json({ available: true })
    case `/score/${id}`:
      return strict(scorePage(basket, id))
  }
  const order = section === 'thanks' ? ledger.find('corvid', id) : null
  return order === null ? null : strict(thanksPage(order))
}

function post({ path, form }: ShopRequest, { ledger }: ShopContext): Reply | null {
  const basket = form.get('basket') ?? ''
  switch (path) {
    case '/basket/add': {
      const added = {
        product: findProduct('corvid', form.get('product') ?? ''),
        quantity: readQuantity(form.get('quantity') ?? ''),
      }
      const merged = readBasket('corvid', writeBasket([...readBasket('corvid', basket), added]))
      return seeOther(`/checkout?basket=${writeBasket(merged)}`)
    }
    case '/saved-baskets':
      return { status: 204, headers: {}, body: '' }
    case '/order':
      return seeOther(`/thanks/${ledger.placeQuote(quoteBasket('corvid', basket, form.get('shipping'))).number}`)
  }
  return null
}

function strict(content: Html): Reply {
  return page(content, 200, { 'content-security-policy': POLICY })
}
