import { beforeEach, describe, expect, it, vi } from 'vitest'
import type { OwnCommands, PageCommands, Reply, SeenPage, WishText } from '../../src/background/protocol.ts'
import {
  calendarDate,
  deviceId,
  entryId,
  findOrder,
  openBook,
  orderStory,
  potId,
  sayStory,
  toDecimal,
} from '../../src/index.ts'
import { order, uuid } from '../book/sample.ts'
import { FakeArea, fakeLock, fakeMarker } from './fake-area.ts'
import { fakeBrowser } from './fake-browser.ts'

const fake = fakeBrowser()
vi.mock('webextension-polyfill', () => ({ default: fake.browser }))
const { dispatch } = await import('../../src/background/dispatch.ts')
const { Keeper } = await import('../../src/background/keeper.ts')
const { classify } = await import('../../src/background/sender.ts')
const { entriesAtHand } = await import('../../src/background/store.ts')
const { loadStore } = await import('../../src/background/load-store.ts')

const ORIGIN = 'https://corvid.example'
const NONCE = 'ab'.repeat(16)
const POPUP = {
  id: 'tillside-id',
  origin: 'chrome-extension://tillside-id',
  url: 'chrome-extension://tillside-id/popup/popup.html',
}
const PANEL = { ...POPUP, url: 'chrome-extension://tillside-id/src/guard/panel/panel.html', frameId: 3, tab: { id: 7 } }
const SHOP = { id: 'tillside-id', origin: ORIGIN, url: `${ORIGIN}/checkout`, frameId: 0, tab: { id: 7 } }
const TODAY = calendarDate('2026-11-25')
const [piano, garden] = [potId('piano'), potId('garden')]

const page = (amount: string, more: Partial<SeenPage> = {}): SeenPage => ({
  stage: 'checkout',
  total: { amount, currency: 'CAD' },
  figures: [],
  placeOrderCount: 1,
  ...more,
})
const wish = (total: string, more: Partial<WishText> = {}): WishText => ({
  total,
  currency: 'CAD',
  split: { by: 'pot', pot: piano },
  foreign: null,
  margin: null,
  credit: null,
  instalments: null,
  renewal: null,
  ...more,
})

let context: Parameters<typeof dispatch>[0]
let made = 0
let area: FakeArea

beforeEach(async () => {
  made = 0
  fake.session.clear()
  fake.permitted.clear()
  fake.sent.length = 0
  fake.tabs.clear()
  fake.tabs.set(7, `${ORIGIN}/checkout`)
  area = new FakeArea()
  context = {
    keeper: new Keeper(area, fakeMarker(), fakeLock(), () => TODAY),
    now: () => Date.parse('2026-11-25T15:00:00Z'),
    today: () => TODAY,
    newId: () => entryId(uuid(1_000_000 + made++)),
    newDevice: () => deviceId('laptop'),
  }
  const pot = { kind: 'everyday', rule: 'block', sides: 'both', floor: '', fillCash: '', fillCard: '' } as const
  await own('household.create', {
    currency: 'CAD',
    timeZone: 'America/Toronto',
    schedule: null,
    pots: [
      { ...pot, id: piano, name: 'Piano', openCash: '20', openCard: '80.00' },
      { ...pot, id: garden, name: 'Garden', openCash: '', openCard: '50' },
    ],
  })
  fake.permitted.add(`${ORIGIN}/*`)
  await own('shop.watch', { origin: ORIGIN })
})

async function say(message: unknown, sender: object): Promise<Reply<unknown>> {
  return dispatch(context, message, classify(sender as Parameters<typeof classify>[0]))
}
async function own<C extends keyof OwnCommands>(command: C, ask: OwnCommands[C]['ask'], sender: object = POPUP) {
  const reply = await say({ command, ask }, sender)
  if (!reply.ok) throw Object.assign(new Error(reply.message), { code: reply.code })
  return reply.value as OwnCommands[C]['answer']
}
async function shop<C extends keyof PageCommands>(command: C, ask: PageCommands[C]['ask']) {
  const reply = await say({ command, ask }, SHOP)
  if (!reply.ok) throw Object.assign(new Error(reply.message), { code: reply.code })
  return reply.value as PageCommands[C]['answer']
}
const id = (n: number) => entryId(uuid(n))
const tag = async (w: WishText, n = 500, o = 1, seen = page(w.total)) => {
  await shop('page.held', { nonce: NONCE, because: 'untagged', page: seen })
  return own('order.tag', { id: id(n), order: order(o), at: { nonce: NONCE }, wish: w, reason: null }, PANEL)
}
const book = async () => (await context.keeper.ready()).book
const held = async (pot: string) => {
  const look = await own('book.look', {})
  const balance = look.status === 'ready' ? look.view.balances[potId(pot)] : undefined
  return balance ? `${toDecimal(balance.held)} ${toDecimal(balance.left)}` : 'nothing'
}
const story = async (o = 1) => {
  const b = await book()
  return orderStory(b, order(o)).map((line) => sayStory(b.household, line))
}
const charge = (amount: string, n: number, more: Partial<OwnCommands['order.charge']['ask']> = {}) =>
  own('order.charge', {
    id: id(n),
    order: order(1),
    amount,
    date: TODAY,
    lines: null,
    items: null,
    foreign: null,
    account: null,
    acceptsAbove: false,
    complete: null,
    ...more,
  })

const split: WishText['split'] = {
  by: 'item',
  items: [
    { name: 'score', amount: '30.00', pot: piano },
    { name: 'seeds', amount: '10.00', pot: garden },
  ],
  shared: [{ kind: 'shipping', amount: '4.00' }],
}

describe('a tag over several pots', () => {
  it('is worked out by the worker itself, held in each pot, and lets the order through', async () => {
    expect(await tag(wish('44.00', { split }))).toMatchObject({ kind: 'tagged' })
    expect([await held('piano'), await held('garden')]).toEqual(['33.00 67.00', '11.00 39.00'])
    expect((await shop('page.hello', {})).pass).toMatchObject({ order: order(1), read: { amount: '44.00' } })
    const look = await own('checkout.look', { at: { nonce: NONCE } }, PANEL)
    expect(look.tag?.lines.map((l) => [l.pot, toDecimal(l.amount)])).toEqual([
      ['piano', '33.00'],
      ['garden', '11.00'],
    ])
  })

  it('one blocked line blocks the order, and weighing says which item would have to go', async () => {
    const dear: WishText['split'] = {
      ...split,
      items: [...split.items, { name: 'spade', amount: '60.00', pot: garden }],
    }
    const weighed = await own('order.weigh', {
      shop: 'corvid.example',
      order: null,
      wish: wish('104.00', { split: dear }),
    })
    expect(weighed.verdict.outcome).toBe('block')
    expect(weighed.verdict.lines.map((l) => l.outcome)).toEqual(['allow', 'block'])
    expect(weighed.removal).toMatchObject({ items: [2], isAll: false })
    expect(await tag(wish('104.00', { split: dear }))).toMatchObject({ kind: 'blocked' })
    expect(await held('piano')).toBe('0.00 100.00')
  })

  it('that a gift card pays wholly enters nothing and lets the order through', async () => {
    const before = (await book()).length
    expect(await tag(wish('12.00', { credit: '12.00' }))).toEqual({ kind: 'nothing-to-pay' })
    expect((await book()).length).toBe(before)
    expect((await shop('page.hello', {})).pass).not.toBeNull()
  })

  it.each([
    ['bad-split', { split: { by: 'amount', lines: [{ pot: piano, amount: '50.00' }], rest: null } }],
    ['bad-rate', { currency: 'EUR' }],
    ['bad-instalments', { instalments: { reserve: 'whole', dates: [TODAY] } }],
    ['unknown-pot', { split: { by: 'pot', pot: potId('gone') } }],
  ] satisfies [string, Partial<WishText>][])('is refused with %s', async (code, change) => {
    await expect(tag(wish('44.00', change))).rejects.toMatchObject({ code })
    expect(await held('piano')).toBe('0.00 100.00')
  })

  it('of 500 items is taken', async () => {
    const items = Array.from({ length: 500 }, (_, n) => ({
      name: `item ${n}`,
      amount: '0.10',
      pot: n % 2 ? piano : garden,
    }))
    expect(await tag(wish('50.00', { split: { by: 'item', items, shared: [] } }))).toMatchObject({ kind: 'tagged' })
    expect([await held('piano'), await held('garden')]).toEqual(['25.00 75.00', '25.00 25.00'])
    // It is stored and read back as it was.
    const again = await loadStore(area, fakeMarker())
    const entries = again.status === 'ready' ? entriesAtHand(again.kept) : []
    expect(openBook((await book()).household, entries).length).toBe((await book()).length)
  })
})

describe('the confirmation page', () => {
  const confirmation = (amount: string, orderNumber: string | null) =>
    page(amount, { stage: 'confirmation', orderNumber })

  it('closes the circle of an order that was let through: its number is kept, the tag ends', async () => {
    await tag(wish('44.00', { split }))
    // Before the order was let through a page says nothing.
    await shop('page.seen', { page: confirmation('44.00', 'CO-1') })
    expect(findOrder(await book(), order(1))?.isConfirmed).toBe(false)
    await shop('page.placed', { order: order(1) })
    await shop('page.seen', { page: confirmation('44.00', 'CO-1') })
    expect(findOrder(await book(), order(1))).toMatchObject({ number: 'CO-1', isConfirmed: true })
    expect((await shop('page.hello', {})).pass).toBeNull()
    expect((await story()).at(-1)).toBe('The shop confirmed it as CO-1.')
    // The page opened again is the same order.
    const length = (await book()).length
    await shop('page.seen', { page: confirmation('44.00', 'CO-1') })
    expect((await book()).length).toBe(length)
  })

  it('of an earlier order, opened again, says nothing of the new one', async () => {
    await tag(wish('44.00', { split }))
    await shop('page.placed', { order: order(1) })
    await shop('page.seen', { page: confirmation('44.00', 'CO-1') })
    await tag(wish('10.00'), 501, 2)
    await shop('page.placed', { order: order(2) })
    await shop('page.seen', { page: confirmation('44.00', 'CO-1') })
    expect(findOrder(await book(), order(2))?.isConfirmed).toBe(false)
    expect((await shop('page.hello', {})).pass).toMatchObject({ order: order(2) })
  })

  it('with another total moves no figure by itself: the person is asked', async () => {
    await tag(wish('44.00', { split }))
    await shop('page.placed', { order: order(1) })
    await shop('page.seen', { page: confirmation('1.00', 'CO-1') })
    expect([await held('piano'), findOrder(await book(), order(1))?.isConfirmed]).toEqual(['33.00 67.00', false])
    await shop('page.held', { nonce: NONCE, because: 'untagged', page: page('1.00') })
    const look = await own('checkout.look', { at: { nonce: NONCE } }, PANEL)
    expect(look.unconfirmed.map((u) => [u.order, toDecimal(u.amount)])).toEqual([[order(1), '44.00']])
    expect(await own('order.confirm', { id: id(600), order: order(1), number: 'CO-1', total: '46.00' })).toEqual({
      kind: 'confirmed',
    })
    expect([await held('piano'), await held('garden')]).toEqual(['34.50 65.50', '11.50 38.50'])
    // Asked twice, it is one entry.
    const length = (await book()).length
    await own('order.confirm', { id: id(600), order: order(1), number: 'CO-1', total: '46.00' })
    expect((await book()).length).toBe(length)
  })

  it('that never came: the hold is let go, and the tag with it', async () => {
    await tag(wish('44.00', { split }))
    await shop('page.placed', { order: order(1) })
    await own('order.release', { id: id(600), order: order(1), why: 'not-placed' })
    expect([await held('piano'), (await shop('page.hello', {})).pass]).toEqual(['0.00 100.00', null])
    expect(fake.sent.at(-1)).toMatchObject({ message: { pass: null } })
  })

  it('cannot be asked for by the panel or the shop', async () => {
    const ask = { id: id(600), order: order(1), number: null, total: null }
    expect(await say({ command: 'order.confirm', ask }, PANEL)).toMatchObject({ ok: false, code: 'not-allowed' })
    expect(await say({ command: 'order.confirm', ask }, SHOP)).toMatchObject({ ok: false, code: 'not-allowed' })
  })
})

describe('charges and refunds', () => {
  it('a charge above the hold is asked about, and posted with the person’s word; the last one completes the order', async () => {
    await tag(wish('44.00', { split }))
    expect(await charge('46.00', 600)).toMatchObject({ kind: 'above-hold', above: { minor: 200 } })
    expect(await held('piano')).toBe('33.00 67.00')
    expect(await charge('20.00', 600)).toEqual({ kind: 'charged' })
    expect(await charge('20.00', 600)).toEqual({ kind: 'charged' })
    expect(await charge('22.00', 601, { complete: id(602) })).toEqual({ kind: 'charged' })
    expect([await held('piano'), await held('garden')]).toEqual(['0.00 68.50', '0.00 39.50'])
    expect((await story()).slice(-2)).toEqual([
      'The card charged 22.00: Piano 16.50 and Garden 5.50.',
      'All is delivered; the remaining 2.00 was let go.',
    ])
  })

  it('money back: announced, then posted to the pot that waits for it', async () => {
    await tag(wish('44.00', { split }))
    await charge('44.00', 600)
    await own('order.expect-refund', { id: id(601), order: order(1), amount: '11.00', items: [1] })
    expect(await held('garden')).toBe('0.00 39.00')
    const ask = { id: id(602), order: order(1), amount: '11.00', date: TODAY, lines: null, items: null, account: null }
    await own('order.refund', ask)
    await own('order.refund', ask)
    expect(await held('garden')).toBe('0.00 50.00')
    await expect(own('order.refund', { ...ask, id: id(603), amount: '33.01' })).rejects.toMatchObject({
      code: 'bad-amount',
    })
  })

  it('a charge nobody tagged asks for its pot, and is then an order', async () => {
    await expect(charge('9.00', 600)).rejects.toMatchObject({ code: 'unknown-order' })
    const ask = {
      id: id(600),
      charge: id(601),
      order: order(3),
      shop: 'lantern.example',
      amount: '9.00',
      pots: [{ pot: garden, amount: '9.00' }],
      date: TODAY,
      account: null,
    }
    await own('order.charge-untagged', ask)
    await own('order.charge-untagged', ask)
    expect([await held('garden'), await story(3)]).toEqual([
      '0.00 41.00',
      ['Tagged 9.00 at lantern.example to Garden.', 'The card charged 9.00: Garden.'],
    ])
    await expect(
      own('order.charge-untagged', { ...ask, id: id(602), order: order(4), pots: [] }),
    ).rejects.toMatchObject({
      code: 'bad-lines',
    })
  })

  it('instalments are held one by one', async () => {
    const dates = ['2026-11-25', '2026-12-25'].map(calendarDate)
    await tag(wish('40.00', { instalments: { reserve: 'by-part', dates } }))
    expect(await held('piano')).toBe('20.00 80.00')
    await own('order.hold-part', { id: id(600), order: order(1) })
    expect(await held('piano')).toBe('40.00 60.00')
    await expect(own('order.hold-part', { id: id(601), order: order(1) })).rejects.toMatchObject({
      code: 'bad-instalments',
    })
  })
})

describe('renewals and rules', () => {
  const film = {
    id: 'film-club',
    name: 'Film club',
    shop: null,
    pot: piano,
    amount: '12.99',
    first: calendarDate('2026-11-20'),
    every: { unit: 'month', count: 1 },
    end: null,
  } as const

  it('a renewal is kept, changed, paid, and ended', async () => {
    await own('renewal.save', film)
    await own('renewal.save', { ...film, amount: '13.99' })
    expect((await book()).household.renewals).toMatchObject([{ id: 'film-club', amount: 1399 }])
    const pay = { id: id(600), charge: id(601), order: order(5), renewal: 'film-club', due: film.first, date: TODAY }
    await own('renewal.pay', pay)
    await own('renewal.pay', pay)
    expect(await held('piano')).toBe('0.00 86.01')
    expect(await story(5)).toContainEqual('It is the renewal due on Friday 20 November.')
    await own('renewal.save', { ...film, end: TODAY })
    expect((await book()).household.renewals?.[0]?.end).toBe(TODAY)
    await expect(own('renewal.save', { ...film, id: 'x', amount: '0' })).rejects.toMatchObject({
      code: 'bad-household',
    })
    await expect(own('renewal.pay', { ...pay, id: id(602), renewal: 'nothing' })).rejects.toMatchObject({
      code: 'bad-renewal',
    })
  })

  it('rules of holds are checked and kept', async () => {
    await own('order.rules', { holdDays: 7, marginPercent: '12.5', foreignFeePercent: '2.5' })
    expect((await book()).household.ordering).toEqual({ holdDays: 7, marginPercent: '12.5', foreignFeePercent: '2.5' })
    for (const wrong of [{ holdDays: 0 }, { marginPercent: 'ten' }, { foreignFeePercent: '-1' }]) {
      const rules = { holdDays: 7, marginPercent: '10', foreignFeePercent: '0', ...wrong }
      await expect(own('order.rules', rules)).rejects.toMatchObject({ code: 'bad-household' })
    }
  })
})
