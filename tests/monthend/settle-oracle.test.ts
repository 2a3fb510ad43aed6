import { describe, expect, it } from 'vitest'
import { type PotId, potId } from '../../src/book/index.ts'
import { ofMinor } from '../../src/money/money.ts'
import { settle } from '../../src/monthend/index.ts'
import { IntegerProgram } from '../money/highs.ts'
import { numbersFrom } from '../money/numbers.ts'

interface Case {
  readonly denominations: readonly number[]
  readonly gives: readonly number[]
  readonly counts: readonly (readonly number[])[]
  readonly targets: readonly number[]
  readonly trip: boolean
}

const SETS = [
  [1, 5, 10, 25],
  [5, 10, 20, 50],
  [1, 2, 5, 10],
  [20, 50, 100],
  [2, 5, 10],
  [1, 3, 4],
  [10, 25, 50],
]

/** A case that is small enough for a reference, by its number. */
function caseOf(n: number): Case {
  const next = numbersFrom(n)
  const denominations = SETS[next(0, SETS.length - 1)] ?? []
  const pots = next(1, 3)
  const counts = Array.from({ length: pots }, () => denominations.map(() => next(0, 3)))
  const trip = next(0, 2) > 0
  const some = denominations.filter(() => next(0, 1) > 0)
  const gives = next(0, 2) > 0 || some.length === 0 ? denominations : some
  const most = denominations.reduce((sum, value) => sum + 2 * value, 0)
  // Half of the cases without a bank can be settled exactly: their targets are another way to share out the pieces.
  const shared = counts.map(() => denominations.map(() => 0))
  for (const own of counts) {
    own.forEach((count, at) => {
      for (let piece = 0; piece < count; piece++) {
        const to = shared[next(0, pots - 1)] ?? []
        to[at] = (to[at] ?? 0) + 1
      }
    })
  }
  const exact = !trip && next(0, 1) === 0
  const targets = shared.map((own) =>
    exact ? own.reduce((sum, count, at) => sum + count * (denominations[at] ?? 0), 0) : next(0, most),
  )
  return { denominations, gives, counts, targets, trip }
}

/** The most up to an amount that pieces without end can make, by trying every amount. */
function rounded(amount: number, denominations: readonly number[]): number {
  const makes = [true]
  for (let sum = 1; sum <= amount; sum++) makes[sum] = denominations.some((value) => makes[sum - value] === true)
  return makes.lastIndexOf(true)
}

/**
 * The same question as an integer program: pieces leave envelopes (1 each, and only those that lie there), pieces leave
 * the bank (1 each), and what comes into envelopes has left one or the other. What is missing weighs more than all pieces.
 */
function reference({ denominations, gives, counts, targets, trip }: Case): { missing: number; moved: number } {
  const program = new IntegerProgram()
  const weight = 1000
  for (const [at, value] of denominations.entries()) {
    const pots = [...targets.keys()]
    for (const pot of pots) {
      program.variable(`out${pot}_${at}`, 1, counts[pot]?.[at] ?? 0)
      program.variable(`in${pot}_${at}`, 0, 400)
    }
    const bank = program.variable(`bank${at}`, 1, trip && gives.includes(value) ? 400 : 0)
    const left = pots.map((pot) => [1, `out${pot}_${at}`] as const)
    program.row([...left, [1, bank], ...pots.map((pot) => [-1, `in${pot}_${at}`] as const)], trip ? '>=' : '=', 0)
  }
  for (const [pot, target] of targets.entries()) {
    const goal = rounded(target, denominations)
    const missing = program.variable(`missing${pot}`, weight, goal)
    const over = program.variable(`over${pot}`, 0, trip ? 0 : 5000)
    const worth = denominations.reduce((sum, value, at) => sum + value * (counts[pot]?.[at] ?? 0), 0)
    const change = denominations.flatMap((value, at) => [
      [value, `in${pot}_${at}`] as const,
      [-value, `out${pot}_${at}`] as const,
    ])
    program.row([...change, [1, missing], [-1, over]], '=', goal - worth)
  }
  const solved = program.solve()
  if (!solved) throw new Error('Everything may be missing, so there is always a way.')
  const missing = [...solved.values].reduce((sum, [name, n]) => sum + (name.startsWith('missing') ? n : 0), 0)
  return { missing, moved: solved.cost - weight * missing }
}

function ours({ denominations, gives, counts, targets, trip }: Case) {
  const pots: PotId[] = targets.map((_, index) => potId(`pot${index}`))
  return settle(
    pots.map((pot, index) => ({
      pot,
      pieces: denominations.map((denomination, at) => ({ denomination, count: counts[index]?.[at] ?? 0 })),
    })),
    pots.map((pot, index) => ({ pot, cash: ofMinor('EUR', targets[index] ?? 0) })),
    { denominations, bankGives: gives, bank: trip ? 'trip' : 'none' },
  )
}

describe('settle against HiGHS', () => {
  // Source: HiGHS (highs.dev) through npm `highs`: 1,000 random cases, each as an integer program of its own.
  it.each(Array.from({ length: 20 }, (_, block) => block))(
    'misses as little and moves as few pieces, block %d',
    (block) => {
      for (let n = block * 50; n < block * 50 + 50; n++) {
        const drawn = caseOf(n)
        const small = drawn.gives.length > 0 ? drawn : { ...drawn, trip: false }
        const found = ours(small)
        const expected = reference(small)
        expect({ n, missing: found.missing, moved: found.moved }).toEqual({ n, ...expected })
        expect([n, found.missingAtLeast <= expected.missing, found.movedAtLeast <= expected.moved]).toEqual([
          n,
          true,
          true,
        ])
      }
    },
    60_000,
  )
})
