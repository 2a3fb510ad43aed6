import fc from 'fast-check'
import munkres from 'munkres'
import { describe, expect, it } from 'vitest'
import { bestAssignment, type Edge } from '../../src/monthend/match-assignment.ts'

const worth = (rows: readonly (readonly Edge[])[], columnOf: readonly number[]): number =>
  columnOf.reduce((sum, column, r) => sum + (rows[r]?.find((e) => e.column === column)?.weight ?? 0), 0)

/** Every way, each row alone or in a free column. */
function bestByTrying(rows: readonly (readonly Edge[])[], row = 0, used = 0): number {
  if (row === rows.length) return 0
  let best = bestByTrying(rows, row + 1, used)
  for (const { column, weight } of rows[row] ?? []) {
    if (!((used >> column) & 1)) best = Math.max(best, weight + bestByTrying(rows, row + 1, used | (1 << column)))
  }
  return best
}

const sparse = (most: number) =>
  fc.array(
    fc.uniqueArray(fc.record({ column: fc.nat(6), weight: fc.integer({ min: -3, max: most }) }), {
      selector: (e) => e.column,
      maxLength: 7,
    }),
    {
      maxLength: 7,
    },
  )

const isOneToOne = (columnOf: readonly number[]): boolean => {
  const used = columnOf.filter((c) => c >= 0)
  return new Set(used).size === used.length
}

describe('the best assignment', () => {
  it('is the best of all ways, in thousands of small cases', () => {
    for (const most of [4, 40, 1000]) {
      fc.assert(
        fc.property(sparse(most), (rows) => {
          const columnOf = bestAssignment(rows, 7)
          expect(isOneToOne(columnOf)).toBe(true)
          expect(worth(rows, columnOf)).toBe(bestByTrying(rows))
        }),
        { seed: 17, numRuns: 1000 },
      )
    }
  })

  it('agrees with the munkres package (MIT) on larger ones', () => {
    const random = fc.sample(
      fc.array(fc.array(fc.nat(999), { minLength: 24, maxLength: 24 }), { minLength: 24, maxLength: 24 }),
      { seed: 5, numRuns: 25 },
    )
    for (const matrix of random) {
      // A pair of weight 0 is never made here, and changes nothing there.
      const rows = matrix.map((r) => r.map((weight, column) => ({ column, weight })))
      const theirs = munkres(matrix.map((r) => r.map((weight) => 1000 - weight)))
      const total = theirs.reduce((sum, [r, c]) => sum + (matrix[r]?.[c] ?? 0), 0)
      expect(worth(rows, bestAssignment(rows, 24))).toBe(total)
    }
  })

  it('is not taken greedily: the best pair is given up where two others are worth more', () => {
    const rows = [
      [
        { column: 0, weight: 10 },
        { column: 1, weight: 9 },
      ],
      [{ column: 0, weight: 9 }],
    ]
    expect(bestAssignment(rows, 2)).toEqual([1, 0])
  })

  it('leaves a row alone where another needs its only column more', () => {
    expect(bestAssignment([[{ column: 0, weight: 5 }], [{ column: 0, weight: 8 }], []], 1)).toEqual([-1, 0, -1])
    expect(bestAssignment([[{ column: 0, weight: 0 }]], 1)).toEqual([-1])
  })
})
