import type { CurrencyCode } from '../money/currency.ts'
import type { CalendarDate } from './calendar-date.ts'
import type { AccountId, DeviceId, EntryId, OrderId, PotId } from './ids.ts'
import type { MonthName } from './month.ts'
import type { MonthSummary } from './month-summary.ts'
import type { OrderDetails } from './order-details.ts'

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
  /** Identity of the statement line this entry was posted from, so that no line is posted twice. */
  readonly line?: string
  /**
   * The day it really happened, where `date` is another: of a closed month, `date` is in the open one; a sweep is dated at
   * the end of the month it belongs to.
   */
  readonly happened?: CalendarDate
}

/** Money that was there when the book was opened. */
export interface OpeningEntry extends EntryBase {
  readonly kind: 'opening'
}
/** Pay that reached an account and has no pot yet. */
export interface PayEntry extends EntryBase {
  readonly kind: 'pay'
  /** The payday it was placed on, with all its fills: the id of the first of them. */
  readonly payday?: EntryId
}
/** Money put into a pot. */
export interface FillEntry extends EntryBase {
  readonly kind: 'fill'
  readonly pot: PotId
  readonly payday?: EntryId
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
  readonly details?: OrderDetails
}
/** The same order with another total or other pots, before any charge: the difference is posted, not a second hold. */
export interface AdjustEntry extends EntryBase {
  readonly kind: 'adjust'
  readonly order: OrderId
  readonly lines: readonly OrderLine[]
  readonly goOnReason?: string
  readonly details?: OrderDetails
}
/** The order went through: what its confirmation said. A final total that differs changes the hold by the difference. */
export interface ConfirmEntry extends EntryBase {
  readonly kind: 'confirm'
  readonly order: OrderId
  /** The shop's order number; absent where the person only said that it went through. */
  readonly number?: string
  /** Read from the shop's confirmation page; absent where the person said it. */
  readonly from?: 'page'
  /** What the order holds now, where the confirmed total is another than the tagged one. */
  readonly lines?: readonly OrderLine[]
}
/** A part of an order paid in instalments: held from its day on. */
export interface InstalmentEntry extends EntryBase {
  readonly kind: 'instalment'
  readonly order: OrderId
  /** Which part, counted from 0. */
  readonly part: number
  readonly lines: readonly OrderLine[]
}
/** What the card posted against an order. */
export interface ChargeEntry extends EntryBase {
  readonly kind: 'charge'
  readonly order: OrderId
  readonly lines: readonly OrderLine[]
  /** What the shop asked in its own currency, in minor units: with the charge it tells a rate. */
  readonly foreign?: { readonly currency: CurrencyCode; readonly amount: number }
}
/** The rest of an order's hold let go. */
export interface ReleaseEntry extends EntryBase {
  readonly kind: 'release'
  readonly order: OrderId
  readonly why?: ReleaseReason
}
/** Why a hold was let go: all is delivered, the authorisation ran out, it never went through, or it was cancelled. */
export type ReleaseReason = 'complete' | 'lapsed' | 'not-placed' | 'cancelled'
/** Money the shop said it will send back. It is listed, and not spendable until it is posted. */
export interface ExpectEntry extends EntryBase {
  readonly kind: 'expect'
  readonly order: OrderId
  readonly lines: readonly OrderLine[]
  /** Places in the order's list of items. */
  readonly items?: readonly number[]
}
/** Money back from a shop. */
export interface RefundEntry extends EntryBase {
  readonly kind: 'refund'
  readonly order: OrderId
  readonly lines: readonly OrderLine[]
  /** Places in the order's list of items, where the refund is for some of them. */
  readonly items?: readonly number[]
}
/** Takes another entry back: the same postings with the other sign. Nothing is ever edited. */
export interface ReversalEntry extends EntryBase {
  readonly kind: 'reversal'
  readonly reverses: EntryId
}

/** Notes or coins of one value, in minor units, as they were counted or moved. */
export interface Pieces {
  readonly denomination: number
  readonly count: number
}
/** What an envelope really held. Posts the difference only when the person said so; else it records the count. */
export interface CountEntry extends EntryBase {
  readonly kind: 'count'
  readonly pot: PotId
  readonly pieces: readonly Pieces[]
  /** What the book said the envelope holds at that moment, in minor units. */
  readonly expected: number
}
/** An end of a settling move: a pot's envelope, or the bank. */
export type SettleEnd = { readonly pot: PotId } | { readonly account: AccountId }
/** One tick of a settling list: pieces moved between envelopes or over the bank. No pot's *left* changes. */
export interface SettleEntry extends EntryBase {
  readonly kind: 'settle'
  readonly from: SettleEnd
  readonly to: SettleEnd
  readonly pieces: readonly Pieces[]
}
/** Where a leftover goes: another pot, a credit card's debt, or a debt to someone else (`debt` names it). */
export type SweepTarget = { readonly pot: PotId } | { readonly account: AccountId } | { readonly debt: string }
/** A month's leftover sent on while the month is closed. */
export interface SweepEntry extends EntryBase {
  readonly kind: 'sweep'
  readonly pot: PotId
  readonly to: SweepTarget
  /** The month whose leftover it is; `date` is that month's last day. */
  readonly month: MonthName
}
/** Money between two real accounts: a credit card paid off, savings moved. No pot is touched. */
export interface TransferEntry extends EntryBase {
  readonly kind: 'transfer'
  readonly from: AccountId
  readonly to: AccountId
  /** Which of the two accounts' statements `line` stands in. */
  readonly lineOf?: AccountId
}
/** A month signed off and frozen. Every month before it is closed with it. */
export interface CloseEntry extends EntryBase {
  readonly kind: 'close'
  readonly month: MonthName
  /** The month's last day: no later entry may be dated up to it. */
  readonly through: CalendarDate
  readonly summary: MonthSummary
  /** SHA-256 of the summary, in hex, to prove that the figures signed off are the book's. */
  readonly digest: string
}
/** A closed month opened again, with the reason why. Months before it stay closed. */
export interface ReopenEntry extends EntryBase {
  readonly kind: 'reopen'
  readonly month: MonthName
  readonly reason: string
}
/** A statement's closing balance that the book agrees with to the cent. */
export interface AgreeEntry extends EntryBase {
  readonly kind: 'agree'
  readonly account: AccountId
  /** The day the statement closes. */
  readonly on: CalendarDate
  /** The statement's closing balance in minor units; a credit card's debt is negative. */
  readonly balance: number
}
/** A statement line that shows what the book has already: nothing to post, but the line is settled. */
export interface SeenEntry extends EntryBase {
  readonly kind: 'seen'
  readonly entries: readonly EntryId[]
  readonly line: string
  /** The account whose statement it is; needed for entries that move money between two accounts. */
  readonly account?: AccountId
}

/** One immutable line of the book. */
export type Entry =
  | OpeningEntry
  | PayEntry
  | FillEntry
  | SpendEntry
  | OrderEntry
  | AdjustEntry
  | ConfirmEntry
  | InstalmentEntry
  | ChargeEntry
  | ReleaseEntry
  | ExpectEntry
  | RefundEntry
  | CountEntry
  | SettleEntry
  | SweepEntry
  | TransferEntry
  | CloseEntry
  | ReopenEntry
  | AgreeEntry
  | SeenEntry
  | ReversalEntry

/** What the caller brings to every new entry: the engine makes no ids and reads no clock. */
export interface Stamp {
  readonly id: EntryId
  readonly device: DeviceId
  readonly date: CalendarDate
  readonly note?: string
  readonly line?: string
  readonly happened?: CalendarDate
}
