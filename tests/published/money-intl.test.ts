import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import { currencyCode, minorDigits } from '../../src/money/currency.ts'
import { formatAmount, formatMoney } from '../../src/money/format.ts'
import { type Money, ofMinor, toDecimal } from '../../src/money/money.ts'

// Source of the pairs: CLDR 48 through Intl (intl-currency-strings.json, 85 pairs of locale and currency). Only the pairs
// are taken from the file. Its strings are not compared letter for letter, because separators and spaces change between
// CLDR releases; what Intl writes on the machine that runs the test is.
const { rows } = z
  .object({ rows: z.array(z.object({ locale: z.string(), currency: z.string(), digits: z.number(), nu: z.string() })) })
  .parse(JSON.parse(readFileSync(new URL('./intl-currency-strings.json', import.meta.url), 'utf8')))

const pairs = rows.map(({ locale, currency, digits, nu }) => ({
  locale,
  currency: currencyCode(currency),
  cldrDigits: digits,
  nu,
}))

/** Amounts as minor units: nothing, the smallest, odd ones of both signs, with groups, and more digits than a float. */
const AMOUNTS = [0, 1, -1, 9, 99, 12_345, -12_345, 123_450, 123_456_789, 9_007_199_254_740_991, -9_007_199_254_740_991]

/** The digits of a text in any script, as ASCII: what is left when every mark and sign is taken away. */
function digitsOf(text: string, locale: string): string {
  const own = [...new Intl.NumberFormat(locale, { useGrouping: false }).format(9_876_543_210)].reverse()
  return [...text]
    .map((character) => own.indexOf(character))
    .filter((digit) => digit >= 0)
    .join('')
}

function paddedMinor(m: Money): string {
  return String(Math.abs(m.minor)).padStart(minorDigits(m.currency) + 1, '0')
}

describe('CLDR through Intl', () => {
  it('has 85 pairs, ten scripts of digits, and some currencies with other digits than ISO 4217', () => {
    expect(pairs.length).toBe(85)
    expect(new Set(pairs.map(({ nu }) => nu)).size).toBeGreaterThanOrEqual(10)
    const differing = pairs.filter(({ currency, cldrDigits }) => cldrDigits !== minorDigits(currency))
    expect(differing.map(({ currency }) => currency).sort()).toEqual(['AFN', 'COP', 'HUF', 'IDR', 'IRR', 'MMK', 'PKR'])
  })

  it.each(pairs)('$locale $currency is what Intl writes when told the digits of ISO 4217', ({ locale, currency }) => {
    const digits = minorDigits(currency)
    const intl = new Intl.NumberFormat(locale, {
      style: 'currency',
      currency,
      minimumFractionDigits: digits,
      maximumFractionDigits: digits,
    })
    const decimals = digits === 0 ? '' : `.${'5'.padEnd(digits, '0')}`
    // Plain numbers here: short enough that a float holds them, and not the way formatMoney goes.
    expect(formatMoney(ofMinor(currency, 0), locale)).toBe(intl.format(0))
    for (const units of [7, 1234, 1_234_567]) {
      const value = Number(`${units}${decimals}`)
      const m = ofMinor(currency, Math.round(value * 10 ** digits))
      expect(formatMoney(m, locale)).toBe(intl.format(value))
      expect(formatMoney(ofMinor(currency, -m.minor), locale)).toBe(intl.format(-value))
    }
  })

  it.each(pairs)('$locale $currency keeps every digit, with the sign and without', ({ locale, currency }) => {
    for (const minor of AMOUNTS) {
      const m = ofMinor(currency, minor)
      expect(digitsOf(formatMoney(m, locale), locale)).toBe(paddedMinor(m))
      expect(digitsOf(formatAmount(m, locale), locale)).toBe(paddedMinor(m))
    }
  })

  it.each(pairs)('$locale $currency shows a minus only below zero', ({ locale, currency }) => {
    const minus = /[-\u2212]/
    for (const minor of AMOUNTS) {
      const m = ofMinor(currency, minor)
      expect([toDecimal(m), minus.test(formatMoney(m, locale))]).toEqual([toDecimal(m), minor < 0])
      expect([toDecimal(m), minus.test(formatAmount(m, locale))]).toEqual([toDecimal(m), minor < 0])
    }
  })

  it.each(pairs)(
    '$locale $currency without its sign has no letter, no currency sign and no space at an end',
    (pair) => {
      for (const minor of AMOUNTS) {
        const text = formatAmount(ofMinor(pair.currency, minor), pair.locale)
        expect(text).not.toMatch(/[\p{L}\p{Sc}]|^\s|\s$/u)
      }
    },
  )
})

describe('float traps', () => {
  // Source: ECMA-402 number format v3, seen run on Node 20: the number 90071992547409.93 prints as .94, the text as .93.
  it('shows that a float would lose a cent where formatMoney does not', () => {
    const largest = ofMinor('USD', 9_007_199_254_740_991)
    const previous = ofMinor('USD', 9_007_199_254_740_990)
    const viaFloat = (m: Money) =>
      new Intl.NumberFormat('en-US', { style: 'currency', currency: 'USD' }).format(Number(toDecimal(m)))
    expect([formatMoney(previous, 'en-US'), formatMoney(largest, 'en-US')]).toEqual([
      '$90,071,992,547,409.90',
      '$90,071,992,547,409.91',
    ])
    expect([viaFloat(previous), viaFloat(largest)]).not.toEqual([
      formatMoney(previous, 'en-US'),
      formatMoney(largest, 'en-US'),
    ])
  })
})
