import { beforeEach, describe, expect, it } from 'vitest'
import { newSettings } from '../../src/background/settings.ts'
import { commit, HEAD, type Kept, loadStore, newKept, segmentKey } from '../../src/background/store.ts'
import { deviceId, type Entry, fillPot, potId } from '../../src/index.ts'
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

beforeEach(async () => {
  area = new FakeArea()
  marker = fakeMarker()
  kept = await commit(area, newKept(deviceId('laptop'), settings), many(0, 3))
})

const load = async () => loadStore(area, marker)
const whatOf = async () => {
  const loaded = await load()
  return loaded.status === 'damaged' ? loaded.what : loaded.status
}

describe('the store', () => {
  it('gives back what was committed, whatever order the browser keeps keys in', async () => {
    const loaded = await load()
    expect(loaded.status === 'ready' && loaded.kept).toEqual(kept)
  })

  it.each([1, 124, 125, 126, 200, 600])('writes %i more entries in one set() and reads them all', async (count) => {
    const sets = area.sets
    const next = await commit(area, kept, many(10, count))
    expect(area.sets).toBe(sets + 1)
    const loaded = await load()
    expect(loaded.status === 'ready' && loaded.kept).toEqual(next)
    expect(next.entries.length).toBe(3 + count)
  })

  it('grows one entry at a time over a segment border', async () => {
    for (let n = 0; n < 300; n++) kept = await commit(area, kept, [fill(100 + n)])
    const loaded = await load()
    expect(loaded.status === 'ready' && loaded.kept.entries.map((e) => e.id)).toEqual(kept.entries.map((e) => e.id))
    expect(kept.head.segments).toBe(3)
  })

  it('an empty store is new without the witness, and missing with it', async () => {
    area.data = {}
    expect(await whatOf()).toBe('new')
    marker.kept = true
    expect(await whatOf()).toBe('missing')
  })

  it('a head of a newer Tillside is not touched', async () => {
    area.data[HEAD] = { ...kept.head, format: 2, something: 'new' }
    expect(await whatOf()).toBe('newer')
  })

  it('notices damage anywhere in what is stored', async () => {
    await commit(area, kept, many(10, 200))
    const whole = JSON.stringify(area.data)
    const text = JSON.parse(whole)
    // Every key of the store, taken away, emptied, and with one digit changed.
    for (const key of Object.keys(text)) {
      const { [key]: _, ...without } = text
      area.data = without
      expect(await whatOf(), `${key} gone`).not.toBe('ready')
      area.data = { ...text, [key]: null }
      expect(await whatOf(), `${key} emptied`).not.toBe('ready')
      const changed = JSON.stringify(text[key]).replace(/-?100\b|"CAD"/, (m) => (m === '"CAD"' ? '"EUR"' : '101'))
      area.data = { ...text, [key]: JSON.parse(changed) }
      expect(await whatOf(), `${key} changed`).not.toBe('ready')
    }
    area.data = { ...text, [segmentKey(1)]: text[segmentKey(2)], [segmentKey(2)]: text[segmentKey(1)] }
    expect(await whatOf(), 'segments exchanged').toBe('segment')
    area.data = JSON.parse(whole)
    expect(await whatOf()).toBe('ready')
  })

  it('a head from before the last write does not match the later segment', async () => {
    const older = area.data[HEAD]
    await commit(area, kept, many(10, 1))
    area.data[HEAD] = older
    expect(await whatOf()).toBe('segment')
  })

  it('says when the browser has no room, and writes nothing', async () => {
    const before = JSON.stringify(area.data)
    area.failWith = new Error('Resource::kQuotaBytes quota exceeded')
    await expect(commit(area, kept, [fill(50)])).rejects.toMatchObject({ code: 'store-full' })
    area.failWith = new Error('disk I/O error')
    await expect(commit(area, kept, [fill(50)])).rejects.toMatchObject({ code: 'store-failed' })
    expect(JSON.stringify(area.data)).toBe(before)
  })
})
