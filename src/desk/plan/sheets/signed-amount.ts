import type { Money } from '../../../money/money.ts'
import { amountText } from '../../../ui/money-text.ts'

/** What came in or went out on a side: "+20.00", "−5.50", or nothing where nothing did. */
export function signedAmount(m: Money): string {
  if (m.minor === 0) return ''
  return m.minor > 0 ? `+${amountText(m)}` : `−${amountText({ ...m, minor: -m.minor })}`
}
