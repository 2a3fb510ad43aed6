/** Items chosen so that their values sum to `sum`; `picks` are indices of the list given. */
export interface Chosen {
  readonly sum: number
  readonly picks: readonly number[]
}

/** Most exchanges tried before all of them are: nearly always enough to meet the sum needed exactly. */
const FEW = 4

/**
 * Chooses exactly so many values that their sum is the least one that reaches what is needed. Exact: the largest values
 * are taken, then as many of them exchanged for smaller ones as the excess allows, by dynamic programming over the excess.
 *
 * @param values whole numbers above zero, largest first
 * @param needed whole number
 * @returns null when even the largest ones do not reach it
 * @example leastSum([900, 500, 400, 300], 2, 800) // {sum: 800, picks: [1, 3]}
 */
export function leastSum(values: readonly number[], count: number, needed: number): Chosen | null {
  if (count > values.length) return null
  const top = values.slice(0, count).reduce((sum, v) => sum + v, 0)
  const excess = top - needed
  if (excess < 0) return null
  const largest = Array.from({ length: count }, (_, n) => n)
  const pivot = values[count - 1]
  if (excess === 0 || pivot === undefined) return { sum: top, picks: largest }

  // Leaving a value out lowers the sum by what it has over the pivot, putting one in by what that lacks to the pivot.
  const outs = values.map((v, n) => ({ n, cost: v - pivot })).filter((x) => x.n < count && x.cost <= excess)
  const ins = values.map((v, n) => ({ n, cost: pivot - v })).filter((x) => x.n >= count && x.cost <= excess)
  const unit = [...outs, ...ins].reduce((g, x) => gcd(g, x.cost), 0)
  if (unit === 0) return { sum: top, picks: largest }
  const room = Math.floor(excess / unit)
  const most = Math.min(outs.length, ins.length)
  let best = exchangeSaving(outs, ins, room * unit) ?? bestExchange(outs, ins, unit, room, Math.min(FEW, most))
  if (best.saved < room * unit && most > FEW) best = bestExchange(outs, ins, unit, room, most)
  const left = new Set(best.outs)
  return { sum: top - best.saved, picks: [...largest.filter((n) => !left.has(n)), ...best.ins] }
}

interface Priced {
  readonly n: number
  readonly cost: number
}

interface Exchange {
  /** In the units of the costs. */
  readonly saved: number
  readonly outs: readonly number[]
  readonly ins: readonly number[]
}

/**
 * An exchange of one or two values that saves exactly so much, the most there is room for; null where there is none. With
 * many prices there nearly always is one, and it is found much sooner than by the whole table.
 */
function exchangeSaving(outs: readonly Priced[], ins: readonly Priced[], saving: number): Exchange | null {
  const single = new Map(outs.map((x) => [x.cost, x.n]))
  for (const x of ins) {
    const out = single.get(saving - x.cost)
    if (out !== undefined) return { saved: saving, outs: [out], ins: [x.n] }
  }
  const double = new Map<number, readonly [number, number]>()
  for (const [k, x] of outs.entries()) for (const y of outs.slice(k + 1)) double.set(x.cost + y.cost, [x.n, y.n])
  if (double.size === 0) return null
  for (const [k, x] of ins.entries()) {
    for (let m = k + 1; m < ins.length; m++) {
      const y = ins[m]
      const pair = y && double.get(saving - x.cost - y.cost)
      if (y && pair) return { saved: saving, outs: pair, ins: [x.n, y.n] }
    }
  }
  return null
}

/** The exchange of at most `most` values that saves most without saving more than there is room for. */
function bestExchange(
  outs: readonly Priced[],
  ins: readonly Priced[],
  unit: number,
  room: number,
  most: number,
): Exchange {
  const [out, into] = [reach(outs, unit, room, most), reach(ins, unit, room, most)]
  let best = { saved: 0, by: 0, out: 0 }
  for (let by = 1; by <= most && best.saved < room; by++) {
    const a = bitsOf(out.at(-1)?.[by] ?? 0n)
    const b = bitsOf(into.at(-1)?.[by] ?? 0n)
    let j = b.length - 1
    for (const x of a) {
      while (j >= 0 && x + (b[j] ?? 0) > room) j--
      if (j < 0) break
      const saved = x + (b[j] ?? 0)
      if (saved > best.saved) best = { saved, by, out: x }
    }
  }
  return {
    saved: best.saved * unit,
    outs: trace(out, outs, unit, best.by, best.out),
    ins: trace(into, ins, unit, best.by, best.saved - best.out),
  }
}

/** After each value, and for each number of values taken: the sums of costs that can be met, as the bits of a number. */
function reach(list: readonly Priced[], unit: number, room: number, most: number): bigint[][] {
  const mask = (1n << BigInt(room + 1)) - 1n
  const table: bigint[][] = [[1n, ...Array.from({ length: most }, () => 0n)]]
  for (const { cost } of list) {
    const before = table.at(-1) ?? []
    const shift = BigInt(cost / unit)
    table.push(before.map((sums, taken) => (taken === 0 ? sums : sums | (((before[taken - 1] ?? 0n) << shift) & mask))))
  }
  return table
}

function trace(
  table: readonly bigint[][],
  list: readonly Priced[],
  unit: number,
  taken: number,
  sum: number,
): number[] {
  const found: number[] = []
  for (let n = list.length; n > 0 && taken > 0; n--) {
    const without = table[n - 1]?.[taken] ?? 0n
    if ((without >> BigInt(sum)) & 1n) continue
    const item = list[n - 1]
    if (!item) break
    found.push(item.n)
    sum -= item.cost / unit
    taken--
  }
  return found
}

/** The places of a number's set bits, ascending. */
function bitsOf(sums: bigint): number[] {
  const text = sums.toString(2)
  const found: number[] = []
  for (let n = text.length - 1; n >= 0; n--) if (text[n] === '1') found.push(text.length - 1 - n)
  return found
}

function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b)
}
