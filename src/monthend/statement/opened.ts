import type { CalendarDate } from '../../book/calendar-date.ts'
import type { CurrencyCode } from '../../money/currency.ts'
import type { Money } from '../../money/money.ts'
import type { MonthendError } from '../monthend-error.ts'
import type { StatementLine } from '../statement-line.ts'

/** A balance the statement tells, or one worked out from the other one and the lines between. */
export interface StatementBalance {
  readonly amount: Money
  readonly date: CalendarDate | null
  readonly from: 'statement' | 'worked-out'
}

/** Whether opening balance plus booked lines gives the closing balance. `unknown` when one of the two is not told. */
export type BalanceCheck =
  | { readonly outcome: 'agrees' | 'unknown' }
  /** `by`: stated closing balance less the one the lines lead to. */
  | { readonly outcome: 'differs'; readonly by: Money }

/** What a file says about one account. */
export interface AccountStatement {
  /** Key of the account, as its lines carry it. */
  readonly account: string
  /** The account's own number as the file writes it; '' when it names none. */
  readonly number: string
  readonly kind: 'bank' | 'credit' | null
  readonly currency: CurrencyCode
  readonly from: CalendarDate | null
  readonly to: CalendarDate | null
  readonly opening: StatementBalance | null
  readonly closing: StatementBalance | null
  readonly available: StatementBalance | null
  readonly check: BalanceCheck
  /** In the order of the file. */
  readonly lines: readonly StatementLine[]
  /** Ids of earlier lines the bank has withdrawn (OFX CORRECTACTION DELETE). */
  readonly withdrawn: readonly string[]
}

/** Something worth telling about a file that could be read all the same. */
export interface StatementRemark {
  readonly code:
    | 'encoding-unsure'
    | 'balance-differs'
    | 'no-lines'
    | 'same-reference'
    | 'batch-kept-whole'
    | 'line-in-other-currency'
    | 'converted'
    | 'bank-reports-error'
    | 'rows-passed-over'
    | 'nul-removed'
    | 'dates-unsure'
    | 'sign-unsure'
    | 'columns-unsure'
    | 'quotes-are-plain'
  readonly message: string
  readonly row: number | null
}

/** What a reader of one format makes of a file. */
export interface ReadAccounts {
  readonly accounts: readonly AccountStatement[]
  /** Lines that could not be read, one error each; they are in no account's lines. */
  readonly problems: readonly MonthendError[]
  readonly remarks: readonly StatementRemark[]
}
