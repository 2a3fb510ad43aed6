import { describe, expect, it } from 'vitest'
import {
  accountId,
  append,
  type Book,
  BookError,
  balances,
  MoneyError,
  money,
  openBook,
  openPot,
  type PotId,
  type SettleMove,
  type Settlement,
  type SettleOptions,
  settle,
  settleMove,
} from '../../src/index.ts'
import { cad, household, pot, stamp } from '../book/sample.ts'

type Pieces = Readonly<Record<number, number>>

const id = (name: string): PotId => pot(name).id
const pieces = (of: Pieces) =>
  Object.entries(of).map(([denomination, count]) => ({ denomination: Number(denomination), count }))

/** Settles envelopes by name: what lies in each, and what it should hold. */
function settled(envelopes: Readonly<Record<string, readonly [Pieces, string]>>, options?: SettleOptions): Settlement {
  const rows = Object.entries(envelopes)
  return settle(
    rows.map(([name, [held]]) => ({ pot: id(name), pieces: pieces(held) })),
    rows.map(([name, [, target]]) => ({ pot: id(name), cash: cad(target) })),
    options,
  )
}

/** A move as one would say it: `market>shoes 1x2000`. */
function said({ from, to, count, denomination }: SettleMove): string {
  const name = (place: SettleMove['from']) => (place === 'bank' ? 'bank' : place.pot)
  return `${name(from)}>${name(to)} ${count}x${denomination}`
}

function codeOf(action: () => unknown): string {
  try {
    action()
  } catch (error) {
    if (error instanceof MoneyError || error instanceof BookError) return error.code
    throw error
  }
  throw new Error('Nothing was thrown.')
}

// No outside source: each worked by hand, the count of pieces by trying to do with fewer.
describe('settling by hand', () => {
  it('moves a note straight from the envelope that has it to the one that needs it', () => {
    const found = settled({ market: [{ 2000: 3 }, '40.00'], shoes: [{ 1000: 1 }, '30.00'] })
    expect(found.moves.map(said)).toEqual(['market>shoes 1x2000'])
    expect(found).toMatchObject({ moved: 1, movedAtLeast: 1, proven: true, missing: 0, toBank: [], fromBank: [] })
  })

  it('takes to the bank what orders have spent, and brings what is missing', () => {
    const found = settled({ market: [{ 2000: 3 }, '20.00'], shoes: [{}, '5.00'] })
    expect(found.moves.map(said)).toEqual(['market>bank 2x2000', 'bank>shoes 1x500'])
    expect(found.toBank).toEqual([{ denomination: 2000, count: 2 }])
    expect(found.fromBank).toEqual([{ denomination: 500, count: 1 }])
  })

  it('may give change out of the same envelope', () => {
    // 35.00 is missing: two twenties in and the five out, or 20, 10 and 5 in; and no two pieces do it.
    const found = settled({ market: [{ 500: 1 }, '40.00'] })
    expect(found.moved).toBe(3)
  })

  it('rounds the target down to what pieces can express and names the rest', () => {
    const found = settled({ market: [{}, '12.34'] })
    expect(found.envelopes[0]).toMatchObject({
      cash: cad('12.30'),
      cashChange: cad('12.30'),
      cardChange: cad('-12.30'),
      rests: [{ code: 'below-smallest-piece', amount: cad('0.04') }],
    })
  })

  it('needs no moves where every envelope is right', () => {
    expect(settled({ market: [{ 2000: 2 }, '40.00'], shoes: [{}, '0.00'] })).toMatchObject({ moves: [], proven: true })
  })

  it('comes as near as it can without a bank trip, and says what is missing and what is left over', () => {
    const short = settled({ market: [{ 2000: 1 }, '20.00'], shoes: [{}, '10.00'] }, { bank: 'none' })
    expect(short).toMatchObject({ moves: [], missing: 1000, missingAtLeast: 1000, proven: true })
    expect(short.envelopes[1]?.rests).toEqual([{ code: 'pieces-missing', amount: cad('10.00') }])
    const long = settled({ market: [{ 2000: 2 }, '20.00'], shoes: [{}, '0.00'] }, { bank: 'none' })
    expect(long).toMatchObject({ moves: [], missing: 0, proven: true })
    expect(long.envelopes[0]?.rests).toEqual([{ code: 'left-over', amount: cad('20.00') }])
  })

  it('swaps between envelopes without a bank', () => {
    const found = settled({ market: [{ 2000: 1 }, '10.00'], shoes: [{ 1000: 2 }, '30.00'] }, { bank: 'none' })
    expect(found.moves.map(said)).toEqual(['market>shoes 1x2000', 'shoes>market 1x1000'])
  })

  it('shares out what the bank does not give', () => {
    const coins = { denominations: [2000, 500], bankGives: [2000] }
    const found = settled({ market: [{ 500: 3 }, '25.00'], shoes: [{}, '45.00'], rent: [{}, '5.00'] }, coins)
    expect(found).toMatchObject({ missing: 0, proven: true })
    // Three fives: one stays, two go to the others; a twenty for the market and two for the shoes come from the bank.
    expect(found.moved).toBe(5)
    const lacking = settled({ market: [{ 500: 1 }, '25.00'], shoes: [{}, '45.00'] }, coins)
    expect(lacking).toMatchObject({ missing: 500, missingAtLeast: 500, moved: 3, proven: true })
  })

  it('lists moves between envelopes first, then the bank trip, what is taken there before what is brought', () => {
    const found = settled({
      a: [{ 5000: 2, 2000: 1 }, '20.00'],
      b: [{}, '50.00'],
      c: [{ 10000: 1 }, '5.00'],
    })
    expect(found.moves.map(said)).toEqual(['a>b 1x5000', 'a>bank 1x5000', 'c>bank 1x10000', 'bank>c 1x500'])
  })

  it('keeps the two figures of every pot apart: left never changes when the moves are entered', () => {
    const home = household([pot('market'), pot('shoes')])
    const opened = openBook(home, [
      openPot(home, stamp(1), id('market'), { cash: cad('60.00'), card: cad('5.00') }),
      openPot(home, stamp(2), id('shoes'), { cash: cad('10.00'), card: cad('15.00') }),
    ])
    const found = settled({ market: [{ 2000: 3 }, '35.00'], shoes: [{ 1000: 1 }, '30.00'] })
    const enter = (book: Book, move: SettleMove, at: number): Book => {
      const end = (place: SettleMove['from']) =>
        place === 'bank' ? { account: accountId('main') } : { pot: place.pot }
      return append(book, settleMove(book, stamp(10 + at), end(move.from), end(move.to), [move]))
    }
    const after = balances(found.moves.reduce(enter, opened))
    for (const [name, cash, left] of [
      ['market', '35.00', '65.00'],
      ['shoes', '30.00', '25.00'],
    ] as const) {
      expect(after.get(id(name))).toMatchObject({ cash: cad(cash), left: cad(left) })
    }
  })

  it('is plain data, and the same every time', () => {
    const envelopes = { market: [{ 2000: 3, 25: 7 }, '31.15'], shoes: [{ 1000: 1, 10: 4 }, '30.35'] } as const
    const found = settled(envelopes)
    expect(JSON.parse(JSON.stringify(found))).toEqual(found)
    expect(structuredClone(found)).toEqual(settled(envelopes))
  })
})

describe('bad input', () => {
  it('settles nothing with no pots', () => {
    expect(settle([], [])).toMatchObject({ moves: [], envelopes: [], moved: 0, proven: true })
  })

  it('takes a pot with a target and no count for an empty envelope', () => {
    expect(settle([], [{ pot: id('market'), cash: cad('20.00') }]).fromBank).toEqual([{ denomination: 2000, count: 1 }])
  })

  it.each([
    ['unknown-piece', () => settled({ market: [{ 700: 1 }, '20.00'] })],
    ['bad-count', () => settled({ market: [{ 2000: -1 }, '20.00'] })],
    ['bad-count', () => settled({ market: [{ 2000: 1.5 }, '20.00'] })],
    [
      'bad-count',
      () =>
        settle(
          [{ pot: id('a'), pieces: [...pieces({ 500: 1 }), ...pieces({ 500: 1 })] }],
          [{ pot: id('a'), cash: cad('5.00') }],
        ),
    ],
    ['negative-amount', () => settled({ market: [{}, '-20.00'] })],
    [
      'currency-mismatch',
      () =>
        settle(
          [],
          [
            { pot: id('a'), cash: cad('5.00') },
            { pot: id('b'), cash: money('EUR', '5.00') },
          ],
        ),
    ],
    ['unknown-pot', () => settle([{ pot: id('a'), pieces: [] }], [])],
    [
      'bad-lines',
      () =>
        settle(
          [],
          [
            { pot: id('a'), cash: cad('5.00') },
            { pot: id('a'), cash: cad('5.00') },
          ],
        ),
    ],
    ['bad-denominations', () => settled({ market: [{}, '5.00'] }, { denominations: [0] })],
    ['unknown-piece', () => settled({ market: [{}, '5.00'] }, { bankGives: [777] })],
    ['bad-denominations', () => settle([], [{ pot: id('a'), cash: money('KWD', '5.000') }])],
  ] as const)('refuses with %s', (code, action) => {
    expect(codeOf(action)).toBe(code)
  })
})
