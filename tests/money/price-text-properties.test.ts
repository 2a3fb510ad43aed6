import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { currencyCodes, minorDigits } from '../../src/money/currency.ts'
import { money, toDecimal } from '../../src/money/money.ts'
import { normalisePrice } from '../../src/money/price-normalise.ts'
import { parsePrice } from '../../src/money/price-text.ts'

const PIECES = [
  ...[
    '$',
    '€',
    'kr',
    'kr.',
    'Rs.',
    'CHF',
    'usd',
    '円',
    'د.إ',
    'C $',
    'R',
    'EUR',
    '%',
    '(',
    ')',
    '-',
    '−',
    '–',
    '+',
    '*',
  ],
  ...[
    '1',
    '12',
    '99',
    '234',
    '0',
    '٣',
    '१',
    '¹',
    '½',
    '.',
    ',',
    "'",
    ' ',
    '\u00a0',
    '\n',
    ':',
    '/',
    ',-',
    '٫',
    '٬',
    '\u200f',
  ],
  ...['from', 'ab', 'Total', 'K', '万', 'x', 'inkl.', '\ud800', '😀', '\u0301'],
]
const NAMES = ['$', '€', 'kr', 'Rs.', 'CHF', 'KD', 'د.ك', '円', '', '-', '(']
const NUMBERS = ['0', '7', '12', '99', '250', '1234', '٣٤', '.', ',', "'", '\u00a0', '⁹⁹', ',-']
const nearly = fc
  .tuple(
    fc.constantFrom(...NAMES),
    fc.array(fc.constantFrom(...NUMBERS), { minLength: 1, maxLength: 5 }),
    fc.constantFrom(...NAMES, '*', ' total', ')'),
  )
  .map(([before, digits, after]) => `${before}${digits.join('')}${after}`)
const soup = fc.oneof(
  nearly,
  fc.string({ unit: 'binary', maxLength: 60 }),
  fc.string({ unit: 'grapheme', maxLength: 60 }),
  fc.array(fc.constantFrom(...PIECES), { maxLength: 14 }).map((pieces) => pieces.join('')),
)
const hints = fc.record(
  {
    currency: fc.oneof(fc.constantFrom('CAD', 'KWD', 'JPY', '$', 'kr'), fc.string({ maxLength: 5 })),
    locale: fc.constantFrom('en-CA', 'de-CH', 'pt-CV', 'xx', '-', 'en_', 'root', ''),
    region: fc.oneof(fc.constantFrom('CA', 'NO', 'KW'), fc.string({ maxLength: 3 })),
  },
  { requiredKeys: [] },
)
const whole = fc.bigInt({ min: 0n, max: 10n ** 12n }).map(String)
const sign = fc.constantFrom('', '-')

describe('parsePrice, whatever the text', () => {
  it('never throws, and answers null or a plain decimal and a known currency', () => {
    const codes = new Set<string>(currencyCodes)
    let prices = 0
    fc.assert(
      fc.property(soup, hints, (text, hint) => {
        const price = parsePrice(text, hint)
        if (price === null) return
        prices += 1
        expect(price.amount).toMatch(/^-?(0|[1-9]\d*)(\.\d+)?$/)
        expect(price.amount).not.toMatch(/^-[0.]*$/)
        expect(price.currency === null || codes.has(price.currency)).toBe(true)
      }),
      { numRuns: 1500 },
    )
    expect(prices).toBeGreaterThan(50)
  })

  it('invents no digit: those of the amount are those of the text, in their order', () => {
    fc.assert(
      fc.property(soup, hints, (text, hint) => {
        const price = parsePrice(text, hint)
        if (price === null) return
        const digits = (written: string) => written.replace(/[^0-9]/g, '')
        const raised = (written: string) =>
          written.replace(/[⁰¹²³⁴⁵⁶⁷⁸⁹]/g, (digit) => String('⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(digit)))
        const own = digits(raised(normalisePrice(text)))
        expect(own).toContain(digits(price.amount).replace(/^0+/, ''))
      }),
      { numRuns: 1500 },
    )
  })

  it('gives the same for a text that direction marks and no-break spaces were put into', () => {
    fc.assert(
      fc.property(sign, whole, fc.constantFrom('€', 'CAD', 'kr', 'zł'), (minus, digits, name) => {
        const text = `${minus}${digits},50 ${name}`
        const dressed = `\u200f\u061c${minus}\u200e${digits},50\u00a0\u2066${name}\u2069 `
        expect(parsePrice(dressed)).toEqual(parsePrice(text))
        expect(parsePrice(text)?.amount).toBe(`${minus}${digits}.50`)
      }),
    )
  })
})

describe('parsePrice reads back what Money writes', () => {
  it('in every currency, plain and grouped', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...currencyCodes),
        fc.integer({ min: -(10 ** 12), max: 10 ** 12 }),
        fc.constantFrom('', ',', "'", '\u202f'),
        fc.boolean(),
        (code, minor, group, before) => {
          const digits = minorDigits(code)
          const amount = toDecimal({ currency: code, minor })
          const [units = '', decimals] = amount.split('.')
          const written = units.replace(/\B(?=(\d{3})+$)/g, group) + (decimals ? `.${decimals}` : '')
          const price = parsePrice(before ? `${code} ${written}` : `${written} ${code}`, { locale: 'en' })
          expect(price).toEqual({ amount, currency: code })
          expect(money(code, price?.amount ?? '').minor).toBe(minor)
          expect(digits).toBe(decimals?.length ?? 0)
        },
      ),
      { numRuns: 1000 },
    )
  })

  it('in every script of decimal digits that Intl knows', () => {
    const scripts = Intl.supportedValuesOf('numberingSystem').filter((system) => /^\p{Nd}+$/u.test(format(system, 12)))
    expect(scripts.length).toBeGreaterThan(50)
    for (const system of scripts) expect(parsePrice(`${format(system, 1234567890)} EUR`)?.amount).toBe('1234567890')
  })
})

function format(system: string, value: number): string {
  return new Intl.NumberFormat(`en-u-nu-${system}`, { useGrouping: false }).format(value)
}

describe('parsePrice takes no longer for a longer text', () => {
  const PATTERNS = [
    '1',
    '1,',
    '1 ',
    '٣',
    ' ',
    '\n',
    '\u200f',
    '$',
    '$1',
    '(',
    '((1))',
    '-',
    '¹',
    '円',
    'a ',
    'kr. ',
    '1.-',
    'ab',
  ]

  it.each(PATTERNS)('%j a hundred thousand characters long is null within 250 ms', (pattern) => {
    const text = pattern.repeat(Math.ceil(100_000 / pattern.length))
    const start = performance.now()
    expect(parsePrice(text)).toBeNull()
    expect(performance.now() - start).toBeLessThan(250)
  })

  it.each(PATTERNS)('%j as long as a price may be is done within 250 ms', (pattern) => {
    const text = pattern.repeat(Math.floor(200 / pattern.length))
    parsePrice(`warm-up ${pattern}`, { locale: 'hi-IN' })
    const start = performance.now()
    parsePrice(text, { locale: 'hi-IN' })
    expect(performance.now() - start).toBeLessThan(250)
  })
})
