import { describe, expect, it } from 'vitest'
import {
  add,
  append,
  balanceOf,
  breakdown,
  countedAmount,
  countPot,
  money,
  ofMinor,
  openBook,
  openPot,
  potBalance,
  potId,
  spendFrom,
  subtract,
} from '../../src/index.ts'
import { household, pot, stamp } from '../book/sample.ts'

/*
 * Worked examples of petty cash kept as an imprest fund: what is in the box plus the receipts, plus what is short or
 * less what is over, is the fund; and topping it up to the fund costs fund less count. Amounts in the books' dollars.
 *
 * Sources: Acton Co. (tutorsglobe question 51927884); Kimmel, Financial Accounting 8e, E7-16; Warren, Financial and
 * Managerial Accounting, PR7-2A and PR7-2B; Wild, Financial and Managerial Accounting, ch. 6 exercise 2; the examples
 * "Pearson channel" and "Hangin' Out" as listed with them. Where a source gives the replenishment instead of the count
 * (Kimmel, Warren), the count is fund less replenishment; Wild's difference and replenishment are computed.
 */
const EXAMPLES = [
  {
    of: 'Acton, 31 July',
    fund: '400',
    receipts: ['204.30', '65.74', '84.00', '14.54'],
    count: '31.42',
    over: '0.00',
    topUp: '368.58',
  },
  {
    of: 'Acton, 31 August',
    fund: '400',
    receipts: ['196.84', '76.30', '84', '7.86'],
    count: '55.00',
    over: '20.00',
    topUp: '345.00',
  },
  {
    of: 'Kimmel E7-16',
    fund: '200',
    receipts: ['74.40', '36.00', '33.70', '27.50'],
    count: '25.00',
    over: '-3.40',
    topUp: '175.00',
  },
  {
    of: 'Warren PR7-2B',
    fund: '1000',
    receipts: ['375', '215', '208', '134'],
    count: '46',
    over: '-22.00',
    topUp: '954',
  },
  {
    of: 'Warren PR7-2A',
    fund: '1100',
    receipts: ['580', '225', '140', '88'],
    count: '47',
    over: '-20.00',
    topUp: '1053',
  },
  { of: 'Pearson channel', fund: '100', receipts: ['42', '18', '24'], count: '17', over: '1.00', topUp: '83' },
  { of: "Hangin' Out", fund: '150', receipts: ['120', '30'], count: '14', over: '14.00', topUp: '136' },
  {
    of: 'Wild ch. 6 ex. 2',
    fund: '300',
    receipts: ['88', '53.68', '53.50', '47.15'],
    count: '62.15',
    over: '4.48',
    topUp: '237.85',
  },
] as const

const usd = (amount: string) => money('USD', amount)
const box = potId('box')
const h = household([pot('box')], { currency: 'USD' })

describe('cash over and short', () => {
  it.each(EXAMPLES)('agrees with the worked example of $of', ({ fund, receipts, count, over, topUp }) => {
    const opened = openBook(h, [openPot(h, stamp(1), box, { cash: usd(fund) })])
    const spent = receipts.reduce(
      (book, amount, n) => append(book, spendFrom(h, stamp(2 + n), box, 'cash', usd(amount), 'receipt')),
      opened,
    )
    const pieces = breakdown(usd(count)) ?? []
    const entry = countPot(spent, stamp(20), box, pieces, { post: true })
    expect(subtract(countedAmount(spent, entry), ofMinor('USD', entry.expected))).toEqual(usd(over))
    const posted = append(spent, entry)
    expect(balanceOf(posted, 'over-short')).toBe(usd(over).minor === 0 ? 0 : -usd(over).minor)
    expect(potBalance(posted, box).cash).toEqual(usd(count))
    expect(subtract(ofMinor('USD', usd(fund).minor), ofMinor('USD', potBalance(posted, box).cash.minor))).toEqual(
      usd(topUp),
    )
    // The invariant of the books: cash + receipts + short - over = fund.
    const paid = receipts.map((amount) => usd(amount)).reduce((a, b) => add(a, b))
    expect(subtract(add(usd(count), paid), usd(over))).toEqual(usd(fund))
  })

  it('agrees with the register readings: 9,506 against 9,440; 8,220 against 8,192; 96 against 95', () => {
    for (const [found, record, over] of [
      ['9506', '9440', '66'],
      ['8220', '8192', '28'],
      ['96', '95', '1'],
    ] as const) {
      const book = openBook(h, [openPot(h, stamp(1), box, { cash: usd(record) })])
      const entry = countPot(book, stamp(2), box, breakdown(usd(found)) ?? [])
      expect(countedAmount(book, entry).minor - entry.expected).toBe(usd(over).minor)
    }
  })
})
