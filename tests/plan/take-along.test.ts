import { describe, expect, it } from 'vitest'
import {
  append,
  BookError,
  type BookErrorCode,
  comeBack,
  holdOrder,
  money,
  potBalance,
  potId,
  takeAlong,
  tripEntries,
} from '../../src/index.ts'
import { bookWith, cad, grow, household, one, order, pot, stamp } from '../book/sample.ts'

const home = household([pot('market'), pot('shoes'), pot('music', { sides: 'card' }), pot('old', { archived: true })])
const full = bookWith(home, [
  ['market', '80.00', '10.00'],
  ['shoes', '20.00', '0.00'],
  ['music', '0.00', '30.00'],
])
const [market, shoes, music] = [potId('market'), potId('shoes'), potId('music')]

function codeOf(action: () => unknown): BookErrorCode {
  try {
    action()
  } catch (error) {
    if (error instanceof BookError) return error.code
    throw error
  }
  throw new Error('Nothing was thrown.')
}

describe('going out', () => {
  it('carries the chosen envelopes and nothing else', () => {
    const trip = takeAlong(full, [market])
    expect(trip).toEqual({
      carry: [{ pot: market, cash: cad('80.00'), spokenFor: cad('0.00'), freeCash: cad('80.00') }],
      stay: [],
    })
  })

  it('says how much is free when an order has spent some of the notes', () => {
    const book = grow(full, (b) => holdOrder(b, stamp(50), order(1), one('market', '35.00')))
    // Worked by hand: 10.00 of the order is on the card side, so 25.00 of the 80.00 in notes is spoken for.
    expect(takeAlong(book, [market]).carry).toEqual([
      { pot: market, cash: cad('80.00'), spokenFor: cad('25.00'), freeCash: cad('55.00') },
    ])
  })

  it('leaves at home what holds no notes, or only notes that are spoken for', () => {
    const book = grow(full, (b) => holdOrder(b, stamp(50), order(1), one('shoes', '20.00')))
    expect(takeAlong(book, [shoes, music])).toEqual({
      carry: [],
      stay: [
        { pot: shoes, code: 'all-spoken-for' },
        { pot: music, code: 'no-notes' },
      ],
    })
  })

  it('takes nothing along for no purpose', () => {
    expect(takeAlong(full, [])).toEqual({ carry: [], stay: [] })
  })

  it('refuses a pot that is unknown, archived or named twice', () => {
    expect(codeOf(() => takeAlong(full, [potId('nobody')]))).toBe('unknown-pot')
    expect(codeOf(() => takeAlong(full, [potId('old')]))).toBe('archived-pot')
    expect(codeOf(() => takeAlong(full, [market, market]))).toBe('bad-lines')
  })
})

describe('coming back', () => {
  const trip = takeAlong(full, [market, shoes])

  it('reckons what was spent from either figure, and says which envelope nothing is known of', () => {
    const spent = { pot: market, spent: cad('12.40'), purpose: 'apples' }
    const left = { pot: market, left: cad('67.60'), purpose: 'apples' }
    for (const back of [spent, left]) {
      expect(comeBack(home, trip, [back])).toEqual({
        spends: [{ pot: market, amount: cad('12.40'), beyondFree: cad('0.00'), purpose: 'apples' }],
        unsaid: [shoes],
      })
    }
  })

  it('gives no line for an envelope that came back as it went', () => {
    expect(comeBack(home, trip, [{ pot: shoes, left: cad('20.00') }])).toEqual({ spends: [], unsaid: [market] })
  })

  it('tells when notes were spent that orders had spent already', () => {
    const book = grow(full, (b) => holdOrder(b, stamp(50), order(1), one('market', '35.00')))
    const { spends } = comeBack(home, takeAlong(book, [market]), [{ pot: market, left: cad('20.00') }])
    expect(spends).toEqual([{ pot: market, amount: cad('60.00'), beyondFree: cad('5.00'), purpose: '' }])
  })

  it('becomes spends in the book', () => {
    const { spends } = comeBack(home, trip, [
      { pot: market, spent: cad('12.40') },
      { pot: shoes, left: cad('3.00') },
    ])
    const entries = tripEntries(home, spends, [stamp(60), stamp(61)])
    const book = entries.reduce(append, full)
    expect(potBalance(book, market).cash).toEqual(cad('67.60'))
    expect(potBalance(book, shoes).cash).toEqual(cad('3.00'))
    expect(codeOf(() => tripEntries(home, spends, [stamp(60)]))).toBe('bad-lines')
  })

  it.each([
    ['unknown-pot', [{ pot: music, spent: cad('1.00') }]],
    ['bad-lines', [market, market].map((pot) => ({ pot, spent: cad('1.00') }))],
    ['currency-mismatch', [{ pot: market, spent: money('EUR', '1.00') }]],
    ['bad-amount', [{ pot: market, spent: cad('-1.00') }]],
    ['bad-amount', [{ pot: market, spent: cad('80.01') }]],
    ['bad-amount', [{ pot: market, left: cad('80.01') }]],
  ] as const)('refuses with %s', (code, returns) => {
    expect(codeOf(() => comeBack(home, trip, returns))).toBe(code)
  })
})
