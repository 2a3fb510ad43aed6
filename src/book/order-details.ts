import type { CurrencyCode } from '../money/currency.ts'
import type { CalendarDate } from './calendar-date.ts'
import type { OrderLine } from './entry.ts'
import type { PotId } from './ids.ts'
import type { SharedKind } from './split.ts'

/*
 * What an order's entry keeps beside its lines: the facts its story is told from. All of it may be absent. Amounts are
 * whole minor units of the currency the shop asks, unless they say otherwise.
 */

/** One thing bought and the pot that pays for it. */
export interface OrderItem {
  readonly name: string
  readonly amount: number
  readonly pot: PotId
}

/** An order in another currency than the household's. */
export interface ForeignAmount {
  readonly currency: CurrencyCode
  /** What the shop asks, in minor units of that currency. */
  readonly amount: number
  /** So much of the household's currency is worth `per` of the shop's; plain decimal texts. */
  readonly home: string
  readonly per: string
  /** The card's fee in per cent, a plain decimal text. */
  readonly fee: string
  /** Where the rate came from: given by the person, or seen on a charge of the household's own statement. */
  readonly from: 'given' | 'seen'
}

/** One part of an order paid in instalments: its day, and each pot's part in the household's currency. */
export interface InstalmentPart {
  readonly date: CalendarDate
  readonly lines: readonly OrderLine[]
}

/** `whole`: everything is held at once. `by-part`: each part is held from its day on. */
export interface Instalments {
  readonly reserve: 'whole' | 'by-part'
  readonly parts: readonly InstalmentPart[]
}

/** What is known of an order beyond its pots and lines. All of it may be absent; numbers are minor units. */
export interface OrderDetails {
  /** How it was split; absent for one pot. */
  readonly by?: 'item' | 'amount' | 'share'
  readonly items?: readonly OrderItem[]
  readonly shared?: readonly { readonly kind: SharedKind; readonly amount: number }[]
  readonly foreign?: ForeignAmount
  /** Held on top of an estimate, in the household's currency; part of the lines. */
  readonly margin?: number
  /** Paid by gift card, store credit or points: it is in no line. */
  readonly credit?: number
  readonly instalments?: Instalments
  /** The renewal this order is, and the day it was due. */
  readonly renewal?: { readonly id: string; readonly due: CalendarDate }
}
