import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import {
  currencyCode,
  type Money,
  money,
  ofMinor,
  potId,
  type SharedCost,
  splitOrder,
  toDecimal,
} from '../../src/index.ts'

/*
 * Invoices of the European standard EN 16931 (ConnectingEurope/eInvoicing-EN16931, ubl/examples, EUPL-1.2): lines,
 * allowances and charges, tax per rate, and totals. An order split by item must come to the invoice's own total, whatever
 * rounding lies between its lines and its tax.
 */
const text = z.nullable(z.string())
const schema = z.object({
  invoices: z.array(
    z.object({
      file: z.string(),
      currency: z.string(),
      lines: z.array(z.object({ net: z.string() })),
      doc_allowance_charge: z.array(z.object({ charge: z.string(), amount: z.string() })),
      tax_subtotals: z.array(z.object({ taxable: z.string(), tax: z.string(), pct: text })),
      totals: z.object({ TaxExclusiveAmount: z.string(), TaxInclusiveAmount: z.string() }),
    }),
  ),
})
const { invoices } = schema.parse(
  JSON.parse(readFileSync(new URL('./en16931-ubl-totals.json', import.meta.url), 'utf8')),
)
const pots = ['first', 'second', 'third'].map(potId)

function asOrder(invoice: (typeof invoices)[number]) {
  const currency = currencyCode(invoice.currency)
  const of = (amount: string): Money => money(currency, amount)
  const lines = invoice.lines.map((l) => of(l.net))
  // A line below zero (a deposit given back) lessens the order as a discount does.
  const items = lines.flatMap((amount, n) =>
    amount.minor < 0 ? [] : [{ name: `line ${n}`, amount, pot: pots[n % 3] ?? potId('first') }],
  )
  const shared: SharedCost[] = [
    ...lines.filter((m) => m.minor < 0).map((amount) => ({ kind: 'discount', amount }) as const),
    ...invoice.doc_allowance_charge.map(
      ({ charge, amount }) =>
        ({
          kind: charge === 'true' || charge === '1' ? 'fee' : 'discount',
          amount: of(charge === 'true' || charge === '1' ? amount : `-${amount}`),
        }) as const,
    ),
    ...invoice.tax_subtotals.map(({ tax }) => ({ kind: 'tax', amount: of(tax) }) as const),
  ]
  return { total: of(invoice.totals.TaxInclusiveAmount), items, shared }
}

describe('invoices of EN 16931 as orders over three pots', () => {
  it('are 17', () => expect(invoices.length).toBe(17))

  it.each(invoices)('$file comes to its total exactly', (invoice) => {
    const { total, items, shared } = asOrder(invoice)
    const split = splitOrder(total, { by: 'item', items, shared })
    expect(split.lines.reduce((sum, l) => sum + l.amount.minor, 0)).toBe(total.minor)
    // The invoice's figures add up by the standard's own rules, so nothing is left unexplained.
    expect(split.shared.filter((s) => s.kind === 'difference')).toEqual([])
  })

  it('example 8: tax per rate is 190.87; rounded line by line it would be 190.88', () => {
    const invoice = invoices.find((i) => i.file.includes('example8'))
    if (!invoice) throw new Error('example 8 is missing')
    const { total, items, shared } = asOrder(invoice)
    const byLine = items.reduce((sum, i) => sum + Math.round((i.amount.minor * 21) / 100), 0)
    expect(toDecimal(ofMinor('EUR', byLine))).toBe('190.88')
    const split = splitOrder(total, { by: 'item', items, shared })
    const tax = split.lines.reduce((sum, l) => sum + l.shared.minor, 0)
    expect(toDecimal(ofMinor('EUR', tax))).toBe('190.87')
    expect(toDecimal(total)).toBe('1099.78')
  })

  it('the wrong tax of 190.88 is told as a difference of one cent, not hidden', () => {
    const invoice = invoices.find((i) => i.file.includes('example8'))
    if (!invoice) throw new Error('example 8 is missing')
    const { total, items } = asOrder(invoice)
    const split = splitOrder(total, { by: 'item', items, shared: [{ kind: 'tax', amount: money('EUR', '190.88') }] })
    expect(split.shared).toContainEqual({ kind: 'difference', amount: money('EUR', '-0.01') })
  })

  it('one rate per pot: 6 % and 21 % of example 1 are 10.99 and 9.74 on their own goods', () => {
    const rates = [
      ['183.23', '10.99'],
      ['46.37', '9.74'],
    ] as const
    const sums = rates.map(([net, tax], n) => {
      const items = [{ name: net, amount: money('EUR', net), pot: pots[n] ?? potId('first') }]
      const total = ofMinor('EUR', money('EUR', net).minor + money('EUR', tax).minor)
      return splitOrder(total, { by: 'item', items, shared: [{ kind: 'tax', amount: money('EUR', tax) }] }).lines[0]
    })
    expect(sums.map((l) => l && toDecimal(l.shared))).toEqual(['10.99', '9.74'])
    expect(sums.reduce((all, l) => all + (l?.amount.minor ?? 0), 0)).toBe(money('EUR', '250.33').minor)
  })
})
