/** The three invented shops; each is served at `http://NAME.localhost:PORT`. */
export type ShopName = 'fernhill' | 'lunaire' | 'corvid'

/** The shops in the order they are listed to people. */
export const shopNames: readonly ShopName[] = ['fernhill', 'lunaire', 'corvid']

/** One thing on a shelf. Amounts are whole cents of a Canadian dollar. */
export interface Product {
  readonly id: string
  readonly name: string
  /** A line under the name. */
  readonly note: string
  readonly group: string
  readonly cents: number
  /** The price before a reduction, shown struck through. */
  readonly oldCents?: number
}

/** A way to have an order sent; the first of a shop's list is chosen unless the page or url says otherwise. */
export interface ShippingOption {
  readonly id: string
  readonly label: string
  readonly cents: number
  /** From this sum of items on, the option costs nothing. */
  readonly freeFromCents?: number
}

/** A sales tax as a whole number of hundred-thousandths: 9.975 % is 9975. */
export interface Tax {
  readonly label: string
  readonly perHundredThousand: number
}

/** A code that takes a fixed sum off the items, from a smallest basket on. */
export interface Coupon {
  readonly code: string
  readonly cents: number
  readonly fromCents: number
}

/** What a shop sells and how it reckons. */
export interface ShopFacts {
  readonly title: string
  readonly language: 'en-CA' | 'fr-CA'
  readonly products: readonly Product[]
  readonly shipping: readonly [ShippingOption, ...ShippingOption[]]
  readonly taxes: readonly Tax[]
  readonly coupons: readonly Coupon[]
}

/** A product of an order that reached the server. */
export interface PlacedItem {
  readonly id: string
  readonly name: string
  readonly quantity: number
  /** What one piece cost, such as `18.60`. */
  readonly unitPrice: string
}

/** An order that reached the server. */
export interface PlacedOrder {
  readonly shop: ShopName
  readonly number: string
  /** What was to be paid, a point and two decimals: `55.90`. */
  readonly total: string
  readonly currency: 'CAD'
  readonly items: readonly PlacedItem[]
  /** Counts up over all shops from 1; no clock is used. */
  readonly at: number
}

/** A request that reached the server, of any kind. */
export interface SeenRequest {
  /** Without the port: `fernhill.localhost`. */
  readonly host: string
  readonly method: string
  /** Without the query: `/checkout/review`. */
  readonly path: string
  /** With the question mark, or empty. */
  readonly query: string
}

/** Why a basket cannot be priced, or a request not be answered as asked. */
export type ShopErrorCode =
  | 'bad-basket'
  | 'bad-quantity'
  | 'empty-basket'
  | 'unknown-product'
  | 'unknown-shipping'
  | 'unknown-coupon'
  | 'bad-request'

/** A sentence for the visitor, and a code for a test. */
export class ShopError extends Error {
  readonly code: ShopErrorCode

  constructor(code: ShopErrorCode, message: string) {
    super(message)
    this.name = 'ShopError'
    this.code = code
  }
}
