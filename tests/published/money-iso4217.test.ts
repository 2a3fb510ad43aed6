import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { codes, data, publishDate } from 'currency-codes'
import { describe, expect, it } from 'vitest'
import { currencyCodes, isCurrencyCode, minorDigits } from '../../src/money/currency.ts'

// Source: ISO 4217:2015 list one, published 2024-06-25, as npm currency-codes 2.2.0 carries it: its table, and the XML of
// the list itself, which alone says where a code has no minor unit ("N.A."; the table writes 0).
const listOne = readFileSync(createRequire(import.meta.url).resolve('currency-codes/iso-4217-list-one.xml'), 'utf8')
const minorUnits = new Map(
  [...listOne.matchAll(/<Ccy>(\w{3})<\/Ccy>[\s\S]*?<CcyMnrUnts>([^<]+)<\/CcyMnrUnts>/g)].map(
    ([, code = '', units = '']) => [code, units] as const,
  ),
)
const withoutMinorUnit = [...minorUnits].filter(([, units]) => units === 'N.A.').map(([code]) => code)

// Source: memory. XCG came into use in 2025, after this issue of the list; the others were withdrawn before it.
const ADDED_FROM_MEMORY = ['HRK', 'SLL', 'XCG', 'ZWL']

// Source: CLDR 48.2 currencyData.fractions against the list above: two digits in ISO and none in CLDR, IQD three and none.
const CLDR_DISAGREES = [
  'AFN',
  'ALL',
  'COP',
  'HUF',
  'IDR',
  'IQD',
  'IRR',
  'KPW',
  'LAK',
  'LBP',
  'MGA',
  'MMK',
  'PKR',
  'SOS',
  'SYP',
  'YER',
]

describe('ISO 4217 list one', () => {
  it('is the issue of 2024-06-25, read whole from both files', () => {
    expect(publishDate).toBe('2024-06-25')
    expect(minorUnits.size).toBe(179)
    expect([...minorUnits.keys()].sort()).toEqual([...codes()].sort())
  })

  it('has the minor units that this library keeps, for every code that has one', () => {
    const kept = data.filter(({ code }) => !withoutMinorUnit.includes(code))
    expect(kept.length).toBe(179 - withoutMinorUnit.length)
    for (const { code, digits } of kept) {
      if (!isCurrencyCode(code)) throw new Error(`${code} is on the list but not kept.`)
      expect([code, minorDigits(code)]).toEqual([code, digits])
      expect([code, String(minorDigits(code))]).toEqual([code, minorUnits.get(code)])
    }
  })

  it('gives metals, bond units and test codes no minor unit, so no money is kept in them', () => {
    expect([...withoutMinorUnit].sort()).toEqual([
      'XAG',
      'XAU',
      'XBA',
      'XBB',
      'XBC',
      'XBD',
      'XDR',
      'XPD',
      'XPT',
      'XSU',
      'XTS',
      'XUA',
      'XXX',
    ])
    expect(withoutMinorUnit.filter(isCurrencyCode)).toEqual([])
  })

  it('lacks only the codes added from memory', () => {
    expect(currencyCodes.filter((code) => !minorUnits.has(code))).toEqual(ADDED_FROM_MEMORY)
  })
})

describe('Intl, which follows CLDR', () => {
  function intlDigits(code: string): number {
    const { maximumFractionDigits } = new Intl.NumberFormat('en', {
      style: 'currency',
      currency: code,
    }).resolvedOptions()
    return maximumFractionDigits ?? Number.NaN
  }

  it.each(CLDR_DISAGREES)('counts %s in other digits than ISO 4217 and this library', (code) => {
    if (!isCurrencyCode(code)) throw new Error(`${code} is not kept.`)
    expect(intlDigits(code)).toBe(0)
    expect(String(minorDigits(code))).toBe(minorUnits.get(code))
    expect(minorDigits(code)).toBe(code === 'IQD' ? 3 : 2)
  })

  it('agrees on every other code of the list', () => {
    const others = currencyCodes.filter((code) => minorUnits.has(code) && !CLDR_DISAGREES.includes(code))
    expect(others.length).toBe(179 - withoutMinorUnit.length - CLDR_DISAGREES.length)
    for (const code of others) expect([code, intlDigits(code)]).toEqual([code, minorDigits(code)])
  })
})
