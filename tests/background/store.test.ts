import { beforeEach, describe, expect, it } from 'vitest'
import { loadStore } from '../../src/background/load-store.ts'
import { newSettings } from '../../src/background/settings.ts'
import { entriesAtHand, HEAD, type Kept, segmentKey } from '../../src/background/store.ts'
import { commit, newKept } from '../../src/background/write-store.ts'
import { append, type Book, deviceId, type Entry, fillPot, openBook, potId } from '../../src/index.ts'
import { cad, household, pot, stamp } from '../book/sample.ts'
import { FakeArea, fakeMarker } from './fake-area.ts'

const h = household([pot('a')])
const settings = {
  ...newSettings('CAD', 'America/Toronto', null, []),
  pots: [{ ...pot('a'), fill: { cash: 0, card: 0 } }],
}
const fill = (n: number): Entry => fillPot(h, stamp(n), potId('a'), { cash: cad('1.00') }, 'outside')
const many = (from: number, count: number): Entry[] => Array.from({ length: count }, (_, i) => fill(from + i))

let area: FakeArea
let marker: ReturnType<typeof fakeMarker>
let kept: Kept
let book: Book

async function add(entries: readonly Entry[]): Promise<Kept> {
  book = entries.reduce(append, book)
  kept = await commit(area, kept, book, entries)
  return kept
}

beforeEach(async () => {
  area = new FakeArea()
  marker = fakeMarker()
  book = openBook(h, [])
  kept = await newKept(deviceId('laptop'), settings)
  await add(many(0, 3))
})

const load = async () => loadStore(area, marker)
const whatOf = async () => {
  const loaded = await load()
  return loaded.status === 'damaged' ? loaded.what : loaded.status
}
const idsIn = async () => {
  const loaded = await load()
  return loaded.status === 'ready' ? entriesAtHand(loaded.kept).map((e) => e.id) : loaded.status
}

describe('the store', () => {
  it('gives back what was committed, whatever order the browser keeps keys in', async () => {
    const loaded = await load()
    expect(loaded.status === 'ready' && loaded.kept).toEqual(kept)
  })

  it.each([1, 124, 125, 126, 200, 600])('writes %i more entries in one set() and reads them all', async (count) => {
    const sets = area.sets
    await add(many(10, count))
    expect(area.sets).toBe(sets + 1)
    const loaded = await load()
    expect(loaded.status === 'ready' && loaded.kept).toEqual(kept)
    expect(entriesAtHand(kept).length).toBe(3 + count)
  })

  it('grows one entry at a time over a segment border', async () => {
    for (let n = 0; n < 300; n++) await add([fill(100 + n)])
    expect(await idsIn()).toEqual(entriesAtHand(kept).map((e) => e.id))
    expect(kept.head.segments).toBe(3)
    expect(kept.head.sums).toEqual({ 'cash:a': 30_300, outside: -30_300, notes: 30_300, world: -30_300 })
  })

  it('an empty store is new without the witness, and missing with it', async () => {
    area.data = {}
    expect(await whatOf()).toBe('new')
    marker.kept = true
    expect(await whatOf()).toBe('missing')
  })

  it('segments without a head are no new household', async () => {
    delete area.data[HEAD]
    expect(await whatOf()).toBe('missing')
  })

  it('a head of a newer Tillside is not touched', async () => {
    area.data[HEAD] = { ...kept.head, format: 3, something: 'new' }
    const before = JSON.stringify(area.data)
    expect(await whatOf()).toBe('newer')
    expect(JSON.stringify(area.data)).toBe(before)
  })

  it('a head with one digit changed, emptied or gone is damaged', async () => {
    const text = JSON.stringify(area.data[HEAD])
    area.data[HEAD] = JSON.parse(text.replace('"entries":3', '"entries":4'))
    expect(await whatOf()).toBe('head')
    area.data[HEAD] = JSON.parse(text.replace('"cash:a":300', '"cash:a":900'))
    expect(await whatOf()).toBe('head')
    area.data[HEAD] = null
    expect(await whatOf()).toBe('head')
  })

  describe('with a segment that is damaged', () => {
    const whole = async (): Promise<Record<string, unknown>> => {
      await add(many(10, 500))
      return structuredClone(area.data)
    }
    const gapsOf = async () => {
      const loaded = await load()
      return loaded.status === 'ready' ? loaded.kept.window.flatMap((s, i) => (s ? [] : [i + 1])) : loaded.status
    }

    it.each([1, 2, 3, 4])('number %i: the others are read, and the balances are whole', async (n) => {
      const data = await whole()
      for (const bad of [undefined, null, [], { ...Object(data[segmentKey(1, n)]), before: 'x' }]) {
        area.data = { ...data, [segmentKey(1, n)]: bad }
        expect(await gapsOf()).toEqual([n])
      }
      const altered = JSON.stringify(data[segmentKey(1, n)]).replace(/-?100\b/, '101')
      area.data = { ...data, [segmentKey(1, n)]: JSON.parse(altered) }
      expect(await gapsOf()).toEqual([n])
      const loaded = await load()
      expect(loaded.status === 'ready' && loaded.kept.head.sums['cash:a']).toBe(50_300)
    })

    it('two exchanged: both are left out, and no other', async () => {
      const data = await whole()
      area.data = { ...data, [segmentKey(1, 1)]: data[segmentKey(1, 2)], [segmentKey(1, 2)]: data[segmentKey(1, 1)] }
      expect(await gapsOf()).toEqual([1, 2])
    })

    it('a last segment from before the last write is left out', async () => {
      await whole()
      const older = structuredClone(area.data[segmentKey(1, 4)])
      await add(many(700, 1))
      area.data[segmentKey(1, 4)] = older
      expect(await gapsOf()).toEqual([4])
    })

    it('goes on after a last one that is lost, and leaves it as it lies', async () => {
      const data = await whole()
      const scribble = { scribble: true }
      area.data = { ...data, [segmentKey(1, 4)]: scribble }
      const loaded = await load()
      if (loaded.status !== 'ready') throw new Error(loaded.status)
      kept = loaded.kept
      await add(many(800, 2))
      expect(area.data[segmentKey(1, 4)]).toEqual(scribble)
      expect([kept.head.segments, kept.head.entries, kept.head.sums['cash:a']]).toEqual([5, 514, 50_500])
      expect(await gapsOf()).toEqual([4])
    })
  })

  it('says when the browser has no room, and writes nothing', async () => {
    const before = JSON.stringify(area.data)
    area.failWith = new Error('Resource::kQuotaBytes quota exceeded')
    await expect(add([fill(50)])).rejects.toMatchObject({ code: 'store-full' })
    area.failWith = new Error('disk I/O error')
    await expect(add([fill(51)])).rejects.toMatchObject({ code: 'store-failed' })
    expect(JSON.stringify(area.data)).toBe(before)
  })
})
