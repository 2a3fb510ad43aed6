import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cashStep, nationalCashRules, roundForCash } from '../../src/money/cash-rounding.ts'
import { cldrCashSteps } from '../../src/money/cash-steps.ts'
import { currencyCodes } from '../../src/money/currency.ts'
import { money, ofMinor, toDecimal } from '../../src/money/money.ts'
import { codeOf } from './code-of.ts'

describe('roundForCash', () => {
  it.each([
    ['CAD', '4.92', '4.90'],
    ['CAD', '4.93', '4.95'],
    ['CHF', '1.08', '1.10'],
    ['DKK', '1.25', '1.50'],
    ['DKK', '1.74', '1.50'],
    ['SEK', '223.50', '224.00'],
    ['HUF', '1237.49', '1235.00'],
    ['HUF', '1237.50', '1240.00'],
    ['CAD', '-4.93', '-4.95'],
    ['CAD', '0.02', '0.00'],
    ['EUR', '4.93', '4.93'],
    ['AUD', '4.93', '4.93'],
    ['USD', '4.93', '4.93'],
    ['JPY', '1203', '1203'],
  ] as const)('%s %s is %s without options', (currency, amount, expected) => {
    expect(toDecimal(roundForCash(money(currency, amount)))).toBe(expected)
  })

  it('takes a step, and where ties go, from the household', () => {
    expect(roundForCash(money('AUD', '4.93'), { step: 5 })).toEqual(money('AUD', '4.95'))
    expect(roundForCash(money('NZD', '4.95'), { step: 10 })).toEqual(money('NZD', '5.00'))
    expect(roundForCash(money('NZD', '4.95'), { step: 10, ties: 'towards' })).toEqual(money('NZD', '4.90'))
    expect(roundForCash(money('NZD', '4.99'), { step: 10, mode: 'towards' })).toEqual(money('NZD', '4.90'))
    expect(roundForCash(money('CAD', '4.93'), { step: 1 })).toEqual(money('CAD', '4.93'))
  })

  it('takes the rule of a region, and a choice of the household before it', () => {
    expect(roundForCash(money('NZD', '4.95'), { region: 'NZ' })).toEqual(money('NZD', '4.90'))
    expect(roundForCash(money('NZD', '4.95'), { region: 'NZ', ties: 'away' })).toEqual(money('NZD', '5.00'))
    expect(roundForCash(money('EUR', '0.02'), { region: 'SK' })).toEqual(money('EUR', '0.05'))
    expect(roundForCash(money('EUR', '0.03'), { region: 'BE' })).toEqual(money('EUR', '0.03'))
  })

  it('leaves an amount alone in a region that has no rule, or one for another currency', () => {
    expect(roundForCash(money('EUR', '4.93'), { region: 'DE' })).toEqual(money('EUR', '4.93'))
    expect(roundForCash(money('EUR', '4.93'), { region: 'NZ' })).toEqual(money('EUR', '4.93'))
    expect(roundForCash(money('CAD', '4.93'), { region: 'NZ' })).toEqual(money('CAD', '4.95'))
  })

  it('has no negative zero', () => {
    expect(Object.is(roundForCash(money('CAD', '-0.02')).minor, 0)).toBe(true)
  })

  it.each([0, -5, 2.5, Number.NaN, Number.POSITIVE_INFINITY])('refuses a step of %d', (step) => {
    expect(codeOf(() => roundForCash(money('CAD', '1.00'), { step }))).toBe('bad-rounding')
  })

  it.each(['', 'nz', 'NZL', 'Finland'])('refuses the region "%s"', (region) => {
    expect(codeOf(() => roundForCash(money('NZD', '1.00'), { region }))).toBe('bad-rounding')
    expect(codeOf(() => cashStep('NZD', region))).toBe('bad-rounding')
  })

  it('refuses a result beyond what is held exactly', () => {
    expect(codeOf(() => roundForCash(ofMinor('HUF', Number.MAX_SAFE_INTEGER)))).toBe('too-large')
  })

  const anyOptions = fc.record(
    {
      step: fc.integer({ min: 1, max: 1000 }),
      ties: fc.constantFrom<'away' | 'towards'>('away', 'towards'),
      mode: fc.constantFrom<'nearest' | 'towards'>('nearest', 'towards'),
      smallAmounts: fc.constantFrom<'unchanged' | 'up-to-step'>('unchanged', 'up-to-step'),
      region: fc.constantFrom(...Object.keys(nationalCashRules)),
    },
    { requiredKeys: [] },
  )
  const anyAmount = fc.tuple(fc.constantFrom(...currencyCodes), fc.integer({ min: -1e12, max: 1e12 }))
  const smallAmount = fc.tuple(fc.constantFrom(...currencyCodes), fc.integer({ min: -2000, max: 2000 }))

  it('changes nothing a second time, and mirrors a negative amount', () => {
    fc.assert(
      fc.property(fc.oneof(anyAmount, smallAmount), anyOptions, ([currency, minor], options) => {
        const once = roundForCash(ofMinor(currency, minor), options)
        expect(roundForCash(once, options)).toEqual(once)
        expect(roundForCash(ofMinor(currency, -minor), options)).toEqual(ofMinor(currency, -once.minor))
      }),
    )
  })

  it('stays within half a step and ends on a step', () => {
    const nearest = fc.record({ step: fc.integer({ min: 1, max: 1000 }), ties: fc.constantFrom('away', 'towards') })
    fc.assert(
      fc.property(fc.oneof(anyAmount, smallAmount), nearest, ([currency, minor], options) => {
        const rounded = roundForCash(ofMinor(currency, minor), options).minor
        expect(Math.abs(rounded % options.step)).toBe(0)
        expect(Math.abs(rounded - minor) * 2).toBeLessThanOrEqual(options.step)
      }),
    )
  })
})

describe('cashStep', () => {
  it('is CLDR’s step, else the region’s, else one minor unit', () => {
    expect(cashStep('HUF')).toBe(500)
    expect(cashStep('EUR')).toBe(1)
    expect(cashStep('EUR', 'FI')).toBe(5)
    expect(cashStep('EUR', 'NZ')).toBe(1)
    expect(cashStep('NZD', 'NZ')).toBe(10)
  })

  it('does not contradict itself where both CLDR and the region have one', () => {
    const both = Object.entries(nationalCashRules).filter(([, rule]) => cldrCashSteps[rule.currency] !== undefined)
    expect(both.map(([region]) => region)).toEqual(['CA', 'CH', 'CZ', 'DK', 'HU', 'NO', 'SE'])
    for (const [, rule] of both) expect(rule.step).toBe(cldrCashSteps[rule.currency])
  })
})

describe('nationalCashRules', () => {
  it('name their source and a usable step, by ISO 3166 region', () => {
    for (const [region, rule] of Object.entries(nationalCashRules)) {
      expect(region).toMatch(/^[A-Z]{2}$/)
      expect(rule.source).not.toBe('')
      expect(rule.note).not.toBe('')
      expect(Number.isSafeInteger(rule.step) && rule.step > 1).toBe(true)
    }
  })
})
