import type {
  CalendarDate,
  ChargeAnswer,
  Converted,
  CurrencyCode,
  DeviceId,
  Entry,
  EntryId,
  Every,
  Household,
  Money,
  OrderId,
  PaySchedule,
  PotBalance,
  PotId,
  ReleaseReason,
  Removal,
  SeenRate,
  SharedKind,
  Split,
  Stage,
  Verdict,
} from '../index.ts'
import type { MonthendCommands, StatementMemory } from './monthend-protocol.ts'
import type { PlanCommands } from './plan-protocol.ts'
import type { RestoreCommands } from './restore-protocol.ts'
import type { Damage } from './store.ts'

/*
 * The one protocol between the extension's parts. Two lists, by trust: commands of our own pages (popup, panel), which
 * may see balances and write entries, and commands of a shop's page (the gate), which may do neither. Each is `ask` and
 * `answer`; `ask` is checked by the schema of the same name in `schemas.ts`, the sender in `sender.ts`.
 */

/** Where an own page stands: a tab whose shop it looks at, or the panel that holds an order, by its one-time nonce. */
export type At = { readonly tab: number } | { readonly nonce: string }

/** A figure as read from a page, without its element. */
export interface SeenFigure {
  readonly label: string
  readonly text: string
  readonly used: boolean
  readonly why: string
}

/** Which of the page's figures is meant: what it was read as. */
export type FigurePlace = Pick<SeenFigure, 'label' | 'text'>

/** What the reader saw, as plain data. */
export interface SeenPage {
  readonly stage: Stage
  /** Null when the page does not say, or not surely. */
  readonly total: { readonly amount: string; readonly currency: string } | null
  /** Where the total was found, the figure used first. */
  readonly figures: readonly SeenFigure[]
  /** How many controls that place the order were found. */
  readonly placeOrderCount: number
  readonly orderNumber?: string | null
  readonly items?: readonly { readonly name: string; readonly amount: string | null; readonly quantity: number }[]
  readonly parts?: readonly { readonly kind: string; readonly amount: string }[]
}

/** An order tagged at a shop and not seen through yet. */
export interface OpenTag {
  readonly order: OrderId
  readonly shop: string
  /** The pots and what is held in each. None where the card pays nothing, as with a gift card. */
  readonly lines: readonly { readonly pot: PotId; readonly amount: Money }[]
  /** What is held in all. */
  readonly amount: Money
  /** What the page said when it was tagged; null when it said nothing. */
  readonly read: { readonly amount: string; readonly currency: string } | null
  /** Milliseconds since 1970 UTC. */
  readonly taggedAt: number
  /** When the guard last let the order go through; null before. */
  readonly placedAt: number | null
}

/** The pot that a shop's basket is for, said before there was a total to tag, and until when that is kept. */
export interface PotAhead {
  readonly pot: PotId
  /** Milliseconds since 1970 UTC. */
  readonly until: number
}

/** One pot as a choice for this purchase, best guess first. */
export interface PotChoice {
  readonly pot: PotId
  readonly verdict: Verdict
  /** How often this shop's orders went to this pot. */
  readonly usedHere: number
}

/** Why an order is held: it has no tag, its total is not the tagged one, or it was let through before. */
export type HeldBecause = 'untagged' | 'changed' | 'placed-before'

/** All a page of ours needs to draw the household. */
export interface HouseholdView {
  readonly household: Household
  readonly schedule: PaySchedule | null
  readonly isDemo: boolean
  readonly today: CalendarDate
  readonly device: DeviceId
  readonly balances: Readonly<Record<PotId, PotBalance>>
  readonly unplaced: Money
  /** The latest entries that stand, newest first, at most twelve. */
  readonly recent: readonly Entry[]
  /** The entry that undo takes back, or null. */
  readonly undoable: Entry | null
  /** How often the guard held an order, by month and why. */
  readonly held: Readonly<Record<string, Readonly<Record<HeldBecause, number>>>>
  /** Another number is another book: a restored one, or the demo after one's own. */
  readonly series: string
  /** Stretches of the book, of up to 128 entries, that could not be read. The figures are right all the same. */
  readonly gaps: number
  /** Days on which balances were found wrong and mended from the entries. */
  readonly mended: readonly CalendarDate[]
  /** What is remembered of the banks' files. */
  readonly statements: StatementMemory
  /** Hosts the household lets the guard watch, with permission still given. */
  readonly watched: readonly string[]
}

export type Look =
  | { readonly status: 'new' }
  | { readonly status: 'ready'; readonly view: HouseholdView }
  /** Nothing is written while the store is damaged; `store.raw` gives what is there. */
  | { readonly status: 'damaged'; readonly what: Damage }

export interface CheckoutLook {
  /** Host name without `www.`; null on pages that are not web pages. */
  readonly shop: string | null
  readonly origin: string | null
  readonly watched: boolean
  readonly page: SeenPage | null
  /** Why the page could not be read, as a code of `reader_*` messages; null when it was. */
  readonly unread: 'no-access' | 'not-a-web-page' | null
  readonly tag: OpenTag | null
  readonly ahead: PotAhead | null
  readonly heldBecause: HeldBecause | null
  /** The last rate seen on the household's own charges in the page's currency; null at home or where there is none. */
  readonly seenRate: SeenRate | null
  /** Orders of this shop that may or may not have gone through, the latest first. */
  readonly unconfirmed: readonly UnconfirmedOrder[]
}

/** A pot as the first run or the pot form gives it. Amounts are decimal texts in the household's currency. */
export interface NewPot {
  readonly id: PotId
  readonly name: string
  readonly kind: 'everyday' | 'sinking' | 'reserve'
  readonly rule: 'block' | 'warn' | 'allow'
  readonly sides: 'both' | 'cash' | 'card'
  readonly floor: string
  readonly fillCash: string
  readonly fillCard: string
  readonly openCash: string
  readonly openCard: string
}

/** A pot and an amount as a decimal text. */
export interface PotAmountText {
  readonly pot: PotId
  readonly amount: string
}

/** An order as a page means it; amounts are decimal texts of the shop's currency. `OrderWish` says what each is. */
export interface WishText {
  readonly total: string
  readonly currency: CurrencyCode
  readonly split:
    | { readonly by: 'pot'; readonly pot: PotId }
    | { readonly by: 'amount'; readonly lines: readonly PotAmountText[]; readonly rest: PotId | null }
    | { readonly by: 'share'; readonly shares: readonly { readonly pot: PotId; readonly share: string }[] }
    | {
        readonly by: 'item'
        readonly items: readonly { readonly name: string; readonly amount: string; readonly pot: PotId }[]
        readonly shared: readonly { readonly kind: SharedKind; readonly amount: string }[]
      }
  readonly foreign: {
    readonly home: string
    readonly per: string
    readonly fee: string
    readonly from: 'given' | 'seen'
  } | null
  readonly margin: string | null
  readonly credit: string | null
  readonly instalments: {
    readonly reserve: 'whole' | 'by-part'
    /** Days of equal parts. */
    readonly dates: readonly CalendarDate[]
  } | null
  readonly renewal: { readonly id: string; readonly due: CalendarDate } | null
}

/** What a wish comes to. */
export interface Weighed {
  readonly verdict: Verdict
  readonly split: Split
  readonly converted: Converted | null
  /** All of the order in the household's currency, and what of it is held now. */
  readonly whole: Money
  readonly held: Money
  readonly removal: Removal | null
}

export interface ChargeAsk {
  readonly id: EntryId
  readonly order: OrderId
  readonly amount: string
  readonly date: CalendarDate
  readonly lines: readonly PotAmountText[] | null
  readonly items: readonly number[] | null
  /** What the shop asked in the order's own currency. */
  readonly foreign: string | null
  readonly account: string | null
  readonly acceptsAbove: boolean
  /** Names the entry that lets the rest go, where this charge completes the order. */
  readonly complete: EntryId | null
}

export type ChargeReply = { readonly kind: 'charged' } | Extract<ChargeAnswer, { kind: 'above-hold' }>

export interface RenewalText {
  readonly id: string
  readonly name: string
  readonly shop: string | null
  readonly pot: PotId
  readonly amount: string
  readonly first: CalendarDate
  readonly every: Every
  readonly end: CalendarDate | null
}

/** An order that was tagged, of which nothing tells yet whether the shop took it. */
export interface UnconfirmedOrder {
  readonly order: OrderId
  readonly shop: string
  readonly amount: Money
  readonly date: CalendarDate
  readonly pots: readonly PotId[]
}

export type TagReply =
  /** The card pays nothing, so there is nothing to enter; the shop's button works. */
  | { readonly kind: 'nothing-to-pay' }
  | { readonly kind: 'tagged'; readonly entry: EntryId; readonly verdict: Verdict; readonly adjusted: boolean }
  | { readonly kind: 'unchanged' | 'needs-reason' | 'blocked'; readonly verdict: Verdict }

/** Commands of our own pages. Ids are made by the page before it asks, so a retry is harmless. */
export interface OwnCommands extends RestoreCommands, PlanCommands, MonthendCommands {
  'book.look': { ask: Record<never, never>; answer: Look }
  /**
   * Entries in the order the book took them in, from a place on, as many as one message carries well. `next` is the place
   * to go on from, `end` where there are no more: the desk asks until it is there, and later only for what is new.
   * `sums` are the balances at the end, in minor units by account.
   */
  'book.entries': {
    ask: { from: number }
    answer: { entries: readonly Entry[]; next: number; end: number; sums: Readonly<Record<string, number>> }
  }
  'household.create': {
    ask: { currency: CurrencyCode; timeZone: string; schedule: PaySchedule | null; pots: readonly NewPot[] }
    answer: Look
  }
  'household.demo': { ask: Record<never, never>; answer: Look }
  /** Erases a demo household; refused for a real one. */
  'household.leave-demo': { ask: Record<never, never>; answer: Look }
  /** Adds a pot, or changes one of the same id (its opening amounts are then ignored). */
  'pot.save': { ask: { id: EntryId; pot: NewPot; archived: boolean }; answer: Look }
  'spend.add': {
    ask: { id: EntryId; pot: PotId; side: 'cash' | 'card'; amount: string; purpose: string; date: CalendarDate }
    answer: Look
  }
  'fill.add': {
    ask: { id: EntryId; pot: PotId; cash: string; card: string; from: 'unplaced' | 'outside'; date: CalendarDate }
    answer: Look
  }
  'pay.add': { ask: { id: EntryId; amount: string; date: CalendarDate }; answer: Look }
  'entry.undo': { ask: { id: EntryId; target: EntryId }; answer: Look }
  'checkout.look': { ask: { at: At }; answer: CheckoutLook }
  /** Shows the person where on the tab's page a figure was read; with null the mark goes. Not for the panel. */
  'checkout.mark': { ask: { tab: number; figure: FigurePlace | null }; answer: { isFound: boolean } }
  'order.assess': { ask: { shop: string; total: string; order: OrderId | null }; answer: readonly PotChoice[] }
  'order.tag': {
    ask: { id: EntryId; order: OrderId; at: At; wish: WishText; reason: string | null }
    answer: TagReply
  }
  /** What an order that is split, abroad, estimated or paid in parts would do; nothing is written. */
  'order.weigh': { ask: { shop: string; order: OrderId | null; wish: WishText }; answer: Weighed }
  /** It went through; with the shop's number and final total where they are known. */
  'order.confirm': {
    ask: { id: EntryId; order: OrderId; number: string | null; total: string | null }
    answer: { kind: 'confirmed' | 'unchanged' | 'other-order' }
  }
  'order.charge': { ask: ChargeAsk; answer: ChargeReply }
  /** The card charged what nobody tagged: it becomes an order of the pots chosen now. */
  'order.charge-untagged': {
    ask: {
      id: EntryId
      charge: EntryId
      order: OrderId
      shop: string
      amount: string
      pots: readonly PotAmountText[]
      date: CalendarDate
      account: string | null
    }
    answer: Record<never, never>
  }
  'order.release': { ask: { id: EntryId; order: OrderId; why: ReleaseReason }; answer: Record<never, never> }
  'order.hold-part': { ask: { id: EntryId; order: OrderId }; answer: Record<never, never> }
  'order.expect-refund': {
    ask: { id: EntryId; order: OrderId; amount: string; items: readonly number[] | null }
    answer: Record<never, never>
  }
  'order.refund': {
    ask: {
      id: EntryId
      order: OrderId
      amount: string
      date: CalendarDate
      lines: readonly PotAmountText[] | null
      items: readonly number[] | null
      account: string | null
    }
    answer: Record<never, never>
  }
  /** Adds a renewal, or changes or ends the one of the same id. */
  'renewal.save': { ask: RenewalText; answer: Record<never, never> }
  /** A renewal was charged: an order of that renewal, and its charge. */
  'renewal.pay': {
    ask: { id: EntryId; charge: EntryId; order: OrderId; renewal: string; due: CalendarDate; date: CalendarDate }
    answer: Record<never, never>
  }
  'order.rules': {
    ask: { holdDays: number; marginPercent: string; foreignFeePercent: string }
    answer: Record<never, never>
  }
  /** Says which pot the basket in a tab's shop is for, before there is a total to tag; null takes it back. */
  'order.ahead': { ask: { tab: number; pot: PotId | null }; answer: Record<never, never> }
  /** The order let through before is tried again: no new entry, the tag is good once more. */
  'order.again': { ask: { at: At }; answer: Record<never, never> }
  /** The panel is done; the guard takes it away. */
  'panel.close': { ask: { nonce: string }; answer: Record<never, never> }
  /** After the browser's permission was given for the origin. */
  'shop.watch': { ask: { origin: string }; answer: Look }
  'shop.unwatch': { ask: { host: string }; answer: Look }
  /** Everything stored, as JSON text, for saving to a file. */
  'store.raw': { ask: Record<never, never>; answer: { json: string } }
}

/** What the gate knows of a tag: enough to let one order through, no pot and no balance. */
export interface Pass {
  readonly order: OrderId
  readonly read: { readonly amount: string; readonly currency: string } | null
  readonly placed: boolean
}

/** Commands of the gate on a watched shop. They carry what a page could see anyway, and get no figures back. */
export interface PageCommands {
  'page.hello': {
    ask: Record<never, never>
    answer: { watched: boolean; pass: Pass | null; currency: string; texts: CurtainTexts }
  }
  'page.bring-reader': { ask: Record<never, never>; answer: Record<never, never> }
  'page.seen': { ask: { page: SeenPage }; answer: Record<never, never> }
  'page.held': { ask: { nonce: string; because: HeldBecause; page: SeenPage }; answer: Record<never, never> }
  'page.placed': { ask: { order: OrderId }; answer: Record<never, never> }
  /** The page takes the panel away each time; the toolbar button says so instead. */
  /** Whether the panel that holds an order under this nonce has been drawn. */
  'page.panel': { ask: { nonce: string }; answer: { isUp: boolean } }
  'page.fought': { ask: Record<never, never>; answer: Record<never, never> }
}

/**
 * What the curtain says, in the person's language. Told by the worker: looking words up costs a page tens of milliseconds in
 * Chromium, and an extension that was updated or removed cannot look them up any more.
 */
export interface CurtainTexts {
  readonly label: string
  readonly no_answer: string
  readonly gone: string
  readonly no_panel: string
  readonly back: string
  readonly go_on: string
}

/** What the worker tells the gate. */
export type ToGate = { readonly to: 'gate'; readonly pass: Pass | null; readonly closePanel: boolean }

/** Every answer travels in one of these. */
export type Reply<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly code: string; readonly message: string }
