import fc from 'fast-check'
import { describe, expect, it, vi } from 'vitest'
import { formatAmount, ofMinor } from '../../src/index.ts'
import { readAmount } from '../../src/ui/amount-text.ts'
import { editText } from '../../src/ui/money-text.ts'
import intl from '../published/intl-currency-strings.json' with { type: 'json' }

vi.mock('webextension-polyfill', () => import('./fake-browser.ts'))

const minor = (text: string, language = 'en-CA', currency: 'CAD' | 'KWD' = 'CAD') => {
  const read = readAmount(text, currency, language)
  return read.ok ? read.money.minor : read.problem
}

describe('an amount as people type it', () => {
  it.each([
    ['12.50', 1250],
    ['12,50', 1250],
    ['.5', 50],
    ['12.', 1200],
    ['1,234.50', 123450],
    ['1.234,50', 123450],
    ['1 234,50', 123450],
    ['1’234.50', 123450],
    ['12,34,567.00', 123456700],
    ['1,234', 123400],
    ['12.50+3-0.25', 1525],
    ['3*2*1.10', 660],
    ['٤٫٥٠', 450],
    ['', 'empty'],
    ['12.345', 'decimals'],
    ['1,2,3', 'not_a_number'],
    ['1,234.567.890', 'not_a_number'],
    ['5--3', 'not_a_number'],
    ['12+', 'not_a_number'],
    ['1.5*1.5', 'not_a_number'],
    ['1e3', 'not_a_number'],
    ['3-5', 'negative'],
    ['99999999999999999', 'too_large'],
  ])('%s', (text, meant) => {
    expect(minor(text)).toBe(meant)
  })

  it('tells a group from decimals by the language where the digits do not', () => {
    expect(minor('1.234', 'de-DE')).toBe(123400)
    expect(minor('1.234', 'en-CA')).toBe('decimals')
    expect(minor('1.234', 'en-CA', 'KWD')).toBe(1234)
    expect(minor('1.234', 'de-DE', 'KWD')).toBe(1234000)
  })

  // Source: the marks of CLDR, through the runtime's Intl, for the languages of intl-currency-strings.json.
  it('reads back what each language writes', () => {
    const languages = intl.rows.filter((row) => row.nu === 'latn').map((row) => row.locale)
    expect(languages.length).toBeGreaterThan(50)
    const amount = fc.integer({ min: 0, max: Number.MAX_SAFE_INTEGER })
    fc.assert(
      fc.property(fc.constantFrom(...languages), amount, (language, value) => {
        expect([language, minor(formatAmount(ofMinor('CAD', value), language), language)]).toEqual([language, value])
      }),
      { numRuns: 500 },
    )
  })

  it('reads back what a field was given to edit', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: Number.MAX_SAFE_INTEGER }), (value) => {
        expect(minor(editText(ofMinor('CAD', value)))).toBe(value)
      }),
    )
  })
})
