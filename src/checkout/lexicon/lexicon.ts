/** What a label beside a figure says the figure is. */
export type LabelKind =
  /** Charged at once, where other sums follow later: "due today". */
  | 'dueNow'
  /** The sum to be paid: "amount due", "to pay". */
  | 'payable'
  /** A total of the whole order: "order total". */
  | 'grandTotal'
  /** A bare "total", which can be a total of anything. */
  | 'total'
  /** What was paid: on a confirmation this is the total. */
  | 'paid'
  /** The heading of a collapsed summary, which often carries the total beside it: "order summary". */
  | 'summary'
  /** Sum of the items: "subtotal". */
  | 'items'
  /** A sum before tax, or without something else that is still to be paid. */
  | 'net'
  | 'shipping'
  | 'tax'
  | 'discount'
  /** Money of the buyer's that is used up: gift card, store credit, redeemed points. */
  | 'credit'
  | 'fee'
  | 'tip'
  | 'rounding'
  /** A figure that is no part of the sum: instalment, saving, threshold, balance left, unit price, restatement. */
  | 'aside'

/** What a control's own words say it does. */
export type ControlKind =
  /** Says that pressing it orders with payment: "place order", "pay now". */
  | 'pays'
  /** Says it buys, but is also used on product and cart pages: "buy now". */
  | 'buys'
  /** Says it completes an order, without a word of paying: "complete booking". */
  | 'completes'
  /** Says next to nothing: "confirm". */
  | 'vague'
  /** Does something else: "continue", "apply coupon", "back". */
  | 'other'
  | 'addToCart'
  | 'toCheckout'

/** Words that tell where a page stands. */
export type StageWords =
  | 'cart'
  | 'checkout'
  /** Said after an order was placed: "thank you for your order". */
  | 'thanks'
  /** A list of earlier orders. */
  | 'history'

/**
 * The words of one language that the reader looks for. Write them as a shop would, in lower case; accents count for
 * nothing, `*` stands for more letters of the same word, a space also matches a hyphen. Of all lists the longest phrase
 * found in a label wins, so an exception is simply a longer phrase in the right list.
 */
export interface Lexicon {
  /** BCP 47 language subtag: `en`. */
  readonly language: string
  /** False for languages written without spaces, where a phrase may stand anywhere. */
  readonly spaced: boolean
  readonly labels: Readonly<Record<LabelKind, readonly string[]>>
  /** Behind an amount: it is one of many, not the sum: "/month", "each". They count as `aside` words too. */
  readonly rates: readonly string[]
  /** Right before an amount: a threshold or an end of a range ("free shipping from"), and no part of a sum. */
  readonly bounds: readonly string[]
  /** Opens a remark on what a sum contains: "incl.", "of which". What follows is no label. */
  readonly included: readonly string[]
  /** Opens a remark on what a sum leaves out: "excl.", "before". */
  readonly excluded: readonly string[]
  /** Before a part: it is added to the sum ("plus"); after a sum: the sum leaves it out. */
  readonly plus: readonly string[]
  /** In place of a figure: it is not known yet ("calculated at checkout"). */
  readonly later: readonly string[]
  /** Before or after how many of a thing are bought: "qty". */
  readonly quantity: readonly string[]
  /** Before an order's number. */
  readonly orderNumber: readonly string[]
  /** Before a number that is not the order's: payment reference, tracking number, customer number. */
  readonly otherNumber: readonly string[]
  readonly controls: Readonly<Record<ControlKind, readonly string[]>>
  readonly stages: Readonly<Record<StageWords, readonly string[]>>
  /** On the label of a box that must be ticked before ordering. */
  readonly terms: readonly string[]
}
