import type { Stage } from '../../../src/checkout/reading.ts'
import type { Speech } from './speech/speech.ts'

/** A row of a sum: its label, and an amount, or words in place of one. */
export interface SumRow {
  readonly label: string
  readonly amount: number | null
  readonly words?: string
  /** Shown larger, or in the foot. */
  readonly strong?: true
}

/** A piece of a page, before it is known how the shop marks it up. */
export type Block =
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'sums'; readonly rows: readonly SumRow[] }
  | { readonly kind: 'lines'; readonly lines: readonly Line[]; readonly fields?: true }
  | { readonly kind: 'ledger'; readonly lines: readonly Line[]; readonly rows: readonly SumRow[] }
  | { readonly kind: 'ways'; readonly legend: string; readonly ways: readonly (readonly [string, number])[] }
  | { readonly kind: 'fields'; readonly fields: 'address' | 'card' | 'email' | 'method' | 'frame' }
  | { readonly kind: 'terms'; readonly text: string }
  | { readonly kind: 'buttons'; readonly buttons: readonly Button[] }
  | { readonly kind: 'number'; readonly label: string; readonly number: string }
  | { readonly kind: 'goods'; readonly goods: readonly Good[] }
  | { readonly kind: 'html'; readonly html: string }

export interface Line {
  readonly name: string
  readonly count: string
  readonly unit: number
  readonly sum: number
}

export interface Good {
  readonly name: string
  readonly price: number
  readonly before: number | null
  readonly button: string | null
}

export interface Button {
  readonly text: string
  /** Whether pressing it places the order. */
  readonly orders: boolean
  readonly link?: true
}

/** What a person reading the page would say. More than one stage where people would differ. */
export interface Expected {
  readonly stages: readonly Stage[]
  /** `55.90 CAD`, or null where the page has no total. */
  readonly total: string | null
  readonly orderNumber: string | null
  /** The words of the controls that place the order, sorted. */
  readonly placeOrder: readonly string[]
}

/** A page as a shop plans it: what it says and what it means, not how it looks. */
export interface Plan {
  /** The path of its address. */
  readonly path: string
  readonly title?: string
  /** Blocks that keep their places. */
  readonly top: readonly Block[]
  /** Blocks that can stand in any order. */
  readonly middle: readonly Block[]
  readonly end: readonly Block[]
  readonly stages: readonly Stage[]
  readonly total: number | null
  readonly orderNumber?: string
  readonly traits?: readonly string[]
}

/** What the reader may see on this page and what it must not take for the total. */
export interface Scenario {
  readonly name: string
  readonly kind: Kind
  readonly plan: (shop: Shop) => Plan
}

export type Kind =
  | 'one page'
  | 'step'
  | 'marketplace'
  | 'grocery'
  | 'travel'
  | 'download'
  | 'subscription'
  | 'instalments'
  | 'gift card'
  | 'two currencies'
  | 'donation'
  | 'tickets'
  | 'cart'
  | 'confirmation'
  | 'product'
  | 'account'
  | 'history'
  | 'blog'
  | 'comparison'
  | 'search'
  | 'wishlist'

/** A shop with its language, money and chance, as scenarios use it. */
export interface Shop {
  /** Words for something, one of the ways its language has; `put` fills `{}` with an amount. */
  say(key: Word): string
  /** All words of a list that stands for several things (`ways`, `goods`). */
  list(key: Word): readonly string[]
  put(key: Word, amount: number): string
  money(amount: number): string
  /** An amount of about so many euro cents, within these bounds. */
  price(fromCents: number, toCents: number): number
  /** A share of an amount, in a step that the money allows. */
  share(amount: number, percent: number): number
  often(share: number): boolean
  int(from: number, to: number): number
  pick<T>(list: readonly T[]): T
  readonly lang: string
  readonly currency: string
}

export type Word = Exclude<keyof Speech, 'lang' | 'currency'>
