import { formatAmount } from '../money/format.ts'
import { type Money, toDecimal } from '../money/money.ts'
import { locale } from './browser.ts'

/** An amount for reading, without the currency's sign: `1,234.50`. */
export function amountText(m: Money): string {
  return formatAmount(m, locale())
}

/** An amount for editing: no groups, the decimal mark of the person's language. */
export function editText(m: Money): string {
  return toDecimal(m).replace('.', marks(locale()).decimal)
}

/** The marks a language writes numbers with. */
export function marks(language: string): { readonly decimal: string; readonly group: string } {
  const parts = new Intl.NumberFormat(language, { useGrouping: true }).formatToParts(1234567.5)
  const find = (type: string, otherwise: string): string => parts.find((p) => p.type === type)?.value ?? otherwise
  return { decimal: find('decimal', '.'), group: find('group', ',') }
}
