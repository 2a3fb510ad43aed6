import type { CalendarDate } from './calendar-date.ts'
import type { AccountId, DeviceId, EntryId, OrderId, PotId } from './ids.ts'

/**
 * The purposes' ledger. `cash:`, `card:` and `held:` belong to a pot. `on-order` is the other half of every hold (the
 * reserve for encumbrances of fund accounting), `unplaced` bank money no pot has yet, `outside` everyone else,
 * `over-short` what counting found too much or missing.
 */
export type PurposeAccount =
  | `cash:${PotId}`
  | `card:${PotId}`
  | `held:${PotId}`
  | 'on-order'
  | 'unplaced'
  | 'outside'
  | 'over-short'

/** The ledger of where the money really is: notes at home, accounts with a statement, and the world. */
export type PlaceAccount = 'notes' | 'world' | `bank:${AccountId}` | `credit:${AccountId}`

/** A change of one account, in whole minor units of the household's currency; more is positive. */
export interface Posting<A extends string> {
  readonly account: A
  readonly amount: number
}

/** A pot's part of an order, in minor units, zero or more. */
export interface OrderLine {
  readonly pot: PotId
  readonly amount: number
}

/** What every entry carries beside its kind. */
export interface EntryBase {
  readonly id: EntryId
  /** Version of the entry's shape. */
  readonly version: 1
  readonly device: DeviceId
  readonly date: CalendarDate
  /** By purpose; sums to zero. */
  readonly postings: readonly Posting<PurposeAccount>[]
  /** By place; sums to zero and agrees with `postings`: notes with cash sides, accounts with card sides + unplaced. */
  readonly places: readonly Posting<PlaceAccount>[]
  readonly note?: string
}

/** Money that was there when the book was opened. */
export interface OpeningEntry extends EntryBase {
  readonly kind: 'opening'
}
/** Pay that reached an account and has no pot yet. */
export interface PayEntry extends EntryBase {
  readonly kind: 'pay'
}
/** Money put into a pot. */
export interface FillEntry extends EntryBase {
  readonly kind: 'fill'
  readonly pot: PotId
}
/** Money spent from a pot away from a tagged order: notes at a counter, or the card in a shop. */
export interface SpendEntry extends EntryBase {
  readonly kind: 'spend'
  readonly pot: PotId
  readonly purpose: string
}
/** An online order tagged to its pots: held until the card charges it. */
export interface OrderEntry extends EntryBase {
  readonly kind: 'order'
  readonly order: OrderId
  /** Host name of the shop, without `www.`. */
  readonly shop: string
  readonly lines: readonly OrderLine[]
  /** Why the person went on although the verdict was *warn*. */
  readonly goOnReason?: string
}
/** The same order with another total or other pots, before any charge: the difference is posted, not a second hold. */
export interface AdjustEntry extends EntryBase {
  readonly kind: 'adjust'
  readonly order: OrderId
  readonly lines: readonly OrderLine[]
  readonly goOnReason?: string
}
/** What the card posted against an order. */
export interface ChargeEntry extends EntryBase {
  readonly kind: 'charge'
  readonly order: OrderId
  readonly lines: readonly OrderLine[]
}
/** The rest of an order's hold let go. */
export interface ReleaseEntry extends EntryBase {
  readonly kind: 'release'
  readonly order: OrderId
}
/** Money back from a shop. */
export interface RefundEntry extends EntryBase {
  readonly kind: 'refund'
  readonly order: OrderId
  readonly lines: readonly OrderLine[]
}
/** Takes another entry back: the same postings with the other sign. Nothing is ever edited. */
export interface ReversalEntry extends EntryBase {
  readonly kind: 'reversal'
  readonly reverses: EntryId
}

/** One immutable line of the book. */
export type Entry =
  | OpeningEntry
  | PayEntry
  | FillEntry
  | SpendEntry
  | OrderEntry
  | AdjustEntry
  | ChargeEntry
  | ReleaseEntry
  | RefundEntry
  | ReversalEntry

/** What the caller brings to every new entry: the engine makes no ids and reads no clock. */
export interface Stamp {
  readonly id: EntryId
  readonly device: DeviceId
  readonly date: CalendarDate
  readonly note?: string
}
