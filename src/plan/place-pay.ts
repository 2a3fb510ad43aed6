import type { Planning } from '../book/planning.ts'
import { allocate } from '../money/allocate.ts'
import { cashStep } from '../money/cash-rounding.ts'
import { ofMinor } from '../money/money.ts'
import type { PotState } from './pot-state.ts'
import { type PayMoment, type Want, wantOf } from './want.ts'

/** A pot with what it wants of a pay and what it gets of it, in minor units. */
export interface Placed {
  readonly state: PotState
  readonly want: Want
  readonly gets: number
}

/**
 * Places a pay on the pots by their order of importance. What is over comes back as `over`; gets and over sum to the pay.
 *
 * Turn by turn: sinking funds, the earliest due first, each in full before the next; and the other pots by importance,
 * those of one importance in proportion to what they want when it is not enough for all of them. A turn that goes short
 * leaves nothing to the next but odd cents that a pot of notes alone cannot hold.
 */
export function placePay(
  states: readonly PotState[],
  pay: number,
  moment: PayMoment,
  sinkingFunds: Planning['sinkingFunds'],
): { readonly placed: readonly Placed[]; readonly over: number } {
  const wants = new Map(states.map((state) => [state, wantOf(state, moment)]))
  const got = new Map<PotState, number>()
  let over = pay
  for (const turn of turns(states, sinkingFunds)) {
    const asked = turn.map((state) => wants.get(state)?.amount ?? 0)
    const shares = turn.some(isSinking) ? oneByOne(asked, over) : proportionally(turn, asked, over, moment)
    for (const [index, state] of turn.entries()) {
      const share = shares[index] ?? 0
      got.set(state, share)
      over -= share
    }
  }
  const placed = states.map((state) => ({
    state,
    want: wants.get(state) ?? { amount: 0, reason: { code: 'no-budget' as const } },
    gets: got.get(state) ?? 0,
  }))
  return { placed, over }
}

/** The pots in the turns they are served. */
function turns(states: readonly PotState[], sinkingFunds: Planning['sinkingFunds']): PotState[][] {
  const sinking = states.filter(isSinking).sort((a, b) => (dueOf(a) < dueOf(b) ? -1 : dueOf(a) > dueOf(b) ? 1 : 0))
  const [first = [], ...later] = ([1, 2, 3] as const).map((importance) =>
    states.filter((state) => !isSinking(state) && importanceOf(state) === importance),
  )
  return sinkingFunds === 'first' ? [sinking, first, ...later] : [first, sinking, ...later]
}

function isSinking(state: PotState): boolean {
  return state.pot.kind === 'sinking'
}

function importanceOf({ pot }: PotState): 1 | 2 | 3 {
  return pot.plan?.importance ?? (pot.kind === 'reserve' ? 3 : 2)
}

/** Funds without a date come last. */
function dueOf(state: PotState): string {
  return state.goal?.due ?? '9999-12-31'
}

function oneByOne(asked: readonly number[], money: number): number[] {
  let rest = money
  return asked.map((want) => {
    const share = Math.min(want, rest)
    rest -= share
    return share
  })
}

function proportionally(
  turn: readonly PotState[],
  asked: readonly number[],
  money: number,
  moment: PayMoment,
): number[] {
  const sum = asked.reduce((all, want) => all + want, 0)
  if (sum <= money) return [...asked]
  if (money === 0) return asked.map(() => 0)
  const step = cashStep(moment.currency)
  const shares = allocate(ofMinor(moment.currency, money), asked).map((share, index) => {
    // A pot of notes and coins alone cannot hold a cent that is no coin.
    return turn[index]?.pot.sides === 'cash' ? share.minor - (share.minor % step) : share.minor
  })
  let odd = money - shares.reduce((all, share) => all + share, 0)
  return shares.map((share, index) => {
    if (odd === 0 || turn[index]?.pot.sides === 'cash') return share
    const more = Math.min(odd, (asked[index] ?? 0) - share)
    odd -= more
    return share + more
  })
}
