import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { closure, type Term } from '../../src/checkout/sums.ts'

const term = (value: number, role: Term['role']): Term => ({ value, role })

describe('whether a total is the sum of its parts', () => {
  it('adds items, shipping and tax, and takes off discounts and credit', () => {
    const terms = [
      term(50_00, 'base'),
      term(5_90, 'added'),
      term(7_27, 'tax'),
      term(-5_00, 'discount'),
      term(-20_00, 'credit'),
    ]
    expect(closure(38_17, terms)).toMatchObject({ terms: 5, left: [] })
  })

  it('lets a tax be contained in the items', () => {
    expect(closure(55_90, [term(50_00, 'base'), term(5_90, 'added'), term(8_93, 'tax')])).toMatchObject({
      terms: 2,
      left: [],
    })
  })

  it('says which part a smaller total leaves out', () => {
    const credit = term(-20_00, 'credit')
    expect(closure(55_90, [term(50_00, 'base'), term(5_90, 'added'), credit])).toMatchObject({
      terms: 2,
      left: [credit],
    })
  })

  it('adds up several sellers', () => {
    expect(closure(50_00, [term(20_00, 'base'), term(30_00, 'base')])).toMatchObject({ terms: 2 })
  })

  it('takes unknown amounts for the items only where all of them take part', () => {
    expect(closure(40_00, [term(31_05, 'maybe'), term(8_95, 'added')])).toMatchObject({ terms: 2 })
    expect(closure(31_05, [term(31_05, 'maybe'), term(12_00, 'maybe')])).toMatchObject({ terms: 0 })
  })

  it('finds no sum where there is none', () => {
    expect(closure(55_91, [term(50_00, 'base'), term(5_90, 'added')])).toBeNull()
    expect(closure(1, [])).toBeNull()
  })

  it('closes for every choice of parts, and never for one that is not a sum', () => {
    const parts = fc.array(
      fc.record({ value: fc.integer({ min: -9_999, max: 9_999 }), role: fc.constantFrom('tax', 'added', 'discount') }),
      { maxLength: 6 },
    )
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99_999 }), parts, (base, others) => {
        const total = others.reduce((sum, other) => sum + other.value, base)
        expect(closure(total, [term(base, 'base'), ...others])).not.toBeNull()
        const reach = others.reduce((sum, other) => sum + Math.abs(other.value), base)
        expect(closure(reach + 1, [term(base, 'base'), ...others])).toBeNull()
      }),
      { numRuns: 100 },
    )
  })
})
