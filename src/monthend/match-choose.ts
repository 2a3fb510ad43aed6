import { bestAssignment } from './match-assignment.ts'
import type { Graph } from './match-edges.ts'
import { findGroups, type Group } from './match-groups.ts'

/** What was chosen: for each line its target or -1, and the groups. Lines and targets of groups are in no pair. */
export interface Choice {
  readonly targetOf: readonly number[]
  readonly groups: readonly Group[]
  readonly isProven: boolean
}

/**
 * Steps of the search over groups in one part of the statement, shared by its lines, and the fewest a part gets. Beyond
 * them the best found so far is taken, and said to be no more than that.
 */
const STEPS = 40_000
const FEWEST_STEPS = 60

/**
 * The best choice of pairs and groups together. Pairs alone are assigned exactly; where lines and expectations are left
 * over, sums are sought among them and their like, and each part of the statement that such a sum touches is solved
 * again, over all ways to take its groups.
 */
export function chooseBest(graph: Graph): Choice {
  const pairs = bestAssignment(graph.edges, graph.targets.length)
  const groups = findGroups(graph, pairs)
  if (groups.length === 0) return { targetOf: pairs, groups, isProven: !graph.isCut }
  const targetOf = [...pairs]
  const chosen: Group[] = []
  let isProven = !graph.isCut
  for (const part of partsOf(graph, groups)) {
    const best = solvePart(graph, part)
    for (const line of part.lines) targetOf[line] = best.targetOf.get(line) ?? -1
    chosen.push(...best.groups)
    isProven &&= best.isProven
  }
  return { targetOf, groups: chosen, isProven }
}

interface Part {
  readonly lines: readonly number[]
  readonly groups: readonly Group[]
}

/** The parts of the graph that groups touch: what is not connected does not matter to each other. */
function partsOf({ lines, targets, edges }: Graph, groups: readonly Group[]): Part[] {
  const parent = Array.from({ length: lines.length + targets.length }, (_, i) => i)
  const root = (i: number): number => {
    let at = i
    while (parent[at] !== at) {
      const up = parent[parent[at] ?? at] ?? at
      parent[at] = up
      at = up
    }
    return at
  }
  const join = (a: number, b: number): void => {
    parent[root(a)] = root(b)
  }
  edges.forEach((list, i) => {
    for (const { column } of list) join(i, lines.length + column)
  })
  for (const group of groups) {
    const [first = 0, ...others] = [...group.lines, ...group.targets.map((t) => lines.length + t)]
    for (const other of others) join(first, other)
  }
  const parts = new Map<number, { lines: number[]; groups: Group[] }>()
  for (const group of groups) {
    const key = root(group.lines[0] ?? 0)
    const part = parts.get(key) ?? { lines: [], groups: [] }
    part.groups.push(group)
    parts.set(key, part)
  }
  for (let i = 0; i < lines.length; i++) parts.get(root(i))?.lines.push(i)
  return [...parts.values()]
}

interface Solved {
  readonly targetOf: ReadonlyMap<number, number>
  readonly groups: readonly Group[]
  readonly isProven: boolean
}

/** Branches over taking each group or not; the pairs that remain are assigned exactly. */
function solvePart(graph: Graph, part: Part): Solved {
  const groups = [...part.groups].sort((a, b) => b.weight - a.weight)
  const columns = new Map<number, number>()
  for (const l of part.lines)
    for (const e of graph.edges[l] ?? []) if (!columns.has(e.column)) columns.set(e.column, columns.size)
  const targets = [...columns.keys()]
  const assign = (taken: readonly Group[]): { value: number; targetOf: Map<number, number> } => {
    const usedLines = new Set(taken.flatMap((g) => g.lines))
    const usedTargets = new Set(taken.flatMap((g) => g.targets))
    const rows = part.lines.map((l) =>
      usedLines.has(l)
        ? []
        : (graph.edges[l] ?? []).flatMap((e) =>
            usedTargets.has(e.column) ? [] : [{ column: columns.get(e.column) ?? 0, weight: e.weight }],
          ),
    )
    const found = bestAssignment(rows, columns.size)
    const targetOf = new Map<number, number>()
    let value = taken.reduce((sum, g) => sum + g.weight, 0)
    found.forEach((column, r) => {
      const [line, target] = [part.lines[r], targets[column]]
      if (line === undefined || target === undefined) return
      targetOf.set(line, target)
      value += rows[r]?.find((e) => e.column === column)?.weight ?? 0
    })
    return { value, targetOf }
  }
  const free = assign([])
  let best = { ...free, groups: [] as Group[] }
  const most = Math.max(FEWEST_STEPS, Math.floor(STEPS / part.lines.length))
  let steps = 0
  let isProven = true
  const search = (at: number, taken: Group[], used: ReadonlySet<string>, pairsAtMost: number): void => {
    if (steps++ > most) {
      isProven = false
      return
    }
    const worth = taken.reduce((sum, g) => sum + g.weight, 0)
    let hope = worth + pairsAtMost
    for (let i = at; i < groups.length; i++) {
      const group = groups[i]
      if (group && keysOf(group).every((key) => !used.has(key))) hope += group.weight
    }
    if (hope <= best.value) return
    const group = groups[at]
    if (!group) return
    if (keysOf(group).every((key) => !used.has(key))) {
      const now = [...taken, group]
      const found = assign(now)
      if (found.value > best.value) best = { ...found, groups: now }
      const pairs = found.value - worth - group.weight
      search(at + 1, now, new Set([...used, ...keysOf(group)]), pairs)
    }
    search(at + 1, taken, used, pairsAtMost)
  }
  search(0, [], new Set(), free.value)
  return { targetOf: best.targetOf, groups: best.groups, isProven }
}

function keysOf(group: Group): string[] {
  return [...group.lines.map((l) => `l${l}`), ...group.targets.map((t) => `t${t}`)]
}
