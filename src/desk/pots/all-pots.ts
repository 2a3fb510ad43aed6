import type { HouseholdView } from '../../background/protocol.ts'
import type { PotBalance } from '../../book/balances.ts'
import type { Pot } from '../../book/household.ts'
import { ofMinor } from '../../money/money.ts'

const FIGURES = ['cash', 'card', 'held', 'left', 'spokenFor', 'freeCash'] as const

/** The figures of several pots together. A pot's free notes are no other pot's, so each figure is a plain sum. */
export function sumOfPots(view: HouseholdView, pots: readonly Pot[]): PotBalance {
  const sum = (figure: (typeof FIGURES)[number]) =>
    ofMinor(
      view.household.currency,
      pots.reduce((all, pot) => all + (view.balances[pot.id]?.[figure].minor ?? 0), 0),
    )
  return {
    cash: sum('cash'),
    card: sum('card'),
    held: sum('held'),
    left: sum('left'),
    spokenFor: sum('spokenFor'),
    freeCash: sum('freeCash'),
  }
}
