import type {
  CalendarDate,
  CurrencyCode,
  DeviceId,
  Entry,
  EntryId,
  Household,
  Money,
  OrderId,
  PaySchedule,
  PotBalance,
  PotId,
  Stage,
  Verdict,
} from '../index.ts'
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

/** What the reader saw, as plain data. */
export interface SeenPage {
  readonly stage: Stage
  /** Null when the page does not say, or not surely. */
  readonly total: { readonly amount: string; readonly currency: string } | null
  /** Where the total was found, the figure used first. */
  readonly figures: readonly SeenFigure[]
  /** How many controls that place the order were found. */
  readonly placeOrderCount: number
}

/** An order tagged at a shop and not seen through yet. */
export interface OpenTag {
  readonly order: OrderId
  readonly shop: string
  /** The pot and what was tagged to it. */
  readonly pot: PotId
  readonly amount: Money
  /** What the page said when it was tagged; null when it said nothing. */
  readonly read: { readonly amount: string; readonly currency: string } | null
  /** Milliseconds since 1970 UTC. */
  readonly taggedAt: number
  /** When the guard last let the order go through; null before. */
  readonly placedAt: number | null
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
  /** Another number is another book: a restored one, or the demo after one's own. */
  readonly series: string
  /** Stretches of the book, of up to 128 entries, that could not be read. The figures are right all the same. */
  readonly gaps: number
  /** Days on which balances were found wrong and mended from the entries. */
  readonly mended: readonly CalendarDate[]
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
  readonly heldBecause: HeldBecause | null
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

export type TagReply =
  | { readonly kind: 'tagged'; readonly entry: EntryId; readonly verdict: Verdict; readonly adjusted: boolean }
  | { readonly kind: 'unchanged' | 'needs-reason' | 'blocked'; readonly verdict: Verdict }

/** Commands of our own pages. Ids are made by the page before it asks, so a retry is harmless. */
export interface OwnCommands {
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
  'order.assess': { ask: { shop: string; total: string; order: OrderId | null }; answer: readonly PotChoice[] }
  'order.tag': {
    ask: { id: EntryId; order: OrderId; at: At; total: string; pot: PotId; reason: string | null }
    answer: TagReply
  }
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
  'page.hello': { ask: Record<never, never>; answer: { watched: boolean; pass: Pass | null; currency: string } }
  'page.bring-reader': { ask: Record<never, never>; answer: Record<never, never> }
  'page.seen': { ask: { page: SeenPage }; answer: Record<never, never> }
  'page.held': { ask: { nonce: string; because: HeldBecause; page: SeenPage }; answer: Record<never, never> }
  'page.placed': { ask: { order: OrderId }; answer: Record<never, never> }
}

/** What the worker tells the gate. */
export type ToGate = { readonly to: 'gate'; readonly pass: Pass | null; readonly closePanel: boolean }

/** Every answer travels in one of these. */
export type Reply<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly code: string; readonly message: string }
