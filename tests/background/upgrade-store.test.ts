import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { Keeper } from '../../src/background/keeper.ts'
import { entriesOf, findOrder, potBalance, potId, toDecimal } from '../../src/index.ts'
import { today } from '../book/sample.ts'
import { FakeArea, fakeLock, fakeMarker } from './fake-area.ts'

/** What Tillside stored in format 1: 143 entries of two pots, an order charged in part, a reversal, a watched shop. */
const format1: Record<string, unknown> = JSON.parse(
  readFileSync(new URL('fixtures/store-format-1.json', import.meta.url), 'utf8'),
)

function keeperOver(data: Record<string, unknown>): { keeper: Keeper; area: FakeArea } {
  const area = new FakeArea()
  area.data = structuredClone(data)
  return { keeper: new Keeper(area, fakeMarker(), fakeLock(), () => today), area }
}

describe('a store of format 1', () => {
  it('is read as the same household, by every later start too', async () => {
    const { keeper, area } = keeperOver(format1)
    for (const k of [keeper, new Keeper(area, fakeMarker(), fakeLock(), () => today)]) {
      const { kept, book } = await k.ready()
      expect([...entriesOf(book)].length).toBe(143)
      const of = (pot: string) => {
        const { cash, card, held } = potBalance(book, potId(pot))
        return [cash, card, held].map(toDecimal)
      }
      // 70 fills of 5.00 + 1.25, 70 spends of 0.75, of which one was taken back.
      expect(of('groceries')).toEqual(['298.25', '87.50', '0.00'])
      expect(of('piano')).toEqual(['0.00', '-4.00', '5.30'])
      expect(kept.head.watched).toEqual(['https://corvid.example'])
      const tag = kept.head.tags['corvid.example']
      expect(tag && findOrder(book, tag.order)?.parts[0]?.held).toBe(530)
    }
  })

  it('keeps the old entries until the new ones have been read back', async () => {
    const { keeper, area } = keeperOver(format1)
    await keeper.ready()
    expect(area.data['tillside:entries:000001']).toEqual(format1['tillside:entries:000001'])
    expect(await keeper.verify()).toBe(true)
    expect(Object.keys(area.data).filter((key) => key.includes('entries:'))).toEqual([])
    expect(toDecimal(potBalance((await keeper.ready()).book, potId('groceries')).cash)).toBe('298.25')
  })

  it('that is damaged anywhere is not upgraded and not written over', async () => {
    for (const key of Object.keys(format1)) {
      const altered = JSON.parse(
        JSON.stringify(format1[key]).replace(/500|"CAD"/, (m) => (m === '500' ? '501' : '"EUR"')),
      )
      const { keeper, area } = keeperOver({ ...format1, [key]: altered })
      expect(await keeper.look(), key).toMatchObject({ status: 'damaged' })
      expect(area.data[key]).toEqual(altered)
      expect(area.sets).toBe(0)
    }
  })

  it('whose upgrade cannot be written stays as it was, and is tried again', async () => {
    const { keeper, area } = keeperOver(format1)
    area.failWith = new Error('quota exceeded')
    await expect(keeper.look()).rejects.toMatchObject({ code: 'store-full' })
    expect(area.data).toEqual(format1)
    area.failWith = null
    const again = new Keeper(area, fakeMarker(), fakeLock(), () => today)
    expect((await again.look()).status).toBe('ready')
  })
})
