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
 * solutions the cheapest.
 */
export function shareScarce(program: PieceProgram, options: ScarceOptions): ScarceAnswer {
  if (options.closed) return shareClosed(program, options)
  const scarcePools = program.pools.some(({ most }) => Number.isFinite(most))
  return scarcePools ? shareOpen(program, options) : sharePlenty(program, options)
}

/** Nothing is scarce, so nothing is missing. */
function sharePlenty(program: PieceProgram, { start, ceiling }: ScarceOptions): ScarceAnswer {
  const answer = sharePieces(program, { start: startOf(program, start), ceiling })
  return answer.counts
    ? scarce(program, answer, answer.counts, 0, 0)
    : shareOpen(program, { closed: false, ...(start ? { start } : {}), ceiling })
}

/**
 * Some pools end. First the least that must be missing, when nothing else costs anything; then the cheapest solution with
 * no more missing than that, which is like one more pool: of units that may be missing.
 */
function shareOpen(program: PieceProgram, { start, ceiling }: ScarceOptions): ScarceAnswer {
  const sizes = sizeOf(program)
  const plain: PieceProgram = {
    pools: program.pools.map((pool, at) => ({
      ...pool,
      price: 0,
      ...(Number.isFinite(pool.most) ? { worth: program.envelopes[0]?.levels[at]?.value ?? 1 } : {}),
    })),
    envelopes: program.envelopes.map(({ amount, levels }) => ({
      amount,
      levels: levels.map((level) => ({ ...level, slope: 0, corners: [] })),
    })),
  }
  const weighed = withRest(plain, { least: 0, most: sizes, price: 1 }, ENDLESS)
  const empty = program.envelopes.map(({ levels }) => levels.map(({ least }) => least))
  const first = sharePieces(weighed, {
    start: startOf(weighed, start) ?? startOf(weighed, empty),
    ceiling: sizes,
    share: 0.4,
  })
  if (!first.counts) throw new RangeError('Envelopes that are emptied into the pools must be a solution.')
  const short = first.cost
  if (short === 0) {
    const known = startOf(program, start) ?? first.counts.map((of) => of.slice(0, program.pools.length))
    const answer = sharePieces(program, { start: known, ceiling, share: 0.4 })
    return scarce(program, answer, answer.counts ?? known, 0, 0)
  }
  const limited = withRest(program, { least: 0, most: sizes, price: 0 }, { ...ENDLESS, most: short })
  const known = startOf(limited, start) ?? first.counts
  const second = sharePieces(limited, { start: known, ceiling, share: 0.4 })
  return scarce(program, second, second.counts ?? known, short, first.atLeast)
}

/**
 * The envelopes keep their sum, so what is missing less what is too much is known before. If all can be missing, or all
 * too much, nothing has to be weighed; only otherwise does every missing unit get a price above the dearest solution.
 */
function shareClosed(program: PieceProgram, options: ScarceOptions): ScarceAnswer {
  const { ceiling } = options
  const missing = program.envelopes.reduce((sum, { amount }) => sum + amount, 0)
  const trivial = Math.max(0, missing)
  const sizes = sizeOf(program)
  const range = missing > 0 ? { least: 0, most: sizes, price: 0 } : { least: -sizes, most: 0, price: 0 }
  const easy = missing === 0 ? program : withRest(program, range, ENDLESS)
  const rough = missing === 0 ? null : roughStart(program, missing, options)
  const first = sharePieces(easy, {
    start: startOf(easy, options.start) ?? startOf(easy, rough),
    ceiling,
    share: rough ? 0.6 : 1,
  })
  if (first.counts) return scarce(program, first, first.counts, trivial, trivial)

  const dear = ceiling + 1
  const hard = withRest(program, { least: -sizes, most: sizes, price: dear }, ENDLESS)
  const untouched = program.envelopes.map(({ levels }) => levels.map(() => 0))
  const starts = [options.start, rough ?? roughStart(program, 0, options), untouched].flatMap((counts) => {
    const start = startOf(hard, counts)
    return start ? [{ start, cost: totalCost(hard, start) }] : []
  })
  const { start } = starts.sort((a, b) => a.cost - b.cost)[0] ?? { start: null }
  const second = sharePieces(hard, { start, ceiling: dear * (sizes + 1) })
  const counts = second.counts ?? untouched
  const short = counts.reduce((sum, of) => sum + Math.max(0, of.at(-1) ?? 0), 0)
  const proven = first.atLeast === Number.POSITIVE_INFINITY ? trivial + 1 : trivial
  const shortAtLeast = Math.min(short, Math.max(proven, Math.floor(second.atLeast / dear)))
  const cost = second.cost - short * dear
  return scarce(program, { ...second, cost, atLeast: second.atLeast - short * dear }, counts, short, shortAtLeast)
}

/**
 * A good start for closed pools: as if the pools took what is too much, or gave what is missing, in any envelope. What
 * they would take then stays where it is, and what they would give is missing.
 */
function roughStart(program: PieceProgram, missing: number, { ceiling }: ScarceOptions): Counts | null {
  const gives = missing > 0
  const pools = program.pools.map((pool) =>
    gives ? { ...pool, most: Number.POSITIVE_INFINITY } : { ...pool, least: Number.NEGATIVE_INFINITY },
  )
  // A piece that in the end stays where it is should cost nothing: it is counted where it arrives, not where it leaves.
  const envelopes = program.envelopes.map(({ amount, levels }) => ({
    amount,
    levels: levels.map((level) =>
      gives ? { ...level, most: Number.POSITIVE_INFINITY } : { ...level, slope: level.slope + 1 },
    ),
  }))
  const open = gives
    ? sharePieces({ pools, envelopes }, { ceiling, share: 0.4 })
    : shareOpen({ pools, envelopes }, { closed: false, ceiling })
  const counts = open.counts?.map((of) => [...of]) ?? null
  for (const at of counts ? program.pools.keys() : []) takeBack(counts ?? [], at)
  return counts
}

/** Undoes changes of one pool's pieces, the last envelopes first, until they come to nothing together. */
function takeBack(counts: number[][], at: number): void {
  let net = counts.reduce((sum, of) => sum + (of[at] ?? 0), 0)
  for (const of of counts.toReversed()) {
    const own = of[at] ?? 0
    const back = Math.sign(own) === Math.sign(net) ? Math.sign(net) * Math.min(Math.abs(own), Math.abs(net)) : 0
    of[at] = own - back
    net -= back
  }
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

const ENDLESS: Pool = {
  free: 0,
  price: 0,
  least: Number.NEGATIVE_INFINITY,
  most: Number.POSITIVE_INFINITY,
}

/** The same program with a last level of single units: above zero they are missing, below zero too much. */
function withRest(
  program: PieceProgram,
  { least, most, price }: { readonly least: number; readonly most: number; readonly price: number },
  pool: Pool,
): PieceProgram {
  const rest: Level = { value: 1, least, most, slope: 0, corners: price === 0 ? [] : [{ at: 0, gain: price }] }
  return {
    pools: [...program.pools, pool],
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
