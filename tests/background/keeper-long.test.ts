import { describe, expect, it } from 'vitest'
import { Keeper } from '../../src/background/keeper.ts'
import { newSettings } from '../../src/background/settings.ts'
import { HEAD, segmentKey, signHead } from '../../src/background/store.ts'
import {
  chargeOrder,
  deviceId,
  type Entry,
  entriesOf,
  fillPot,
  findOrder,
  holdOrder,
  openBook,
  openPot,
  potBalance,
  potId,
  reverse,
  spendFrom,
  toDecimal,
} from '../../src/index.ts'
import { cad, household, one, order, pot, stamp, today } from '../book/sample.ts'
import { FakeArea, fakeLock, fakeMarker } from './fake-area.ts'

const a = potId('a')
const pots = [{ ...pot('a'), fill: { cash: 0, card: 0 } }]
const h = household(pots)
const settings = { ...newSettings('CAD', 'America/Toronto', null, []), pots }
const MOST = 4000

/**
 * A household with more entries than are kept at hand. The third is an order that is still held, the fourth a spend,
 * the fifth an order that was charged whole.
 */
async function long(): Promise<{ area: FakeArea; marker: ReturnType<typeof fakeMarker>; keeper: Keeper }> {
  const area = new FakeArea()
  const marker = fakeMarker()
  const keeper = keeperOver(area, marker)
  await keeper.create(deviceId('laptop'), settings, (b) => [openPot(b.household, stamp(1), a, { card: cad('500.00') })])
  const put = (make: (book: Parameters<typeof holdOrder>[0]) => Entry) =>
    keeper.write((_, book) => ({ change: { entries: [make(book)] }, answer: null }))
  await put((book) => holdOrder(book, stamp(2), order(1), one('a', '20.00')))
  await put((book) => spendFrom(book.household, stamp(3), a, 'card', cad('1.00'), 'pen'))
  await put((book) => holdOrder(book, stamp(4), order(2), one('a', '7.00')))
  await put((book) => chargeOrder(book, stamp(5), order(2), cad('7.00')))
  for (let n = 10; n < MOST; n += 400) {
    await keeper.write(() => ({
      change: {
        entries: Array.from({ length: 400 }, (_, i) => fillPot(h, stamp(n + i), a, { cash: cad('0.10') }, 'outside')),
      },
      answer: null,
    }))
  }
  return { area, marker, keeper }
}

function keeperOver(area: FakeArea, marker = fakeMarker()): Keeper {
  return new Keeper(area, marker, fakeLock(), () => today)
}

const figures = async (keeper: Keeper) => {
  const { cash, card, held } = potBalance((await keeper.ready()).book, a)
  return [cash, card, held].map(toDecimal)
}

describe('a book longer than what is kept at hand', () => {
  it('has the balances of all entries, reading only the latest, and the orders that still hold money', async () => {
    const { area, marker, keeper } = await long()
    expect(await figures(keeper)).toEqual(['400.00', '492.00', '20.00'])
    area.reads = 0
    const later = keeperOver(area, marker)
    expect(await figures(later)).toEqual(['400.00', '492.00', '20.00'])
    expect(area.reads).toBeLessThan(28)
    const { book } = await later.ready()
    expect(book.before).toBeGreaterThan(1000)
    expect(findOrder(book, order(1))?.total).toBe(2000)
    expect(findOrder(book, order(2))).toBe(null)
  })

  it('writes as much for the next entry as a young book does', async () => {
    const { area, keeper } = await long()
    const young = new FakeArea()
    const other = keeperOver(young)
    await other.create(deviceId('laptop'), settings, (b) => [openPot(b.household, stamp(1), a, { card: cad('5.00') })])
    const bytesOf = async (k: Keeper, store: FakeArea): Promise<number> => {
      const before = store.set.bind(store)
      let bytes = 0
      store.set = (items) => {
        bytes += JSON.stringify(items).length
        return before(items)
      }
      await k.write((_, book) => ({
        change: { entries: [spendFrom(book.household, stamp(9_000), a, 'cash', cad('0.05'), 'x')] },
        answer: null,
      }))
      return bytes
    }
    const segment = JSON.stringify(area.data[segmentKey(1, 1)]).length
    expect(await bytesOf(keeper, area)).toBeLessThan((await bytesOf(other, young)) + segment)
  })

  it('runs a command that names an old entry on the whole book', async () => {
    const { area, marker } = await long()
    const keeper = keeperOver(area, marker)
    const spend = stamp(3).id
    await keeper.write((_, book) => ({ change: { entries: [reverse(book, stamp(8000), spend)] }, answer: null }))
    expect(await figures(keeper)).toEqual(['400.00', '493.00', '20.00'])
    await expect(
      keeper.write((_, book) => ({ change: { entries: [reverse(book, stamp(8001), spend)] }, answer: null })),
    ).rejects.toMatchObject({ code: 'already-reversed' })
    expect(await figures(keeperOver(area, marker))).toEqual(['400.00', '493.00', '20.00'])
    expect((await keeper.ready()).book.before).toBeGreaterThan(1000)
  })

  it('still refuses what no entry has', async () => {
    const { keeper } = await long()
    const wrong = (): Promise<unknown> =>
      keeper.write((_, book) => ({ change: { entries: [reverse(book, stamp(8000), stamp(7777).id)] }, answer: null }))
    await expect(wrong()).rejects.toMatchObject({ code: 'unknown-entry' })
  })

  it('gives all its entries, in order, a message at a time', async () => {
    const { keeper } = await long()
    const all: Entry[] = []
    let messages = 0
    for (let place = 0; ; messages++) {
      const part = await keeper.entriesFrom(place)
      all.push(...part.entries)
      if (part.next === part.end) break
      place = part.next
    }
    expect(messages).toBeGreaterThan(0)
    const whole = await keeper.whole()
    expect(all.map((e) => e.id)).toEqual([...entriesOf(whole)].map((e) => e.id))
    expect(openBook(h, all).sums).toEqual(whole.sums)
    // From the middle of a segment on.
    expect((await keeper.entriesFrom(200)).entries[0]?.id).toBe(all[200]?.id)
  })

  it('looked through, is found well', async () => {
    const { keeper, area } = await long()
    const before = JSON.stringify(area.data)
    expect(await keeper.verify()).toBe(true)
    expect(JSON.stringify(area.data)).toBe(before)
  })

  it('whose kept balances are wrong has them mended from the entries, and says so', async () => {
    const { area, marker, keeper } = await long()
    const { sum: _, ...head } = (await keeper.ready()).kept.head
    area.data[HEAD] = await signHead({ ...head, sums: { ...head.sums, 'cash:a': 1, outside: 40_000 - 1 - 40_000 } })
    const wrong = keeperOver(area, marker)
    expect((await figures(wrong))[0]).toBe('0.01')
    expect(await wrong.verify()).toBe(false)
    for (const k of [wrong, keeperOver(area, marker)]) {
      expect(await figures(k)).toEqual(['400.00', '492.00', '20.00'])
      expect((await k.ready()).kept.head.mended).toEqual([{ date: today, what: 'sums' }])
    }
    expect(await wrong.verify()).toBe(true)
  })

  it('that lost an old segment keeps its balances, notes the gap, and goes on', async () => {
    const { area, marker } = await long()
    area.data[segmentKey(1, 2)] = null
    const keeper = keeperOver(area, marker)
    expect(await keeper.verify()).toBe(false)
    expect((await keeper.ready()).kept.head.gaps).toEqual([2])
    await keeper.write((_, book) => ({
      change: { entries: [spendFrom(book.household, stamp(9_000), a, 'cash', cad('1.00'), 'x')] },
      answer: null,
    }))
    expect(await figures(keeperOver(area, marker))).toEqual(['399.00', '492.00', '20.00'])
    // What lies in the gap is not there; what lies beside it is.
    const take = (n: number, id: Entry['id']): Promise<unknown> =>
      keeper.write((_, book) => ({ change: { entries: [reverse(book, stamp(n), id)] }, answer: null }))
    await expect(take(9001, stamp(200).id)).rejects.toMatchObject({ code: 'unknown-entry' })
    await take(9002, stamp(3).id)
    expect(await figures(keeper)).toEqual(['399.00', '493.00', '20.00'])
  })

  it('replaced by another book as a whole, is that book; until the head is written it is the old one', async () => {
    const { area, marker, keeper } = await long()
    const other = openBook(h, [openPot(h, stamp(1), a, { card: cad('3.00') })])
    const set = area.set.bind(area)
    area.set = async (items) => {
      if (HEAD in items) throw new Error('the power went')
      return set(items)
    }
    await expect(keeper.replace(other, deviceId('laptop'), settings)).rejects.toMatchObject({ code: 'store-failed' })
    expect(await figures(keeperOver(area, marker))).toEqual(['400.00', '492.00', '20.00'])
    area.set = set
    await keeper.replace(other, deviceId('laptop'), settings)
    expect(await figures(keeper)).toEqual(['0.00', '3.00', '0.00'])
    expect(await figures(keeperOver(area, marker))).toEqual(['0.00', '3.00', '0.00'])
    expect(Object.keys(area.data).length).toBe(3)
  })
})
