import { describe, expect, it } from 'vitest'
import { potId } from '../../src/book/index.ts'
import { ofMinor } from '../../src/money/money.ts'
import { type PieceWish, type WithdrawalSlip, withdrawalSlip } from '../../src/plan/index.ts'
import { IntegerProgram } from '../money/highs.ts'
import { numbersFrom } from '../money/numbers.ts'

type Wish = 'usual' | { readonly upTo: number } | { readonly from: number }

interface Case {
  readonly denominations: readonly number[]
  readonly gives: readonly number[]
  readonly hand: readonly number[]
  readonly fills: readonly { readonly cash: number; readonly wish: Wish }[]
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
  const pick = (): number => denominations[next(0, denominations.length - 1)] ?? 1
  const some = denominations.filter(() => next(0, 2) > 0)
  const gives = next(0, 1) > 0 || some.length === 0 ? denominations : some
  const hand = denominations.map(() => Math.max(0, next(-2, 4)))
  const most = denominations.reduce((sum, value) => sum + 2 * value, 0)
  const fills = Array.from({ length: next(1, 3) }, () => {
    const kind = next(0, 3)
    const wish: Wish = kind === 0 ? { upTo: pick() } : kind === 1 ? { from: pick() } : 'usual'
    return { cash: next(0, most), wish }
  })
  return { denominations, gives, hand, fills }
}

/** How far a piece is from a wish: for the reference and for what the slip tells, never taken from the slip's code. */
function against(wish: Wish, value: number): number {
  if (wish === 'usual') return 0
  return 'upTo' in wish ? Math.max(0, value - wish.upTo) : Math.max(0, wish.from - value)
}

interface Figures {
  readonly placed: number
  readonly against: number
  readonly pieces: number
}

/** First as much as can be, then with that much the wishes and the fewest pieces. */
function reference(drawn: Case): Figures {
  const all = drawn.fills.reduce((sum, { cash }) => sum + cash, 0)
  const given = drawn.gives.length === drawn.denominations.length
  const left = given ? { cost: inPlenty(drawn) } : build(drawn, () => 0, 1).program.solve()
  if (!left) throw new Error('Everything may stay on the card side, so there is always a way.')
  const second = build(drawn, (wish, value) => 64 * against(wish, value), 0)
  second.program.row(
    second.onCard.map((name) => [1, name]),
    '<=',
    left.cost,
  )
  const solved = second.program.solve()
  if (!solved) throw new Error('What was placed before can be placed again.')
  const pieces = second.asked.reduce((sum, name) => sum + (solved.values.get(name) ?? 0), 0)
  return { placed: all - left.cost, against: (solved.cost - pieces) / 64, pieces }
}

/** What stays on the card side when the bank gives every piece, by trying every amount. */
function inPlenty({ denominations, fills }: Case): number {
  return fills.reduce((sum, { cash }) => {
    const makes = [true]
    for (let amount = 1; amount <= cash; amount++) makes[amount] = denominations.some((value) => makes[amount - value])
    return sum + cash - makes.lastIndexOf(true)
  }, 0)
}

function build(
  { denominations, gives, hand, fills }: Case,
  price: (wish: Wish, value: number) => number,
  card: number,
) {
  const program = new IntegerProgram()
  const onCard = fills.map(({ cash }, pot) => program.variable(`card${pot}`, card, cash))
  const asked = denominations.map((value, at) =>
    program.variable(`bank${at}`, card === 0 ? 1 : 0, gives.includes(value) ? 300 : 0),
  )
  for (const [at, value] of denominations.entries()) {
    for (const [pot, { wish }] of fills.entries()) program.variable(`in${pot}_${at}`, price(wish, value), 300)
    const taken = fills.map((_, pot) => [1, `in${pot}_${at}`] as const)
    program.row([...taken, [-1, `bank${at}`]], '<=', hand[at] ?? 0)
  }
  for (const [pot, { cash }] of fills.entries()) {
    const pieces = denominations.map((value, at) => [value, `in${pot}_${at}`] as const)
    program.row([...pieces, [1, `card${pot}`]], '=', cash)
  }
  return { program, onCard, asked }
}

function ours({ denominations, gives, hand, fills }: Case): WithdrawalSlip {
  return withdrawalSlip(
    fills.map(({ cash, wish }, index) => ({
      pot: potId(`pot${index}`),
      cash: ofMinor('EUR', cash),
      wish: wish satisfies PieceWish,
    })),
    {
      denominations,
      bank: { kind: 'counter', gives },
      atHand: denominations.map((denomination, at) => ({ denomination, count: hand[at] ?? 0 })),
    },
  )
}

function figuresOf(slip: WithdrawalSlip, fills: Case['fills']): Figures {
  const distances = slip.envelopes.flatMap(({ fromHand, fromBank }, pot) =>
    [...fromHand, ...fromBank].map(
      ({ denomination, count }) => count * against(fills[pot]?.wish ?? 'usual', denomination),
    ),
  )
  return { placed: slip.placed, against: distances.reduce((sum, d) => sum + d, 0), pieces: slip.pieces }
}

describe('withdrawal slip against HiGHS', () => {
  // Source: HiGHS (highs.dev) through npm `highs`: 1,000 random cases, each as integer programs of their own.
  it.each(Array.from({ length: 20 }, (_, block) => block))(
    'places, pleases and asks as the reference does, block %d',
    (block) => {
      for (let n = block * 50; n < block * 50 + 50; n++) {
        const small = caseOf(n)
        const slip = ours(small)
        const expected = reference(small)
        expect({ n, ...figuresOf(slip, small.fills) }).toEqual({ n, ...expected })
        expect([n, slip.placedAtMost >= expected.placed, slip.piecesAtLeast <= expected.pieces]).toEqual([
          n,
          true,
          true,
        ])
      }
    },
    60_000,
  )
})
