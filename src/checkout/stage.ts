import type { Stage } from './reading.ts'
import type { StageSigns } from './stage-signs.ts'

/**
 * Where the page stands. Never by one sign alone: a page titled "order confirmation" may come before ordering, a cart's
 * link can say "order", a product page has a "buy now".
 *
 * @param totalShown whether a total to be paid was found on the page
 */
export function decideStage(signs: StageSigns, totalShown: boolean, hasNumber: boolean, hasItems: boolean): Stage {
  const paysHere = signs.payment || signs.terms
  const orders = signs.pays || ((signs.buys || signs.completes) && (paysHere || signs.url === 'checkout'))
  const said = signs.thanked || signs.headings.has('thanks')
  // Nothing left to press, and thanks, an address, or an order's data with a number: the order is placed.
  if (!(orders && (paysHere || totalShown)) && !signs.payment) {
    if (said && (signs.url === 'confirmation' || hasNumber || signs.thanked)) return 'confirmation'
    if (signs.url === 'confirmation' && (hasNumber || signs.orderData)) return 'confirmation'
    if (signs.orderData && hasNumber && !signs.headings.has('history') && signs.url !== 'history') return 'confirmation'
  }
  if (signs.headings.has('history') && !orders && !signs.toCheckout) return 'other'
  if (signs.url === 'history' && !orders) return 'other'
  const checkoutSigns = [
    signs.payment,
    signs.terms,
    signs.address,
    signs.url === 'checkout',
    signs.headings.has('checkout'),
  ].filter(Boolean)
  if (orders && (paysHere || signs.url === 'checkout' || (signs.pays && (totalShown || signs.namesTotal))))
    return 'checkout'
  if (isProduct(signs, totalShown, hasItems)) return 'product'
  if (signs.url === 'cart' && !signs.payment) return 'cart'
  if (signs.payment || signs.url === 'checkout' || (checkoutSigns.length >= 2 && !signs.toCheckout)) return 'checkout'
  if (signs.headings.has('checkout') && !signs.headings.has('cart') && totalShown && !signs.toCheckout)
    return 'checkout'
  if (signs.headings.has('cart') && (totalShown || hasItems || signs.toCheckout)) return 'cart'
  if (totalShown && (signs.toCheckout || hasItems || (signs.url === null && !signs.addsToCart))) return 'cart'
  return 'other'
}

function isProduct(signs: StageSigns, totalShown: boolean, hasItems: boolean): boolean {
  if (signs.payment || signs.terms || signs.url === 'checkout' || signs.url === 'cart') return false
  if (signs.url === 'product') return true
  if (signs.product && (signs.addsToCart || signs.buys || !totalShown)) return true
  return signs.addsToCart && !totalShown && !signs.toCheckout && !(hasItems && signs.headings.has('cart'))
}
