import type { HouseholdView, PotChoice } from '../../background/protocol.ts'
import type { Household, Pot } from '../../book/household.ts'
import type { PotId } from '../../book/ids.ts'
import { listText } from '../text.ts'

/** The pots that can be chosen: by a ranking where there is one, then the household's own order. */
export function potOrder(household: Household, ranking: readonly PotId[] | null): Pot[] {
  const open = household.pots.filter((p) => !p.archived)
  if (!ranking) return open
  const rank = (pot: Pot): number => {
    const at = ranking.indexOf(pot.id)
    return at < 0 ? ranking.length : at
  }
  return [...open].sort((a, b) => rank(a) - rank(b))
}

/**
 * The pot that is chosen before the person chooses: the one said ahead for this basket, one this shop's orders went to
 * before, or the only pot there is. Otherwise none: a guess that Enter confirms would tag orders to pots nobody chose.
 */
export function readyPot(
  pots: readonly Pot[],
  choices: readonly PotChoice[],
  ahead: PotId | undefined = undefined,
): PotId | null {
  if (pots.some((pot) => pot.id === ahead)) return ahead ?? null
  const known = choices.find((c) => c.usedHere > 0)
  if (known) return known.pot
  return pots.length === 1 ? (pots[0]?.id ?? null) : null
}

/** The names of an order's pots: "Groceries and Household things". */
export function potNames(view: HouseholdView, lines: readonly { readonly pot: PotId }[]): string {
  return listText(lines.map(({ pot }) => view.household.pots.find((p) => p.id === pot)?.name ?? pot))
}
