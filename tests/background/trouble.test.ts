import { describe, expect, it } from 'vitest'
import { Keeper } from '../../src/background/keeper.ts'
import { newSettings } from '../../src/background/settings.ts'
import {
  type CalendarDate,
  calendarDate,
  chargeOrder,
  deviceId,
  type Entry,
  fillPot,
  holdOrder,
  openBook,
  openPot,
  potBalance,
  potId,
  spendFrom,
  toDecimal,
} from '../../src/index.ts'
import { cad, household, one, order, pot, stamp, today } from '../book/sample.ts'
import { FakeArea, fakeLock, fakeMarker } from './fake-area.ts'

const a = potId('a')
const h = household([pot('a')])
const settings = {
  ...newSettings('CAD', 'America/Toronto', null, []),
  pots: [{ ...pot('a'), fill: { cash: 0, card: 0 } }],
}

async function begun() {
  const area = new FakeArea()
  const marker = fakeMarker()
  let now: CalendarDate = today
  const start = (): Keeper => new Keeper(area, marker, fakeLock(), () => now)
  const keeper = start()
  await keeper.create(deviceId('laptop'), settings, (b) => [
    openPot(b.household, stamp(100), a, { card: cad('10.00') }),
  ])
  const put = (on: Keeper, make: (book: Parameters<typeof holdOrder>[0]) => Entry) =>
    on.write((_, book) => ({ change: { entries: [make(book)] }, answer: null }))
  const turnClockTo = (day: CalendarDate): void => {
    now = day
  }
  return { area, keeper, start, put, turnClockTo }
}

const figures = async (keeper: Keeper) => {
  const { cash, card, held } = potBalance((await keeper.ready()).book, a)
  return [cash, card, held].map(toDecimal)
}

describe('a disk that is full', () => {
  it.each([1, 2])(
    'at write %i of a restore leaves the book as it was, and the restore can be made again',
    async (at) => {
      const { area, keeper, start } = await begun()
      const fills = Array.from({ length: 300 }, (_, n) =>
        fillPot(h, stamp(200 + n), a, { cash: cad('0.30') }, 'outside'),
      )
      const other = openBook(h, fills)
      const set = area.set.bind(area)
      let sets = 0
      area.set = async (items) => {
        sets += 1
        if (sets === at) throw new Error('No space left on device')
        return set(items)
      }
      await expect(keeper.replace(other, deviceId('laptop'), settings)).rejects.toMatchObject({
        code: 'store-full',
        message: expect.stringContaining('Nothing was written'),
      })
      for (const k of [keeper, start()]) expect(await figures(k)).toEqual(['0.00', '10.00', '0.00'])
      area.set = set
      await keeper.replace(other, deviceId('laptop'), settings)
      for (const k of [keeper, start()]) {
        expect(await figures(k)).toEqual(['90.00', '0.00', '0.00'])
        expect(await k.verify()).toBe(true)
      }
    },
  )

  it('still lets everything be read, and what was refused be entered again under its id', async () => {
    const { area, keeper, put } = await begun()
    area.failWith = new Error('No space left on device')
    const spend = (book: Parameters<typeof holdOrder>[0]) =>
      spendFrom(book.household, stamp(101), a, 'card', cad('4.00'), 'ink')
    await expect(put(keeper, spend)).rejects.toMatchObject({ code: 'store-full' })
    expect(await figures(keeper)).toEqual(['0.00', '10.00', '0.00'])
    expect((await keeper.entriesFrom(0)).entries.length).toBe(1)
    expect(JSON.parse(await keeper.raw())).toEqual(area.data)
    area.failWith = null
    await put(keeper, spend)
    expect(await figures(keeper)).toEqual(['0.00', '6.00', '0.00'])
  })
})

describe('a clock that goes backwards', () => {
  it('changes no figure: a charge whose id and day come before its order’s is on that order, for every later start', async () => {
    const { keeper, start, put, turnClockTo } = await begun()
    await put(keeper, (book) => holdOrder(book, stamp(120), order(1), one('a', '3.00')))
    turnClockTo(calendarDate('2026-11-01'))
    await put(keeper, (book) => chargeOrder(book, stamp(50, calendarDate('2026-11-01')), order(1), cad('3.00')))
    await put(keeper, (book) =>
      spendFrom(book.household, stamp(51, calendarDate('2026-11-01')), a, 'card', cad('1.00'), 'thread'),
    )
    for (const k of [keeper, start()]) {
      expect(await figures(k)).toEqual(['0.00', '6.00', '0.00'])
      expect(await k.verify()).toBe(true)
      expect((await k.whole()).length).toBe(4)
    }
  })
})
