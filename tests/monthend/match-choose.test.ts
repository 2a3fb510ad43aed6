import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addDays, calendarDate } from '../../src/index.ts'
import { bestAssignment } from '../../src/monthend/match-assignment.ts'
import { chooseBest } from '../../src/monthend/match-choose.ts'
import { buildGraph, type Graph } from '../../src/monthend/match-edges.ts'
import { findGroups, type Group } from '../../src/monthend/match-groups.ts'
import { held, line } from './statement-lines.ts'

/** Pairs and groups together, by trying every set of groups that get on with each other. */
function bestByTrying(graph: Graph, groups: readonly Group[], taken: readonly Group[] = [], at = 0): number {
  const group = groups[at]
  if (!group) {
    const lines = new Set(taken.flatMap((g) => g.lines))
    const targets = new Set(taken.flatMap((g) => g.targets))
    const rows = graph.edges.map((list, l) => (lines.has(l) ? [] : list.filter((e) => !targets.has(e.column))))
    return taken.reduce((sum, g) => sum + g.weight, 0) + pairsWorth(rows, bestAssignment(rows, graph.targets.length))
  }
  const without = bestByTrying(graph, groups, taken, at + 1)
  const clashes = taken.some(
    (t) => t.lines.some((l) => group.lines.includes(l)) || t.targets.some((x) => group.targets.includes(x)),
  )
  return clashes ? without : Math.max(without, bestByTrying(graph, groups, [...taken, group], at + 1))
}

function pairsWorth(rows: Graph['edges'], columnOf: readonly number[]): number {
  return columnOf.reduce((sum, c, r) => sum + (rows[r]?.find((e) => e.column === c)?.weight ?? 0), 0)
}

const start = calendarDate('2026-11-01')
const amounts = fc.constantFrom('5.00', '10.00', '15.00', '20.00', '25.00', '30.00')
const shops = fc.constantFrom('corvid-books.example', 'corvid-garden.example')
const texts = fc.constantFrom('CORVID BOOKS', 'CORVID GRDN 12', 'CORVID')
const someOrders = fc.array(fc.record({ amount: amounts, shop: shops, day: fc.nat(20) }), {
  minLength: 1,
  maxLength: 5,
})
const someLines = fc.array(fc.record({ amount: amounts, name: texts, day: fc.nat(25) }), { minLength: 1, maxLength: 6 })

describe('the choice of pairs and sums', () => {
  it('is the best of all ways, where sums and pairs compete', () => {
    let withGroups = 0
    fc.assert(
      fc.property(someOrders, someLines, (orders, lines) => {
        const graph = buildGraph(
          lines.map((l, n) => line(`L${n}`, addDays(start, l.day), `-${l.amount}`, l.name)),
          orders.map((o, n) => held(n + 1, addDays(start, o.day), o.amount, o.shop)),
          {},
        )
        const groups = findGroups(graph, bestAssignment(graph.edges, graph.targets.length))
        if (groups.length > 9) return
        if (groups.length > 0) withGroups++
        const choice = chooseBest(graph)
        const worth = choice.groups.reduce((sum, g) => sum + g.weight, 0) + pairsWorth(graph.edges, choice.targetOf)
        expect(worth).toBe(bestByTrying(graph, groups))
        // Nothing is used twice.
        const used = [
          ...choice.targetOf.flatMap((t, l) => (t >= 0 ? [`l${l}`, `t${t}`] : [])),
          ...choice.groups.flatMap((g) => [...g.lines.map((l) => `l${l}`), ...g.targets.map((t) => `t${t}`)]),
        ]
        expect(new Set(used).size).toBe(used.length)
      }),
      { seed: 11, numRuns: 400 },
    )
    expect(withGroups).toBeGreaterThan(100)
  })
})
