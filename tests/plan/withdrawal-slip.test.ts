import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  BookError,
  type CashFill,
  MoneyError,
  money,
  type PieceWish,
  PlanError,
  potId,
  type SlipOptions,
  type WithdrawalSlip,
  withdrawalSlip,
} from '../../src/index.ts'
import { ofMinor } from '../../src/money/money.ts'
import { cad } from '../book/sample.ts'

type Wanted = Readonly<Record<string, string | readonly [string, PieceWish]>>

const fills = (wanted: Wanted): CashFill[] =>
  Object.entries(wanted).map(([name, want]) => {
    const pot = potId(name)
    return typeof want === 'string' ? { pot, cash: cad(want) } : { pot, cash: cad(want[0]), wish: want[1] }
  })
const slip = (wanted: Wanted, options?: SlipOptions): WithdrawalSlip => withdrawalSlip(fills(wanted), options)
const said = (pieces: WithdrawalSlip['ask']): string => pieces.map((p) => `${p.count}x${p.denomination}`).join(' ')
const machine = (gives: readonly number[], multipleOf?: number): SlipOptions => ({
  bank: { kind: 'machine', gives, ...(multipleOf === undefined ? {} : { multipleOf }) },
})

function codeOf(action: () => unknown): string {
  try {
    action()
  } catch (error) {
    if (error instanceof MoneyError || error instanceof BookError || error instanceof PlanError) return error.code
    throw error
  }
  throw new Error('Nothing was thrown.')
}

// No outside source: worked by hand.
describe('what to ask for', () => {
  it('asks for the fewest pieces and says which go where', () => {
    const found = slip({ market: '60.00', shoes: '35.00' })
    expect(said(found.ask)).toBe('1x5000 1x2000 2x1000 1x500')
    expect(found).toMatchObject({ asked: 9500, placed: 9500, placedAtMost: 9500, pieces: 5, proven: true })
  })

  it('keeps what no coin expresses on the card side', () => {
    const found = slip({ market: '12.34' })
    expect(found.envelopes[0]).toMatchObject({
      placed: cad('12.30'),
      onCard: cad('0.04'),
      rests: [{ code: 'below-smallest-piece', amount: cad('0.04') }],
    })
  })

  it('leaves coins out when asked to', () => {
    const found = slip({ market: '12.34' }, { coins: false, atHand: [{ denomination: 200, count: 1 }] })
    expect(said(found.ask)).toBe('1x1000')
    expect(found.envelopes[0]?.rests).toEqual([{ code: 'below-smallest-piece', amount: cad('2.34') }])
  })

  it('uses what is at hand first, each piece once', () => {
    const found = slip({ market: '40.00', shoes: '40.00' }, { atHand: [{ denomination: 2000, count: 3 }] })
    expect([said(found.fromHand), said(found.ask)]).toEqual(['3x2000', '1x2000'])
  })

  it('needs no bank when all is at hand', () => {
    const found = slip({ market: '20.00' }, { atHand: [{ denomination: 500, count: 4 }] })
    expect(found).toMatchObject({ ask: [], asked: 0, pieces: 0, proven: true, bankServesNone: false })
    expect(found.envelopes[0]?.fromHand).toEqual([{ denomination: 500, count: 4 }])
  })
})

describe('wishes', () => {
  it('gives the market small notes and the reserve large ones', () => {
    const found = slip({ market: ['60.00', 'small'], reserve: ['300.00', 'large'], shoes: '60.00' })
    expect(found.envelopes.map(({ fromBank, wish }) => [said(fromBank), wish])).toEqual([
      ['6x1000', 'met'],
      ['3x10000', 'met'],
      ['1x5000 1x1000', 'none'],
    ])
  })

  it('takes a limit in minor units', () => {
    expect(said(slip({ market: ['60.00', { upTo: 2000 }] }).ask)).toBe('3x2000')
    expect(said(slip({ reserve: ['180.00', { from: 5000 }] }).ask)).toBe('1x10000 1x5000 1x2000 1x1000')
  })

  it('comes as near to a wish as the bank can, and says that it was missed', () => {
    const found = slip({ market: ['180.00', { upTo: 1000 }] }, machine([2000, 5000, 10000]))
    expect([said(found.ask), found.envelopes[0]?.wish]).toEqual(['9x2000', 'missed'])
  })

  it('places money before it meets a wish', () => {
    const found = slip({ market: ['50.00', { upTo: 2000 }] }, machine([2000, 5000]))
    expect([said(found.ask), found.placed, found.envelopes[0]?.wish]).toEqual(['1x5000', 5000, 'missed'])
  })

  it('keeps small change at hand away from who wants large notes', () => {
    const atHand = [{ denomination: 1000, count: 10 }]
    const found = slip({ market: ['50.00', 'small'], reserve: ['100.00', 'large'] }, { atHand })
    expect(found.envelopes.map(({ fromHand, fromBank }) => [said(fromHand), said(fromBank)])).toEqual([
      ['5x1000', ''],
      ['', '1x10000'],
    ])
  })
})

describe('a machine', () => {
  it('gives what a largest note first would miss', () => {
    expect(said(slip({ market: '60.00', shoes: '80.00', rent: '110.00' }, machine([2000, 5000])).ask)).toBe(
      '1x5000 10x2000',
    )
  })

  it('that can serve no pot is an answer', () => {
    const found = slip({ market: '15.00', shoes: '10.00' }, machine([2000]))
    expect(found).toMatchObject({ ask: [], asked: 0, placed: 0, proven: true, bankServesNone: true })
    expect(found.envelopes[0]).toMatchObject({
      onCard: cad('15.00'),
      rests: [{ code: 'bank-cannot-give', amount: cad('15.00') }],
    })
  })

  it('is asked for a sum it takes', () => {
    const found = slip({ market: '50.00', shoes: '50.00', rent: '50.00' }, machine([2000, 5000], 2000))
    // 150.00 is no multiple of 20.00; 140.00 is the most that is.
    expect([found.asked, found.placed, found.placedAtMost]).toEqual([14_000, 14_000, 15_000])
    expect(found.proven).toBe(false)
  })

  it('whose notes are all multiples is proven like a counter', () => {
    const found = slip({ market: '55.00', shoes: '95.00' }, machine([2000, 10000], 2000))
    expect(found).toMatchObject({ asked: 12_000, pieces: 6, proven: true })
    expect(found.envelopes.map(({ onCard }) => onCard)).toEqual([cad('15.00'), cad('15.00')])
  })
})

describe('bad input', () => {
  it('asks for nothing with no pots, or nothing to fill', () => {
    expect(slip({})).toMatchObject({ ask: [], envelopes: [], proven: true, bankServesNone: false })
    expect(slip({ market: '0.00' })).toMatchObject({ ask: [], pieces: 0, proven: true, bankServesNone: false })
  })

  it('takes a bank that gives nothing', () => {
    expect(slip({ market: '20.00' }, machine([]))).toMatchObject({ ask: [], bankServesNone: true })
  })

  it.each([
    ['negative-amount', () => slip({ market: '-5.00' })],
    [
      'currency-mismatch',
      () => withdrawalSlip([...fills({ a: '5.00' }), { pot: potId('b'), cash: money('EUR', '5.00') }]),
    ],
    ['bad-lines', () => withdrawalSlip([...fills({ a: '5.00' }), ...fills({ a: '5.00' })])],
    ['unknown-piece', () => slip({ a: '5.00' }, { atHand: [{ denomination: 700, count: 1 }] })],
    ['bad-count', () => slip({ a: '5.00' }, { atHand: [{ denomination: 500, count: -1 }] })],
    ['unknown-piece', () => slip({ a: '5.00' }, machine([700]))],
    ['bad-options', () => slip({ a: '5.00' }, machine([2000], 0))],
    ['bad-denominations', () => slip({ a: ['5.00', { upTo: 0 }] })],
    ['bad-denominations', () => slip({ a: '5.00' }, { denominations: [2.5] })],
    ['bad-denominations', () => withdrawalSlip([{ pot: potId('a'), cash: money('KWD', '5.000') }])],
  ] as const)('refuses with %s', (code, action) => {
    expect(codeOf(action)).toBe(code)
  })
})

describe('whatever is wanted', () => {
  const denominations = [5, 10, 25, 100, 200, 500, 1000, 2000, 5000, 10_000]
  const wish = fc.constantFrom<PieceWish>('usual', 'small', 'large', { upTo: 500 }, { from: 2000 })
  const drawn = fc.record({
    wanted: fc.array(fc.record({ cash: fc.integer({ min: 0, max: 40_000 }), wish }), { minLength: 1, maxLength: 6 }),
    hand: fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 10, maxLength: 10 }),
    bank: fc.constantFrom<SlipOptions>({}, machine([2000, 5000]), machine([2000], 2000), { coins: false }),
  })

  it('adds up: pieces, envelopes, hand and bank', () => {
    fc.assert(
      fc.property(drawn, ({ wanted, hand, bank }) => {
        const atHand = denominations.map((denomination, at) => ({ denomination, count: hand[at] ?? 0 }))
        const all = wanted.map(({ cash, wish }, index) => ({
          pot: potId(`pot${index}`),
          cash: ofMinor('CAD', cash),
          wish,
        }))
        const found = withdrawalSlip(all, { ...bank, atHand })
        const worth = (pieces: WithdrawalSlip['ask']) => pieces.reduce((sum, p) => sum + p.denomination * p.count, 0)
        const count = (lists: readonly WithdrawalSlip['ask'][], denomination: number) =>
          lists.flat().reduce((sum, p) => sum + (p.denomination === denomination ? p.count : 0), 0)
        for (const envelope of found.envelopes) {
          expect(worth(envelope.fromHand) + worth(envelope.fromBank)).toBe(envelope.placed.minor)
          expect(envelope.placed.minor + envelope.onCard.minor).toBe(envelope.wanted.minor)
          expect(envelope.rests.reduce((sum, { amount }) => sum + amount.minor, 0)).toBe(envelope.onCard.minor)
        }
        for (const { denomination, count: there } of atHand) {
          const used = count([found.fromHand], denomination)
          const asked = count([found.ask], denomination)
          expect(used).toBeLessThanOrEqual(there)
          // Nothing is asked of the bank while the same piece lies at home.
          if (asked > 0) expect(used).toBe(there)
          expect(
            count(
              found.envelopes.map((e) => e.fromHand),
              denomination,
            ),
          ).toBe(used)
          expect(
            count(
              found.envelopes.map((e) => e.fromBank),
              denomination,
            ),
          ).toBe(asked)
        }
        expect(found.asked).toBe(worth(found.ask))
        expect(found.placed).toBeLessThanOrEqual(found.placedAtMost)
        expect(found.piecesAtLeast).toBeLessThanOrEqual(found.pieces)
        expect(withdrawalSlip(all, { ...bank, atHand })).toEqual(found)
      }),
      { seed: 51, numRuns: 25 },
    )
  }, 30_000)
})
