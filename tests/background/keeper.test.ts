import { describe, expect, it } from 'vitest'
import { Keeper } from '../../src/background/keeper.ts'
import { newSettings } from '../../src/background/settings.ts'
import { HEAD } from '../../src/background/store.ts'
import { deviceId, findOrder, openPot, potBalance, potId, spendFrom, tagOrder, toDecimal } from '../../src/index.ts'
import { cad, household, one, order, pot, stamp, today } from '../book/sample.ts'
import { FakeArea, fakeLock, fakeMarker } from './fake-area.ts'

const a = potId('a')
const pots = [{ ...pot('a'), fill: { cash: 0, card: 2000 } }]
const settings = {
  ...newSettings('CAD', 'America/Toronto', { rhythm: 'weekly', first: today }, []),
  pots,
}

async function household10(area = new FakeArea(), marker = fakeMarker()) {
  const keeper = keeperOf(area, marker)
  await keeper.create(deviceId('laptop'), settings, (b) => [openPot(b.household, stamp(1), a, { card: cad('10.00') })])
  return { keeper, area, marker }
}

function keeperOf(area: FakeArea, marker = fakeMarker()) {
  return new Keeper(area, marker, fakeLock(), () => today)
}

const left = async (keeper: Keeper) => toDecimal(potBalance((await keeper.ready()).book, a).left)

describe('the keeper', () => {
  it('has no household at first and says so to whoever wants to write', async () => {
    const keeper = keeperOf(new FakeArea())
    expect((await keeper.look()).status).toBe('new')
    await expect(keeper.write(() => ({ change: {}, answer: 1 }))).rejects.toMatchObject({ code: 'no-household' })
  })

  it('begins one once', async () => {
    const { keeper } = await household10()
    expect(await left(keeper)).toBe('10.00')
    await expect(keeper.create(deviceId('laptop'), settings, () => [])).rejects.toMatchObject({
      code: 'household-exists',
    })
  })

  it('knows the pay dates ahead', async () => {
    const { keeper } = await household10()
    expect((await keeper.ready()).book.household.payDates.slice(0, 2)).toEqual(['2026-11-25', '2026-12-02'])
  })

  it('answers after the write, and another keeper over the same store agrees', async () => {
    const { keeper, area, marker } = await household10()
    await keeper.write((_, book) => ({
      change: { entries: [spendFrom(book.household, stamp(2), a, 'card', cad('4.00'), 'x')] },
      answer: null,
    }))
    expect(await left(keeper)).toBe('6.00')
    expect(await left(keeperOf(area, marker))).toBe('6.00')
  })

  it('decides each of many writes asked at once from the book the one before left', async () => {
    const { keeper, area, marker } = await household10()
    const replies = await Promise.all(
      Array.from({ length: 20 }, (_, n) =>
        keeper.write((_, book) => {
          const reply = tagOrder(book, stamp(10 + n), order(n), one('a', '1.00'))
          return { change: { entries: reply.kind === 'tagged' ? [reply.entry] : [] }, answer: reply.kind }
        }),
      ),
    )
    expect(replies.filter((r) => r === 'tagged').length).toBe(10)
    expect(await left(keeper)).toBe('0.00')
    expect(await left(keeperOf(area, marker))).toBe('0.00')
  })

  it('a write the store refuses leaves the book as it was, and can be asked again with the same id', async () => {
    const { keeper, area } = await household10()
    const tag = () =>
      keeper.write((_, book) => {
        const reply = tagOrder(book, stamp(10), order(1), one('a', '3.00'))
        return { change: { entries: reply.kind === 'tagged' ? [reply.entry] : [] }, answer: reply.kind }
      })
    area.failWith = new Error('quota exceeded')
    await expect(tag()).rejects.toMatchObject({ code: 'store-full' })
    expect(await left(keeper)).toBe('10.00')
    area.failWith = null
    expect(await tag()).toBe('tagged')
    expect(findOrder((await keeper.ready()).book, order(1))?.total).toBe(300)
  })

  it('an entry the book refuses is never stored', async () => {
    const { keeper, area } = await household10()
    const before = JSON.stringify(area.data)
    const wrong = { ...spendFrom(household(pots), stamp(2), a, 'card', cad('4.00'), 'x'), places: [] }
    await expect(keeper.write(() => ({ change: { entries: [wrong] }, answer: null }))).rejects.toMatchObject({
      code: 'sides-disagree',
    })
    expect(JSON.stringify(area.data)).toBe(before)
  })

  it('writes nothing over a damaged store, and gives its raw data', async () => {
    const { area, marker } = await household10()
    area.data[HEAD] = { scribble: true }
    const before = JSON.stringify(area.data)
    const keeper = keeperOf(area, marker)
    expect(await keeper.look()).toEqual({ status: 'damaged', what: 'head' })
    await expect(keeper.write(() => ({ change: {}, answer: 1 }))).rejects.toMatchObject({ code: 'store-damaged' })
    await expect(keeper.create(deviceId('x'), settings, () => [])).rejects.toMatchObject({ code: 'store-damaged' })
    expect(JSON.stringify(area.data)).toBe(before)
    expect(JSON.parse(await keeper.raw())).toEqual(area.data)
  })

  it('does not take an emptied store for a new household', async () => {
    const { area, marker } = await household10()
    area.data = {}
    const keeper = keeperOf(area, marker)
    expect(await keeper.look()).toEqual({ status: 'damaged', what: 'missing' })
    await expect(keeper.create(deviceId('x'), settings, () => [])).rejects.toMatchObject({ code: 'store-damaged' })
  })

  it('puts the witness back when a crash came between the first write and it', async () => {
    const { area, marker } = await household10()
    marker.kept = false
    await keeperOf(area, marker).look()
    expect(marker.kept).toBe(true)
  })

  it('forgets a household wholly', async () => {
    const { keeper, area, marker } = await household10()
    await keeper.erase()
    expect([Object.keys(area.data), marker.kept, (await keeper.look()).status]).toEqual([[], false, 'new'])
  })
})
