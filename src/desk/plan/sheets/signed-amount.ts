import type { Money } from '../../../money/money.ts'
import { locale } from '../../../ui/browser.ts'
import { amountText } from '../../../ui/money-text.ts'

/** What came in or went out on a side: "+20.00", "−5.50", or nothing where nothing did. */
export function signedAmount(m: Money): string {
  if (m.minor === 0) return ''
  return `${sign(m.minor)}${amountText({ ...m, minor: Math.abs(m.minor) })}`
}

/** The sign as the language sets it: in Arabic with a mark that keeps it before its number. */
function sign(minor: number): string {
  const parts = new Intl.NumberFormat(locale(), { signDisplay: 'always' }).formatToParts(Math.sign(minor))
  const found = parts.find((part) => part.type === 'minusSign' || part.type === 'plusSign')?.value ?? ''
  return found.replace('-', '−')
}
