import { describe, expect, it } from 'vitest'
import { potId } from '../../src/book/index.ts'
import { ofMinor } from '../../src/money/money.ts'
import { settle } from '../../src/monthend/index.ts'
import { fewestTransfers } from '../../src/monthend/settle-pairs.ts'

// Sources: T. Verhoeff, "Settling Multiple Debts Efficiently", Informatics in Education 3(1), 2004, 105-126 (at most N - 1
// transfers; the fewest are N less the largest number of groups that sum to zero), and its reduction from partition; the
// numbers recomputed by this project with an exact search over subsets (sources.md, section 11).
const CASES = [
  [[10, -5, -5], 2],
  [[4, 3, -5, -2], 3],
  [[6, 3, -4, -3, -2], 3],
  // The largest to the largest, always, takes 4.
  [[9, 6, -4, -5, -6], 3],
  // The smallest sets at which that fails: 4 instead of 3, 5 instead of 4.
  [[-4, -3, 2, 2, 3], 3],
  [[-5, -4, -1, 3, 3, 4], 4],
  [[100, -100, 50, -50, 30, -20, -10], 4],
  // n weights against two who are owed half the sum each: n where the weights can be halved, else n + 1.
  [[1, 2, 3, -3, -3], 3],
  [[1, 1, 4, -3, -3], 4],
  [[3, 1, 1, 2, 2, 1, -5, -5], 6],
] as const

describe('fewest transfers', () => {
  it.each(CASES)('%j: %d', (balances, fewest) => {
    const transfers = fewestTransfers(balances)
    expect(transfers.length).toBe(fewest)
    const left: number[] = [...balances]
    for (const { from, to, count } of transfers) {
      expect(count).toBeGreaterThan(0)
      left[from] = (left[from] ?? 0) - count
      left[to] = (left[to] ?? 0) + count
    }
    expect(left.every((balance) => balance === 0)).toBe(true)
  })
})

describe('settle with pieces of one value', () => {
  // With one denomination each balance is so many pieces too many or too few: as many pieces move as are too many, in as
  // few lines as the published minimum.
  it.each(CASES)('%j settles in %d lines', (balances, fewest) => {
    const pots = balances.map((_, index) => potId(`party${index}`))
    const found = settle(
      balances.map((balance, index) => ({
        pot: pots[index] ?? potId('none'),
        pieces: [{ denomination: 1, count: Math.max(0, balance) }],
      })),
      balances.map((balance, index) => ({
        pot: pots[index] ?? potId('none'),
        cash: ofMinor('EUR', Math.max(0, -balance)),
      })),
      { denominations: [1], bank: 'none' },
    )
    expect(found.moves.length).toBe(fewest)
    expect(found.moved).toBe(balances.reduce((sum: number, balance) => sum + Math.max(0, balance), 0))
    expect(found.proven).toBe(true)
  })
})
