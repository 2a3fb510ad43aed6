import type { CalendarDate } from '../book/calendar-date.ts'
import type { Money } from '../money/money.ts'

/**
 * What the bank says a line is, where it says so. A hint for matching, never a fact: `card` a purchase by card, `transfer`
 * money sent or received (a bank's own order, a direct debit), `cash` notes from or to a machine or counter, `check`,
 * `fee`, `interest`, `pay` a salary or other regular deposit.
 */
export type StatementLineKind = 'card' | 'transfer' | 'cash' | 'check' | 'fee' | 'interest' | 'pay'

/** What was paid in another currency before the bank turned it into the account's. */
export interface OriginalAmount {
  /** In the other currency, signed like the line: a purchase is negative. */
  readonly amount: Money
  /** Units of the account's currency for one unit of the other, as decimal text (`0.923`); null when not given. */
  readonly rate: string | null
}

/** Where a line stands in its file, to be named in sentences. */
export interface StatementPlace {
  /** Line of the text, from 1. */
  readonly row: number
  /** Which entry of the file, from 1, counting pending and replaced ones too. */
  readonly entry: number
}

/** One movement of money on an account, as its bank tells it. */
export interface StatementLine {
  /**
   * Names the movement however often it is read: the bank's own reference with the account where there is one, else a key
   * made of account, day, amount, texts and how many equal ones came before it in the same statement.
   */
  readonly id: string
  /** Whether `id` rests on the bank's own reference or on what the line says. */
  readonly idFrom: 'bank' | 'content'
  /** Key of the account as the statement names it (an IBAN, `bank/account` in OFX); '' when the file names none. */
  readonly account: string
  /** The day the bank booked it; for a pending line the day the bank gives. */
  readonly date: CalendarDate
  /** The day it counts for interest, where given. */
  readonly valueDate: CalendarDate | null
  /** The day the person paid (at the till, in the shop), where given: earlier than `date` as a rule. */
  readonly paidOn: CalendarDate | null
  /** In the account's currency, from the customer's side: a purchase is negative, a refund positive. Fees included. */
  readonly amount: Money
  /** A pending line is shown, and never posted: its amount may still change and it may vanish. */
  readonly status: 'booked' | 'pending'
  /** Who was paid or who paid, as the bank writes it (often shortened); '' when not said. */
  readonly name: string
  /** What else the bank writes: purpose, memo, remittance text; '' when not said. */
  readonly text: string
  /** References a shop or payer may have given: end-to-end ids, cheque numbers, creditor references. */
  readonly references: readonly string[]
  readonly original: OriginalAmount | null
  /** What the bank took for itself, positive, and is part of `amount` already; null when not said. */
  readonly fee: Money | null
  /** The bank takes back an earlier booking by this line. Its sign is right as it stands. */
  readonly reversal: boolean
  readonly kind: StatementLineKind | null
  /** The account's balance after this line, where the file gives one. */
  readonly balance: Money | null
  /** Id of an earlier line that the bank replaces by this one (OFX CORRECTFITID). */
  readonly replaces: string | null
  /** Set for a part of a batch that the bank booked as one sum: all parts carry the same text. */
  readonly batch: string | null
  readonly place: StatementPlace
}
