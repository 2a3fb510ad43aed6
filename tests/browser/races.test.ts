import { v7 } from 'uuid'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { startDemoShop } from '../../demo-data/shop/server.ts'
import { calendarDate, entryId, monthName, orderId, potId } from '../../src/index.ts'
import { type Extension, openExtension } from './extension.ts'
import { goToCheckout } from './guarded-shop.ts'

const TABS = 8
const TAGS = 100

let shop: Awaited<ReturnType<typeof startDemoShop>>
let extension: Extension

beforeAll(async () => {
  shop = await startDemoShop({ delayMs: 0 })
  extension = await openExtension()
})

afterAll(async () => {
  await extension.close()
  await shop.close()
})

it('eight tabs tag a hundred orders each to a pot with money for half: half pass, and it ends at nothing', {
  timeout: 120_000,
}, async () => {
  const pot = potId('race')
  await extension.ask('household.create', {
    currency: 'CAD',
    timeZone: 'America/Toronto',
    schedule: null,
    pots: [
      {
        id: pot,
        name: 'Race',
        kind: 'everyday',
        rule: 'block',
        sides: 'both',
        floor: '',
        fillCash: '',
        fillCard: '',
        openCash: '0',
        openCard: String((TABS * TAGS) / 2),
      },
    ],
  })
  const page = await goToCheckout(extension, shop, 'corvid', 'manuscript:1')
  const tab = await extension.tabId(page)
  await extension.ask('checkout.look', { at: { tab } })
  const own = await Promise.all(Array.from({ length: TABS }, () => extension.popup()))
  const counts = await Promise.all(
    own.map((tagger) =>
      tagger.evaluate(
        async ({ asks }) => {
          const kinds: string[] = []
          // Four at a time from each tab, so that the tabs' orders mix in any way.
          const lane = async (from: number): Promise<void> => {
            for (let i = from; i < asks.length; i += 4) {
              const reply = await chrome.runtime.sendMessage({ command: 'order.tag', ask: asks[i] })
              kinds.push(reply.ok ? reply.value.kind : reply.code)
            }
          }
          await Promise.all([lane(0), lane(1), lane(2), lane(3)])
          return kinds
        },
        { asks: Array.from({ length: TAGS }, () => tagAsk(tab, pot)) },
      ),
    ),
  )
  const all = counts.flat()
  expect(all.filter((kind) => kind === 'tagged').length).toBe((TABS * TAGS) / 2)
  expect(all.filter((kind) => kind === 'blocked').length).toBe((TABS * TAGS) / 2)
  const { balances } = await extension.book()
  expect([balances[pot]?.left.minor, balances[pot]?.held.minor]).toEqual([0, (TABS * TAGS * 100) / 2])
})

it('a spend at the popup, a fill at the desk and another window at once: every figure has all three', async () => {
  const before = (await extension.book()).balances[potId('race')]
  const date = calendarDate('2026-11-25')
  const pages = await Promise.all([extension.popup(), extension.popup(), extension.popup()])
  const asks = pages.map((_, i) => ({
    id: entryId(v7()),
    pot: potId('race'),
    cash: `${i + 1}.00`,
    card: '',
    from: 'outside',
    date,
  }))
  await Promise.all(
    pages.map((page, i) => page.evaluate((ask) => chrome.runtime.sendMessage({ command: 'fill.add', ask }), asks[i])),
  )
  const after = (await extension.book()).balances[potId('race')]
  expect((after?.cash.minor ?? 0) - (before?.cash.minor ?? 0)).toBe(600)
})

it('two windows close the same month at once: one closes it, the other is told, nothing is swept twice', async () => {
  const pot = potId('race')
  const day = calendarDate('2026-10-20')
  const month = monthName('2026-10')
  await extension.ask('fill.add', { id: entryId(v7()), pot, cash: '9.00', card: '', from: 'outside', date: day })
  const before = (await extension.book()).balances[pot]?.cash.minor ?? 0
  const windows = await Promise.all([extension.popup(), extension.popup()])
  const replies = await Promise.all(
    windows.map((page) =>
      page.evaluate((ask) => chrome.runtime.sendMessage({ command: 'month.close', ask }), {
        id: entryId(v7()),
        month,
        sweeps: [{ id: entryId(v7()), pot, to: { debt: 'a friend' }, cash: '4.00', card: '' }],
        budgets: [],
      }),
    ),
  )
  expect(replies.map((reply) => (reply.ok ? 'closed' : reply.code)).sort()).toEqual(['closed', 'month-closed'])
  await extension.stopWorker()
  expect((await extension.book()).balances[pot]?.cash.minor).toBe(before - 400)
  const { entries } = await extension.ask('book.entries', { from: (TABS * TAGS) / 2 })
  expect(entries.filter((e) => e.kind === 'close' || e.kind === 'sweep').length).toBe(2)
})

function tagAsk(tab: number, pot: string) {
  return {
    id: entryId(v7()),
    order: orderId(v7()),
    at: { tab },
    wish: {
      total: '1.00',
      currency: 'CAD',
      split: { by: 'pot', pot },
      foreign: null,
      margin: null,
      credit: null,
      instalments: null,
      renewal: null,
    },
    reason: null,
  }
}
