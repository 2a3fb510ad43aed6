import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import * as z from 'zod'
import { bestAssignment } from '../../src/monthend/match-assignment.ts'
import { exactSubsets } from '../../src/monthend/match-subsets.ts'

/*
 * Worked examples of the assignment problem and of subset sums: textbook matrices and data sets whose optima were found
 * again by exhaustive search; each row of the file names where it comes from and which values are from memory.
 */
const file = z
  .object({
    assignment: z.array(
      z.object({
        id: z.string(),
        objective: z.enum(['min', 'max']),
        cost: z.array(z.array(z.int())),
        optimum: z.int(),
        number_of_optimal_assignments: z.int(),
        some_optimal_columns_by_row: z.array(z.array(z.nullable(z.int()))),
      }),
    ),
    subset_sum: z.array(
      z.object({
        id: z.string(),
        numbers: z.array(z.int()),
        target: z.int(),
        count_of_index_subsets: z.int(),
        some_index_subsets: z.array(z.array(z.int())),
      }),
    ),
  })
  .parse(JSON.parse(readFileSync(new URL('assignment-subsetsum.json', import.meta.url), 'utf8')))

describe('assignment examples', () => {
  it('are all there', () => expect([file.assignment.length, file.subset_sum.length]).toEqual([15, 14]))

  it.each(file.assignment)('$id: the optimum, with as many pairs as can be', ({ objective, cost, optimum, ...row }) => {
    const columns = cost[0]?.length ?? 0
    // Every pair is worth so much that leaving one out never pays; within that the sum of costs is the smallest.
    const high = 1 + cost.flat().reduce((sum, c) => sum + Math.abs(c), 0)
    const rows = cost.map((r) => r.map((c, column) => ({ column, weight: high + (objective === 'min' ? -c : c) })))
    const columnOf = bestAssignment(rows, columns)
    const used = columnOf.filter((c) => c >= 0)
    expect(used.length).toBe(Math.min(cost.length, columns))
    expect(new Set(used).size).toBe(used.length)
    const total = columnOf.reduce((sum, c, r) => sum + (c < 0 ? 0 : (cost[r]?.[c] ?? Number.NaN)), 0)
    expect(total).toBe(optimum)
    // A tall matrix leaves rows over, which the file does not list.
    if (row.number_of_optimal_assignments === 1 && cost.length <= columns) {
      const [only] = row.some_optimal_columns_by_row
      expect(columnOf.map((c) => (c < 0 ? null : c))).toEqual(only?.map((c) => (c === null || c < 0 ? null : c)))
    }
  })
})

describe('subset sum examples', () => {
  it.each(file.subset_sum)('$id: every subset, and no other', ({ numbers, target, ...row }) => {
    const found = exactSubsets(numbers, target, { most: 1000 })
    expect(found.length).toBe(row.count_of_index_subsets)
    for (const members of found) expect(members.reduce((sum, i) => sum + (numbers[i] ?? 0), 0)).toBe(target)
    for (const known of row.some_index_subsets) expect(found).toContainEqual(known)
  })
})
