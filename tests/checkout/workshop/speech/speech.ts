/**
 * What the shops of one language say, as a maker of shops would write it: from general knowledge, without a look at the
 * reader's own word lists (importing those would prove nothing). `|` stands between ways to say the same; `{}` is an amount.
 */
export interface Speech {
  /** BCP 47, with the country whose money it is. */
  readonly lang: string
  readonly currency: string
  /** Three names of goods. */
  readonly goods: string
  readonly items: string
  readonly shipping: string
  readonly tax: string
  readonly discount: string
  /** Money of the buyer's that is used up. */
  readonly gift: string
  readonly fee: string
  readonly total: string
  /** What is to be paid. */
  readonly due: string
  readonly dueNow: string
  /** What is to be paid later, on arrival. */
  readonly dueLater: string
  /** A sum without its tax. */
  readonly net: string
  /** Said of a tax that a sum contains. */
  readonly contained: string
  /** Controls that place the order. */
  readonly pay: string
  /** Controls that go on, back, or do something else. */
  readonly next: string
  readonly toCheckout: string
  readonly addToCart: string
  readonly apply: string
  readonly back: string
  readonly cart: string
  readonly checkout: string
  readonly thanks: string
  readonly history: string
  readonly orderNumber: string
  /** Of a parcel, a customer, a payment. */
  readonly otherNumber: string
  readonly saved: string
  readonly freeOver: string
  readonly instalment: string
  readonly monthly: string
  readonly giftLeft: string
  /** In place of an amount that is not known yet. */
  readonly later: string
  readonly related: string
  readonly cookies: string
  readonly accept: string
  readonly terms: string
  /** Ways of sending: the heading, and two of them. */
  readonly ways: string
  readonly quantity: string
  readonly card: string
  readonly review: string
}
