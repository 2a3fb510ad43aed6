import { type Choice, type Effort, OutOfSteps } from './cheapest-pieces.ts'
import { lowestPoolCost, type Priced, poolAt, pricedEnvelope, SCALE } from './piece-prices.ts'
import type { PieceProgram } from './piece-program.ts'

/** How wide to look: choices kept of each envelope, and ways kept after each. */
export interface Breadth {
  readonly choices: number
  readonly ways: number
}

/** What a combining found, and whether it looked at everything that could cost so little. */
export interface Combined {
  readonly counts: readonly (readonly number[])[] | null
  readonly complete: boolean
}

/** The choices of one envelope, the cheapest first, and what each costs above the cheapest. */
interface Offers {
  readonly envelope: number
  readonly choices: readonly Choice[]
  readonly above: readonly number[]
}

/** A choice for each envelope so far: what they take together, and what it costs above the bound. */
interface Way {
  readonly net: readonly number[]
  readonly above: number
  readonly from: Way | null
  readonly counts: readonly number[]
  /** What the whole will cost above the bound if the later envelopes take what is usual. */
  readonly hope: number
}

/**
 * The cheapest solution that costs `goal` or less, by combining the envelopes' choices, one envelope after another. At
 * the prices' bound every choice and every pool has a cost above its cheapest. These add up, so only what stays within
 * `goal - bound` matters; and of two ways to the same nets, only the cheaper one.
 *
 * @param goal in pieces
 * @param usual what each envelope took on the average of the prices tried: tells which ways to keep when there are too many
 */
export function combine(
  program: PieceProgram,
  priced: Priced,
  usual: readonly (readonly number[])[],
  goal: number,
  breadth: Breadth,
  effort: Effort,
): Combined {
  const budget = goal * SCALE - priced.bound
  if (budget < 0) return { counts: null, complete: true }
  try {
    const { offers, complete: allOffers } = gatherOffers(program, priced, budget, breadth.choices, effort)
    let complete = allOffers
    let ways: Way[] = [{ net: program.pools.map(() => 0), above: 0, from: null, counts: [], hope: 0 }]
    for (const [step, offer] of offers.entries()) {
      const outlook = outlookOf(program, priced, offers.slice(step + 1), usual, ways, offer)
      const next = extend(ways, offer, outlook, budget, breadth.ways, effort)
      complete &&= next.complete
      ways = next.ways
    }
    return { counts: cheapestOf(offers, ways), complete }
  } catch (error) {
    if (error instanceof OutOfSteps) return { counts: null, complete: false }
    throw error
  }
}

function gatherOffers(program: PieceProgram, priced: Priced, budget: number, most: number, effort: Effort) {
  let complete = true
  const offers = program.envelopes.map((_, envelope): Offers => {
    const cheapest = priced.choices[envelope]
    if (!cheapest) return { envelope, choices: [], above: [] }
    const asked = pricedEnvelope(program, envelope, priced.prices, effort)
    let choices: readonly Choice[] | null = asked.upTo(cheapest.cost + budget, most)
    for (let part = budget / 2; !choices; part /= 2) {
      complete = false
      choices = part < 1 ? [cheapest] : asked.upTo(cheapest.cost + Math.floor(part), most)
    }
    return { envelope, choices, above: choices.map(({ cost }) => cost - cheapest.cost) }
  })
  return { offers: offers.sort((a, b) => a.choices.length - b.choices.length), complete }
}

/** What is ahead after one envelope has chosen, by pool: a table over the nets it may then have. */
interface Outlook {
  /** The pools that matter. One that gives and takes without end for nothing does not: its net follows from the others'. */
  readonly pools: readonly number[]
  readonly lowest: readonly number[]
  /** The least the pool can still cost above its cheapest, whatever the later envelopes take. */
  readonly sure: readonly (readonly number[])[]
  /** What it costs if they take what is usual. */
  readonly likely: readonly (readonly number[])[]
}

function outlookOf(
  program: PieceProgram,
  priced: Priced,
  later: readonly Offers[],
  usual: readonly (readonly number[])[],
  ways: readonly Way[],
  offer: Offers,
): Outlook {
  const pools: number[] = []
  const lowest: number[] = []
  const sure: number[][] = []
  const likely: number[][] = []
  for (const [index, pool] of program.pools.entries()) {
    if (pool.price === 0 && !Number.isFinite(pool.least) && !Number.isFinite(pool.most)) continue
    const price = priced.prices[index] ?? 0
    const cheapest = lowestPoolCost(pool, price)
    const cost = (net: number) =>
      net < pool.least || net > pool.most ? Number.POSITIVE_INFINITY : poolAt(pool, price, net) - cheapest
    const [wayLow, wayHigh] = span(ways.map(({ net }) => net[index] ?? 0))
    const [ownLow, ownHigh] = span(offer.choices.map(({ counts }) => counts[index] ?? 0))
    let [down, up, expected] = [0, 0, 0]
    for (const { envelope, choices } of later) {
      const [low, high] = span(choices.map(({ counts }) => counts[index] ?? 0))
      down += low
      up += high
      expected += usual[envelope]?.[index] ?? 0
    }
    const from = wayLow + ownLow
    const nets = Array.from({ length: wayHigh + ownHigh - from + 1 }, (_, at) => from + at)
    // The pool's cost is convex, so its least within a reach is at the point of the reach nearest to the lowest one.
    const nearest = (net: number) => Math.min(Math.max(restingPoint(pool, price), net + down), net + up)
    pools.push(index)
    lowest.push(from)
    sure.push(nets.map((net) => cost(nearest(net))))
    likely.push(nets.map((net) => Math.max(cost(nearest(net)), softCost(pool, price, net + expected) - cheapest)))
  }
  return { pools, lowest, sure, likely }
}

/** A net at which a pool is cheapest at this price. */
function restingPoint(pool: PieceProgram['pools'][number], price: number): number {
  if (price < 0) return pool.least
  return price > pool.price * SCALE ? pool.most : pool.free
}

/** A pool's cost at a net that need not be whole; beyond its ends it gets dear instead of impossible. */
function softCost(pool: PieceProgram['pools'][number], price: number, net: number): number {
  const beyond = Math.max(0, net - pool.most) + Math.max(0, pool.least - net)
  return poolAt(pool, price, net) + 3 * SCALE * beyond
}

function span(values: readonly number[]): readonly [number, number] {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (const value of values) {
    if (value < low) low = value
    if (value > high) high = value
  }
  return low > high ? [0, 0] : [low, high]
}

/**
 * Every way with every choice that stays within the budget; of those with equal nets, the cheapest. When there are many
 * more than `most`, only the most hopeful are made at all.
 */
function extend(
  ways: readonly Way[],
  offer: Offers,
  outlook: Outlook,
  budget: number,
  most: number,
  effort: Effort,
): { ways: Way[]; complete: boolean } {
  const { pools, lowest, sure, likely } = outlook
  const size = pools.length
  const hopes: number[] = []
  const pairs: number[] = []
  const width = offer.choices.length
  for (const [place, way] of ways.entries()) {
    for (let index = 0; index < width; index++) {
      const above = way.above + (offer.above[index] ?? 0)
      if (above > budget) break
      effort.steps += 1
      if (effort.steps > effort.most) throw new OutOfSteps()
      const counts = offer.choices[index]?.counts ?? []
      let total = above
      let hope = above
      for (let at = 0; at < size && total <= budget; at++) {
        const pool = pools[at] ?? 0
        const entry = (way.net[pool] ?? 0) + (counts[pool] ?? 0) - (lowest[at] ?? 0)
        total += sure[at]?.[entry] ?? Number.POSITIVE_INFINITY
        hope += likely[at]?.[entry] ?? 0
      }
      if (total > budget) continue
      hopes.push(hope)
      pairs.push(place * width + index)
    }
  }
  const enough = most * 3
  const limit = hopes.length > enough ? ([...hopes].sort((a, b) => a - b)[enough] ?? 0) : Number.POSITIVE_INFINITY
  const next = new Map<string, Way>()
  for (const [entry, hope] of hopes.entries()) {
    if (hope > limit) continue
    const pair = pairs[entry] ?? 0
    const way = ways[Math.floor(pair / width)]
    const choice = offer.choices[pair % width]
    if (!way || !choice) continue
    const above = way.above + (offer.above[pair % width] ?? 0)
    const net = way.net.map((n, at) => n + (choice.counts[at] ?? 0))
    const key = String.fromCharCode(...pools.map((pool, at) => (net[pool] ?? 0) - (lowest[at] ?? 0)))
    const known = next.get(key)
    if (!known || known.above > above) next.set(key, { net, above, from: way, counts: choice.counts, hope })
  }
  const found = [...next.values()]
  if (found.length <= most) return { ways: found, complete: limit === Number.POSITIVE_INFINITY }
  return { ways: found.sort((a, b) => a.hope - b.hope).slice(0, most), complete: false }
}

/** After the last envelope `hope` is the whole cost, since nobody is left to take anything. */
function cheapestOf(offers: readonly Offers[], ways: readonly Way[]): (readonly number[])[] | null {
  let best: Way | null = null
  for (const way of ways) if (!best || way.hope < best.hope) best = way
  if (!best) return null
  const counts: (readonly number[])[] = []
  let at: Way | null = best
  for (const { envelope } of offers.toReversed()) {
    counts[envelope] = at?.counts ?? []
    at = at?.from ?? null
  }
  return counts
}
