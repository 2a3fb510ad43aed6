import { beforeEach, describe, expect, it, vi } from 'vitest'
import type { OwnCommands, PageCommands, Reply, SeenPage } from '../../src/background/protocol.ts'
import { calendarDate, deviceId, entryId, type PotId, potId, toDecimal } from '../../src/index.ts'
import { order, uuid } from '../book/sample.ts'
import { FakeArea, fakeLock, fakeMarker } from './fake-area.ts'
import { fakeBrowser } from './fake-browser.ts'

const fake = fakeBrowser()
vi.mock('webextension-polyfill', () => ({ default: fake.browser }))
const { dispatch } = await import('../../src/background/dispatch.ts')
const { Keeper } = await import('../../src/background/keeper.ts')
const { classify } = await import('../../src/background/sender.ts')

const ORIGIN = 'https://corvid.example'
const NONCE = 'ab'.repeat(16)
const POPUP = {
  id: 'tillside-id',
  origin: 'chrome-extension://tillside-id',
  url: 'chrome-extension://tillside-id/popup/popup.html',
}
const PANEL = { ...POPUP, url: 'chrome-extension://tillside-id/src/guard/panel/panel.html', frameId: 3, tab: { id: 7 } }
const SHOP = { id: 'tillside-id', origin: ORIGIN, url: `${ORIGIN}/checkout`, frameId: 0, tab: { id: 7 } }
type Stamped = Parameters<typeof classify>[0]
const page = (amount: string): SeenPage => ({
  stage: 'checkout',
  total: { amount, currency: 'CAD' },
  figures: [],
  placeOrderCount: 1,
})

let n = 0
let now = Date.parse('2026-11-25T15:00:00Z')
let context: Parameters<typeof dispatch>[0]

beforeEach(async () => {
  n = 0
  fake.session.clear()
  fake.permitted.clear()
  fake.sent.length = 0
  fake.scripts.length = 0
  fake.tabs.clear()
  fake.tabs.set(7, `${ORIGIN}/checkout`)
  const today = () => calendarDate('2026-11-25')
  context = {
    keeper: new Keeper(new FakeArea(), fakeMarker(), fakeLock(), today),
    now: () => now,
    today,
    newId: () => entryId(uuid(1_000_000 + n++)),
    newDevice: () => deviceId('laptop'),
  }
  const pot = { kind: 'everyday', rule: 'block', sides: 'both', floor: '', fillCash: '', fillCard: '' } as const
  await own('household.create', {
    currency: 'CAD',
    timeZone: 'America/Toronto',
    schedule: null,
    pots: [
      { ...pot, id: potId('piano'), name: 'Piano', openCash: '20', openCard: '30.00' },
      { ...pot, id: potId('garden'), name: 'Garden', openCash: '', openCard: '10', rule: 'warn' },
    ],
  })
  fake.permitted.add(`${ORIGIN}/*`)
  await own('shop.watch', { origin: ORIGIN })
})

async function say(message: unknown, sender: object): Promise<Reply<unknown>> {
  return dispatch(context, message, classify(sender as Stamped))
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

const held = async (pot = 'piano') => {
  const look = await own('book.look', {})
  const balance = look.status === 'ready' ? look.view.balances[potId(pot)] : undefined
  return balance ? toDecimal(balance.held) : 'no household'
}

const hold = (amount: string, nonce = NONCE) => shop('page.held', { nonce, because: 'untagged', page: page(amount) })

type TagAsk = OwnCommands['order.tag']['ask']
const wish = (total: string, pot: string): TagAsk['wish'] => ({
  total,
  currency: 'CAD',
  split: { by: 'pot', pot: potId(pot) },
  foreign: null,
  margin: null,
  credit: null,
  instalments: null,
  renewal: null,
})
const tag = (total: string, more: Partial<TagAsk> & { pot?: PotId } = {}, sender: object = PANEL) => {
  const { pot = potId('piano'), ...rest } = more
  const ask = { id: entryId(uuid(500)), order: order(1), at: { nonce: NONCE }, wish: wish(total, pot), reason: null }
  return own('order.tag', { ...ask, ...rest }, sender)
}

describe('who may ask what', () => {
  it('a page of the web may neither see balances nor write entries', async () => {
    for (const command of ['book.look', 'spend.add', 'order.tag', 'order.assess', 'store.raw', 'entry.undo']) {
      expect(await say({ command, ask: {} }, SHOP), command).toMatchObject({ ok: false, code: 'not-allowed' })
    }
  })

  it('our own pages are not the gate, and strangers are nobody', async () => {
    expect(await say({ command: 'page.hello', ask: {} }, POPUP)).toMatchObject({ code: 'not-allowed' })
    const strangers = [
      { ...POPUP, id: 'another-extension' },
      { ...POPUP, origin: 'https://evil.example', url: 'https://evil.example/popup/popup.html' },
      { ...SHOP, frameId: undefined },
      // A frame that a page wrote is nobody's when the browser gives it no origin.
      { ...SHOP, frameId: 4, url: 'about:srcdoc', origin: 'null' },
      { ...SHOP, tab: undefined },
      { ...PANEL, tab: undefined },
      { id: 'tillside-id' },
    ]
    for (const sender of strangers) {
      expect(await say({ command: 'book.look', ask: {} }, sender)).toMatchObject({ ok: false, code: 'not-allowed' })
      expect(await say({ command: 'page.seen', ask: { page: page('1') } }, sender)).toMatchObject({
        ok: false,
        code: 'not-allowed',
      })
    }
  })

  it('the panel may see an order through and nothing more', async () => {
    for (const command of ['spend.add', 'fill.add', 'household.create', 'shop.watch', 'store.raw', 'pot.save']) {
      expect(await say({ command, ask: {} }, PANEL), command).toMatchObject({ code: 'not-allowed' })
    }
  })

  it('only the popup may have a figure marked on a page, and only by what the page said itself', async () => {
    const figure = { label: 'Order total', text: '$12.50' }
    for (const sender of [PANEL, SHOP]) {
      expect(await say({ command: 'checkout.mark', ask: { tab: 7, figure } }, sender)).toMatchObject({
        code: 'not-allowed',
      })
    }
    const more = { tab: 7, figure: { ...figure, left: '37.50' } }
    expect(await say({ command: 'checkout.mark', ask: more }, POPUP)).toMatchObject({ code: 'bad-message' })
    fake.browser.scripting.executeScript.mockClear()
    expect(await own('checkout.mark', { tab: 7, figure })).toEqual({ isFound: false })
    expect(fake.browser.scripting.executeScript.mock.calls).toEqual([
      [{ target: { tabId: 7 }, files: ['mark.js'] }],
      [{ target: { tabId: 7 }, func: expect.any(Function), args: [figure] }],
    ])
    // To take a mark away, nothing is brought into the page.
    fake.browser.scripting.executeScript.mockClear()
    await own('checkout.mark', { tab: 7, figure: null })
    expect(fake.browser.scripting.executeScript).toHaveBeenCalledOnce()
  })

  it('messages of another shape are refused before anything is done', async () => {
    const wrong = [
      null,
      'book.look',
      { command: 'book.look' },
      { command: 'book.look', ask: {}, more: 1 },
      { command: 'constructor', ask: {} },
    ]
    for (const message of wrong) expect((await say(message, POPUP)).ok).toBe(false)
    expect(await say({ command: 'spend.add', ask: { id: 'x' } }, POPUP)).toMatchObject({ code: 'bad-message' })
    expect(await say({ command: 'page.seen', ask: { page: { ...page('1'), balances: 1 } } }, SHOP)).toMatchObject({
      code: 'bad-message',
    })
  })

  it('a shop that is not watched, or lost its permission, gets no pass and brings nothing in', async () => {
    fake.permitted.clear()
    expect(await shop('page.hello', {})).toMatchObject({ watched: false, pass: null })
    await shop('page.held', { nonce: NONCE, because: 'untagged', page: page('5.00') })
    await expect(tag('5.00')).rejects.toMatchObject({ code: 'unknown-nonce' })
  })
})

describe('an order at a watched shop', () => {
  it('is counted each time it is held, by month and why, for the review', async () => {
    await hold('12.50')
    await hold('12.50')
    await shop('page.held', { nonce: NONCE, because: 'changed', page: page('13.00') })
    const look = await own('book.look', {})
    const counts = look.status === 'ready' ? Object.entries(look.view.held) : []
    expect(counts).toEqual([[expect.stringMatching(/^\d{4}-\d{2}$/), { untagged: 2, changed: 1, 'placed-before': 0 }]])
  })

  it('is held, tagged by its panel, passed by the gate, and seen through', async () => {
    expect(await shop('page.hello', {})).toMatchObject({ watched: true, pass: null, currency: 'CAD' })
    await hold('12.50')
    expect(await own('checkout.look', { at: { nonce: NONCE } }, PANEL)).toMatchObject({
      shop: 'corvid.example',
      heldBecause: 'untagged',
      page: { total: { amount: '12.50' } },
    })
    expect(await tag('12.50')).toMatchObject({ kind: 'tagged', adjusted: false })
    expect(await held()).toBe('12.50')
    expect(fake.sent.at(-1)).toEqual({
      tab: 7,
      message: {
        to: 'gate',
        closePanel: false,
        pass: { order: order(1), read: { amount: '12.50', currency: 'CAD' }, placed: false },
      },
    })
    await own('panel.close', { nonce: NONCE }, PANEL)
    expect(fake.sent.at(-1)).toMatchObject({ message: { closePanel: true } })
    await shop('page.placed', { order: order(1) })
    expect((await shop('page.hello', {})).pass).toMatchObject({ placed: true })
    await shop('page.seen', { page: { ...page('12.50'), stage: 'confirmation' } })
    expect((await shop('page.hello', {})).pass).toBeNull()
    expect(await held()).toBe('12.50')
  })

  it('the gate is never told a pot or a balance', async () => {
    await hold('12.50')
    await tag('12.50')
    const told = JSON.stringify([fake.sent, await shop('page.hello', {})])
    expect(told).not.toMatch(/piano|garden|balances|left|37\.50/)
  })

  it('a double click on tag is one entry, also when it comes as two messages at once', async () => {
    await hold('12.50')
    await Promise.all([tag('12.50'), tag('12.50')])
    await tag('12.50')
    await tag('12.50', { id: entryId(uuid(501)) })
    expect(await held()).toBe('12.50')
  })

  it('a total that changed after tagging adjusts the tag', async () => {
    await hold('12.50')
    await tag('12.50')
    await hold('14.00', 'cd'.repeat(16))
    const reply = await tag('14.00', { id: entryId(uuid(501)), at: { nonce: 'cd'.repeat(16) } })
    expect(reply).toMatchObject({ kind: 'tagged', adjusted: true })
    expect(await held()).toBe('14.00')
    expect((await shop('page.hello', {})).pass?.read?.amount).toBe('14.00')
  })

  it('taking the adjustment back lets the first total pass and not the second', async () => {
    await hold('12.50')
    await tag('12.50')
    await tag('14.00', { id: entryId(uuid(501)) })
    await own('entry.undo', { id: entryId(uuid(502)), target: entryId(uuid(501)) })
    expect(await held()).toBe('12.50')
    expect((await shop('page.hello', {})).pass).toMatchObject({ order: order(1), read: { amount: '12.50' } })
    await own('entry.undo', { id: entryId(uuid(503)), target: entryId(uuid(500)) })
    expect(await held()).toBe('0.00')
    expect((await shop('page.hello', {})).pass).toBeNull()
    expect(fake.sent.at(-1)).toMatchObject({ message: { pass: null } })
  })

  it('a block is not tagged, with or without a reason; a warn needs one', async () => {
    await hold('60.00')
    expect(await tag('60.00')).toMatchObject({ kind: 'blocked' })
    expect(await tag('60.00', { reason: 'I want it' })).toMatchObject({ kind: 'blocked' })
    expect(await tag('11.00', { pot: potId('garden') })).toMatchObject({ kind: 'needs-reason' })
    expect(await held()).toBe('0.00')
    expect((await shop('page.hello', {})).pass).toBeNull()
    expect(await tag('11.00', { pot: potId('garden'), reason: 'frost tonight' })).toMatchObject({ kind: 'tagged' })
    expect(await held('garden')).toBe('11.00')
  })

  it.each([
    ['12.345', 'too-many-decimals'],
    ['-5.00', 'bad-amount'],
    ['five', 'not-a-decimal'],
  ])('refuses a total of %s', async (total, code) => {
    await hold('12.50')
    await expect(tag(total)).rejects.toMatchObject({ code })
    expect(await held()).toBe('0.00')
  })

  it('a nonce serves the frame that used it first, in its own tab', async () => {
    await hold('12.50')
    await own('checkout.look', { at: { nonce: NONCE } }, PANEL)
    await expect(tag('12.50', {}, { ...PANEL, frameId: 9 })).rejects.toMatchObject({ code: 'unknown-nonce' })
    await expect(tag('12.50', {}, { ...PANEL, tab: { id: 8 } })).rejects.toMatchObject({ code: 'unknown-nonce' })
    await expect(tag('12.50', { at: { nonce: 'ee'.repeat(16) } })).rejects.toMatchObject({ code: 'unknown-nonce' })
    await expect(tag('12.50', { at: { tab: 7 } })).rejects.toMatchObject({ code: 'unread-page' })
    expect(await held()).toBe('0.00')
  })

  it('an order let through can be tried again without a new entry, and is old after half a day', async () => {
    await hold('12.50')
    await tag('12.50')
    await shop('page.placed', { order: order(1) })
    await own('order.again', { at: { nonce: NONCE } }, PANEL)
    expect((await shop('page.hello', {})).pass).toMatchObject({ placed: false })
    expect(await held()).toBe('12.50')
    await shop('page.placed', { order: order(1) })
    now += 13 * 3_600_000
    expect((await shop('page.hello', {})).pass).toBeNull()
  })

  it('is assessed over all pots, the shop’s usual pot first', async () => {
    await hold('10.00')
    await tag('10.00', { pot: potId('garden') })
    const choices = await own('order.assess', { shop: 'corvid.example', total: '5.00', order: null })
    expect(choices.map((c) => [c.pot, c.usedHere, c.verdict.outcome])).toEqual([
      ['garden', 1, 'warn'],
      ['piano', 0, 'allow'],
    ])
  })
})

describe('watching', () => {
  it('registers the gate for the shop, and takes it away again', async () => {
    expect(fake.scripts.map((s) => s.matches)).toEqual([[`${ORIGIN}/*`]])
    const look = await own('book.look', {})
    expect(look.status === 'ready' && look.view.watched).toEqual(['corvid.example'])
    await own('shop.unwatch', { host: 'corvid.example' })
    expect(fake.scripts).toEqual([])
    expect((await shop('page.hello', {})).watched).toBe(false)
  })

  it('needs the browser’s permission first', async () => {
    await expect(own('shop.watch', { origin: 'https://other.example' })).rejects.toMatchObject({
      code: 'no-permission',
    })
  })
})

describe('the demo', () => {
  it('is refused where a household is kept, and a real one is never erased', async () => {
    await expect(own('household.demo', {})).rejects.toMatchObject({ code: 'household-exists' })
    await expect(own('household.leave-demo', {})).rejects.toMatchObject({ code: 'household-exists' })
  })
})
