import { beforeEach, describe, expect, it, vi } from 'vitest'
import { calendarDate, deviceId, entryId, potId } from '../../src/index.ts'
import { order, uuid } from '../book/sample.ts'
import { FakeArea, fakeLock, fakeMarker } from './fake-area.ts'
import { fakeBrowser } from './fake-browser.ts'

const fake = fakeBrowser()
vi.mock('webextension-polyfill', () => ({ default: fake.browser }))
const { AHEAD_LASTS_MS } = await import('../../src/background/ahead.ts')
const { dispatch } = await import('../../src/background/dispatch.ts')
const { Keeper } = await import('../../src/background/keeper.ts')
const { classify } = await import('../../src/background/sender.ts')

const ORIGIN = 'https://corvid.example'
const NONCE = 'ab'.repeat(16)
const EXTENSION = 'chrome-extension://tillside-id'
const POPUP = { id: 'tillside-id', origin: EXTENSION, url: `${EXTENSION}/popup/popup.html` }
const PANEL = { ...POPUP, url: `${EXTENSION}/src/guard/panel/panel.html`, frameId: 3, tab: { id: 7 } }
const SHOP = { id: 'tillside-id', origin: ORIGIN, url: `${ORIGIN}/checkout`, frameId: 0, tab: { id: 7 } }
const PAGE = {
  stage: 'checkout',
  total: { amount: '12.50', currency: 'CAD' },
  figures: [],
  placeOrderCount: 1,
} as const

let now = 0
let context: Parameters<typeof dispatch>[0]

beforeEach(async () => {
  now = Date.parse('2026-11-25T15:00:00Z')
  fake.session.clear()
  fake.tabs.clear()
  fake.tabs.set(7, `${ORIGIN}/cart`)
  fake.browser.action.setBadgeText.mockClear()
  const today = () => calendarDate('2026-11-25')
  let n = 1_000_000
  context = {
    keeper: new Keeper(new FakeArea(), fakeMarker(), fakeLock(), today),
    now: () => now,
    today,
    newId: () => entryId(uuid(n++)),
    newDevice: () => deviceId('laptop'),
  }
  const pot = { kind: 'everyday', rule: 'block', sides: 'both', floor: '', fillCash: '', fillCard: '' } as const
  await say('household.create', {
    currency: 'CAD',
    timeZone: 'America/Toronto',
    schedule: null,
    pots: [
      { ...pot, id: potId('piano'), name: 'Piano', openCash: '20', openCard: '30.00' },
      { ...pot, id: potId('garden'), name: 'Garden', openCash: '', openCard: '83.10' },
    ],
  })
  fake.permitted.add(`${ORIGIN}/*`)
  await say('shop.watch', { origin: ORIGIN })
})

const say = (command: string, ask: unknown, sender: object = POPUP) =>
  dispatch(context, { command, ask }, classify(sender as Parameters<typeof classify>[0]))
const keep = (pot: string | null) => say('order.ahead', { tab: 7, pot })
const ahead = async (): Promise<unknown> => {
  const reply = await say('checkout.look', { at: { nonce: NONCE } }, PANEL)
  return reply.ok && typeof reply.value === 'object' ? Reflect.get(reply.value ?? {}, 'ahead') : reply
}
const hold = () => say('page.held', { nonce: NONCE, because: 'untagged', page: PAGE }, SHOP)

describe('a pot said ahead for a basket', () => {
  it('is known at the checkout of the same shop, and holds no money', async () => {
    await keep('garden')
    await hold()
    expect(await ahead()).toEqual({ pot: 'garden', until: now + AHEAD_LASTS_MS })
    expect(await say('book.look', {})).toMatchObject({
      value: { view: { balances: { garden: { held: { minor: 0 } } } } },
    })
    // Nothing passes the gate by it.
    expect(await say('page.hello', {}, SHOP)).toMatchObject({ value: { pass: null } })
  })

  it('is shown by the toolbar button: what is left in that pot', async () => {
    await keep('garden')
    expect(fake.browser.action.setBadgeText).toHaveBeenLastCalledWith({ tabId: 7, text: '83' })
    await keep(null)
    expect(fake.browser.action.setBadgeText).toHaveBeenLastCalledWith({ tabId: 7, text: '' })
  })

  it('is changed, taken back, and kept for each shop by itself', async () => {
    await hold()
    await keep('garden')
    await keep('piano')
    fake.tabs.set(7, 'https://other.example/cart')
    await keep('garden')
    expect(await ahead()).toMatchObject({ pot: 'piano' })
    fake.tabs.set(7, `${ORIGIN}/cart`)
    await keep(null)
    expect(await ahead()).toBeNull()
  })

  it('lapses after a day, also when the clock was set back', async () => {
    await hold()
    await keep('garden')
    now += AHEAD_LASTS_MS - 1
    expect(await ahead()).toMatchObject({ pot: 'garden' })
    now += 1
    expect(await ahead()).toBeNull()
    now -= 3 * AHEAD_LASTS_MS
    expect(await ahead()).toBeNull()
  })

  it('is used up by the tag', async () => {
    await keep('garden')
    await hold()
    const wish = { total: '12.50', currency: 'CAD', split: { by: 'pot', pot: 'garden' } }
    const rest = { foreign: null, margin: null, credit: null, instalments: null, renewal: null }
    const ask = { id: uuid(500), order: order(1), at: { nonce: NONCE }, wish: { ...wish, ...rest }, reason: null }
    expect(await say('order.tag', ask, PANEL)).toMatchObject({ ok: true, value: { kind: 'tagged' } })
    expect(await ahead()).toBeNull()
  })

  it('of a pot that is put away meanwhile is none', async () => {
    await keep('garden')
    await hold()
    const garden = { id: 'garden', name: 'Garden', kind: 'everyday', rule: 'block', sides: 'both', floor: '' }
    const pot = { ...garden, fillCash: '', fillCard: '', openCash: '', openCard: '' }
    expect((await say('pot.save', { id: uuid(501), pot, archived: true })).ok).toBe(true)
    expect(await ahead()).toBeNull()
    expect(await keep('garden')).toMatchObject({ ok: false, code: 'archived-pot' })
  })

  it('may be said by the popup alone, of a pot there is, on a page of the web', async () => {
    const ask = { tab: 7, pot: 'garden' }
    expect(await say('order.ahead', ask, SHOP)).toMatchObject({ code: 'not-allowed' })
    expect(await say('order.ahead', ask, PANEL)).toMatchObject({ code: 'not-allowed' })
    expect(await keep('nowhere')).toMatchObject({ code: 'unknown-pot' })
    expect(await say('order.ahead', { ...ask, amount: '5' })).toMatchObject({ code: 'bad-message' })
    fake.tabs.set(7, 'about:blank')
    expect(await keep('garden')).toMatchObject({ code: 'unread-page' })
  })
})
