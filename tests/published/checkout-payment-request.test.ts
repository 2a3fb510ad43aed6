import { JSDOM } from 'jsdom'
import { describe, expect, it } from 'vitest'
import { readCheckout } from '../../src/checkout/read-checkout.ts'
import { amountOf } from '../../src/checkout/structured-money.ts'
import { closure } from '../../src/checkout/sums.ts'

// Source: W3C Payment Request API (w3c/payment-request, commit b245e272, index.html): the examples' amounts, and the rule for
// a valid decimal monetary value, `^-?[0-9]+(\.[0-9]+)?$`; the valid and invalid texts are those of the web platform test
// payment-request-constructor.https.sub.html (commit 765a20a).

describe('the sums of the Payment Request examples', () => {
  it('GBP 55.00 + VAT 5.00 + shipping 5.00 = 65.00', () => {
    const terms = [
      { value: 550_000, role: 'base' },
      { value: 50_000, role: 'tax' },
      { value: 50_000, role: 'added' },
    ] as const
    expect(closure(650_000, terms)).toMatchObject({ terms: 3, left: [] })
    expect(closure(650_001, terms)).toBeNull()
  })

  it.each([
    [
      'GBP',
      '£',
      [
        ['Sub-total', '55.00'],
        ['VAT', '5.00'],
        ['Shipping', '5.00'],
      ],
      '65.00',
    ],
    [
      'AUD',
      'A$',
      [
        ['Sub-total', '55.00'],
        ['VAT', '5.00'],
        ['Shipping', '5.00'],
        ['Card processing fee', '3.00'],
      ],
      '68.00',
    ],
  ] as const)('as a page, in %s', (currency, sign, parts, total) => {
    const rows = [...parts, ['Total due', total]].map(
      ([label, amount]) => `<tr><td>${label}</td><td>${sign}${amount}</td></tr>`,
    )
    const { document } = new JSDOM(
      `<table>${rows.join('')}</table><input autocomplete="cc-number"><button>Pay</button>`,
    ).window
    const reading = readCheckout(document, { url: 'https://shop.example/checkout' })
    expect(reading.total).toEqual({ amount: total, currency })
    expect(reading.evidence.find(({ figure, used }) => figure === 'total' && used)?.why).toContain(
      'the parts add up to it',
    )
    expect(reading.parts.map(({ amount }) => amount)).toEqual(parts.map(([, amount]) => amount))
  })
})

describe('valid decimal monetary values', () => {
  it.each(['0', '0.00', '-1', '55', '55.00', '10.99', '-10.99', '01', '1000.000'])(
    '%s is taken as it stands',
    (text) => {
      expect(amountOf(text, 'USD')).toEqual({ amount: text, currency: null })
    },
  )

  it.each(['-', 'notdigits', '10-', '1-0', '1.0.0', '1/3', '', null, undefined])('%s gives no amount', (text) => {
    expect(amountOf(text, 'USD')).toBeNull()
  })
})
