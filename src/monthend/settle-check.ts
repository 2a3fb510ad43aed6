import type { Settlement } from './settle.ts'
import type { SettleTask } from './settle-input.ts'

/**
 * Proves a settlement before anyone sees it: moving the pieces of its moves, one after another, never takes from an
 * envelope what it has not, ends with exactly the pieces shown, and what each pot gains in cash it gives on its card
 * side, so that no pot's *left* changes.
 *
 * @throws Error when it does not hold: a fault of Tillside, never of the input
 */
export function checkSettlement(task: SettleTask, settlement: Settlement): void {
  const held = new Map(
    task.envelopes.map(({ pot, counted }) => [
      pot,
      new Map(task.denominations.map((value, at) => [value, counted[at] ?? 0])),
    ]),
  )
  let moved = 0
  for (const { from, to, denomination, count } of settlement.moves) {
    moved += count
    for (const [place, change] of [
      [from, -count],
      [to, count],
    ] as const) {
      const pieces = place === 'bank' ? null : held.get(place.pot)
      pieces?.set(denomination, (pieces.get(denomination) ?? 0) + change)
      if ((pieces?.get(denomination) ?? 0) < 0) throw fault(`more pieces of ${denomination} are taken than there are`)
    }
    if (!task.trip && (from === 'bank' || to === 'bank')) throw fault('a bank trip was not asked for')
  }
  if (moved !== settlement.moved) throw fault(`${moved} pieces are moved, but ${settlement.moved} are told`)
  for (const { pot, pieces, cash, cashChange, cardChange } of settlement.envelopes) {
    const ends = [...(held.get(pot) ?? [])].filter(([, count]) => count > 0)
    const shown = pieces.map(({ denomination, count }) => [denomination, count])
    if (JSON.stringify(ends) !== JSON.stringify(shown)) throw fault(`"${pot}" ends with other pieces than shown`)
    const worth = ends.reduce((sum, [value, count]) => sum + value * count, 0)
    if (worth !== cash.minor) throw fault(`"${pot}" ends with another amount than shown`)
    if (cashChange.minor + cardChange.minor !== 0) throw fault(`what "${pot}" has left would change`)
  }
}

function fault(what: string): Error {
  return new Error(`This settlement does not add up: ${what}. Nothing was changed; please report it.`)
}
