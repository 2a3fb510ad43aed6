import { JSDOM } from 'jsdom'
import { describe, expect, it } from 'vitest'
import { readCheckout } from '../../src/checkout/read-checkout.ts'
import type { CheckoutReading } from '../../src/checkout/reading.ts'

// What a page states for machines is trusted only where it agrees with what a person can see. Shapes: schema.org (Order,
// Invoice; JSON-LD, microdata, RDFa), Open Graph product prices as open shop templates write them, and the autofill tokens
// `transaction-amount` and `transaction-currency` of the HTML standard. The values 401.00 and GBP of those tokens are the
// standard's own example as remembered: marked as from memory, the stored copy of the standard is too old to have them.

const url = 'https://lanternhouse.example/checkout'
const PAY = '<input autocomplete="cc-number"><button>Place order</button>'

function read(body: string, head = '', lang = 'en'): CheckoutReading {
  const { document } = new JSDOM(
    `<!doctype html><html lang="${lang}"><head>${head}</head><body>${body}${PAY}</body></html>`,
    {
      url,
    },
  ).window
  return readCheckout(document, { url })
}

/** Each way to state that an order comes to this much. */
const STATEMENTS: Readonly<Record<string, (amount: string, currency: string) => { head?: string; body?: string }>> = {
  'JSON-LD Order': (amount, currency) => ({
    head: `<script type="application/ld+json">{"@context":"https://schema.org","@type":"Order","price":"${amount}","priceCurrency":"${currency}"}</script>`,
  }),
  'JSON-LD Invoice, a payment due': (amount, currency) => ({
    head: `<script type="application/ld+json">{"@context":"https://schema.org","@type":"Invoice","totalPaymentDue":{"@type":"PriceSpecification","price":${amount},"priceCurrency":"${currency}"}}</script>`,
  }),
  'microdata Order': (amount, currency) => ({
    body: `<div itemscope itemtype="https://schema.org/Order"><meta itemprop="price" content="${amount}"><meta itemprop="priceCurrency" content="${currency}"></div>`,
  }),
  'RDFa Order': (amount, currency) => ({
    body: `<div vocab="https://schema.org/" typeof="Order"><meta property="price" content="${amount}"><meta property="priceCurrency" content="${currency}"></div>`,
  }),
  'autofill tokens': (amount, currency) => ({
    body: `<input type="hidden" autocomplete="transaction-amount" value="${amount}"><input type="hidden" autocomplete="transaction-currency" value="${currency}">`,
  }),
}

describe.each(Object.entries(STATEMENTS))('%s', (_, state) => {
  it('names the total where a visible amount has no known label', () => {
    const { head = '', body = '' } = state('401.00', 'GBP')
    const reading = read(`<p>Shipping <b>£77.00</b></p><p>Glibwock <b>£401.00</b></p>${body}`, head)
    expect(reading.total).toEqual({ amount: '401.00', currency: 'GBP' })
    expect(reading.evidence.some(({ figure, used, why }) => figure === 'total' && used && why.includes('data'))).toBe(
      true,
    )
  })

  it('says which money an ambiguous sign means', () => {
    const { head = '', body = '' } = state('401.00', 'AUD')
    expect(read(`<p>Total: $401.00</p>${body}`, head).total).toEqual({ amount: '401.00', currency: 'AUD' })
    expect(read('<p>Total: $401.00</p>').total).toBeNull()
  })

  it('is not believed against the page: the visible total stands', () => {
    const { head = '', body = '' } = state('0.01', 'GBP')
    expect(read(`<p>Total: £401.00</p>${body}`, head).total).toEqual({ amount: '401.00', currency: 'GBP' })
  })

  it('is no answer alone', () => {
    const { head = '', body = '' } = state('401.00', 'GBP')
    expect(read(`<p>Nearly done.</p>${body}`, head).total).toBeNull()
  })
})

describe('what is stated of a product', () => {
  const OPEN_GRAPH =
    '<meta property="og:type" content="product"><meta property="product:price:amount" content="6.9900"><meta property="product:price:currency" content="GBP">'
  const OFFER =
    '<script type="application/ld+json">{"@type":"Product","name":"Lamp","offers":{"@type":"Offer","price":"6.99","priceCurrency":"GBP"}}</script>'

  it.each([
    ['Open Graph', OPEN_GRAPH],
    ['a JSON-LD Offer', OFFER],
  ])('%s is the price of a thing, never the total', (_, head) => {
    expect(read('<p>Glibwock <b>£6.99</b></p>', head).total).toBeNull()
    expect(read('<p>Total: £19.99</p>', head).total).toEqual({ amount: '19.99', currency: 'GBP' })
  })

  it.each([
    ['Open Graph', OPEN_GRAPH.replace('GBP', 'NZD')],
    ['a JSON-LD Offer', OFFER.replace('GBP', 'NZD')],
  ])('%s tells the currency of the shop', (_, head) => {
    expect(read('<p>Total: $19.99</p>', head).total).toEqual({ amount: '19.99', currency: 'NZD' })
  })
})

describe('autofill tokens', () => {
  it('are read from a visible field that cannot be changed, with a section before them', () => {
    const body =
      '<label for="t">Total</label><input id="t" readonly autocomplete="section-pay transaction-amount" value="401.00"><input type="hidden" autocomplete="section-pay transaction-currency" value="gbp">'
    expect(read(body).total).toEqual({ amount: '401.00', currency: 'GBP' })
  })

  it.each(['401.00 pounds', '4e2', '', 'NaN', '-401.00', '401,00'])(
    '"%s" is no valid amount, and upsets nothing',
    (value) => {
      const body = `<p>Total: £401.00</p><input type="hidden" autocomplete="transaction-amount" value="${value}">`
      expect(read(body).total).toEqual({ amount: '401.00', currency: 'GBP' })
    },
  )
})
