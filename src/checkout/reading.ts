/** Where a page stands on the way to an order. */
export type Stage = 'product' | 'cart' | 'checkout' | 'confirmation' | 'other'

/** What a figure beside the total is for. */
export type PartKind = 'items' | 'shipping' | 'tax' | 'discount' | 'credit' | 'fee' | 'tip' | 'other'

/** A decimal text (`.` decimal mark, no grouping, `-` for less than nothing) and an ISO 4217 code. */
export interface ReadAmount {
  readonly amount: string
  readonly currency: string
}

/** One figure that leads to the total: the label as the shop wrote it, and the amount (discounts are negative). */
export interface ReadPart extends ReadAmount {
  readonly kind: PartKind
  readonly label: string
}

/** One thing bought. `amount` is the line's sum (not the unit price), null where the page does not say. */
export interface ReadItem {
  readonly name: string
  readonly quantity: number
  readonly amount: string | null
  readonly currency: string | null
}

/** What a figure was read from. */
export type EvidenceSource = 'json-ld' | 'microdata' | 'meta' | 'label' | 'autofill-token' | 'text'

/**
 * Why the reader believes something: the figure it speaks for, the words it saw, and where. `element` is for the page
 * itself (to highlight it); everything else is plain data that can be sent in a message.
 */
export interface Evidence {
  readonly figure: 'total' | 'stage' | 'order-number' | 'place-order' | 'currency' | 'part' | 'item'
  readonly source: EvidenceSource
  /** The label or machine name, as found: `Order total`, `Order.totalPrice`. */
  readonly label: string
  /** The text or value read: `$55.90`. */
  readonly text: string
  /** True when this figure was used, false when it was seen and set aside. */
  readonly used: boolean
  /** Why it was used or set aside, in a few plain words. */
  readonly why: string
  readonly element: Element | null
}

/** What `readCheckout` found on a page. Null means "not said on the page, or not sure": never a guess. */
export interface CheckoutReading {
  readonly stage: Stage
  /** What the card will be charged now. */
  readonly total: ReadAmount | null
  readonly parts: readonly ReadPart[]
  readonly items: readonly ReadItem[]
  readonly orderNumber: string | null
  /** The visible, enabled controls that place the order (buttons, inputs, links), in document order. */
  readonly placeOrder: readonly Element[]
  readonly evidence: readonly Evidence[]
}
