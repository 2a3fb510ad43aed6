import { beforeEach, describe, expect, it, vi } from 'vitest'
import { dispatch } from '../../src/background/dispatch.ts'
import { Keeper } from '../../src/background/keeper.ts'
import type { HouseholdView, Look, OwnCommands } from '../../src/background/protocol.ts'
import { calendarDate, deviceId, entryId, type PotPlan, planFill, potId, toDecimal } from '../../src/index.ts'
import { cad, uuid } from '../book/sample.ts'
import { FakeArea, fakeLock, fakeMarker } from './fake-area.ts'

vi.mock('webextension-polyfill', () => import('./fake-browser.ts'))

const today = calendarDate('2026-11-25')
let area: FakeArea
let context: Parameters<typeof dispatch>[0]

function contextOn(over: FakeArea): Parameters<typeof dispatch>[0] {
  let n = 0
  return {
    keeper: new Keeper(over, fakeMarker(), fakeLock(), () => today),
    now: () => Date.parse('2026-11-25T15:00:00Z'),
    today: () => today,
    newId: () => entryId(uuid(1_000_000 + n++)),
    newDevice: () => deviceId('laptop'),
  }
}

async function ask<C extends keyof OwnCommands>(command: C, payload: OwnCommands[C]['ask']): Promise<HouseholdView> {
  const reply = await dispatch(context, { command, ask: payload }, { kind: 'own' })
  if (!reply.ok) throw Object.assign(new Error(reply.message), { code: reply.code })
  const look = reply.value as Look
  if (look.status !== 'ready') throw new Error(look.status)
  return look.view
}

const pot = { kind: 'everyday', rule: 'block', sides: 'both', floor: '', openCash: '', openCard: '' } as const
const bread = potId('bread')
const tyres = potId('tyres')

beforeEach(async () => {
  area = new FakeArea()
  context = contextOn(area)
  await ask('household.create', {
    currency: 'CAD',
    timeZone: 'America/Toronto',
    schedule: { rhythm: 'every-two-weeks', first: calendarDate('2026-11-27') },
    pots: [
      { ...pot, id: bread, name: 'Bread', fillCash: '80', fillCard: '', openCash: '4.00' },
      {
        ...pot,
        id: tyres,
        name: 'Tyres',
        kind: 'sinking',
        sides: 'card',
        fillCash: '',
        fillCard: '10',
        openCard: '50',
      },
    ],
  })
})

const id = (n: number) => entryId(uuid(n))
const payday = (amount = '724.00', breadCash = '80.00'): OwnCommands['fill.plan']['ask'] => ({
  id: id(1),
  date: today,
  amount,
  fills: [
    { id: id(2), pot: bread, cash: breadCash, card: '' },
    { id: id(3), pot: tyres, cash: '', card: '12.50' },
  ],
})
const left = (view: HouseholdView, of = bread) => toDecimal(view.balances[of]?.left ?? cad('0'))

describe('fill.plan', () => {
  it('enters pay and fills at once; asked again it changes nothing', async () => {
    const view = await ask('fill.plan', payday())
    expect([left(view), left(view, tyres), toDecimal(view.unplaced)]).toEqual(['84.00', '62.50', '631.50'])
    const again = await ask('fill.plan', payday())
    expect(again.recent).toHaveLength(view.recent.length)
    expect(again.balances).toEqual(view.balances)
  })

  it('the same ids with other amounts are refused and nothing is written', async () => {
    const before = await ask('fill.plan', payday())
    await expect(ask('fill.plan', payday('724.00', '90.00'))).rejects.toMatchObject({ code: 'id-reused' })
    expect((await ask('book.look', {})).balances).toEqual(before.balances)
  })

  it('all or none: one bad fill keeps the pay out as well', async () => {
    const wrong = { ...payday(), fills: [...payday().fills, { id: id(4), pot: tyres, cash: '5', card: '' }] }
    await expect(ask('fill.plan', wrong)).rejects.toMatchObject({ code: 'wrong-side' })
    const view = await ask('book.look', {})
    expect([left(view), toDecimal(view.unplaced)]).toEqual(['4.00', '0.00'])
  })

  it('without a pay it places what had no pot; nothing at all is refused', async () => {
    await ask('pay.add', { id: id(9), amount: '100', date: today })
    const view = await ask('fill.plan', payday('0'))
    expect(toDecimal(view.unplaced)).toBe('7.50')
    await expect(ask('fill.plan', { ...payday('0'), id: id(8), fills: [] })).rejects.toMatchObject({
      code: 'bad-amount',
    })
  })

  it('is taken back as one, and read back from the store after the worker was stopped', async () => {
    await ask('fill.plan', payday())
    context = contextOn(area)
    const undo = { payday: id(1), ids: [id(11), id(12), id(13)] }
    await expect(ask('payday.undo', { ...undo, ids: [id(11)] })).rejects.toMatchObject({ code: 'bad-id' })
    const view = await ask('payday.undo', undo)
    expect([left(view), left(view, tyres), toDecimal(view.unplaced)]).toEqual(['4.00', '50.00', '0.00'])
    expect((await ask('payday.undo', undo)).balances).toEqual(view.balances)
    await expect(ask('payday.undo', { payday: id(1), ids: [id(21)] })).rejects.toMatchObject({ code: 'unknown-entry' })
  })
})

describe('what is planned', () => {
  const goal = { target: 30_000, due: calendarDate('2027-06-01') }
  const plan = (more: Partial<PotPlan> = {}) => ({ pot: tyres, plan: { goal, ...more }, fill: { cash: 0, card: 1000 } })

  it('a goal begins on the day it is set, with what is in; it begins anew when it changes', async () => {
    const since = (view: HouseholdView) => view.household.pots.find((p) => p.id === tyres)?.plan?.goal?.since
    expect(since(await ask('pot.plan', plan()))).toEqual({ date: today, in: 5_000 })
    await ask('fill.plan', payday())
    expect(since(await ask('pot.plan', plan({ importance: 1 })))).toEqual({ date: today, in: 5_000 })
    const changed = { ...plan(), plan: { goal: { ...goal, target: 40_000 } } }
    expect(since(await ask('pot.plan', changed))).toEqual({ date: today, in: 6_250 })
  })

  it('stays when the pot is changed in its form, and after the worker was stopped', async () => {
    await ask('pot.plan', plan())
    context = contextOn(area)
    const form = {
      ...pot,
      id: tyres,
      name: 'Winter tyres',
      kind: 'sinking',
      sides: 'card',
      fillCash: '',
      fillCard: '10',
    } as const
    const view = await ask('pot.save', { id: id(5), pot: form, archived: false })
    const kept = view.household.pots.find((p) => p.id === tyres)
    expect([kept?.name, kept?.plan?.goal?.target]).toEqual(['Winter tyres', 30_000])
  })

  it('a plan that cannot be is refused by the book', async () => {
    const wrong = { ...plan(), plan: { goal: { ...goal, target: 0 } } }
    await expect(ask('pot.plan', wrong)).rejects.toMatchObject({ code: 'bad-household' })
    await expect(ask('pot.plan', { ...plan(), pot: potId('none') })).rejects.toMatchObject({ code: 'unknown-pot' })
  })

  it('the schedule of the first run is an earner; several earners give the pay dates of all', async () => {
    const before = await ask('book.look', {})
    expect(before.household.earners?.map((e) => e.schedules.length)).toEqual([1])
    const view = await ask('plan.save', {
      earners: [
        { id: 'ola', name: 'Ola', pay: 90_000, schedules: [{ rhythm: 'last-working-day', first: today }] },
        { id: 'ada', name: 'Ada', pay: 0, schedules: [{ rhythm: 'monthly', first: today, day: 5, weekend: 'before' }] },
      ],
      planning: { sinkingFunds: 'first', roundTo: 500 },
    })
    expect(view.household.payDates.slice(0, 3)).toEqual(['2026-11-30', '2026-12-04', '2026-12-31'])
    expect(view.household.planning?.roundTo).toBe(500)
    await expect(
      ask('plan.save', { earners: [], planning: { sinkingFunds: 'first', roundTo: 0 } }),
    ).rejects.toMatchObject({ code: 'bad-household' })
    expect(planFill).toBeTypeOf('function')
  })
})

describe('sheet.add', () => {
  it('lines of a paper sheet go in together or not at all, and once', async () => {
    const line = { pot: bread, date: today, side: 'cash', purpose: 'rolls' } as const
    const lines = [
      { ...line, id: id(31), way: 'out', amount: '1.50' },
      { ...line, id: id(32), way: 'in', amount: '20.00' },
    ] as const
    const view = await ask('sheet.add', { lines })
    expect(left(view)).toBe('22.50')
    expect((await ask('sheet.add', { lines })).balances).toEqual(view.balances)
    const wrong = [
      { ...line, id: id(33), way: 'out', amount: '2.00' },
      { ...line, id: id(34), way: 'out', amount: '0' },
    ] as const
    await expect(ask('sheet.add', { lines: wrong })).rejects.toMatchObject({ code: 'bad-amount' })
    expect(left(await ask('book.look', {}))).toBe('22.50')
  })
})
