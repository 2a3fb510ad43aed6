import { expect, it } from 'vitest'
import { matchStatement } from '../../src/monthend/match-statement.ts'
import { yearOfLines } from './match-year.ts'

// The aim is 300 ms on a machine of one's own; this bound catches a way of matching whose time grows faster than the
// statement, not a shared machine's slow afternoon. The figure is printed.
const BOUND_MS = 3_000

it('matches a year of 2,400 lines with 1,000 orders', () => {
  const { lines, orders, entries, truth } = yearOfLines()
  expect([lines.length, orders.length]).toEqual([2400, 1000])
  const times: number[] = []
  let matching = matchStatement(lines, orders, { entries })
  for (let n = 0; n < 5; n++) {
    const start = performance.now()
    matching = matchStatement(lines, orders, { entries })
    times.push(performance.now() - start)
  }
  const median = times.sort((a, b) => a - b)[2] ?? Number.NaN
  console.log(`match 2400 x 1000: ${median.toFixed(0)} ms (median of 5; ${times.map((t) => t.toFixed(0)).join(', ')})`)
  expect(median).toBeLessThan(BOUND_MS)

  // What is posted without asking must be right; what is asked may be wrong.
  const sure = matching.matches.filter((m) => m.kind === 'charge' && m.isSure).flatMap((m) => m.parts)
  const wrong = sure.filter((p) => !truth.has(`${p.line} ${p.order}`))
  console.log(`sure charges: ${sure.length} of ${truth.size} true ones, ${wrong.length} of them not the true line`)
  expect(sure.length).toBeGreaterThan(truth.size * 0.7)
  expect(wrong.length).toBeLessThan(sure.length * 0.01)
}, 30_000)

it('says the same each time', () => {
  const { lines, orders, entries } = yearOfLines(150, 400)
  expect(matchStatement(lines, orders, { entries })).toEqual(matchStatement(lines, orders, { entries }))
})

it('puts every line in exactly one place', () => {
  const { lines, orders, entries } = yearOfLines(300, 800)
  const found = matchStatement(lines, orders, { entries })
  const places = [
    ...found.matches.flatMap((m) => m.lines),
    ...found.untagged.map((u) => u.line),
    ...found.pending,
    ...found.posted,
  ]
  expect(places.sort()).toEqual(lines.map((l) => l.id).sort())
  const parts = found.matches.flatMap((m) => m.parts)
  for (const line of lines) {
    const sum = parts.filter((p) => p.line === line.id).reduce((all, p) => all + p.amount.minor, 0)
    if (sum > 0) expect(sum).toBe(Math.abs(line.amount.minor))
  }
})
