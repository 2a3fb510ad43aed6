import { mostExpressible, worthOf } from '../money/piece-stock.ts'
import type { SlipTask } from './withdrawal-slip-input.ts'
import { askedOf, type SolvedSlip, solveSlip } from './withdrawal-slip-solve.ts'

/** Pots that are tried for giving way; more would rarely help and each is a whole solution. */
const MOST_TRIES = 4

/** What a slip asks of the bank, in minor units. */
export function askedSum(task: SlipTask, { counts }: SolvedSlip): number {
  return worthOf(task.denominations, askedOf(task, counts))
}

/**
 * A slip whose sum the machine takes (a multiple of `multipleOf`), made from the best one that it does not take. Either
 * one of the largest pots gives up what the sum is over, or only those notes are asked for that are multiples themselves;
 * whichever places more, then asks for fewer pieces. Not proven to be the best of all.
 */
export function fitMultiple(task: SlipTask, solved: SolvedSlip): SolvedSlip {
  const over = askedSum(task, solved) % task.multipleOf
  const fitting = task.gives.map((gives, at) => gives && (task.denominations[at] ?? 0) % task.multipleOf === 0)
  const narrow = solveSlip({ ...lowered(task, fitting, () => 0), gives: fitting })
  const places = (of: SolvedSlip): number =>
    of.counts.reduce((sum, counts) => sum + worthOf(task.denominations, counts), 0)
  const largest = task.pots
    .map(({ expressible }, index) => ({ expressible, index }))
    .filter(({ expressible }) => expressible >= over)
    .sort((a, b) => b.expressible - a.expressible)
    .slice(0, MOST_TRIES)
  let best = narrow
  for (const { index } of largest) {
    const tried = solveSlip(lowered(task, task.gives, (at) => (at === index ? over : 0)))
    if (askedSum(task, tried) % task.multipleOf !== 0) continue
    const more = places(tried) - places(best)
    if (more > 0 || (more === 0 && tried.pieces < best.pieces)) best = tried
  }
  return { ...best, piecesAtLeast: 0, shortAtLeast: solved.shortAtLeast, proven: false }
}

/** The same pots with less to place: by an amount, and by what the bank no longer gives. */
function lowered(task: SlipTask, gives: readonly boolean[], by: (index: number) => number): SlipTask {
  const most = task.hand.map((count, at) => (gives[at] ? Number.POSITIVE_INFINITY : count))
  return {
    ...task,
    pots: task.pots.map((pot, index) => ({
      ...pot,
      expressible: mostExpressible(pot.expressible - by(index), task.denominations, most),
    })),
  }
}
