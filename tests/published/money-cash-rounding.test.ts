import { describe, expect, it } from 'vitest'
import { type CashRoundingOptions, cashStep, roundForCash } from '../../src/money/cash-rounding.ts'
import { cldrCashSteps } from '../../src/money/cash-steps.ts'
import { type CurrencyCode, currencyCodes, minorDigits } from '../../src/money/currency.ts'
import { money, ofMinor, subtract, toDecimal } from '../../src/money/money.ts'

function asked(currency: CurrencyCode, amount: string, options?: CashRoundingOptions): string {
  return toDecimal(roundForCash(money(currency, amount), options))
}

describe('cash steps of CLDR', () => {
  // Source: CLDR 48.2.0 supplemental/currencyData.json, fractions with cashRounding or cashDigits (VEF is withdrawn).
  const CASH: Partial<Record<CurrencyCode, string>> = {
    CAD: '0.05',
    CHF: '0.05',
    DKK: '0.50',
    HUF: '5.00',
  }
  const WHOLE = ['AMD', 'CRC', 'CZK', 'GYD', 'MNT', 'MUR', 'NOK', 'RSD', 'SEK', 'TWD', 'TZS', 'UZS'] as const

  it.each(currencyCodes.filter((code) => CASH[code] !== undefined))('%s has the step of cashRounding', (code) => {
    expect(toDecimal(ofMinor(code, cashStep(code)))).toBe(CASH[code])
  })

  it.each(WHOLE)('%s is paid in whole units, for it has cashDigits 0', (code) => {
    expect(toDecimal(ofMinor(code, cashStep(code)))).toBe('1.00')
  })

  it('are one whole unit where CLDR gives a currency no decimals at all, and ISO 4217 does', () => {
    // Source: UTS 35 part 3: cash digits default to digits. Intl carries CLDR's digits.
    const coarser = currencyCodes.filter((code) => {
      const intl = new Intl.NumberFormat('en', { style: 'currency', currency: code }).resolvedOptions()
      return intl.maximumFractionDigits === 0 && minorDigits(code) > 0
    })
    expect(coarser.length).toBeGreaterThan(10)
    for (const code of coarser) {
      expect([code, cashStep(code)]).toEqual([code, code === 'HUF' ? 500 : 10 ** minorDigits(code)])
    }
    const known = [...coarser, ...WHOLE, ...currencyCodes.filter((code) => CASH[code] !== undefined)]
    expect(Object.keys(cldrCashSteps).sort()).toEqual([...new Set(known)].sort())
  })

  it.each(['AUD', 'NZD', 'EUR', 'USD', 'GBP', 'JPY', 'KWD'] as const)('%s has none, so nothing is rounded', (code) => {
    expect(cashStep(code)).toBe(1)
    expect(roundForCash(ofMinor(code, 12_343))).toEqual(ofMinor(code, 12_343))
  })
})

describe('the symmetric five-cent table', () => {
  // Last digit 0 to 9 becomes 0 0 0 5 5 5 5 5 10 10.
  // Sources: Canada, Budget 2012 "Rounding"; Belgium, FPS Finance circular of 26 November 2019; Estonia, Eesti Pank;
  // Ireland, thejournal.ie; Finland and Australia, Casio V-REGI manual p. 81; Slovakia, eKasa receipt rounding; Hungary
  // (forints), mnb.hu and, for the single endings, memory.
  const ENDINGS = [0, 0, 0, 5, 5, 5, 5, 5, 10, 10]

  it.each(['CA', 'BE', 'EE', 'IE', 'FI', 'SK', 'AU'] as const)('rounds totals in %s', (region) => {
    const currency = region === 'CA' ? 'CAD' : region === 'AU' ? 'AUD' : 'EUR'
    for (const [digit, ending] of ENDINGS.entries()) {
      expect(roundForCash(ofMinor(currency, 1230 + digit), { region })).toEqual(ofMinor(currency, 1230 + ending))
      // Estonia says that refunds in cash are rounded alike; a negative amount mirrors the positive one everywhere here.
      expect(roundForCash(ofMinor(currency, -1230 - digit), { region })).toEqual(ofMinor(currency, -1230 - ending))
    }
  })

  it('rounds forints in Hungary', () => {
    for (const [digit, ending] of ENDINGS.entries()) {
      expect(roundForCash(money('HUF', `${1230 + digit}.00`))).toEqual(money('HUF', `${1230 + ending}.00`))
    }
  })
})

describe('published examples', () => {
  it.each<[string, CurrencyCode, string, string, CashRoundingOptions?]>([
    ['Canada, Budget 2012: 1.83 + 2.86 with 5% tax', 'CAD', '4.92', '4.90'],
    ['Canada, Quebec consumer protection office', 'CAD', '5.98', '6.00'],
    ['Canada, Quebec consumer protection office', 'CAD', '5.97', '5.95'],
    ['Belgium, retaildetail.eu', 'EUR', '99.98', '100.00', { region: 'BE' }],
    ['Belgium, retaildetail.eu', 'EUR', '100.02', '100.00', { region: 'BE' }],
    ['Belgium, circular: only above 0.05', 'EUR', '0.01', '0.01', { region: 'BE' }],
    ['Belgium, circular: only above 0.05', 'EUR', '0.04', '0.04', { region: 'BE' }],
    ['Belgium, circular: only above 0.05', 'EUR', '0.05', '0.05', { region: 'BE' }],
    ['Belgium, circular: only above 0.05', 'EUR', '0.06', '0.05', { region: 'BE' }],
    ['Estonia, Eesti Pank: 2.28 + 15.32 + 11.99 + 1.17', 'EUR', '30.76', '30.75', { region: 'EE' }],
    ['Ireland, cooneycarey.ie', 'EUR', '5.96', '5.95', { region: 'IE' }],
    ['Ireland, cooneycarey.ie', 'EUR', '5.97', '5.95', { region: 'IE' }],
    ['Ireland, cooneycarey.ie', 'EUR', '5.98', '6.00', { region: 'IE' }],
    ['Ireland, cooneycarey.ie', 'EUR', '5.99', '6.00', { region: 'IE' }],
    ['Ireland, thejournal.ie', 'EUR', '0.52', '0.50', { region: 'IE' }],
    ['Ireland, thejournal.ie', 'EUR', '0.58', '0.60', { region: 'IE' }],
    ['Finland, krone.at', 'EUR', '14.97', '14.95', { region: 'FI' }],
    ['Slovakia, eKasa: the smallest totals go up', 'EUR', '0.01', '0.05', { region: 'SK' }],
    ['Slovakia, eKasa: the smallest totals go up', 'EUR', '0.02', '0.05', { region: 'SK' }],
    ['Slovakia, eKasa: and nothing stays nothing', 'EUR', '0.00', '0.00', { region: 'SK' }],
    ['USA, Treasury questions (second hand)', 'USD', '0.02', '0.05', { region: 'US' }],
    ['USA, NCSL: 1, 2, 6, 7 down', 'USD', '10.02', '10.00', { region: 'US' }],
    ['USA, NCSL: 3, 4, 8, 9 up', 'USD', '10.03', '10.05', { region: 'US' }],
    ['Australia (second hand)', 'AUD', '20.42', '20.40', { region: 'AU' }],
    ['Australia (second hand)', 'AUD', '20.43', '20.45', { region: 'AU' }],
    ['Australia (second hand)', 'AUD', '10.02', '10.00', { region: 'AU' }],
    ['Australia (second hand)', 'AUD', '10.03', '10.05', { region: 'AU' }],
    ['Hungary, bama.hu: a total ending in 7 goes to 5', 'HUF', '1297.00', '1295.00'],
    ['Norway, regulation 294: 49 øre down', 'NOK', '99.49', '99.00'],
    ['Norway, regulation 294: 50 øre up', 'NOK', '99.50', '100.00'],
    ['Norway, regulation 294: 1 øre down', 'NOK', '99.01', '99.00'],
    ['Sweden, receipts of the older 0.50 step (second hand)', 'SEK', '223.20', '223.00', { step: 50 }],
    ['Sweden, receipts of the older 0.50 step (second hand)', 'SEK', '65.40', '65.50', { step: 50 }],
    ['Sweden since 2010', 'SEK', '65.40', '65.00'],
    ['New Zealand, Retailers Association: 5 down', 'NZD', '4.95', '4.90', { region: 'NZ' }],
    ['New Zealand, Retailers Association: 6 up', 'NZD', '4.96', '5.00', { region: 'NZ' }],
    ['Switzerland, kingbill.com', 'CHF', '1.09', '1.10'],
    ['Switzerland, kingbill.com: 1.000 to 1.024', 'CHF', '1.02', '1.00'],
    ['Switzerland, kingbill.com: 1.025 to 1.074', 'CHF', '1.03', '1.05'],
    ['Switzerland, kingbill.com: 1.025 to 1.074', 'CHF', '1.07', '1.05'],
    ['Switzerland, kingbill.com: 1.075 to 1.099', 'CHF', '1.08', '1.10'],
    ['Switzerland, kingbill.com, always down', 'CHF', '1.04', '1.00', { mode: 'towards' }],
    ['Switzerland, kingbill.com, always down', 'CHF', '1.09', '1.05', { mode: 'towards' }],
    ['brick/money CashContextTest: 1.07 down', 'CHF', '1.07', '1.05', { mode: 'towards' }],
    ['brick/money CashContextTest: -1.5 down', 'CZK', '-1.50', '-1.00', { mode: 'towards' }],
  ])('%s: %s %s is %s', (_, currency, amount, expected, options) => {
    expect(asked(currency, amount, options)).toBe(expected)
  })
})

describe('ranges of a till manual', () => {
  // Source: Casio V-REGI series manual p. 81: the first and last ending of each range and what it becomes.
  type Ranges = readonly (readonly [number, number, number])[]
  const FIVE: Ranges = [
    [0, 2, 0],
    [3, 7, 5],
    [8, 9, 10],
  ]
  const TOWARDS_FIVE: Ranges = [
    [0, 4, 0],
    [5, 9, 5],
  ]

  it.each<[string, CurrencyCode, CashRoundingOptions, Ranges]>([
    ['Australian', 'AUD', { region: 'AU' }, FIVE],
    ['Finnish', 'EUR', { region: 'FI' }, FIVE],
    ['Malaysian', 'MYR', { region: 'MY' }, FIVE],
    [
      'Danish total',
      'DKK',
      {},
      [
        [0, 24, 0],
        [25, 74, 50],
        [75, 99, 100],
      ],
    ],
    [
      'Danish change',
      'DKK',
      { ties: 'towards' },
      [
        [0, 25, 0],
        [26, 75, 50],
        [76, 99, 100],
      ],
    ],
    [
      'New Zealand A',
      'NZD',
      { region: 'NZ', ties: 'away' },
      [
        [0, 4, 0],
        [5, 9, 10],
      ],
    ],
    [
      'New Zealand B',
      'NZD',
      { region: 'NZ' },
      [
        [0, 5, 0],
        [6, 9, 10],
      ],
    ],
    [
      'Norwegian',
      'NOK',
      {},
      [
        [0, 49, 0],
        [50, 99, 100],
      ],
    ],
    [
      'new Swedish total',
      'SEK',
      {},
      [
        [0, 49, 0],
        [50, 99, 100],
      ],
    ],
    [
      'new Swedish change',
      'SEK',
      { ties: 'towards' },
      [
        [0, 50, 0],
        [51, 99, 100],
      ],
    ],
    // The manual still knows the 5 cent piece; the rule of the region has the 10 cent one, and the same direction.
    ['South African', 'ZAR', { region: 'ZA', step: 5 }, TOWARDS_FIVE],
    ['Japanese five yen', 'JPY', { step: 5, mode: 'towards' }, TOWARDS_FIVE],
  ])('%s', (_, currency, options, ranges) => {
    for (const [first, last, expected] of ranges) {
      for (let ending = first; ending <= last; ending++) {
        const rounded = roundForCash(ofMinor(currency, 700 + ending), options).minor - 700
        expect([ending, rounded]).toEqual([ending, expected])
      }
    }
  })

  // Source: Oracle Retail POS Suite Implementation Guide 14.1, table A-1: change out of 11.00. With the
  // step of 0.10 it prints the totals 10.95 and 10.94; the rest of that row follows.
  it.each([
    [5, [0, 0, 5, 5, 5, 5, 5, 10, 10]],
    [10, [0, 0, 0, 0, 0, 10, 10, 10, 10]],
  ])('change out of 11.00 with a step of %d', (step, change) => {
    const tendered = money('CAD', '11.00')
    for (const [index, expected] of change.entries()) {
      const total = ofMinor('CAD', 1099 - index)
      // Two ways to the same coins: the total rounded with ties away, or the change with ties towards zero.
      expect(subtract(tendered, roundForCash(total, { step })).minor).toBe(expected)
      expect(roundForCash(subtract(tendered, total), { step, ties: 'towards' }).minor).toBe(expected)
    }
  })
})

describe('ECMA-402 rounding', () => {
  // Source: Intl.NumberFormat with roundingIncrement and roundingMode, which rounds decimals by itself.
  const MODES = [
    ['halfExpand', {}],
    ['halfTrunc', { ties: 'towards' }],
    ['trunc', { mode: 'towards' }],
  ] as const
  const STEPS = [1, 2, 5, 10, 20, 25, 50, 100, 200, 250, 500, 1000] as const

  it.each(MODES)('%s agrees for every step and every amount from -12.00 to 12.00', (roundingMode, options) => {
    for (const step of STEPS) {
      // On whole minor units, so that no float comes near a tie.
      const intl = new Intl.NumberFormat('en', {
        minimumFractionDigits: 0,
        maximumFractionDigits: 0,
        useGrouping: false,
        roundingIncrement: step,
        roundingMode,
      })
      const amounts = Array.from({ length: 2401 }, (_, index) => index - 1200)
      // Intl writes a rounded -2 as -0, which no Money has.
      expect(amounts.map((minor) => roundForCash(ofMinor('USD', minor), { step, ...options }).minor)).toEqual(
        amounts.map((minor) => Number(intl.format(minor)) + 0),
      )
    }
  })
})
