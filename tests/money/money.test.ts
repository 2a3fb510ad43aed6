import fc from 'fast-check'
import { describe, expect, expectTypeOf, it } from 'vitest'
import { currencyCodes } from '../../src/money/currency.ts'
import { add, type Money, money, negate, ofMinor, subtract, toDecimal } from '../../src/money/money.ts'
import { codeOf } from './code-of.ts'

const anyCurrency = fc.constantFrom(...currencyCodes)
const anyMinor = fc.maxSafeInteger()

describe('money', () => {
  it.each([
    ['CAD', '12.30', 1230],
    ['CAD', '12', 1200],
    ['CAD', '+0.05', 5],
    ['CAD', '-12.3', -1230],
    ['CAD', ' 7.00 ', 700],
    ['CAD', '007.00', 700],
    ['JPY', '1200', 1200],
    ['KWD', '1.234', 1234],
    ['CLF', '0.0001', 1],
    ['HUF', '1.00', 100],
    ['CAD', '90071992547409.91', Number.MAX_SAFE_INTEGER],
  ] as const)('%s %s is %d minor units', (currency, text, minor) => {
    expect(money(currency, text)).toEqual({ currency, minor })
  })

  it.each([
    ['CAD', '1.234', 'too-many-decimals'],
    ['CAD', '1.230', 'too-many-decimals'],
    ['JPY', '1.0', 'too-many-decimals'],
    ['CAD', '', 'not-a-decimal'],
    ['CAD', '1,234.00', 'not-a-decimal'],
    ['CAD', '.5', 'not-a-decimal'],
    ['CAD', '5.', 'not-a-decimal'],
    ['CAD', '1e3', 'not-a-decimal'],
    ['CAD', '$5.00', 'not-a-decimal'],
    ['CAD', '--5', 'not-a-decimal'],
    ['CAD', 'NaN', 'not-a-decimal'],
    ['CAD', '90071992547409.92', 'too-large'],
    ['CAD', '-90071992547409.92', 'too-large'],
    ['CAD', '9'.repeat(500), 'too-large'],
  ] as const)('refuses %s %s as %s', (currency, text, code) => {
    expect(codeOf(() => money(currency, text))).toBe(code)
  })

  it('says in a sentence what was wrong and what to do', () => {
    expect(() => money('CAD', '1.234')).toThrow('"1.234" has 3 decimals, but CAD has 2. Round it before entering it.')
  })

  it('refuses a number, which a caller without types could pass', () => {
    const amount: string = JSON.parse('12.3')
    expect(codeOf(() => money('CAD', amount))).toBe('not-a-decimal')
  })

  it('has no negative zero', () => {
    expect(Object.is(money('CAD', '-0.00').minor, 0)).toBe(true)
    expect(Object.is(negate(money('CAD', '0.00')).minor, 0)).toBe(true)
    expect(Object.is(ofMinor('CAD', -0).minor, 0)).toBe(true)
  })
})

describe('ofMinor', () => {
  it.each([0.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 53])('refuses %d minor units', (minor) => {
    expect(codeOf(() => ofMinor('CAD', minor))).toBe('too-large')
  })
})

describe('toDecimal', () => {
  it.each([
    ['CAD', 5, '0.05'],
    ['CAD', -5, '-0.05'],
    ['CAD', 0, '0.00'],
    ['JPY', -7, '-7'],
    ['KWD', 12, '0.012'],
    ['CLF', 12_345, '1.2345'],
    ['CAD', Number.MAX_SAFE_INTEGER, '90071992547409.91'],
  ] as const)('%s %d is %s', (currency, minor, text) => {
    expect(toDecimal(ofMinor(currency, minor))).toBe(text)
  })

  it('is read back by money as the same amount, for every currency and amount', () => {
    fc.assert(
      fc.property(anyCurrency, anyMinor, (currency, minor) => {
        const m = ofMinor(currency, minor)
        expect(money(currency, toDecimal(m))).toEqual(m)
      }),
    )
  })
})

describe('add, subtract and negate', () => {
  it('adds where floats would not', () => {
    expect(toDecimal(add(money('CAD', '0.10'), money('CAD', '0.20')))).toBe('0.30')
  })

  it('undo one another', () => {
    const minor = fc.integer({ min: -1e15, max: 1e15 })
    fc.assert(
      fc.property(minor, minor, (x, y) => {
        const a = ofMinor('CAD', x)
        const b = ofMinor('CAD', y)
        expect(subtract(add(a, b), b)).toEqual(a)
        expect(add(a, negate(b))).toEqual(subtract(a, b))
        expect(add(a, b)).toEqual(add(b, a))
      }),
    )
  })

  it('refuse a sum beyond what is held exactly', () => {
    const most = ofMinor('CAD', Number.MAX_SAFE_INTEGER)
    expect(codeOf(() => add(most, ofMinor('CAD', 1)))).toBe('too-large')
    expect(codeOf(() => subtract(negate(most), ofMinor('CAD', 1)))).toBe('too-large')
  })

  it('refuse two currencies that are only known when the program runs', () => {
    const amounts: Money[] = [money('CAD', '1.00'), money('EUR', '1.00')]
    const [cad, eur] = amounts
    if (!cad || !eur) throw new Error('Two amounts were made.')
    expect(codeOf(() => add(cad, eur))).toBe('currency-mismatch')
    expect(codeOf(() => subtract(cad, eur))).toBe('currency-mismatch')
  })

  it('do not compile for two known currencies', () => {
    // @ts-expect-error CAD and EUR do not add
    expect(codeOf(() => add(money('CAD', '1.00'), money('EUR', '1.00')))).toBe('currency-mismatch')
    // @ts-expect-error nor subtract
    expect(codeOf(() => subtract(money('CAD', '1.00'), money('EUR', '1.00')))).toBe('currency-mismatch')
    // @ts-expect-error and a code that is none is no currency
    expect(codeOf(() => money('CAN', '1.00'))).toBe('unknown-currency')
  })

  it('keep the currency in the type', () => {
    expectTypeOf(add(money('CAD', '1.00'), money('CAD', '2.00'))).toEqualTypeOf<Money<'CAD'>>()
    expectTypeOf<Money<'CAD'>>().not.toExtend<Money<'EUR'>>()
    expectTypeOf<Money<'CAD'>>().toExtend<Money>()
  })
})
