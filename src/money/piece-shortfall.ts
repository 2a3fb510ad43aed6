import type { Level } from './piece-level.ts'
import { type PieceAnswer, type PieceProgram, type Pool, poolCost, totalCost } from './piece-program.ts'
import { sharePieces } from './shared-pieces.ts'

type Counts = readonly (readonly number[])[]

/** A solution in which some envelopes may miss their amounts because pieces are scarce. */
export interface ScarceAnswer {
  readonly counts: Counts
  readonly cost: number
  /** No solution with so little missing costs less. */
  readonly atLeast: number
  /** What all envelopes together have too little, in units of value; the first thing that is kept small. */
  readonly short: number
  /** No solution has less missing. */
  readonly shortAtLeast: number
}

/** What there is to know of the pools. */
export interface ScarceOptions {
  /** No pool gives or takes anything: what one envelope has too much of has to stay in some envelope. */
  readonly closed: boolean
  /** Counts known already; used where they overdraw no pool. */
  readonly start?: Counts | null
  /** What no solution costs more than. */
  readonly ceiling: number
}

/**
 * Solves a `PieceProgram` as far as its pieces reach: as little as possible missing over all envelopes, and of such
 * solutions the cheapest. With pieces enough nothing is missing, and that is tried first.
 *
 * In closed pools the envelopes keep their sum, so what is missing less what is too much is known before. If all can be
 * missing, or all too much, nothing has to be weighed; only otherwise does every missing unit get a price above the
 * dearest solution.
 */
export function shareScarce(program: PieceProgram, options: ScarceOptions): ScarceAnswer {
  const { closed, ceiling } = options
  const missing = closed ? program.envelopes.reduce((sum, { amount }) => sum + amount, 0) : 0
  const trivial = Math.max(0, missing)
  const sizes = sizeOf(program)
  const easy = missing === 0 ? program : missing > 0 ? withRest(program, 0, sizes, 0) : withRest(program, -sizes, 0, 0)
  const first = sharePieces(easy, { start: startOf(easy, options.start), ceiling })
  if (first.counts) return scarce(program, first, first.counts, trivial, trivial)

  const dear = ceiling + 1
  const hard = withRest(program, closed ? -sizes : 0, sizes, dear)
  const untouched = program.envelopes.map(({ levels }) => levels.map(({ least }) => (closed ? 0 : least)))
  const start = startOf(hard, options.start)
  const nothing = startOf(hard, untouched)
  const better = start && totalCost(hard, start) < (nothing ? totalCost(hard, nothing) : Number.POSITIVE_INFINITY)
  const second = sharePieces(hard, { start: better ? start : nothing, ceiling: dear * (sizes + 1) })
  const counts = second.counts ?? untouched
  const short = counts.reduce((sum, of) => sum + Math.max(0, of.at(-1) ?? 0), 0)
  const proven = first.atLeast === Number.POSITIVE_INFINITY ? trivial + 1 : trivial
  const shortAtLeast = Math.min(short, Math.max(proven, Math.floor(second.atLeast / dear)))
  const cost = second.cost - short * dear
  return scarce(program, { ...second, cost, atLeast: second.atLeast - short * dear }, counts, short, shortAtLeast)
}

function scarce(program: PieceProgram, answer: PieceAnswer, counts: Counts, short: number, atLeast: number) {
  return {
    counts: counts.map((of) => of.slice(0, program.pools.length)),
    cost: answer.cost,
    atLeast: short === atLeast ? Math.max(0, answer.atLeast) : 0,
    short,
    shortAtLeast: atLeast,
  }
}

/** More than any envelope could miss or have too much. */
function sizeOf(program: PieceProgram): number {
  return program.envelopes.reduce(
    (sum, { amount, levels }) => sum + Math.abs(amount) + levels.reduce((s, { value, least }) => s - value * least, 0),
    0,
  )
}

/** The same program with a last level of single units: above zero they are missing, below zero too much. */
function withRest(program: PieceProgram, least: number, most: number, price: number): PieceProgram {
  const rest: Level = { value: 1, least, most, slope: 0, corners: price === 0 ? [] : [{ at: 0, gain: price }] }
  const free: Pool = { free: 0, price: 0, least: Number.NEGATIVE_INFINITY, most: Number.POSITIVE_INFINITY }
  return {
    pools: [...program.pools, free],
    envelopes: program.envelopes.map(({ amount, levels }) => ({ amount, levels: [...levels, rest] })),
  }
}

/** Known counts as a solution of a program, what is then missing at its last level; null if they are none. */
function startOf(program: PieceProgram, counts: Counts | null | undefined): Counts | null {
  if (!counts) return null
  const full = program.envelopes.map(({ amount, levels }, index) => {
    const own = counts[index] ?? []
    if (own.length === levels.length) return own
    return [...own, amount - own.reduce((sum, count, at) => sum + count * (levels[at]?.value ?? 0), 0)]
  })
  return solves(program, full) ? full : null
}

/** Whether counts make every amount without overdrawing a pool. */
function solves(program: PieceProgram, counts: Counts): boolean {
  const net = program.pools.map((_, at) => counts.reduce((sum, of) => sum + (of[at] ?? 0), 0))
  return (
    poolCost(program.pools, net) < Number.POSITIVE_INFINITY &&
    program.envelopes.every(({ amount, levels }, index) => {
      const own = counts[index] ?? []
      const fits = levels.every(({ least, most }, at) => (own[at] ?? 0) >= least && (own[at] ?? 0) <= most)
      return fits && levels.reduce((sum, { value }, at) => sum + value * (own[at] ?? 0), 0) === amount
    })
  )
}
