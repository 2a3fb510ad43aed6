import type { StatementLine } from '../../../monthend/statement-line.ts'
import { amountText } from '../../../ui/money-text.ts'
import { shortDate } from '../../../ui/short-date.ts'
import { purposeOf } from './posts.ts'

/** A line as the bank writes it: day, text, amount. */
export function LineText({ line }: { line: StatementLine }) {
  return (
    <span class="line-text">
      <span class="line-day">{shortDate(line.paidOn ?? line.date)}</span>
      <span class="line-name">{purposeOf(line)}</span>
      <span class="figure">{amountText(line.amount)}</span>
    </span>
  )
}
