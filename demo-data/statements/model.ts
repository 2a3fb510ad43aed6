import type { CalendarDate, CurrencyCode, StatementLine } from '../../src/index.ts'

/** A line as an invented bank knows it. Amounts in minor units, signed from the customer's side. */
export interface BankLine {
  readonly reference: string
  readonly date: CalendarDate
  readonly paidOn: CalendarDate | null
  readonly amount: number
  readonly name: string
  readonly text: string
  readonly kind: StatementLine['kind']
  readonly pending: boolean
}

/** A month of one account, to be written in whichever format. */
export interface BankMonth {
  readonly account: string
  readonly owner: string
  readonly currency: CurrencyCode
  readonly from: CalendarDate
  readonly to: CalendarDate
  /** Balance before the first line, in minor units. */
  readonly opening: number
  /** By day, oldest first. */
  readonly lines: readonly BankLine[]
}

/** The balance after the month's booked lines, in minor units. */
export function closingOf(month: BankMonth): number {
  return month.lines.filter((line) => !line.pending).reduce((sum, line) => sum + line.amount, month.opening)
}

/** A line with what is usual left out: booked, paid on its day, named by where it stands. */
export function bankLine(line: Pick<BankLine, 'date' | 'amount' | 'name'> & Partial<BankLine>, n: number): BankLine {
  const reference = `HB${line.date.replaceAll('-', '')}${String(n).padStart(4, '0')}`
  return { reference, paidOn: null, text: '', kind: null, pending: false, ...line }
}
