import fc from 'fast-check'
import { expect, it } from 'vitest'
import { Keeper } from '../../src/background/keeper.ts'
import { newSettings } from '../../src/background/settings.ts'
import { StoreError } from '../../src/background/store.ts'
import {
  type Book,
  balances,
  chargeOrder,
  deviceId,
  type Entry,
  entriesOf,
  fillPot,
  type Money,
  type OrderId,
  ofMinor,
  openBook,
  potId,
  releaseOrder,
  reverse,
  settleMove,
  spendFrom,
  sumsOf,
  tagOrder,
} from '../../src/index.ts'
import { order, pot, stamp, today } from '../book/sample.ts'
import { FakeArea, fakeLock, fakeMarker } from './fake-area.ts'

/*
 * The keeper over a store, against a model of ten lines: what a household does in any order, with the worker stopped and
 * the disk full in between. fast-check's commands choose what is done and shrink what fails.
 */

/** The model: a pot is three numbers, an order is what it still holds, and *left* is never stored. */
class Model {
  readonly pots = [0, 1].map(() => ({ cash: 0, card: 0, held: 0 }))
  readonly orders = new Map<number, { pot: number; held: number }>()
  isFull = false
  left = (n: number): number => this.at(n).cash + this.at(n).card - this.at(n).held
  at(n: number): { cash: number; card: number; held: number } {
    const found = this.pots[n]
    if (!found) throw new Error(`no pot ${n}`)
    return found
  }
}

class Real {
  readonly area = new FakeArea()
  readonly marker = fakeMarker()
  keeper = this.start()
  #entries = 0

  start(): Keeper {
    return new Keeper(this.area, this.marker, fakeLock(), () => today)
  }

  /** Writes what `make` gives. @returns whether it was taken; a disk that is full takes nothing and says so */
  async write(model: Model, make: (book: Book, next: ReturnType<typeof stamp>) => Entry | null): Promise<boolean> {
    this.#entries += 1
    const next = stamp(this.#entries)
    const written = this.keeper.write((_, book) => {
      const entry = make(book, next)
      return { change: { entries: entry ? [entry] : [] }, answer: entry !== null }
    })
    if (!model.isFull) return written
    const said = await written.then(
      (is) => (is ? 'written' : 'nothing to write'),
      (cause: unknown) => (cause instanceof StoreError ? cause.code : cause),
    )
    expect(['nothing to write', 'store-full']).toContain(said)
    return false
  }
}

const pots = ['block', 'warn'] as const
const ids = pots.map((name) => potId(name))
const settings = {
  ...newSettings('CAD', 'America/Toronto', null, []),
  pots: pots.map((rule) => ({ ...pot(rule, { rule }), fill: { cash: 0, card: 0 } })),
}
const idOf = (n: number) => ids[n] ?? potId('none')
const cents = (minor: number): Money => ofMinor('CAD', minor)

async function agree(model: Model, real: Real): Promise<void> {
  const { book } = await real.keeper.ready()
  const found = [...balances(book).values()].map((b) => [b.cash.minor, b.card.minor, b.held.minor, b.left.minor])
  expect(found).toEqual(model.pots.map((p, n) => [p.cash, p.card, p.held, model.left(n)]))
}

type Command = fc.AsyncCommand<Model, Real>

function command(name: string, check: (m: Model) => boolean, run: (m: Model, r: Real) => Promise<void>): Command {
  return {
    check,
    run: async (m, r) => {
      await run(m, r)
      await agree(m, r)
    },
    toString: () => name,
  }
}

const always = () => true
const potN = fc.nat(1)
const amount = fc.integer({ min: 1, max: 5000 })
const orderN = fc.nat(3)

const fills = fc.tuple(potN, amount, amount).map(([n, cash, card]) =>
  command(`fill ${n} ${cash}+${card}`, always, async (m, r) => {
    const is = await r.write(m, (b, s) =>
      fillPot(b.household, s, idOf(n), { cash: cents(cash), card: cents(card) }, 'outside'),
    )
    if (is) Object.assign(m.at(n), { cash: m.at(n).cash + cash, card: m.at(n).card + card })
  }),
)
const spends = fc.tuple(potN, fc.constantFrom('cash' as const, 'card' as const), amount).map(([n, side, minor]) =>
  command(`spend ${n} ${side} ${minor}`, always, async (m, r) => {
    if (await r.write(m, (b, s) => spendFrom(b.household, s, idOf(n), side, cents(minor), ''))) m.at(n)[side] -= minor
  }),
)
const settles = fc.integer({ min: 1, max: 20 }).map((count) =>
  command(`settle ${count}`, always, async (m, r) => {
    const coin = [{ denomination: 100, count }]
    const is = await r.write(m, (b, s) => settleMove(b, s, { pot: idOf(0) }, { pot: idOf(1) }, coin))
    if (!is) return
    Object.assign(m.at(0), { cash: m.at(0).cash - 100 * count, card: m.at(0).card + 100 * count })
    Object.assign(m.at(1), { cash: m.at(1).cash + 100 * count, card: m.at(1).card - 100 * count })
  }),
)
const tags = fc.tuple(orderN, potN, amount).map(([o, n, minor]) =>
  command(
    `tag ${o} on ${n} ${minor}`,
    (m) => !m.orders.has(o),
    async (m, r) => {
      let answer = ''
      const is = await r.write(m, (b, s) => {
        const reply = tagOrder(b, s, orderOf(o), { shop: 's', lines: [{ pot: idOf(n), amount: cents(minor) }] }, 'why')
        answer = reply.kind
        return reply.kind === 'tagged' ? reply.entry : null
      })
      // The pot that blocks is short exactly where the model says so.
      expect(answer).toBe(n === 0 && m.left(0) < minor ? 'blocked' : 'tagged')
      if (!is) return
      m.at(n).held += minor
      m.orders.set(o, { pot: n, held: minor })
    },
  ),
)
const charges = fc.tuple(orderN, amount).map(([o, minor]) =>
  command(
    `charge ${o} ${minor}`,
    (m) => m.orders.has(o),
    async (m, r) => {
      if (!(await r.write(m, (b, s) => chargeOrder(b, s, orderOf(o), cents(minor))))) return
      const held = m.orders.get(o)
      if (!held) return
      const used = Math.min(held.held, minor)
      Object.assign(m.at(held.pot), { card: m.at(held.pot).card - minor, held: m.at(held.pot).held - used })
      held.held -= used
    },
  ),
)
const releases = orderN.map((o) =>
  command(
    `release ${o}`,
    (m) => (m.orders.get(o)?.held ?? 0) > 0,
    async (m, r) => {
      if (!(await r.write(m, (b, s) => releaseOrder(b, s, orderOf(o))))) return
      const held = m.orders.get(o)
      if (!held) return
      m.at(held.pot).held -= held.held
      held.held = 0
    },
  ),
)
const undoes = fc.tuple(potN, amount).map(([n, minor]) =>
  command(`fill ${n} ${minor} and take it back`, always, async (m, r) => {
    let id: Entry['id'] | null = null
    const is = await r.write(m, (b, s) => {
      id = s.id
      return fillPot(b.household, s, idOf(n), { cash: cents(minor) }, 'outside')
    })
    const filled = id
    if (is && filled !== null) expect(await r.write(m, (b, s) => reverse(b, s, filled))).toBe(true)
  }),
)
const stops = fc.constant(
  command('stop the worker', always, async (_, r) => {
    r.keeper = r.start()
  }),
)
const disks = fc.boolean().map((isFull) =>
  command(isFull ? 'the disk is full' : 'the disk has room', always, async (m, r) => {
    m.isFull = isFull
    r.area.failWith = isFull ? new Error('quota exceeded') : null
  }),
)

function orderOf(n: number): OrderId {
  return order(n)
}

it('whatever is done, in whatever order, with the worker stopped and the disk full in between: the model’s figures', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.commands([fills, spends, settles, tags, tags, charges, releases, undoes, stops, disks], { maxCommands: 40 }),
      async (commands) => {
        const model = new Model()
        const real = new Real()
        await real.keeper.create(deviceId('laptop'), settings, () => [])
        await fc.asyncModelRun(() => ({ model, real }), commands)
        // The fold of all entries is what is kept beside them.
        const whole = await real.keeper.whole()
        const { kept } = await real.keeper.ready()
        expect(sumsOf(openBook(whole.household, entriesOf(whole)))).toEqual(kept.head.sums)
      },
    ),
    { numRuns: 60, seed: 20_261_125 },
  )
})
