import { beforeEach, describe, expect, it, vi } from 'vitest'
import { dispatch } from '../../src/background/dispatch.ts'
import { Keeper } from '../../src/background/keeper.ts'
import type { StatementPosting } from '../../src/background/monthend-protocol.ts'
import type { OwnCommands } from '../../src/background/protocol.ts'
import {
  accountId,
  balanceOf,
  balances,
  type CalendarDate,
  calendarDate,
  closedThrough,
  deviceId,
  type EntryId,
  entriesOf,
  entryId,
  findOrder,
  holdOrder,
  monthName,
  type OrderId,
  orderSums,
  postedLines,
  potId,
  spendFrom,
} from '../../src/index.ts'
import { cad, one, order, stamp, uuid } from '../book/sample.ts'
import { FakeArea, fakeLock, fakeMarker } from './fake-area.ts'

vi.mock('webextension-polyfill', () => import('./fake-browser.ts'))

let today: CalendarDate
let area: FakeArea
let context: Parameters<typeof dispatch>[0]
const [a, b] = [potId('a'), potId('b')]
const [main, visa] = [accountId('main'), accountId('visa')]
const id = (n: number) => entryId(uuid(n))

function open(over: FakeArea): Parameters<typeof dispatch>[0] {
  let n = 0
  return {
    keeper: new Keeper(over, fakeMarker(), fakeLock(), () => today),
    now: () => Date.parse(`${today}T15:00:00Z`),
    today: () => today,
    newId: () => entryId(uuid(1_000_000 + n++)),
    newDevice: () => deviceId('laptop'),
  }
}

async function ask<C extends keyof OwnCommands>(
  command: C,
  payload: OwnCommands[C]['ask'],
): Promise<OwnCommands[C]['answer']> {
  const reply = await dispatch(context, { command, ask: payload }, { kind: 'own' })
  if (!reply.ok) throw Object.assign(new Error(reply.message), { code: reply.code })
  return reply.value as OwnCommands[C]['answer']
}

const book = async () => (await context.keeper.ready()).book
const from = (line: string, date = '2026-11-20', account = main) => ({ line, account, date: calendarDate(date) })
const spend = (n: number, line: string, amount = '4.00'): StatementPosting => ({
  kind: 'spend',
  from: from(line),
  pots: [{ id: id(n), pot: a, amount }],
  purpose: 'OWL PARKING',
})
const charge = (
  n: number,
  line: string,
  amount: string,
  completes: { id: EntryId; order: OrderId }[] = [],
): StatementPosting => ({
  kind: 'charge',
  parts: [{ id: id(n), from: from(line), order: order(1), amount, foreign: null }],
  completes,
})

beforeEach(async () => {
  today = calendarDate('2026-12-01')
  area = new FakeArea()
  context = open(area)
  const pot = { kind: 'everyday', rule: 'block', sides: 'both', floor: '', fillCash: '', fillCard: '' } as const
  today = calendarDate('2026-11-02')
  await ask('household.create', {
    currency: 'CAD',
    timeZone: 'America/Toronto',
    schedule: null,
    pots: [
      { ...pot, id: a, name: 'Aa', openCash: '60.00', openCard: '100.00' },
      { ...pot, id: b, name: 'Bb', openCash: '', openCard: '20.00' },
    ],
  })
  await ask('account.save', { account: visa, name: 'Visa', kind: 'credit' })
  today = calendarDate('2026-12-01')
  await context.keeper.write((_, k) => ({
    change: { entries: [holdOrder(k, stamp(900, calendarDate('2026-11-18')), order(1), one('a', '30.00'))] },
    answer: null,
  }))
})

describe('posting a statement', () => {
  it('posts every kind, and the book knows the lines', async () => {
    const answer = await ask('statement.post', {
      posts: [
        { kind: 'refund', id: id(3), from: from('R'), order: order(1), amount: '5.00' },
        charge(1, 'C', '28.00', [{ id: id(2), order: order(1) }]),
        spend(4, 'S'),
        { kind: 'pay', id: id(5), from: from('P'), amount: '500.00' },
        { kind: 'into-pots', from: from('G'), pots: [{ id: id(6), pot: b, amount: '15.00' }] },
        { kind: 'drawn', from: from('D'), pots: [{ id: id(7), pot: a, amount: '40.00' }] },
        {
          kind: 'transfer',
          id: id(8),
          from: from('T'),
          source: main,
          target: visa,
          amount: '10.00',
          other: { id: id(9), from: from('U', '2026-11-21', visa) },
        },
      ],
    })
    expect(answer).toEqual({ posted: 7, already: [] })
    const now = await book()
    expect([...postedLines(now)].sort()).toEqual(['C', 'D', 'G', 'P', 'R', 'S', 'T', 'U'])
    const state = findOrder(now, order(1))
    expect(state && orderSums(state)).toMatchObject({ held: 0, charged: 2800, refunded: 500 })
    expect(balances(now).get(a)).toMatchObject({ cash: cad('100.00'), card: cad('73.00') })
    expect(balances(now).get(b)).toMatchObject({ card: cad('35.00') })
    expect(balanceOf(now, `credit:${visa}`)).toBe(1000)
    expect(balanceOf(now, `bank:${main}`)).toBe(12_000 - 2800 + 500 - 400 + 50_000 + 1500 - 4000 - 1000)
    expect([...entriesOf(now)].find((e) => e.line === 'S')).toMatchObject({
      date: '2026-11-20',
      purpose: 'OWL PARKING',
    })
  })

  it('posts nothing twice: not asked again, not from another page, not within one batch', async () => {
    expect(await ask('statement.post', { posts: [spend(1, 'S')] })).toEqual({ posted: 1, already: [] })
    expect(await ask('statement.post', { posts: [spend(1, 'S')] })).toEqual({ posted: 0, already: ['S'] })
    expect(await ask('statement.post', { posts: [spend(2, 'S'), spend(3, 'S2'), spend(4, 'S2')] })).toEqual({
      posted: 1,
      already: ['S', 'S2'],
    })
    expect(balances(await book()).get(a)?.card).toEqual(cad('92.00'))
    // A restarted worker knows as well.
    context = open(area)
    expect((await ask('statement.post', { posts: [spend(7, 'S')] })).posted).toBe(0)
  })

  it('writes all or nothing', async () => {
    const posts = [
      spend(1, 'S'),
      { kind: 'refund', id: id(2), from: from('R'), order: order(1), amount: '5.00' } as const,
    ]
    await expect(ask('statement.post', { posts })).rejects.toMatchObject({ code: 'bad-amount' })
    expect(postedLines(await book()).size).toBe(0)
    await expect(ask('statement.post', { posts: [spend(1, 'S', '0')] })).rejects.toMatchObject({ code: 'bad-amount' })
    await expect(ask('statement.post', { posts: [spend(1, 'S', '4,00')] })).rejects.toMatchObject({
      code: 'not-a-decimal',
    })
  })

  it('shows what the book has already by a line', async () => {
    await ask('fill.add', {
      id: id(1),
      pot: a,
      cash: '20.00',
      card: '',
      from: 'unplaced',
      date: calendarDate('2026-11-19'),
    })
    await ask('statement.post', { posts: [{ kind: 'seen', id: id(2), from: from('W'), entries: [id(1)] }] })
    expect([...postedLines(await book())]).toEqual(['W'])
    const unknown = { kind: 'seen', id: id(3), from: from('X'), entries: [id(77)] } as const
    await expect(ask('statement.post', { posts: [unknown] })).rejects.toMatchObject({ code: 'unknown-entry' })
  })

  it('pays a renewal: an order and its charge', async () => {
    await ask('renewal.save', {
      id: 'paper',
      name: 'Wren Daily',
      shop: null,
      pot: b,
      amount: '9.00',
      first: calendarDate('2026-01-15'),
      every: { unit: 'month', count: 1 },
      end: null,
    })
    const renewal = {
      kind: 'renewal',
      id: id(1),
      charge: id(2),
      order: order(5),
      renewal: 'paper',
      due: calendarDate('2026-11-15'),
      from: from('N', '2026-11-16'),
      amount: '9.50',
    } as const
    expect((await ask('statement.post', { posts: [renewal] })).posted).toBe(1)
    expect(balances(await book()).get(b)).toMatchObject({ card: cad('10.50'), held: cad('0.00') })
    expect((await ask('statement.post', { posts: [renewal] })).posted).toBe(0)
  })

  it('dates a line of a closed month in the open one', async () => {
    await ask('month.close', { id: id(1), month: monthName('2026-11'), sweeps: [], budgets: [] })
    await ask('statement.post', { posts: [spend(2, 'S')] })
    expect([...entriesOf(await book())].at(-1)).toMatchObject({ date: '2026-12-01', happened: '2026-11-20' })
    await ask('spend.add', {
      id: id(3),
      pot: a,
      side: 'cash',
      amount: '1.00',
      purpose: '',
      date: calendarDate('2026-11-09'),
    })
    expect([...entriesOf(await book())].at(-1)).toMatchObject({ date: '2026-12-01', happened: '2026-11-09' })
  })

  it('remembers a bank’s files', async () => {
    const look = await ask('statement.remember', { key: 'CA12', account: visa, mapping: null })
    expect(look).toMatchObject({ view: { statements: { accounts: { CA12: 'visa' }, mappings: [] } } })
    await expect(
      ask('statement.remember', { key: 'x', account: accountId('none'), mapping: null }),
    ).rejects.toMatchObject({
      code: 'unknown-account',
    })
    await expect(ask('account.save', { account: visa, name: 'Visa', kind: 'bank' })).rejects.toMatchObject({
      code: 'bad-household',
    })
  })

  it('is refused to a shop’s page and to a panel', async () => {
    for (const command of [
      'statement.post',
      'count.save',
      'settle.tick',
      'month.close',
      'month.reopen',
      'statement.agree',
    ]) {
      for (const sender of [
        { kind: 'shop', tab: 7, frame: 0, url: new URL('https://corvid.example/') },
        { kind: 'panel', tab: 7, frame: 3 },
      ] as const) {
        expect(await dispatch(context, { command, ask: {} }, sender), command).toMatchObject({
          ok: false,
          code: 'not-allowed',
        })
      }
    }
  })
})

describe('count and settle', () => {
  const pieces = [{ denomination: 500, count: 11 }]

  it('are entered once, and only what is said to be posted is', async () => {
    const count = { counts: [{ id: id(1), pot: a, pieces, post: false }] }
    await ask('count.save', count)
    await ask('count.save', count)
    expect(balances(await book()).get(a)?.cash).toEqual(cad('60.00'))
    await ask('count.save', { counts: [{ id: id(2), pot: a, pieces, post: true }] })
    expect(balances(await book()).get(a)?.cash).toEqual(cad('55.00'))
    const tick = { id: id(3), from: { pot: a }, to: { pot: b }, pieces: [{ denomination: 500, count: 1 }] }
    await ask('settle.tick', tick)
    await ask('settle.tick', tick)
    const now = balances(await book())
    expect([now.get(a)?.cash.minor, now.get(b)?.cash.minor, now.get(b)?.left.minor]).toEqual([5000, 500, 2000])
    await expect(
      ask('count.save', { counts: [{ id: id(4), pot: a, pieces: [{ denomination: 3, count: 1 }], post: false }] }),
    ).rejects.toMatchObject({ code: 'unknown-piece' })
  })
})

describe('closing a month', () => {
  const november = monthName('2026-11')
  const sweep = { id: id(2), pot: a, to: { pot: b }, cash: '', card: '10.00' }

  it('sweeps, signs off and opens the next month in one go', async () => {
    const budgets = [{ pot: a, monthly: '62.00' }]
    const close = { id: id(1), month: november, sweeps: [sweep], budgets }
    const look = await ask('month.close', close)
    expect(look).toMatchObject({ view: { household: { pots: [{ plan: { monthly: 6200 } }, {}] } } })
    await ask('month.close', close)
    const now = await book()
    expect(closedThrough(now)).toBe('2026-11-30')
    expect([...entriesOf(now)].filter((e) => e.kind === 'sweep' || e.kind === 'close')).toHaveLength(2)
    expect(balances(now).get(b)?.card).toEqual(cad('30.00'))
    const reopened = await ask('month.reopen', { id: id(5), month: november, reason: 'a receipt turned up' })
    expect(reopened.status).toBe('ready')
    expect(closedThrough(await book())).toBe('2026-10-31')
  })

  it('asked by two windows at once is done once: the other is told, and nothing is swept twice', async () => {
    const other = { id: id(11), month: november, sweeps: [{ ...sweep, id: id(12) }], budgets: [] }
    const outcomes = await Promise.allSettled([
      ask('month.close', { id: id(1), month: november, sweeps: [sweep], budgets: [] }),
      ask('month.close', other),
    ])
    expect(outcomes.map((o) => (o.status === 'fulfilled' ? 'closed' : o.reason.code)).sort()).toEqual([
      'closed',
      'month-closed',
    ])
    for (const now of [await book(), (await open(area).keeper.ready()).book]) {
      expect([...entriesOf(now)].filter((e) => e.kind === 'close' || e.kind === 'sweep')).toHaveLength(2)
      expect([balances(now).get(a)?.card, balances(now).get(b)?.card]).toEqual([cad('90.00'), cad('30.00')])
    }
  })

  it('sweeps nothing when it cannot close', async () => {
    const later = { id: id(1), month: monthName('2026-12'), sweeps: [sweep], budgets: [] }
    await expect(ask('month.close', later)).rejects.toMatchObject({ code: 'month-not-over' })
    const tooMuch = { id: id(1), month: november, sweeps: [{ ...sweep, card: '500.00' }], budgets: [] }
    await expect(ask('month.close', tooMuch)).rejects.toMatchObject({ code: 'bad-amount' })
    expect(balances(await book()).get(b)?.card).toEqual(cad('20.00'))
  })

  it('signs off the whole book, however long it is', async () => {
    const many = Array.from({ length: 3300 }, (_, n) => n)
    for (let at = 0; at < many.length; at += 300) {
      await context.keeper.write((_, k) => ({
        change: {
          entries: many
            .slice(at, at + 300)
            .map((n) =>
              spendFrom(k.household, stamp(10_000 + n, calendarDate('2026-11-03')), a, 'card', cad('0.01'), ''),
            ),
        },
        answer: null,
      }))
    }
    const { book: held } = await context.keeper.ready()
    expect(held.before).toBeGreaterThan(0)
    await ask('month.close', { id: id(1), month: november, sweeps: [], budgets: [] })
    const close = [...entriesOf(await book())].find((e) => e.kind === 'close')
    expect(close).toMatchObject({ summary: { pots: [{ opened: { cash: 6000, card: 10_000 } }, {}] } })
    const accounts = close?.kind === 'close' ? close.summary.accounts.map((x) => x.balance) : []
    expect(accounts).toEqual([12_000 - 3300, 0])
  }, 30_000)
})

it('agrees a statement’s balance', async () => {
  const agreed = { id: id(1), account: main, on: calendarDate('2026-11-30'), balance: '120.00' }
  await ask('statement.agree', agreed)
  await ask('statement.agree', agreed)
  expect([...entriesOf(await book())].filter((e) => e.kind === 'agree')).toMatchObject([{ balance: 12_000 }])
})
