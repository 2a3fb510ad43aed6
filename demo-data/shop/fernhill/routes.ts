import { findProduct, readBasket, readQuantity, writeBasket } from '../basket.ts'
import { asset, page, type Reply, type ShopContext, type ShopRequest, seeOther } from '../exchange.ts'
import { ShopError } from '../model.ts'
import { dollars } from '../price-text.ts'
import { findCoupon, findShipping, quoteBasket } from '../quote.ts'
import { strangeRoutes } from '../strange/routes.ts'
import { addressCookie, addressFrom, isComplete, rememberedAddress } from './address.ts'
import { addressPage } from './address-page.ts'
import { basketPage } from './basket-page.ts'
import { confirmationPage } from './confirmation-page.ts'
import { withBasket } from './layout.ts'
import { productListPage, productPage } from './product-pages.ts'
import { reviewPage } from './review-page.ts'

/**
 * Fernhill Garden Supply: pages made on the server, no script at all, a full load per step, a redirect after each POST.
 * List, `/product/ID`, `/basket`, `/checkout` (address), `/checkout/review`, `/confirmation/NUMBER`; and `/strange/…`.
 */
export function fernhillRoutes(request: ShopRequest, context: ShopContext): Reply | null {
  if (request.path.startsWith('/strange/') || request.path === '/newsletter') return strangeRoutes(request, context)
  return request.method === 'POST' ? post(request, context) : get(request, context)
}

function get(request: ShopRequest, { ledger }: ShopContext): Reply | null {
  const basket = writeBasket(readBasket('fernhill', request.query.get('basket') ?? ''))
  const [, section = '', id = ''] = request.path.split('/')
  switch (request.path) {
    case '/':
      return page(productListPage(basket, request.query.get('group')))
    case '/fernhill.css':
      return asset(new URL('./fernhill.css', import.meta.url))
    case '/basket':
      return page(basketPage(basket))
    case '/checkout':
      if (basket === '') return seeOther('/basket')
      return page(addressPage(basket, rememberedAddress(request.cookie), null))
    case '/checkout/review':
      return basket === '' ? seeOther('/basket') : review(request.query, request.cookie, null)
  }
  if (section === 'product' && request.path === `/product/${id}`) return page(productPage(basket, id))
  const order = section === 'confirmation' ? ledger.find('fernhill', id) : null
  return order === null ? null : page(confirmationPage(order))
}

function post(request: ShopRequest, context: ShopContext): Reply | null {
  const { form } = request
  const basket = form.get('basket') ?? ''
  switch (request.path) {
    case '/basket/add': {
      const added = {
        product: findProduct('fernhill', form.get('product') ?? ''),
        quantity: readQuantity(form.get('quantity') ?? ''),
      }
      const merged = readBasket('fernhill', writeBasket([...readBasket('fernhill', basket), added]))
      return seeOther(withBasket('/basket', writeBasket(merged)))
    }
    case '/basket/update': {
      const lines = readBasket('fernhill', basket).map(({ product, quantity }) => ({
        product,
        quantity: readQuantity(form.get(`quantity-${product.id}`) ?? String(quantity)),
      }))
      return seeOther(withBasket('/basket', writeBasket(lines)))
    }
    case '/checkout/address': {
      const address = addressFrom(form)
      if (!isComplete(address))
        return page(addressPage(basket, address, 'Please fill in every line of the address.'), 422)
      const shipping = findShipping('fernhill', form.get('shipping')).id
      return seeOther(withBasket(`/checkout/review?shipping=${shipping}`, basket), {
        'set-cookie': addressCookie(address),
      })
    }
    case '/checkout/place':
      return place(request, context)
  }
  return null
}

function place({ form, cookie }: ShopRequest, { ledger }: ShopContext): Reply {
  if (form.get('terms') !== 'yes') return review(form, cookie, 'Please accept the terms of sale to place the order.')
  const coupon = findCoupon('fernhill', form.get('coupon') ?? '')
  const order = ledger.placeQuote(quoteBasket('fernhill', form.get('basket') ?? '', form.get('shipping'), coupon))
  return seeOther(`/confirmation/${order.number}`)
}

function review(fields: URLSearchParams, cookie: string, complaint: string | null): Reply {
  const typedCode = fields.get('coupon')?.trim() ?? ''
  const coupon = findCoupon('fernhill', typedCode)
  const quote = quoteBasket('fernhill', fields.get('basket') ?? '', fields.get('shipping'), coupon)
  const codeNote = noteOn(typedCode, coupon === null ? null : coupon.fromCents, quote.discountCents)
  const address = rememberedAddress(cookie)
  if (!isComplete(address)) throw new ShopError('bad-request', 'We have no address for this order yet.')
  return page(reviewPage({ quote, address, coupon, typedCode, codeNote, complaint }), complaint === null ? 200 : 422)
}

function noteOn(typed: string, fromCents: number | null, discountCents: number): string | null {
  if (typed === '') return null
  if (fromCents === null) return `We do not know the code “${typed}”.`
  return discountCents > 0
    ? 'The coupon is taken off below.'
    : `This coupon needs items for ${dollars(fromCents)} or more.`
}
