import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatAmount, formatMoney } from '../../src/money/format.ts'
import { money, ofMinor } from '../../src/money/money.ts'
import { codeOf } from './code-of.ts'

// Only marks that have not changed between CLDR releases are written out here.
describe('formatMoney', () => {
  it('writes the sign, the groups and the decimals of the locale', () => {
    expect(formatMoney(money('USD', '1234.50'), 'en-US')).toBe('$1,234.50')
    expect(formatMoney(money('USD', '-1234.50'), 'en-US')).toBe('-$1,234.50')
    expect(formatMoney(money('EUR', '1234.50'), 'de-DE')).toBe('1.234,50\u00A0€')
    expect(formatMoney(money('JPY', '1235'), 'en-US')).toBe('¥1,235')
    expect(formatMoney(money('KWD', '1.500'), 'en-US')).toBe('KWD\u00A01.500')
  })

  it('shows the decimals of ISO 4217 where Intl would drop them', () => {
    expect(formatMoney(money('HUF', '1234.50'), 'en-US')).toBe('HUF\u00A01,234.50')
  })

  it('has no negative zero', () => {
    expect(formatMoney(money('USD', '-0.00'), 'en-US')).toBe('$0.00')
    expect(formatMoney({ currency: 'USD', minor: -0 }, 'en-US')).toBe('$0.00')
  })

  it('keeps every digit of amounts that a float would not', () => {
    expect(formatMoney(ofMinor('USD', Number.MAX_SAFE_INTEGER), 'en-US')).toBe('$90,071,992,547,409.91')
    expect(formatMoney(ofMinor('USD', -Number.MAX_SAFE_INTEGER), 'en-US')).toBe('-$90,071,992,547,409.91')
    fc.assert(
      fc.property(fc.maxSafeInteger(), (minor) => {
        const digits = formatMoney(ofMinor('USD', minor), 'en-US').replaceAll(/[^\d-]/g, '')
        expect(BigInt(digits)).toBe(BigInt(minor))
      }),
    )
  })

  it('keeps locales and currencies apart in its cache', () => {
    const once = [formatMoney(money('USD', '1.00'), 'en-US'), formatMoney(money('EUR', '1.00'), 'en-US')]
    const again = [formatMoney(money('USD', '1.00'), 'en-US'), formatMoney(money('EUR', '1.00'), 'en-US')]
    expect(once).toEqual(['$1.00', '€1.00'])
    expect(again).toEqual(once)
    expect(formatMoney(money('EUR', '1.00'), 'de-DE')).toBe('1,00\u00A0€')
  })

  it('refuses a malformed language tag', () => {
    expect(codeOf(() => formatMoney(money('CAD', '1.00'), 'english, please'))).toBe('unknown-locale')
    expect(codeOf(() => formatAmount(money('CAD', '1.00'), ''))).toBe('unknown-locale')
  })

  it('refuses what only looks like an amount', () => {
    expect(codeOf(() => formatMoney({ currency: 'CAD', minor: Number.NaN }, 'en-CA'))).toBe('not-a-decimal')
  })
})

describe('formatAmount', () => {
  it('writes the number alone', () => {
    expect(formatAmount(money('CAD', '41.20'), 'en-CA')).toBe('41.20')
    expect(formatAmount(money('EUR', '-1234.50'), 'de-DE')).toBe('-1.234,50')
    expect(formatAmount(money('EUR', '-1234.50'), 'nl-NL')).toBe('-1.234,50')
    // Where text runs right to left, CLDR keeps the sign at its number by marks; a bare number needs them as well.
    expect(formatAmount(money('EUR', '-1234.50'), 'ar-EG')).toMatch(/^\u061c-\u200f?١٬٢٣٤٫٥٠$/)
    expect(formatAmount(money('EUR', '-1234.50'), 'ar')).toMatch(/\u200e-/)
    expect(formatAmount(money('JPY', '1200'), 'ja-JP')).toBe('1,200')
    expect(formatAmount(money('USD', '-0.00'), 'en-US')).toBe('0.00')
  })

  it('uses the marks the locale uses for money, as formatMoney does', () => {
    // Swiss French writes 1234,50 for a number but 1234.50 for money.
    expect(formatAmount(money('CHF', '4.50'), 'fr-CH')).toBe('4.50')
    expect(formatMoney(money('CHF', '4.50'), 'fr-CH')).toContain('4.50')
  })

  it('drops a currency sign that stands in place of the decimal mark', () => {
    expect(formatMoney(money('CVE', '4.50'), 'pt-CV')).toContain('4$50')
    expect(formatAmount(money('CVE', '4.50'), 'pt-CV')).toBe('4,50')
  })
})
