import { describe, expect, it } from 'vitest'
import { chargeOrder, holdOrder, orderState, potBalance, potId, toDecimal } from '../../src/index.ts'
import { bookWith, cad, grow, household, one, order, pot, stamp } from '../book/sample.ts'

/*
 * Encumbrance accounting: available = appropriation - outstanding encumbrances - expenditures (University of New Mexico,
 * SARM 1-C; University of Oregon, FASOM 13.04; Toronto Metropolitan University, "FA = B - A - E"). A pot's fill is the
 * appropriation, a tagged order the encumbrance, a charge the expenditure, and `left` the available balance.
 */
const h = household([pot('dept')])
const dept = potId('dept')
const filled = (card: string) => bookWith(h, [['dept', '0.00', card]])
const left = (book: ReturnType<typeof filled>) => toDecimal(potBalance(book, dept).left)
const held = (book: ReturnType<typeof filled>) => toDecimal(potBalance(book, dept).held)

describe('held and left are an encumbrance and an available balance', () => {
  it('police department ledger, a textbook problem (third-party text): 8,661,000 - 52,000 - 818,000 = 7,791,000', () => {
    const book = grow(
      filled('8661000.00'),
      (b) => holdOrder(b, stamp(2), order(1), one('dept', '818000.00')),
      (b) => chargeOrder(b, stamp(3), order(1), cad('818000.00')),
      (b) => holdOrder(b, stamp(4), order(2), one('dept', '52000.00')),
    )
    expect([held(book), left(book)]).toEqual(['52000.00', '7791000.00'])
  })

  it('budget 80,000, spent 50,000, purchase order 25,000: 5,000 available (third-party text)', () => {
    const book = grow(
      filled('80000.00'),
      (b) => holdOrder(b, stamp(2), order(1), one('dept', '50000.00')),
      (b) => chargeOrder(b, stamp(3), order(1), cad('50000.00')),
      (b) => holdOrder(b, stamp(4), order(2), one('dept', '25000.00')),
    )
    expect(left(book)).toBe('5000.00')
  })

  it('City of Marion P3-5: purchase orders of 50,000, 200,000, 75,000, 65,000 and 4,000 encumber 394,000', () => {
    const orders = ['50000.00', '200000.00', '75000.00', '65000.00', '4000.00']
    const steps = orders.map(
      (amount, n) => (b: ReturnType<typeof filled>) => holdOrder(b, stamp(n + 2), order(n), one('dept', amount)),
    )
    const book = grow(filled('1000000.00'), ...steps)
    expect([held(book), left(book)]).toEqual(['394000.00', '606000.00'])
  })

  it('Christensen, Cottrell, Baker, Advanced Financial Accounting 12e, E17-5: encumbered 21,000, received at 21,800', () => {
    const before = grow(filled('100000.00'), (b) => holdOrder(b, stamp(2), order(1), one('dept', '21000.00')))
    const after = grow(before, (b) => chargeOrder(b, stamp(3), order(1), cad('21800.00')))
    expect([held(before), left(before)]).toEqual(['21000.00', '79000.00'])
    // The encumbrance goes by 21,000, the expenditure comes with 21,800: what is available falls by 800.
    expect([held(after), left(after)]).toEqual(['0.00', '78200.00'])
  })

  it('by hand, no source: 500.00 with an order of 120.00, charged 112.50, or delivered in part for 70.00', () => {
    const tagged = grow(filled('500.00'), (b) => holdOrder(b, stamp(2), order(1), one('dept', '120.00')))
    expect(left(tagged)).toBe('380.00')
    const part = grow(tagged, (b) => chargeOrder(b, stamp(3), order(1), cad('70.00')))
    expect([held(part), left(part), orderState(part, order(1)).parts[0]?.charged]).toEqual(['50.00', '380.00', 7000])
  })
})
