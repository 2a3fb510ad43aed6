import type { Money } from '../../../money/money.ts'
import { amountText } from '../../../ui/money-text.ts'
import { listText, t } from '../../../ui/text.ts'

/** What goes onto both sides, in words: "35.00 cash and 25.00 card"; a side that gets nothing is not told. */
export function sidesText(cash: Money, card: Money): string {
  const said = []
  if (cash.minor !== 0) said.push(t('side_cash_amount', { amount: amountText(cash) }))
  if (card.minor !== 0) said.push(t('side_card_amount', { amount: amountText(card) }))
  return said.length > 0 ? listText(said) : amountText(cash)
}
