import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { money, ofMinor, potId, type SplitHow, splitOrder, toDecimal } from '../../src/index.ts'
import { cad } from './sample.ts'

const [a, b, c] = [potId('a'), potId('b'), potId('c')]
const lines = (total: string, how: SplitHow) =>
  splitOrder(cad(total), how).lines.map((l) => [l.pot, toDecimal(l.amount), l.odd])

describe('an order put on pots', () => {
  it('on one pot is all its', () => {
    expect(lines('55.90', { by: 'pot', pot: a })).toEqual([['a', '55.90', 0]])
  })

  it('by amount, one pot taking the rest', () => {
    const how = { by: 'amount', lines: [{ pot: b, amount: cad('12.30') }], rest: a } as const
    expect(lines('55.90', how)).toEqual([
      ['b', '12.30', 0],
      ['a', '43.60', 0],
    ])
  })

  it('by share, the odd cent to the largest remainder, and it says to whom', () => {
    const shares = [
      { pot: a, share: '2' },
      { pot: b, share: '3' },
      { pot: c, share: '1' },
    ]
    // Quotas 33.33, 50, 16.67 of a hundred cents: c's remainder is the largest.
    expect(lines('1.00', { by: 'share', shares })).toEqual([
      ['a', '0.33', 0],
      ['b', '0.50', 0],
      ['c', '0.17', 1],
    ])
  })

  it('by item, shipping, tax and discount following each pot’s items', () => {
    const items = [
      { name: 'scores', amount: cad('30.00'), pot: a },
      { name: 'tea', amount: cad('10.00'), pot: b },
      { name: 'more scores', amount: cad('5.00'), pot: a },
    ]
    const shared = [
      { kind: 'shipping', amount: cad('6.00') },
      { kind: 'tax', amount: cad('2.35') },
      { kind: 'discount', amount: money('CAD', '-4.00') },
    ] as const
    const split = splitOrder(cad('49.35'), { by: 'item', items, shared })
    expect(split.method).toBe('largest-remainder')
    // 4.35 over 35.00 and 10.00: 3.3833… and 0.9666…, so the odd cent is b's.
    expect(split.lines).toEqual([
      { pot: 'a', items: cad('35.00'), shared: cad('3.38'), amount: cad('38.38'), odd: 0 },
      { pot: 'b', items: cad('10.00'), shared: cad('0.97'), amount: cad('10.97'), odd: 1 },
    ])
  })

  it('tells what a page’s figures leave unexplained as one more cost', () => {
    const items = [{ name: 'tea', amount: cad('10.00'), pot: a }]
    const split = splitOrder(cad('11.99'), { by: 'item', items, shared: [{ kind: 'tax', amount: cad('1.50') }] })
    expect(split.shared).toEqual([
      { kind: 'tax', amount: cad('1.50') },
      { kind: 'difference', amount: cad('0.49') },
    ])
    expect(split.lines[0]?.amount).toEqual(cad('11.99'))
  })

  it('spreads the shipping of things that are free by how many there are', () => {
    const items = [a, a, b].map((pot, n) => ({ name: `sample ${n}`, amount: cad('0.00'), pot }))
    expect(lines('3.00', { by: 'item', items, shared: [] })).toEqual([
      ['a', '2.00', 0],
      ['b', '1.00', 0],
    ])
  })

  it.each<[string, string, SplitHow]>([
    [
      'an item below zero',
      'bad-split',
      { by: 'item', items: [{ name: 'x', amount: money('CAD', '-1.00'), pot: a }], shared: [] },
    ],
    ['no item', 'bad-split', { by: 'item', items: [], shared: [] }],
    ['amounts beyond the order', 'bad-split', { by: 'amount', lines: [{ pot: a, amount: cad('11.00') }], rest: b }],
    ['amounts that leave some over', 'bad-split', { by: 'amount', lines: [{ pot: a, amount: cad('9.00') }] }],
    ['no pot', 'bad-split', { by: 'share', shares: [] }],
    ['shares of nothing', 'bad-split', { by: 'share', shares: [{ pot: a, share: '0' }] }],
    ['a share that is none', 'bad-split', { by: 'share', shares: [{ pot: a, share: 'half' }] }],
    [
      'another currency',
      'currency-mismatch',
      { by: 'amount', lines: [{ pot: a, amount: money('EUR', '1.00') }], rest: b },
    ],
  ])('refuses %s', (_, code, how) => {
    expect(() => splitOrder(cad('10.00'), how)).toThrow(expect.objectContaining({ code }))
  })

  it('refuses an order below zero', () => {
    expect(() => splitOrder(money('CAD', '-1.00'), { by: 'pot', pot: a })).toThrow(
      expect.objectContaining({ code: 'bad-amount' }),
    )
  })

  it('sums to the order exactly, every part less than a cent from its exact part, odd cents told', () => {
    const item = fc.record({ pot: fc.constantFrom(a, b, c), amount: fc.nat(20_000) })
    const orders = fc.record({
      items: fc.array(item, { minLength: 1, maxLength: 30 }),
      shipping: fc.nat(3000),
      discount: fc.nat(2000),
    })
    fc.assert(
      fc.property(orders, (o) => {
        const worth = o.items.reduce((sum, i) => sum + i.amount, 0)
        const off = Math.min(o.discount, worth)
        const total = worth + o.shipping - off
        const split = splitOrder(ofMinor('CAD', total), {
          by: 'item',
          items: o.items.map((i) => ({ name: 'x', pot: i.pot, amount: ofMinor('CAD', i.amount) })),
          shared: [
            { kind: 'shipping', amount: ofMinor('CAD', o.shipping) },
            { kind: 'discount', amount: ofMinor('CAD', -off) },
          ],
        })
        expect(split.lines.reduce((sum, l) => sum + l.amount.minor, 0)).toBe(total)
        const net = o.shipping - off
        let odd = 0
        for (const line of split.lines) {
          expect(line.amount.minor).toBeGreaterThanOrEqual(0)
          odd += line.odd
          if (worth === 0) continue
          const exact = (net * (line.items?.minor ?? 0)) / worth
          expect(Math.abs(line.shared.minor - exact)).toBeLessThan(1)
        }
        expect(Math.abs(odd)).toBeLessThan(split.lines.length)
      }),
      { numRuns: 300, seed: 5 },
    )
  })
})
