import { describe, expect, it } from 'vitest'
import { learnBudget, potId, sayLearnt } from '../../src/index.ts'
import { cad, household, pot } from '../book/sample.ts'
import { bookOf, day, type Happened } from './sample.ts'

const h = household([pot('bread')])
/** One spend in the middle of each month from January 2025, from a book that begins on 1 January. */
const spends = (amounts: readonly string[]): Happened[] => [
  ['2025-01-01', 'fill', 'bread', '0', '5000.00'],
  ...amounts.map((amount, n): Happened => [`2025-${String(n + 1).padStart(2, '0')}-15`, 'card', 'bread', amount]),
]

describe('learnBudget', () => {
  // The twelve amounts of tests/published/plan-quantiles: R and numpy give these quartiles for type 7.
  const year = ['120', '155', '99', '200', '132.50', '120', '410', '118', '126', '130', '127.50', '122']

  it('median and middle half of the months, outliers named, and what would have been enough', () => {
    const learnt = learnBudget(bookOf(h, spends(year)), potId('bread'), day('2026-01-10'))
    expect(learnt).toMatchObject({ isEnough: true, median: cad('126.75'), lower: cad('120.00'), upper: cad('138.13') })
    // Fences: 120.00 - 27.19 and 138.13 + 27.19.
    expect(learnt.outliers.map((m) => [m.month, m.spent])).toEqual([
      ['2025-04', cad('200.00')],
      ['2025-07', cad('410.00')],
    ])
    // Upper quartile of the ten others: 99 118 120 120 122 126 127.50 130 132.50 155.
    expect(learnt.suggested).toEqual(cad('129.38'))
    expect(learnBudget(bookOf(h, spends(year)), potId('bread'), day('2026-01-10'), 500).suggested).toEqual(
      cad('130.00'),
    )
    expect(sayLearnt(learnt, day('2026-01-10'))).toBe(
      'A month took 126.75 (median of 12 months), half of them between 120.00 and 138.13. ' +
        '129.38 would have been enough in three months of four. Not counted, for they lie far outside: 200.00 and 410.00.',
    )
  })

  it('fewer than three whole months are said, and nothing is suggested', () => {
    const learnt = learnBudget(bookOf(h, spends(['10', '30'])), potId('bread'), day('2025-03-10'))
    expect(learnt).toMatchObject({ isEnough: false, suggested: null, median: cad('20.00'), outliers: [] })
    expect(sayLearnt(learnt, day('2025-03-10'))).toBe(
      '2 whole months are known. Three are needed to say what a month takes.',
    )
    const none = learnBudget(bookOf(h, []), potId('bread'), day('2025-03-10'))
    expect([none.months, none.median, none.isEnough]).toEqual([[], null, false])
  })

  it('the running month and the one in which the book began are not whole', () => {
    const late: Happened[] = [
      ['2025-01-20', 'fill', 'bread', '0', '9.00'],
      ['2025-03-05', 'card', 'bread', '5.00'],
    ]
    const learnt = learnBudget(bookOf(h, late), potId('bread'), day('2025-04-30'))
    expect(learnt.months).toEqual([
      { month: '2025-02', spent: cad('0') },
      { month: '2025-03', spent: cad('5.00') },
    ])
  })
})
