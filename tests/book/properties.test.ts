import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  accountId,
  append,
  type Book,
  BookError,
  balanceOf,
  balances,
  chargeOrder,
  type Entry,
  entriesOf,
  fillPot,
  findOrder,
  lastUndoable,
  type OrderId,
  ofMinor,
  openBook,
  type PotId,
  potBalance,
  receivePay,
  refundOrder,
  releaseOrder,
  reverse,
  spendFrom,
  tagOrder,
} from '../../src/index.ts'
import { household, order, pot, stamp } from './sample.ts'

const h = household([
  pot('block'),
  pot('floor', { floor: 500 }),
  pot('warn', { rule: 'warn' }),
  pot('allow', { rule: 'allow' }),
])
const empty = openBook(h, [])
const potIds = h.pots.map((p) => p.id)

/** One thing a household may do, as numbers; what cannot be done at that moment is left out. */
interface Step {
  readonly what: 'fill' | 'pay' | 'spend' | 'tag' | 'charge' | 'release' | 'refund' | 'undo'
  readonly pot: number
  readonly other: number
  readonly order: number
  readonly amount: number
}

const step: fc.Arbitrary<Step> = fc.record({
  what: fc.constantFrom('fill', 'pay', 'spend', 'tag', 'tag', 'tag', 'charge', 'release', 'refund', 'undo'),
  pot: fc.nat(3),
  other: fc.nat(3),
  order: fc.nat(5),
  amount: fc.integer({ min: 0, max: 5000 }),
})
const steps = fc.array(step, { maxLength: 40 })

function idOf(n: number): PotId {
  const id = potIds[n]
  if (id === undefined) throw new Error(`no pot ${n}`)
  return id
}

function make(book: Book, s: Step, n: number): Entry | null {
  const id = idOf(s.pot)
  const o: OrderId = order(s.order)
  const amount = ofMinor('CAD', s.amount)
  switch (s.what) {
    case 'fill':
      return fillPot(h, stamp(n), id, { cash: amount, card: ofMinor('CAD', 5000 - s.amount) }, 'outside')
    case 'pay':
      return receivePay(h, stamp(n), amount)
    case 'spend':
      return spendFrom(h, stamp(n), id, s.order % 2 ? 'cash' : 'card', amount, 'something')
    case 'tag': {
      const half = ofMinor('CAD', Math.floor(s.amount / 2))
      const lines = [
        { pot: id, amount },
        { pot: idOf(s.other), amount: half },
      ]
      const reply = tagOrder(book, stamp(n), o, { shop: 's', lines }, s.order % 3 ? 'because' : undefined)
      return reply.kind === 'tagged' ? reply.entry : null
    }
    case 'charge':
      return chargeOrder(book, stamp(n), o, amount)
    case 'release':
      return releaseOrder(book, stamp(n), o)
    case 'refund':
      return refundOrder(book, stamp(n), o, amount)
    case 'undo': {
      const last = lastUndoable(book)
      return last && reverse(book, stamp(n), last.id)
    }
  }
}

/** Lives through the steps; what the book refuses with a BookError changes nothing. */
function live(all: readonly Step[], see: (before: Book, after: Book, s: Step) => void = () => {}): Book {
  return all.reduce((book, s, n) => {
    try {
      const entry = make(book, s, n)
      const after = entry ? append(book, entry) : book
      see(book, after, s)
      return after
    } catch (cause) {
      if (cause instanceof BookError) return book
      throw cause
    }
  }, empty)
}

const sums = (book: Book) => Object.fromEntries([...book.slots].map(([name, slot]) => [name, book.sums[slot]]))

describe('whatever a household does', () => {
  it('all postings sum to zero, by purpose and by place, and the two ledgers agree', () => {
    fc.assert(
      fc.property(steps, (all) => {
        const book = live(all)
        let purposes = balanceOf(book, 'on-order') + balanceOf(book, 'outside') + balanceOf(book, 'over-short')
        let [cash, card] = [0, balanceOf(book, 'unplaced')]
        for (const id of potIds) {
          purposes += balanceOf(book, `held:${id}`)
          cash += balanceOf(book, `cash:${id}`)
          card += balanceOf(book, `card:${id}`)
        }
        expect(purposes + cash + card).toBe(0)
        expect(balanceOf(book, 'notes')).toBe(cash)
        expect(balanceOf(book, `bank:${accountId('main')}`)).toBe(card)
        expect(balanceOf(book, 'notes') + card + balanceOf(book, 'world')).toBe(0)
      }),
      { numRuns: 300 },
    )
  })

  it('the fold is the plain sum of all postings', () => {
    fc.assert(
      fc.property(steps, (all) => {
        const book = live(all)
        const plain = new Map<string, number>()
        for (const entry of entriesOf(book)) {
          for (const p of [...entry.postings, ...entry.places])
            plain.set(p.account, (plain.get(p.account) ?? 0) + p.amount)
        }
        for (const [name, slot] of book.slots) expect(book.sums[slot]).toBe(plain.get(name) ?? 0)
      }),
    )
  })

  it('replaying entries changes nothing', () => {
    fc.assert(
      fc.property(steps, (all) => {
        const book = live(all)
        const entries = [...entriesOf(book)]
        expect(entries.reduce(append, book)).toBe(book)
        expect(sums(openBook(h, [...entries, ...entries]))).toEqual(sums(book))
      }),
    )
  })

  it('the order in which entries arrive does not matter', () => {
    fc.assert(
      fc.property(
        steps.chain((all) => {
          const entries = [...entriesOf(live(all))]
          return fc.record({
            entries: fc.constant(entries),
            shuffled: fc.shuffledSubarray(entries, { minLength: entries.length }),
          })
        }),
        ({ entries, shuffled }) => {
          expect(sums(openBook(h, shuffled))).toEqual(sums(openBook(h, entries)))
        },
      ),
    )
  })

  it('tagging never takes a block pot below zero, nor further below', () => {
    fc.assert(
      fc.property(steps, (all) => {
        live(all, (before, after, s) => {
          if (s.what !== 'tag') return
          for (const id of [idOf(0), idOf(1)]) {
            const [was, is] = [potBalance(before, id).left.minor, potBalance(after, id).left.minor]
            if (is < was) expect(is).toBeGreaterThanOrEqual(0)
          }
        })
      }),
      { numRuns: 500 },
    )
  })

  it('nothing is ever held for less than nothing, and held is what the orders hold', () => {
    fc.assert(
      fc.property(steps, (all) => {
        const book = live(all)
        for (const id of potIds) {
          const ofOrders = [0, 1, 2, 3, 4, 5].reduce(
            (sum, n) => sum + (findOrder(book, order(n))?.parts.find((p) => p.pot === id)?.held ?? 0),
            0,
          )
          expect(potBalance(book, id).held.minor).toBe(ofOrders)
          expect(ofOrders).toBeGreaterThanOrEqual(0)
        }
        expect(potIds.reduce((sum, id) => sum + balanceOf(book, `held:${id}`), balanceOf(book, 'on-order'))).toBe(0)
      }),
      { numRuns: 300 },
    )
  })

  it('left is cash + card - held, and free cash is the notes that are not spoken for', () => {
    fc.assert(
      fc.property(steps, (all) => {
        for (const b of balances(live(all)).values()) {
          expect(b.left.minor).toBe(b.cash.minor + b.card.minor - b.held.minor)
          expect(b.freeCash.minor + b.spokenFor.minor).toBe(b.cash.minor)
          expect(b.spokenFor.minor).toBeGreaterThanOrEqual(0)
          // Not more can be spent at a counter than is left by any means, unless the card side has its own surplus.
          expect(b.freeCash.minor).toBe(Math.min(b.cash.minor, b.left.minor))
        }
      }),
    )
  })

  it('undoing everything leaves nothing', () => {
    fc.assert(
      fc.property(steps, (all) => {
        let book = live(all)
        for (let n = 1000, last = lastUndoable(book); last; n++, last = lastUndoable(book)) {
          book = append(book, reverse(book, stamp(n), last.id))
        }
        expect(Object.values(sums(book)).every((s) => s === 0)).toBe(true)
      }),
    )
  })
})
