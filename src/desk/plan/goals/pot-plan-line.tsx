import type { Pot } from '../../../book/household.ts'
import { ofMinor } from '../../../money/money.ts'
import { amountText } from '../../../ui/money-text.ts'
import { dotted, t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'

/** How an everyday pot is planned, in few words. */
export function PotPlanLine({ pot }: { pot: Pot }) {
  const { book } = useHousehold()
  const { currency } = book.household
  const { plan } = pot
  const fill = pot.fill.cash + pot.fill.card
  const budget =
    plan?.monthly !== undefined
      ? t('goals_monthly', { amount: amountText(ofMinor(currency, plan.monthly)) })
      : fill > 0
        ? t('goals_each_pay', { amount: amountText(ofMinor(currency, fill)) })
        : t('goals_no_budget')
  return (
    <p class="field-hint">
      {dotted([budget, t(`importance_${plan?.importance ?? 2}`), plan?.split ? t(`split_by_${plan.split}`) : ''])}
    </p>
  )
}
