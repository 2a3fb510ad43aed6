import type { Choice } from './match-choose.ts'
import type { Graph, Pair, ReadyLine } from './match-edges.ts'
import type { MatchReason } from './match-types.ts'
import { type Fit, IS_NAMED, MAY_BE, type Target } from './match-weigh.ts'

/*
 * How sure a match is, from 0 to 1. The figures are our own; what they must keep: a match is sure only if its amount is
 * exact (or explained), the name is there, the days are near, and nothing else could take its place.
 */

/** From here on a match may be posted without asking. */
export const SURE = 0.9

const BY_FIT: Record<Fit, number> = {
  exact: 0.97,
  foreign: 0.96,
  margin: 0.93,
  rate: 0.8,
  refund: 0.75,
  differs: 0.45,
  part: 0.55,
}
/** Two choices nearer than this in points are told apart by nothing worth trusting. */
const NEAR = 40
const DOUBT = { several: 0.5, cancelled: 0.6, replaces: 0.5, uncharged: 0.6 }

/** How sure a single pair is by itself. */
export function pairConfidence(pair: Pair, target: Target, line: ReadyLine): number {
  if (target.kind === 'entry') return entryConfidence(pair, target)
  let sure = BY_FIT[pair.fit]
  if (pair.number !== null && pair.fit === 'exact') return doubtOf(0.98, target, line)
  if (pair.likeness < MAY_BE) sure *= 0.6
  else if (pair.likeness < IS_NAMED) sure *= pair.lag >= -1 && pair.lag <= 7 ? 0.93 : 0.8
  if (pair.lag < -1 || pair.lag > 21) sure *= target.kind === 'refund' && pair.lag >= 0 ? 1 : 0.93
  if (target.kind !== 'refund' && pair.lag > 45) sure *= 0.9
  return doubtOf(sure, target, line)
}

function entryConfidence(pair: Pair, { entry }: Target): number {
  const isTold = pair.bankSays !== null || pair.likeness >= IS_NAMED
  const near = Math.abs(pair.lag) <= 5
  // Notes drawn are round sums, and round sums are common.
  const base = isTold ? 0.97 : entry?.kind === 'cash' ? 0.85 : 0.95
  return near ? base : base * 0.9
}

function doubtOf(sure: number, target: Target, line: ReadyLine): number {
  let left = sure
  if (target.kind === 'charge' && target.order?.isOff) left *= DOUBT.cancelled
  if (line.line.replaces !== null) left *= DOUBT.replaces
  return left
}

/**
 * What else could be in a pair's place as good as it: another target for its line, alone or by changing places with
 * another line. Interchangeable targets (alike in shop, amount and pots) are no rivals: the book ends the same.
 *
 * @returns null when nothing is
 */
export function rivalOf(graph: Graph, choice: Choice, lineOf: readonly number[], line: number): MatchReason | null {
  const target = choice.targetOf[line] ?? -1
  const own = weight(graph, line, target)
  for (const { column, weight: other } of graph.edges[line] ?? []) {
    if (column === target || other < own - 2 * NEAR || areAlike(graph.targets[target], graph.targets[column])) continue
    const holder = lineOf[column] ?? -1
    const order = graph.targets[column]?.order?.order ?? null
    if (holder < 0) {
      if (other >= own - NEAR) return { code: 'could-be-other', order }
      continue
    }
    const swapped = weight(graph, holder, target)
    const loss = own + weight(graph, holder, column) - other - swapped
    if (swapped > 0 && loss <= NEAR) return { code: 'could-be-other', order }
  }
  return null
}

/** The factor of doubt where several sets of lines or orders sum to the same, or where something else fits as well. */
export const SEVERAL = DOUBT.several
/** The factor where money comes back that no charge has taken yet. */
export const UNCHARGED = DOUBT.uncharged

function weight(graph: Graph, line: number, target: number): number {
  return graph.edges[line]?.find((e) => e.column === target)?.weight ?? 0
}

function areAlike(a: Target | undefined, b: Target | undefined): boolean {
  if (!a || !b || a.kind !== b.kind || a.amount !== b.amount) return false
  if (a.entry && b.entry) return a.entry.kind === b.entry.kind && a.entry.account === b.entry.account
  if (a.renewal && b.renewal) return a.renewal.pot === b.renewal.pot && a.name === b.name
  const [x, y] = [a.order?.pots, b.order?.pots]
  return a.name === b.name && x !== undefined && x.length === y?.length && x.every((pot, i) => pot === y[i])
}
