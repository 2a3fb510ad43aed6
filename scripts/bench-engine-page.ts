import { matchStatement, ofMinor, potId, settle, withdrawalSlip } from '../src/index.ts'
import { numbersFrom } from '../tests/money/numbers.ts'
import { yearOfLines } from '../tests/monthend/match-year.ts'

/*
 * What `bench-engine.ts` runs inside a page of Chromium: the searches a person waits for, on households made from seeds.
 */

const ALL = [10_000, 5000, 2000, 1000, 500, 200, 100, 25, 10, 5]
const HOUSEHOLDS = 8

/** Milliseconds of each run, and how many of the results were proven to be the best. */
export interface Searches {
  readonly ms: number[]
  readonly proven: number
  /** The largest difference between what was found and what is proven to be needed at least, in pieces. */
  readonly gap: number
}

function settles(pots: number, changing: number): Searches {
  const ms: number[] = []
  let proven = 0
  let gap = 0
  for (let seed = 1; seed <= HOUSEHOLDS; seed++) {
    const { counts, targets } = monthEnd(pots, changing, seed)
    const start = performance.now()
    const found = settle(counts, targets, { denominations: ALL })
    ms.push(performance.now() - start)
    if (found.proven) proven++
    gap = Math.max(gap, found.moved - found.movedAtLeast)
  }
  return { ms, proven, gap }
}

function slips(pots: number, atHand: boolean): Searches {
  const ms: number[] = []
  let proven = 0
  let gap = 0
  for (let seed = 1; seed <= HOUSEHOLDS; seed++) {
    const next = numbersFrom(seed)
    const fills = Array.from({ length: pots }, (_, i) => ({
      pot: potId(`pot${i}`),
      cash: ofMinor('CAD', next(100, 6000) * 5),
    }))
    const pieces = ALL.map((denomination) => ({ denomination, count: next(0, 3) }))
    const start = performance.now()
    const slip = withdrawalSlip(fills, {
      denominations: ALL,
      bank: { kind: 'counter' },
      ...(atHand ? { atHand: pieces } : {}),
    })
    ms.push(performance.now() - start)
    if (slip.proven) proven++
    gap = Math.max(gap, slip.pieces - slip.piecesAtLeast)
  }
  return { ms, proven, gap }
}

/** Envelopes with notes and coins, some of whose pots are to change by up to 150.00. @param changing in hundredths */
function monthEnd(pots: number, changing: number, seed: number) {
  const next = numbersFrom(seed)
  const counts = Array.from({ length: pots }, (_, i) => ({
    pot: potId(`pot${i}`),
    pieces: ALL.map((denomination) => ({ denomination, count: next(0, denomination >= 5000 ? 1 : 5) })),
  }))
  const targets = counts.map(({ pot, pieces }) => {
    const worth = pieces.reduce((sum, { denomination, count }) => sum + denomination * count, 0)
    const change = next(1, 100) <= changing ? next(-15_000, 10_000) : 0
    return { pot, cash: ofMinor('CAD', Math.max(0, worth + change)) }
  })
  return { counts, targets }
}

function matches(): number[] {
  const { lines, orders, entries } = yearOfLines()
  return Array.from({ length: 7 }, () => {
    const start = performance.now()
    matchStatement(lines, orders, { entries })
    return performance.now() - start
  })
}

Object.assign(globalThis, { benchEngine: { settles, slips, matches } })
