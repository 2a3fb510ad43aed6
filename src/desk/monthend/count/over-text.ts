import { type Money, negate } from '../../../money/money.ts'
import { amountText } from '../../../ui/money-text.ts'
import { t } from '../../../ui/text.ts'

/** Cash over or short in words: "5.00 short". */
export function overText(over: Money): string {
  if (over.minor === 0) return t('count_agrees')
  return over.minor > 0
    ? t('count_over', { amount: amountText(over) })
    : t('count_short', { amount: amountText(negate(over)) })
}
