import type { Graph, ReadyLine } from './match-edges.ts'
import { exactSubsets } from './match-subsets.ts'
import { IS_NAMED, pointsOf, type Target } from './match-weigh.ts'

/** Several lines for one target, several targets in one line, or two lines that are one transfer. */
export interface Group {
  readonly lines: readonly number[]
  readonly targets: readonly number[]
  readonly weight: number
  /** Other sets sum to the same: the person must choose. */
  readonly isOneOfSeveral: boolean
}

/** Candidates per sum, members per sum, and sums found per candidate, at most. */
const POOL = 16
const MEMBERS = 8
/** A day's fills are many, and drawn in one sum. */
const ENTRY_POOL = 22
const WAYS = 4
/** A sum counts for less than one line for one order, which is the usual. */
const SUM_PERCENT = 80
const TRANSFER_DAYS = 5

/** Sums worth considering, beside the pairs as they were assigned: sought where lines and expectations are left over. */
export function findGroups(graph: Graph, pairs: readonly number[]): Group[] {
  const { lines, targets, names } = graph
  const lineOf = new Map<number, number>()
  pairs.forEach((target, line) => {
    if (target >= 0) lineOf.set(target, line)
  })
  const isWeak = (line: number, target: number): boolean => {
    const [l, t] = [lines[line], targets[target]]
    return !l || !t || l.amount !== t.amount || (t.kind !== 'entry' && names.likeness(l.text, t.name) < IS_NAMED)
  }
  const openLines = lines.flatMap((_, i) => ((pairs[i] ?? -1) < 0 || isWeak(i, pairs[i] ?? -1) ? [i] : []))
  const openTargets = targets.flatMap((_, i) => {
    const line = lineOf.get(i)
    return line === undefined || isWeak(line, i) ? [i] : []
  })
  if (openLines.length === 0) return []
  const isOpenLine = new Set(openLines)
  const isOpenTarget = new Set(openTargets)
  const linesByName = indexLines(graph)
  const found: Group[] = []
  for (const index of openTargets) {
    const target = targets[index]
    if (target?.kind !== 'charge') continue
    const pool = (linesByName.get(target.name) ?? []).filter((l) => fitsIn(lines[l], target))
    found.push(
      ...sumsOfLines(
        graph,
        index,
        nearest(
          pool,
          (l) => isOpenLine.has(l),
          (l) => lines[l]?.day ?? 0,
          target.day,
        ),
      ),
    )
  }
  const byName = new Map<number, number[]>()
  const entries: number[] = []
  targets.forEach((target, i) => {
    if (target.kind === 'entry') entries.push(i)
    if (target.kind === 'charge') byName.set(target.name, [...(byName.get(target.name) ?? []), i])
  })
  for (const index of openLines) {
    const line = lines[index]
    if (!line) continue
    const isOpen = (t: number): boolean => isOpenTarget.has(t)
    const dayOf = (t: number): number => targets[t]?.day ?? 0
    for (const name of names.alike(line.text)) {
      const pool = (byName.get(name) ?? []).filter((t) => fitsIn(line, targets[t]))
      found.push(...sumsOfTargets(graph, index, nearest(pool, isOpen, dayOf, line.day)))
    }
    const pool = entries.filter((t) => isOpen(t) && fitsIn(line, targets[t]))
    found.push(...sumsOfTargets(graph, index, nearest(pool, isOpen, dayOf, line.day, ENTRY_POOL), ENTRY_POOL))
  }
  return [...found, ...transfers(graph, openLines)]
}

/** Lines by the names they may be. */
function indexLines({ lines, names }: Graph): Map<number, number[]> {
  const index = new Map<number, number[]>()
  lines.forEach((line, i) => {
    for (const name of names.alike(line.text)) {
      const same = index.get(name)
      if (same) same.push(i)
      else index.set(name, [i])
    }
  })
  return index
}

/** Whether a line and a target could be members of one sum: same direction, and in each other's days. */
function fitsIn(line: ReadyLine | undefined, target: Target | undefined): boolean {
  if (!line || !target || Math.sign(line.amount) !== Math.sign(target.amount)) return false
  if (target.entry && line.account !== null && line.account !== target.entry.account) return false
  const lag = line.day - target.day
  return lag >= -target.early && lag <= target.late
}

/** The likeliest members of a sum: those still open first, then the nearest days. */
function nearest(
  pool: readonly number[],
  isOpen: (i: number) => boolean,
  dayOf: (i: number) => number,
  day: number,
  most = POOL,
): number[] {
  return [...pool]
    .sort(
      (a, b) => Number(isOpen(b)) - Number(isOpen(a)) || Math.abs(dayOf(a) - day) - Math.abs(dayOf(b) - day) || a - b,
    )
    .slice(0, most)
    .sort((a, b) => a - b)
}

function sumsOfLines(graph: Graph, index: number, pool: readonly number[]): Group[] {
  const target = graph.targets[index]
  if (!target) return []
  const smaller = pool.filter((l) => Math.abs(graph.lines[l]?.amount ?? 0) < Math.abs(target.amount))
  const amounts = smaller.map((l) => graph.lines[l]?.amount ?? 0)
  return groupsOf(graph, amounts, target.amount, MEMBERS, (members) => ({
    lines: members.map((m) => smaller[m] ?? 0),
    targets: [index],
  }))
}

function sumsOfTargets(graph: Graph, index: number, pool: readonly number[], largest = MEMBERS): Group[] {
  const line = graph.lines[index]
  if (!line) return []
  const smaller = pool.filter((t) => Math.abs(graph.targets[t]?.amount ?? 0) < Math.abs(line.amount))
  const amounts = smaller.map((t) => graph.targets[t]?.amount ?? 0)
  return groupsOf(graph, amounts, line.amount, largest, (members) => ({
    lines: [index],
    targets: members.map((m) => smaller[m] ?? 0),
  }))
}

function groupsOf(
  graph: Graph,
  amounts: readonly number[],
  sum: number,
  largest: number,
  make: (members: readonly number[]) => Pick<Group, 'lines' | 'targets'>,
): Group[] {
  if (amounts.length < 2) return []
  const ways = exactSubsets(amounts, sum, { most: WAYS, largest })
  // Members that are exchangeable (same amount) are still several ways: which order it was is not known.
  return ways.map((members) => {
    const group = make(members)
    return { ...group, weight: sumWeight(graph, group, members.length), isOneOfSeveral: ways.length > 1 }
  })
}

/** The mean of its pairs as if their amounts were exact, less for being a sum, and less for each further member. */
function sumWeight(graph: Graph, { lines, targets }: Pick<Group, 'lines' | 'targets'>, members: number): number {
  let points = 0
  for (const l of lines) {
    for (const t of targets) {
      const [line, target] = [graph.lines[l], graph.targets[t]]
      if (!line || !target) continue
      const says = target.entry !== null && line.line.kind === target.entry.kind
      points += pointsOf('exact', graph.names.likeness(line.text, target.name), line.day - target.day, false, says)
    }
  }
  const mean = points / (lines.length * targets.length)
  return Math.max(1, Math.floor((mean * SUM_PERCENT) / 100) - 10 * (members - 2))
}

/** Two lines of different accounts, the same amount out of one and into the other. */
function transfers(graph: Graph, openLines: readonly number[]): Group[] {
  const found: Group[] = []
  const into = new Map<number, number[]>()
  for (const i of openLines) {
    const line = graph.lines[i]
    if (line && line.amount > 0 && line.account !== null) into.set(line.amount, [...(into.get(line.amount) ?? []), i])
  }
  for (const i of openLines) {
    const out = graph.lines[i]
    if (!out || out.amount >= 0 || out.account === null) continue
    const others = (into.get(-out.amount) ?? []).filter((j) => {
      const other = graph.lines[j]
      return other && other.account !== out.account && Math.abs(other.day - out.day) <= TRANSFER_DAYS
    })
    for (const j of others) {
      const days = Math.abs((graph.lines[j]?.day ?? 0) - out.day)
      found.push({ lines: [i, j], targets: [], weight: 640 - 10 * days, isOneOfSeveral: others.length > 1 })
    }
  }
  return found
}
