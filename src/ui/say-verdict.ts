import type { Verdict } from '../book/assess.ts'
import type { Household } from '../book/household.ts'
import { fillIn, sayReason } from '../book/say.ts'
import { amountText } from './money-text.ts'
import { speech } from './text.ts'

/**
 * A verdict's sentences, one text per reason. What a pot holds now is told once, not again for each further reason.
 */
export function sayVerdict(household: Household, verdict: Verdict): string[] {
  const told = new Set<string>()
  return verdict.reasons.map((reason) => {
    const { left, cash, card, held } = reason.before
    const state = fillIn(speech().sentence('reason_state'), {
      pot: household.pots.find((p) => p.id === reason.pot)?.name ?? reason.pot,
      left: amountText(left),
      cash: amountText(cash),
      card: amountText(card),
      held: amountText(held),
    })
    const whole = sayReason(household, reason, speech())
    const isToldAgain = told.has(reason.pot) && whole.startsWith(state)
    told.add(reason.pot)
    return isToldAgain ? whole.slice(state.length).trim() : whole
  })
}
