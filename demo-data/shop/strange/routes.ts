import { asset, page, type Reply, type ShopContext, type ShopRequest, seeOther } from '../exchange.ts'
import { ShopError } from '../model.ts'
import { amountText } from '../price-text.ts'
import { almanacPage } from './almanac-page.ts'
import { strangeCase } from './cases.ts'
import {
  abroadPage,
  changingPage,
  enterPage,
  newsletterThanksPage,
  noTotalPage,
  scriptSubmitPage,
  strangeThanksPage,
} from './pages.ts'

const ASSETS: Readonly<Record<string, URL>> = {
  'changing.js': new URL('./changing.js', import.meta.url),
  'script-submit.js': new URL('./script-submit.js', import.meta.url),
  'almanac.css': new URL('./almanac.css', import.meta.url),
}

/** Pages that a reader of checkouts must not be fooled by; orders post to `/strange/order`. */
export function strangeRoutes(request: ShopRequest, context: ShopContext): Reply | null {
  if (request.method === 'POST') return post(request, context)
  const name = request.path.replace('/strange/', '')
  const file = ASSETS[name]
  if (file !== undefined) return asset(file)
  switch (name) {
    case 'no-total':
      return page(noTotalPage(request.query.get('as')))
    case 'changing':
      return page(changingPage())
    case 'script-submit':
      return page(scriptSubmitPage())
    case 'enter':
      return page(enterPage())
    case 'abroad':
      return page(abroadPage())
    case 'plain':
      return page(almanacPage())
    case 'newsletter-thanks':
      return page(newsletterThanksPage())
  }
  const order = name.startsWith('thanks/') ? context.ledger.find('fernhill', name.replace('thanks/', '')) : null
  return order === null
    ? null
    : page(strangeThanksPage(order.number, order.total, order.items[0]?.id === 'abroad' ? '€' : '$'))
}

function post({ path, form }: ShopRequest, { ledger }: ShopContext): Reply | null {
  if (path === '/newsletter') return seeOther('/strange/newsletter-thanks')
  if (path !== '/strange/order') return null
  const bought = strangeCase(form.get('case') ?? '')
  if (bought === null) throw new ShopError('bad-request', 'We do not know what this order is for.')
  const unitPrice = amountText(bought.cents)
  const order = ledger.place('fernhill', bought.cents, [{ id: bought.id, name: bought.item, quantity: 1, unitPrice }])
  return seeOther(`/strange/thanks/${order.number}`)
}
