import { likeness, type MerchantText, merchantText, shopText } from './match-text.ts'
import type { PotHabit, PotSuggestion } from './match-types.ts'
import { IS_NAMED } from './match-weigh.ts'

const MOST = 3
/** Each later time counts so much more than the one before it. */
const LATER = 1.1

/**
 * Which pots a text could belong to, from what like texts went to before: at most three, the strongest first.
 *
 * @param habits oldest first
 */
export function suggestPots(habits: readonly PotHabit[]): (text: MerchantText) => PotSuggestion[] {
  const known = new Map<string, { name: MerchantText; text: string; weights: Map<PotHabit['pot'], number> }>()
  let weight = 1
  for (const { text, isShop, pot } of habits) {
    const name = isShop ? shopText(text) : merchantText(text)
    const key = name.key
    if (key === '') continue
    const habit = known.get(key) ?? { name, text, weights: new Map() }
    known.set(key, habit)
    habit.weights.set(pot, (habit.weights.get(pot) ?? 0) + weight)
    // Long histories must not grow beyond what a number holds; a thousand steps back is as good as nothing.
    weight = Math.min(weight * LATER, 1e200)
  }
  return (text) => {
    const found = new Map<PotHabit['pot'], PotSuggestion>()
    for (const { name, text: because, weights } of known.values()) {
      const like = likeness(text, name)
      if (like < IS_NAMED) continue
      for (const [pot, points] of weights) {
        const before = found.get(pot)
        const sum = (before?.weight ?? 0) + points * like
        found.set(pot, { pot, weight: sum, because: before?.because ?? because })
      }
    }
    const whole = [...found.values()].reduce((sum, s) => sum + s.weight, 0)
    return [...found.values()]
      .sort((a, b) => b.weight - a.weight || (a.pot < b.pot ? -1 : 1))
      .slice(0, MOST)
      .map((s) => ({ ...s, weight: s.weight / whole }))
  }
}
