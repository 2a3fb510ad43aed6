import type { OrderId } from '../book/ids.ts'
import type { Money } from '../money/money.ts'
import { bestAssignment } from './match-assignment.ts'
import type { Choice } from './match-choose.ts'
import type { Graph, Pair, ReadyLine } from './match-edges.ts'
import { matchOfPart } from './match-made.ts'
import type { StatementMatch } from './match-types.ts'
import { IS_NAMED, pointsOf, type Target } from './match-weigh.ts'

/**
 * Lines still alone that carry a shop's name and are smaller than what is open there: a part of an order's charge (the
 * rest is on its way), or one more refund. Assigned best over all of them, round after round, until an order has no room
 * left. Always asked.
 */
export function partMatches(
  graph: Graph,
  choice: Choice,
  made: readonly StatementMatch[],
  money: (minor: number) => Money,
): StatementMatch[] {
  const inGroup = new Set(choice.groups.flatMap((g) => g.lines))
  const alone = graph.lines.flatMap((_, i) => ((choice.targetOf[i] ?? -1) < 0 && !inGroup.has(i) ? [i] : []))
  const byOrder = new Map<OrderId, StatementMatch[]>()
  for (const match of made) {
    for (const order of match.orders) byOrder.set(order, [...(byOrder.get(order) ?? []), match])
  }
  const targets = graph.targets.map((target) => ({ target, room: roomOf(target, byOrder) }))
  const byName = new Map<number, number[]>()
  targets.forEach(({ target, room }, i) => {
    if (room === 0 || (target.kind !== 'charge' && target.kind !== 'refund')) return
    byName.set(target.name, [...(byName.get(target.name) ?? []), i])
  })
  const found: StatementMatch[] = []
  let open = alone
  for (;;) {
    const rows = open.map((l) => {
      const line = graph.lines[l]
      if (!line) return []
      return graph.names.alike(line.text).flatMap((name) =>
        (byName.get(name) ?? []).flatMap((t) => {
          const { target, room } = targets[t] ?? {}
          const pair = target && partOf(graph, line, target, room ?? 0)
          return pair ? [{ column: t, weight: pair.weight }] : []
        }),
      )
    })
    const columns = bestAssignment(rows, targets.length)
    if (columns.every((c) => c < 0)) return found
    columns.forEach((column, r) => {
      const line = graph.lines[open[r] ?? -1]
      const slot = targets[column]
      const pair = line && slot && partOf(graph, line, slot.target, slot.room)
      if (!line || !slot || !pair) return
      found.push(matchOfPart(line, { ...slot.target, amount: slot.room }, pair, money))
      slot.room -= line.amount
    })
    open = open.filter((_, r) => (columns[r] ?? -1) < 0)
  }
}

/** What is open of a target after the matches made, signed like it. */
function roomOf(target: Target, byOrder: ReadonlyMap<OrderId, readonly StatementMatch[]>): number {
  const order = target.order?.order
  if (order === undefined) return 0
  let room = target.amount
  for (const match of byOrder.get(order) ?? []) {
    if (match.kind === 'charge' && target.kind === 'charge') return 0
    for (const part of match.parts) {
      if (part.order === order && match.kind === target.kind) room -= Math.sign(target.amount) * part.amount.minor
    }
  }
  return room
}

function partOf(graph: Graph, line: ReadyLine, target: Target, room: number): Pair | null {
  const likeness = graph.names.likeness(line.text, target.name)
  const lag = line.day - target.day
  const isIn = lag >= -target.early && lag <= target.late
  if (!isIn || likeness < IS_NAMED || Math.sign(line.amount) !== Math.sign(room)) return null
  if (Math.abs(line.amount) > Math.abs(room)) return null
  const weight = pointsOf('part', likeness, lag, false, false)
  return { fit: 'part', likeness, lag, number: null, bankSays: null, weight }
}
