import { type BasketLine, readBasket } from './basket.ts'
import { shops } from './catalogue.ts'
import { type Coupon, type ShippingOption, ShopError, type ShopName, type Tax } from './model.ts'
import { amountText } from './price-text.ts'

/** Everything a checkout shows, in whole cents. */
export interface Quote {
  readonly shop: ShopName
  readonly lines: readonly BasketLine[]
  readonly itemsCents: number
  /** What the struck-through prices say was saved; no part of the sum. */
  readonly savedCents: number
  readonly discountCents: number
  readonly shipping: ShippingOption
  readonly shippingCents: number
  readonly taxes: readonly { readonly label: string; readonly cents: number }[]
  readonly totalCents: number
}

/** A tax on a net sum in whole cents, rounded half up to the cent. */
export function taxCents(netCents: number, tax: Tax): number {
  return Math.floor((netCents * tax.perHundredThousand + 50_000) / 100_000)
}

/** A coupon of the shop by its code, whatever the case of its letters; null if the shop has no such code. */
export function findCoupon(shop: ShopName, code: string): Coupon | null {
  return shops[shop].coupons.find((coupon) => coupon.code === code.trim().toUpperCase()) ?? null
}

/** The shop's way of sending by id; none given is the first. @throws ShopError `unknown-shipping` */
export function findShipping(shop: ShopName, id?: string | null): ShippingOption {
  const options = shops[shop].shipping
  if (id === undefined || id === null || id === '') return options[0]
  const found = options.find((option) => option.id === id)
  if (found === undefined) throw new ShopError('unknown-shipping', `We have no shipping called “${id}”.`)
  return found
}

/** What an option costs for a sum of items. */
export function shippingCents(option: ShippingOption, itemsCents: number): number {
  return option.freeFromCents !== undefined && itemsCents >= option.freeFromCents ? 0 : option.cents
}

/**
 * Prices a basket: items, less a coupon, plus shipping, plus each tax rounded half up on that net sum.
 * A coupon below its smallest basket takes nothing off.
 *
 * @throws ShopError `empty-basket`, `unknown-shipping`, and what `readBasket` throws
 */
export function quoteBasket(shop: ShopName, basket: string, shippingId?: string | null, coupon?: Coupon | null): Quote {
  const lines = readBasket(shop, basket).filter((line) => line.quantity > 0)
  if (lines.length === 0) throw new ShopError('empty-basket', 'The basket is empty.')
  const itemsCents = sum(lines.map((line) => line.product.cents * line.quantity))
  const savedCents = sum(
    lines.map(({ product, quantity }) => ((product.oldCents ?? product.cents) - product.cents) * quantity),
  )
  const discountCents = coupon && itemsCents >= coupon.fromCents ? coupon.cents : 0
  const shipping = findShipping(shop, shippingId)
  const sending = shippingCents(shipping, itemsCents)
  const net = itemsCents - discountCents + sending
  const taxes = shops[shop].taxes.map((tax) => ({ label: tax.label, cents: taxCents(net, tax) }))
  const totalCents = net + sum(taxes.map((tax) => tax.cents))
  return { shop, lines, itemsCents, savedCents, discountCents, shipping, shippingCents: sending, taxes, totalCents }
}

/**
 * What a checkout of the shop must show as payable, such as `55.90` (CAD).
 *
 * @throws ShopError `unknown-coupon`, and what `quoteBasket` throws
 * @example expectedTotal('corvid', 'evening-piano:1') // '55.90'
 */
export function expectedTotal(shop: ShopName, basket: string, shipping?: string, couponCode?: string): string {
  const coupon = couponCode === undefined ? null : findCoupon(shop, couponCode)
  if (couponCode !== undefined && coupon === null) {
    throw new ShopError('unknown-coupon', `The shop has no code “${couponCode}”.`)
  }
  return amountText(quoteBasket(shop, basket, shipping, coupon).totalCents)
}

/**
 * The path of the page with the payable total and the control that places the order.
 *
 * @example checkoutPath('fernhill', 'seed-mix:2,trowel:1') // '/checkout/review?basket=seed-mix:2,trowel:1'
 */
export function checkoutPath(shop: ShopName, basket: string, shipping?: string): string {
  const page = { fernhill: '/checkout/review', lunaire: '/commande', corvid: '/checkout' }[shop]
  return `${page}?basket=${basket}${shipping === undefined ? '' : `&shipping=${shipping}`}`
}

function sum(cents: readonly number[]): number {
  return cents.reduce((all, one) => all + one, 0)
}
