import Decimal from 'decimal.js'
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

  it.each([
    ['12.50+3', 1550],
    ['3*4.20', 1260],
    ['(20-4)/2', 800],
    ['12,50 + 3,25', 1575],
    ['2×(4.20+1.10)', 1060],
    ['20÷3', 667],
    ['10/8', 125],
    ['0.01/2', 1],
    ['1.5*1.5', 225],
    ['-5+8', 300],
    ['3(2)', 'not_a_number'],
    ['2*-3', 'not_a_number'],
    ['((4)', 'unfinished'],
    ['4)', 'not_a_number'],
    ['12+', 'unfinished'],
    ['7/', 'unfinished'],
    ['5/(2-2)', 'by_zero'],
    ['12.345+1', 'decimals'],
    ['90071992547409.92*1', 'too_large'],
    ['12 50', 'not_a_number'],
    ['12.50 CAD', 1250],
    ['１２．５０＋３', 1550],
    ['٤٫٥٠ + ١', 550],
  ])('the sum %s', (text, meant) => {
    expect(minor(text)).toBe(meant)
  })

  // Source: decimal.js, a public library for decimal arithmetic, with more digits than any of these sums can need.
  it('works sums out as a reference does, and rounds once, at the end', () => {
    const Reference = Decimal.clone({ precision: 400, rounding: Decimal.ROUND_HALF_UP })
    const number = fc.integer({ min: 0, max: 99_999 }).map((n) => ({
      text: (n / 100).toFixed(2),
      value: new Reference(n).div(100),
    }))
    type Sum = { text: string; value: Decimal }
    const { sum } = fc.letrec<{ sum: Sum }>((tie) => ({
      sum: fc.oneof(
        { depthSize: 'small', withCrossShrink: true },
        number,
        fc.tuple(tie('sum'), fc.constantFrom('+', '-', '*', '/'), tie('sum')).map(([a, sign, b]): Sum => {
          const text = `(${a.text})${sign}(${b.text})`
          if (sign === '+') return { text, value: a.value.plus(b.value) }
          if (sign === '-') return { text, value: a.value.minus(b.value) }
          if (sign === '*') return { text, value: a.value.times(b.value) }
          // Not the reference's infinity, of which it would go on to reckon.
          return { text, value: b.value.isZero() ? new Reference(Number.NaN) : a.value.div(b.value) }
        }),
      ),
    }))
    let compared = 0
    fc.assert(
      fc.property(sum, ({ text, value }) => {
        const read = minor(text)
        const cents = value.times(100).toDecimalPlaces(0)
        if (value.isNaN()) expect([text, read]).toEqual([text, 'by_zero'])
        else if (cents.lessThan(0)) expect([text, read]).toEqual([text, 'negative'])
        else if (cents.greaterThan(Number.MAX_SAFE_INTEGER)) expect([text, read]).toEqual([text, 'too_large'])
        else expect([text, read]).toEqual([text, Math.abs(cents.toNumber())])
        if (typeof read === 'number') compared += 1
      }),
      { numRuns: 400, seed: 1962 },
    )
    expect(compared).toBeGreaterThan(200)
  })

  // Source: the digits of every numbering system of CLDR, through the runtime's Intl.
  it('takes the digits of every script', () => {
    const systems = Intl.supportedValuesOf('numberingSystem')
    const read = systems.flatMap((nu) => {
      const digits = new Intl.NumberFormat('en', { numberingSystem: nu, useGrouping: false })
      const text = digits.format(9876543210)
      // Systems that are no decimal digits (Chinese numerals) are not what people type into a field of figures.
      return /^\p{Nd}{10}$/u.test(text) ? [[nu, minor(text)]] : []
    })
    expect(read.length).toBeGreaterThan(60)
    expect(read.filter(([, found]) => found !== 987654321000)).toEqual([])
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
