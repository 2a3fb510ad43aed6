import type {
  AccountId,
  CalendarDate,
  CsvMapping,
  CurrencyCode,
  EntryId,
  MonthName,
  OrderId,
  Pieces,
  PotId,
  SettleEnd,
  SweepTarget,
} from '../index.ts'
import type { Look } from './protocol.ts'

/** The statement line a posting comes from. */
export interface LineAsk {
  /** The line's identity. */
  readonly line: string
  readonly account: AccountId
  readonly date: CalendarDate
}

/** A pot's part, as a decimal text, and the id of its entry. */
export interface PotPartAsk {
  readonly id: EntryId
  readonly pot: PotId
  readonly amount: string
}

/**
 * What a person accepted of a matching. Amounts are decimal texts above zero in the household's currency. Each posting is
 * known by its first id: asked again, it changes nothing.
 */
export type StatementPosting =
  | {
      readonly kind: 'charge'
      readonly parts: readonly {
        readonly id: EntryId
        readonly from: LineAsk
        readonly order: OrderId
        readonly amount: string
        /** What the shop asked in its own currency. */
        readonly foreign: { readonly currency: CurrencyCode; readonly amount: string } | null
      }[]
      /** Orders that are paid with this: let the rest of their holds go. */
      readonly completes: readonly { readonly id: EntryId; readonly order: OrderId }[]
    }
  | {
      readonly kind: 'refund'
      readonly id: EntryId
      readonly from: LineAsk
      readonly order: OrderId
      readonly amount: string
    }
  /** The line shows entries the book has. */
  | { readonly kind: 'seen'; readonly id: EntryId; readonly from: LineAsk; readonly entries: readonly EntryId[] }
  /** A purchase by card no one tagged. */
  | { readonly kind: 'spend'; readonly from: LineAsk; readonly pots: readonly PotPartAsk[]; readonly purpose: string }
  /** Money in without a pot. */
  | { readonly kind: 'pay'; readonly id: EntryId; readonly from: LineAsk; readonly amount: string }
  /** Money in for pots: something sold, a gift, a bank's bonus. */
  | { readonly kind: 'into-pots'; readonly from: LineAsk; readonly pots: readonly PotPartAsk[] }
  /** Notes drawn that no fill told of: from unplaced money into envelopes. */
  | { readonly kind: 'drawn'; readonly from: LineAsk; readonly pots: readonly PotPartAsk[] }
  | {
      readonly kind: 'transfer'
      readonly id: EntryId
      readonly from: LineAsk
      readonly source: AccountId
      readonly target: AccountId
      readonly amount: string
      /** The other account's line, where its statement was read too. */
      readonly other: { readonly id: EntryId; readonly from: LineAsk } | null
    }
  | {
      readonly kind: 'renewal'
      readonly id: EntryId
      readonly charge: EntryId
      readonly order: OrderId
      readonly renewal: string
      readonly due: CalendarDate
      readonly from: LineAsk
      readonly amount: string
    }

/** What is remembered of a bank's files, so that the next one is read like the last. */
export interface StatementMemory {
  /** The household's account for each account key of a statement. */
  readonly accounts: Readonly<Record<string, AccountId>>
  readonly mappings: readonly CsvMapping[]
}

/** Commands of the month-end. */
export interface MonthendCommands {
  /** Adds a bank account or credit card, or renames one. */
  'account.save': { ask: { account: AccountId; name: string; kind: 'bank' | 'credit' }; answer: Look }
  /** Which account a statement's key is, and how its CSV is read. */
  'statement.remember': { ask: { key: string; account: AccountId; mapping: CsvMapping | null }; answer: Look }
  /** Posts what was accepted, all or none; `already`: lines that were in the book and are left alone. */
  'statement.post': {
    ask: { posts: readonly StatementPosting[] }
    answer: { posted: number; already: readonly string[] }
  }
  'statement.agree': {
    ask: { id: EntryId; account: AccountId; on: CalendarDate; balance: string }
    answer: Record<never, never>
  }
  /** Counted envelopes; a difference is posted where `post` says so. */
  'count.save': {
    ask: { counts: readonly { id: EntryId; pot: PotId; pieces: readonly Pieces[]; post: boolean }[] }
    answer: Record<never, never>
  }
  /** One tick of the settling list. */
  'settle.tick': {
    ask: { id: EntryId; from: SettleEnd; to: SettleEnd; pieces: readonly Pieces[] }
    answer: Record<never, never>
  }
  /**
   * Closes a month: its sweeps, the sign-off, and the budgets the next month opens with, all or none. Sweeps are made only
   * here, so that money moves from pot to pot only while a month is closed.
   */
  'month.close': {
    ask: {
      id: EntryId
      month: MonthName
      sweeps: readonly {
        id: EntryId
        pot: PotId
        to: SweepTarget
        cash: string
        card: string
      }[]
      /** What a month brings to a pot from now on (its plan's `monthly`); pots left out keep theirs. */
      budgets: readonly { pot: PotId; monthly: string }[]
    }
    answer: Look
  }
  'month.reopen': { ask: { id: EntryId; month: MonthName; reason: string }; answer: Look }
}
