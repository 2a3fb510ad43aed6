import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  accountId,
  addDays,
  append,
  type Book,
  BookError,
  balanceOf,
  chargeOrder,
  confirmOrder,
  type Entry,
  expectRefund,
  fillPot,
  findOrder,
  holdInstalment,
  lastUndoable,
  type OrderWish,
  ofMinor,
  openBook,
  orderSums,
  potBalance,
  refundOrder,
  releaseOrder,
  reverse,
  tagOrder,
  workOut,
} from '../../src/index.ts'
import { household, order, pot, stamp, today } from './sample.ts'

const h = household([pot('a', { rule: 'allow' }), pot('b', { rule: 'allow' }), pot('c', { rule: 'allow' })])
const ids = h.pots.map((p) => p.id)
const FILL = 10_000

interface Step {
  readonly what: 'hold' | 'charge' | 'release' | 'refund' | 'expect' | 'confirm' | 'part' | 'undo'
  readonly order: number
  readonly amount: number
  readonly by: 'item' | 'share' | 'parts'
  readonly place: number
}

const steps = fc.array(
  fc.record({
    what: fc.constantFrom('hold', 'hold', 'charge', 'charge', 'release', 'refund', 'expect', 'confirm', 'part', 'undo'),
    order: fc.nat(3),
    amount: fc.integer({ min: 1, max: 6000 }),
    by: fc.constantFrom('item', 'share', 'parts'),
    place: fc.nat(2),
  }),
  { maxLength: 45 },
)

function wishOf(s: Step): OrderWish {
  const total = ofMinor('CAD', s.amount + 3)
  const shares = ids.map((id, n) => ({ pot: id, share: String(n + 1) }))
  const items = ids.map((id, n) => ({ name: id, pot: id, amount: ofMinor('CAD', Math.floor(s.amount / (n + 2))) }))
  const split: OrderWish['split'] = s.by === 'item' ? { by: 'item', items, shared: [] } : { by: 'share', shares }
  const dates = [today, addDays(today, 30), addDays(today, 60)]
  return s.by === 'parts'
    ? { shop: 's', total, split, instalments: { reserve: 'by-part', dates } }
    : { shop: 's', total, split, marginPercent: String(s.place * 5) }
}

function make(book: Book, s: Step, n: number): Entry | null {
  const o = order(s.order)
  const amount = ofMinor('CAD', s.amount)
  const state = findOrder(book, o)
  const items = state?.details.items && s.place > 0 ? { items: [s.place] } : {}
  switch (s.what) {
    case 'hold': {
      const reply = tagOrder(book, stamp(n), o, workOut(h, wishOf(s), today).purchase, 'because')
      return reply.kind === 'tagged' ? reply.entry : null
    }
    case 'charge':
      return chargeOrder(book, stamp(n), o, amount, undefined, items)
    case 'release':
      return releaseOrder(book, stamp(n), o, s.place === 0 ? 'complete' : 'lapsed')
    case 'refund':
      return refundOrder(book, stamp(n), o, amount, undefined, items)
    case 'expect':
      return expectRefund(book, stamp(n), o, amount, items)
    case 'confirm': {
      const said = confirmOrder(book, stamp(n), o, { number: `N${s.order}`, total: amount })
      return said.kind === 'confirmed' ? said.entry : null
    }
    case 'part':
      return holdInstalment(book, stamp(n), o)
    case 'undo': {
      const last = lastUndoable(book)
      return last && last.kind !== 'fill' ? reverse(book, stamp(n), last.id) : null
    }
  }
}

const filled = openBook(
  h,
  ids.map((id, n) => fillPot(h, stamp(n + 1), id, { card: ofMinor('CAD', FILL) }, 'outside')),
)

function live(all: readonly Step[], see: (book: Book) => void = () => {}): Book {
  return all.reduce((book, s, n) => {
    try {
      const entry = make(book, s, n + 10)
      const after = entry ? append(book, entry) : book
      see(after)
      return after
    } catch (cause) {
      if (cause instanceof BookError) return book
      throw cause
    }
  }, filled)
}

describe('any interleaving of hold, charge, release, refund and reversal', () => {
  it('keeps what is held at zero or more, in every pot and order, and everything sums to zero', () => {
    fc.assert(
      fc.property(steps, (all) => {
        live(all, (book) => {
          let all = balanceOf(book, 'on-order') + balanceOf(book, 'outside') + balanceOf(book, 'unplaced')
          for (const id of ids) {
            const held = balanceOf(book, `held:${id}`)
            expect(held).toBeGreaterThanOrEqual(0)
            all += held + balanceOf(book, `card:${id}`) + balanceOf(book, `cash:${id}`)
          }
          expect(all).toBe(0)
          expect(balanceOf(book, `bank:${accountId('main')}`) + balanceOf(book, 'world')).toBe(0)
          for (let n = 0; n < 4; n++) {
            for (const part of findOrder(book, order(n))?.parts ?? []) expect(part.held).toBeGreaterThanOrEqual(0)
          }
        })
      }),
      { numRuns: 150, seed: 21 },
    )
  })

  it('ends, once every hold is let go, with left = fills - net charges', () => {
    fc.assert(
      fc.property(steps, (all) => {
        let book = live(all)
        for (let n = 0; n < 4; n++) {
          const state = findOrder(book, order(n))
          if (state && orderSums(state).held > 0) book = append(book, releaseOrder(book, stamp(900 + n), order(n)))
        }
        for (const id of ids) {
          let net = 0
          for (let n = 0; n < 4; n++) {
            const part = findOrder(book, order(n))?.parts.find((p) => p.pot === id)
            net += (part?.charged ?? 0) - (part?.refunded ?? 0)
          }
          expect(potBalance(book, id).left.minor).toBe(FILL - net)
          expect(potBalance(book, id).held.minor).toBe(0)
        }
      }),
      { numRuns: 150, seed: 22 },
    )
  })

  it('no pot gets back more than it paid, and what is expected never exceeds what can come', () => {
    fc.assert(
      fc.property(steps, (all) => {
        const book = live(all)
        for (let n = 0; n < 4; n++) {
          for (const part of findOrder(book, order(n))?.parts ?? []) {
            expect(part.refunded).toBeLessThanOrEqual(part.charged)
            expect(part.expected).toBeGreaterThanOrEqual(0)
          }
        }
      }),
      { numRuns: 150, seed: 23 },
    )
  })

  it('can be taken back step by step to where it began', () => {
    fc.assert(
      fc.property(steps, (all) => {
        let book = live(all)
        for (let n = 2000, last = lastUndoable(book); last && last.kind !== 'fill'; n++, last = lastUndoable(book)) {
          book = append(book, reverse(book, stamp(n), last.id))
        }
        for (const id of ids) {
          expect(potBalance(book, id)).toEqual(potBalance(filled, id))
        }
      }),
      { numRuns: 100, seed: 24 },
    )
  })
})
