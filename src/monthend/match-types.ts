import type { CalendarDate } from '../book/calendar-date.ts'
import type { AccountId, EntryId, OrderId, PotId } from '../book/ids.ts'
import type { Money } from '../money/money.ts'

/** An order a statement may show. `ordersToMatch` makes them of a book; by hand, the first four fields are enough. */
export interface OrderToMatch {
  readonly order: OrderId
  /** Host name of the shop, without `www.`. */
  readonly shop: string
  readonly date: CalendarDate
  /** What was tagged in all, in the household's currency. */
  readonly amount: Money
  /** What is held still; without it the amount less what was charged. */
  readonly held?: Money
  readonly charged?: Money
  readonly refunded?: Money
  /** Money back that the shop has announced. */
  readonly expected?: Money
  /** Part of `held` that was added to an estimate. */
  readonly margin?: Money
  /** What the shop asks in its own currency. */
  readonly foreign?: Money
  /** The shop's order number. */
  readonly number?: string | null
  /** The pots it was tagged to: orders alike in shop, amount and pots are interchangeable. */
  readonly pots?: readonly PotId[]
  /** Its hold was let go as not placed or cancelled: a charge would be a surprise. */
  readonly isOff?: boolean
}

/** An entry of the book that moved money of an account and that no statement has shown yet. */
export interface EntryToMatch {
  readonly entry: EntryId
  readonly account: AccountId
  readonly date: CalendarDate
  /** Signed from the account's side: money that left is negative. */
  readonly amount: Money
  /** What the entry says it was for, or its order's shop; '' when it says nothing. */
  readonly text: string
  readonly kind: 'cash' | 'pay' | 'transfer' | 'spend' | 'other'
}

/** A renewal on one of its days, not paid by an order of the book. */
export interface RenewalToMatch {
  /** The household's id of the renewal. */
  readonly renewal: string
  readonly name: string
  readonly shop?: string
  readonly due: CalendarDate
  readonly amount: Money
  readonly pot: PotId
}

/** What went to a pot before, by the text it went under: the ground of suggestions. */
export interface PotHabit {
  /** A shop's host name or a purpose. */
  readonly text: string
  readonly isShop: boolean
  readonly pot: PotId
}

/** What else is known when a statement is matched. All of it may be absent. */
export interface MatchOptions {
  readonly entries?: readonly EntryToMatch[]
  readonly renewals?: readonly RenewalToMatch[]
  readonly habits?: readonly PotHabit[]
  /** Lines that are in the book already, by identity. */
  readonly posted?: ReadonlySet<string>
  /** Which account of the household a statement's account key is; without it all lines fit every account. */
  readonly accounts?: Readonly<Record<string, AccountId>>
}

/** Why lines and book were put together, or why that is not sure. Amounts are of the household's currency. */
export type MatchReason =
  | { readonly code: 'same-amount' }
  | { readonly code: 'other-amount'; readonly by: Money }
  | { readonly code: 'within-margin'; readonly by: Money }
  | { readonly code: 'foreign-amount'; readonly amount: Money }
  | { readonly code: 'within-rate'; readonly by: Money }
  | { readonly code: 'part-of'; readonly of: Money }
  | { readonly code: 'expected-refund' }
  | { readonly code: 'sum-of-lines'; readonly count: number }
  | { readonly code: 'sum-of-orders'; readonly count: number }
  | { readonly code: 'sum-of-entries'; readonly count: number }
  /** The statement's day is so many days after the book's (before, when negative). */
  | { readonly code: 'days'; readonly days: number }
  /** The bank's text has so much of the shop's name, 0 to 100. */
  | { readonly code: 'name'; readonly likeness: number }
  | { readonly code: 'order-number'; readonly number: string }
  | { readonly code: 'bank-says'; readonly kind: string }
  | { readonly code: 'opposite-line' }
  | { readonly code: 'several-ways' }
  | { readonly code: 'could-be-other'; readonly order: OrderId | null }
  | { readonly code: 'was-cancelled' }
  | { readonly code: 'replaces-line' }

/** What of a match goes where: an amount of a line for an order, always more than zero. */
export interface MatchPart {
  readonly line: string
  readonly order: OrderId
  readonly amount: Money
}

/**
 * Lines of a statement put together with what the book expects. *charge* and *refund* are for orders, *seen* for entries
 * the book has already, *renewal* for what comes again by itself, *transfer* for two lines that are one movement between
 * the household's own accounts (the line money leaves by comes first).
 */
export interface StatementMatch {
  readonly kind: 'charge' | 'refund' | 'seen' | 'renewal' | 'transfer'
  readonly lines: readonly string[]
  readonly orders: readonly OrderId[]
  readonly entries: readonly EntryId[]
  readonly renewal: RenewalToMatch | null
  readonly parts: readonly MatchPart[]
  /** The lines' sum less what the book expected, from the account's side: negative when more was taken. */
  readonly difference: Money
  /** Orders that are paid with this match although something is held still: let the rest go. */
  readonly completes: readonly OrderId[]
  /** 0 to 1. */
  readonly confidence: number
  /** Whether it may be posted without asking. What is not sure is asked. */
  readonly isSure: boolean
  readonly reasons: readonly MatchReason[]
}

/** A pot that may be the one, with what speaks for it. */
export interface PotSuggestion {
  readonly pot: PotId
  /** Share of what like texts went to, 0 to 1; later times weigh more. */
  readonly weight: number
  /** The shop or purpose it was. */
  readonly because: string
}

/** A line nothing in the book accounts for. */
export interface UntaggedLine {
  readonly line: string
  readonly amount: Money
  readonly suggestions: readonly PotSuggestion[]
  /** A matched line of the same amount and text: the shop may have charged twice. */
  readonly twin: string | null
}

/** An order the lines do not show. */
export interface UnchargedOrder {
  readonly order: OrderId
  readonly amount: Money
  /** Days from the order to the last line: few, and the charge may still come. */
  readonly days: number
}

/** What `matchStatement` found. Every line is in exactly one place. */
export interface StatementMatching {
  readonly matches: readonly StatementMatch[]
  readonly untagged: readonly UntaggedLine[]
  readonly uncharged: readonly UnchargedOrder[]
  /** Entries of the book, dated within the lines' days, that no line shows. */
  readonly unseen: readonly EntryId[]
  /** Lines the bank has not booked yet: shown, never posted. */
  readonly pending: readonly string[]
  /** Lines that are in the book already. */
  readonly posted: readonly string[]
  /** Whether the assignment is proven the best by its weights; false where there were too many ways to try all. */
  readonly isProven: boolean
}
