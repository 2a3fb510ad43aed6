import { blankPot, type PotDraft } from '../../src/ui/pot-draft.ts'
import { t } from '../../src/ui/text.ts'

const NAMES = ['groceries', 'household', 'outings', 'clothes', 'books', 'children', 'gifts', 'travel'] as const

/** Pots many households have, to tick. All can be renamed. The last is a reserve, on the card side. */
export function suggestedPots(): PotDraft[] {
  const everyday = NAMES.map((name) => ({ ...blankPot, name: t(`suggest_${name}`) }))
  return [...everyday, { ...blankPot, name: t('suggest_reserve'), kind: 'reserve', sides: 'card' }]
}

/** How many of the suggestions are there from the start. */
export const TICKED_AT_START = 3
