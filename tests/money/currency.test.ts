import { describe, expect, it } from 'vitest'
import { currencyCode, currencyCodes, isCurrencyCode, minorDigits } from '../../src/money/currency.ts'
import { codeOf } from './code-of.ts'

describe('currencyCode', () => {
  it('takes a code as it is', () => {
    expect(currencyCode('CAD')).toBe('CAD')
  })

  it.each(['', 'cad', 'CAN', 'XXX', 'XAU', 'CAD ', '$', 'constructor'])('refuses "%s"', (text) => {
    expect(isCurrencyCode(text)).toBe(false)
    expect(codeOf(() => currencyCode(text))).toBe('unknown-currency')
  })
})

describe('currencyCodes', () => {
  it('lists each code once, in alphabetical order', () => {
    expect(currencyCodes).toEqual([...new Set(currencyCodes)].sort())
    expect(currencyCodes.length).toBeGreaterThan(150)
  })

  it('has digits from 0 to 4 for each', () => {
    for (const code of currencyCodes) expect([0, 2, 3, 4]).toContain(minorDigits(code))
  })
})
