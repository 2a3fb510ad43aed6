import { describe, expect, it } from 'vitest'
import {
  answerCharge,
  type Book,
  chargeOrder,
  convert,
  holdOrder,
  money,
  orderState,
  potBalance,
  potId,
  releaseOrder,
  toDecimal,
} from '../../src/index.ts'
import { bookWith, cad, grow, household, one, order, pot, stamp } from '../book/sample.ts'

/*
 * A purchase order carried through partial liquidation, by the identity available = appropriation - encumbrances -
 * expenditures (University of New Mexico, SARM 1-C; University of Oregon, FASOM 13.04). The steps are California's SAM 8360
 * and Utah's UAM II.F.05: the encumbrance is taken down by what was encumbered, the expenditure recorded at what it
 * really was, and the difference moves what is available. The figures of the first example are our own; no published one
 * with figures for every step was at hand. The second is Christensen, Cottrell and Baker, 12e, E17-5.
 */
const h = household([pot('dept')])
const dept = potId('dept')
const filled = (amount: string) => bookWith(h, [['dept', '0.00', amount]])
const row = (book: Book, budget: string) => {
  const { left, held } = potBalance(book, dept)
  const spent = orderState(book, order(1)).parts[0]?.charged ?? 0
  expect(left.minor).toBe(cad(budget).minor - held.minor - spent)
  return [toDecimal(held), (spent / 100).toFixed(2), toDecimal(left)]
}

describe('partial liquidation of an encumbrance', () => {
  it('500.00 with an order of 120.00: 70.00 delivered, then 42.50 for the rest, and the order is complete', () => {
    const tagged = grow(filled('500.00'), (b) => holdOrder(b, stamp(2), order(1), one('dept', '120.00')))
    expect(row(tagged, '500.00')).toEqual(['120.00', '0.00', '380.00'])
    const part = grow(tagged, (b) => chargeOrder(b, stamp(3), order(1), cad('70.00')))
    expect(row(part, '500.00')).toEqual(['50.00', '70.00', '380.00'])
    const rest = grow(part, (b) => chargeOrder(b, stamp(4), order(1), cad('42.50')))
    expect(row(rest, '500.00')).toEqual(['7.50', '112.50', '380.00'])
    const done = grow(rest, (b) => releaseOrder(b, stamp(5), order(1), 'complete'))
    expect(row(done, '500.00')).toEqual(['0.00', '112.50', '387.50'])
  })

  it('E17-5: encumbered 21,000, invoiced 21,800: asks, for it is 800 above, and available falls by 800', () => {
    const tagged = grow(filled('100000.00'), (b) => holdOrder(b, stamp(2), order(1), one('dept', '21000.00')))
    const asked = answerCharge(tagged, stamp(3), order(1), cad('21800.00'))
    expect(asked).toMatchObject({ kind: 'above-hold', held: cad('21000.00'), above: cad('800.00') })
    const paid = grow(tagged, (b) => chargeOrder(b, stamp(3), order(1), cad('21800.00')))
    expect(row(tagged, '100000.00')).toEqual(['21000.00', '0.00', '79000.00'])
    expect(row(paid, '100000.00')).toEqual(['0.00', '21800.00', '78200.00'])
  })
})

// Source: Council Regulation (EC) No 1103/97 (half up) with the Estonian rate 15.6466, examples of euro.eesti.ee.
describe('an amount in another currency is rounded once, half up', () => {
  it.each([
    ['50.00', '3.20'],
    ['179.50', '11.47'],
    ['1110.90', '71.00'],
    ['264.50', '16.90'],
  ])('%s kroons are %s euro', (kroons, euro) => {
    // The kroon is no currency any more; a krone has as many minor units.
    const m = money('DKK', kroons)
    expect(convert(m, 'EUR', { home: '1', per: '15.6466' }, '0').total).toEqual(money('EUR', euro))
  })

  it('currencies with other minor units: 1,234 yen at 0.0091 are 11.23, 1.234 dinars at 4.40 are 5.43', () => {
    // By hand, no source: 11.2294 and 5.4296.
    expect(convert(money('JPY', '1234'), 'CAD', { home: '0.0091', per: '1' }, '0').total).toEqual(cad('11.23'))
    expect(convert(money('KWD', '1.234'), 'CAD', { home: '4.40', per: '1' }, '0').total).toEqual(cad('5.43'))
    expect(convert(cad('11.23'), 'JPY', { home: '110', per: '1' }, '2').total).toEqual(money('JPY', '1260'))
  })
})
