import { mkdtemp, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type DemoShop, startDemoShop } from '../../demo-data/shop/server.ts'
import { entryId, type PotId, potId, toDecimal } from '../../src/index.ts'
import { uuid } from '../book/sample.ts'
import { type Extension, openExtension } from './extension.ts'
import { choosePot, goToCheckout, orderButton, panelOf, pressTag, watchShops } from './guarded-shop.ts'
import { words } from './words.ts'

let shop: DemoShop
/** One browser for the tests that leave it whole. */
let shared: Extension

beforeAll(async () => {
  shop = await startDemoShop({ delayMs: 50 })
  shared = await openExtension()
})
afterAll(async () => {
  await shared.close()
  await shop.close()
})

async function withShared(use: (extension: Extension) => Promise<void>): Promise<void> {
  await shared.startOver()
  await watchShops(shared, shop, ['fernhill', 'lunaire', 'corvid'])
  shop.clearOrders()
  await use(shared)
}

async function withDemo(
  use: (extension: Extension) => Promise<void>,
  options: Parameters<typeof openExtension>[0] = {},
) {
  const extension = await openExtension(options)
  try {
    await extension.ask('household.demo', {})
    await watchShops(extension, shop, ['fernhill', 'lunaire', 'corvid'])
    shop.clearOrders()
    await use(extension)
  } finally {
    await extension.close()
  }
}

const left = async (extension: Extension, pot: string): Promise<string> => {
  const balance = (await extension.book()).balances[potId(pot) as PotId]
  return balance ? toDecimal(balance.left) : 'no such pot'
}

/** The curtain lies in a closed root, but its host stands beside the body. */
const hasCurtain = (page: Page): Promise<boolean> =>
  page.evaluate(() => document.documentElement.lastElementChild?.localName === 'div')

/** The panel's frame as soon as there is one, whatever is in it. */
async function panelFrame(page: Page): Promise<void> {
  if (page.frames().length < 2) await page.waitForEvent('frameattached')
}

/**
 * Lets the order go in the curtain's own words, as a person with a keyboard does: the keyboard stands on "Back to the
 * shop", "go on" is next. The curtain takes no press in its first moments, so the press is made until it is heard.
 */
async function pressGoOn(page: Page): Promise<void> {
  await page.keyboard.press('Tab')
  await expect
    .poll(async () => {
      await page.keyboard.press('Enter')
      return hasCurtain(page)
    })
    .toBe(false)
}

describe('the worker', () => {
  it('killed between the tag and the next press changes nothing', () =>
    withShared(async (extension) => {
      const page = await goToCheckout(extension, shop, 'corvid', 'manuscript:1')
      const popup = await extension.popup(page)
      await choosePot(popup, 'Household things')
      await popup.keyboard.press('Enter')
      await popup.getByText(/^Tagged/).waitFor()
      const before = await left(extension, 'household')
      await extension.stopWorker()
      await Promise.all([page.waitForURL(/thanks/), orderButton(page, 'corvid').click()])
      expect(shop.orders().length).toBe(1)
      expect(await left(extension, 'household')).toBe(before)
    }))

  it('killed while an order is held: the panel still tags it', () =>
    withShared(async (extension) => {
      const page = await goToCheckout(extension, shop, 'corvid', 'manuscript:1')
      await orderButton(page, 'corvid').click()
      const panel = await panelOf(page)
      await choosePot(panel, 'Household things')
      await extension.stopWorker()
      await pressTag(panel)
      expect((await extension.book()).recent[0]?.kind).toBe('order')
    }))

  it('answers the same request twice with one entry', () =>
    withShared(async (extension) => {
      const before = Number(await left(extension, 'groceries'))
      const date = (await extension.book()).today
      const ask = {
        id: entryId(uuid(7)),
        pot: potId('groceries'),
        side: 'cash',
        amount: '5.00',
        purpose: 'rye',
        date,
      } as const
      await Promise.all([extension.ask('spend.add', ask), extension.ask('spend.add', ask)])
      await extension.ask('spend.add', ask)
      expect(Number(await left(extension, 'groceries'))).toBeCloseTo(before - 5, 5)
    }))

  it('that does not answer leaves the choice to the person, in plain words and without a figure', () =>
    withDemo(async (extension) => {
      const page = await goToCheckout(extension, shop, 'corvid', 'manuscript:1')
      const own = await extension.popup()
      // A worker that is busy for good, as one that hangs would be.
      await extension.context.serviceWorkers()[0]?.evaluate(() => {
        setTimeout(() => {
          for (;;);
        })
      })
      // Silence can only be told by waiting for an answer that does not come.
      const heard = await own.evaluate(() => {
        const answer = chrome.runtime.sendMessage({ command: 'book.look', ask: {} }).then(() => 'an answer')
        return Promise.race([answer, new Promise((resolve) => setTimeout(resolve, 1000, 'nothing'))])
      })
      expect(heard).toBe('nothing')
      await page.bringToFront()
      await orderButton(page, 'corvid').click()
      // The panel's frame comes with the press; after a silence of two seconds the curtain's own words take its place.
      await panelFrame(page)
      await page.waitForEvent('framedetached')
      expect(shop.orders().length).toBe(0)
      await pressGoOn(page)
      await Promise.all([page.waitForURL(/thanks/), orderButton(page, 'corvid').click()])
      expect(shop.orders().length).toBe(1)
    }))

  it('updated under an open page: the order is held, said so, and can be let go', () =>
    withDemo(async (extension) => {
      const page = await goToCheckout(extension, shop, 'corvid', 'manuscript:1')
      const popup = await extension.popup(page)
      // The page that asks goes with the extension, so its answer may never come.
      const asked = popup.evaluate(() => chrome.runtime.reload()).catch(() => undefined)
      await Promise.all([popup.waitForEvent('close'), asked])
      await orderButton(page, 'corvid').click()
      await expect.poll(() => hasCurtain(page)).toBe(true)
      expect(shop.orders().length).toBe(0)
      await pressGoOn(page)
      await Promise.all([page.waitForURL(/thanks/), orderButton(page, 'corvid').click()])
      expect(shop.orders().length).toBe(1)
    }))
})

describe('the store', () => {
  it('damaged: nothing is written over it, the popup says so and gives the raw data', () =>
    withDemo(async (extension) => {
      const page = await extension.popup()
      await page.evaluate(() => chrome.storage.local.set({ 'tillside:head': { scribble: true } }))
      await extension.stopWorker()
      const popup = await extension.popup()
      await popup.getByRole('heading', { name: words('damaged_title') }).waitFor()
      await expect(
        extension.ask('pay.add', { id: entryId(uuid(8)), amount: '1.00', date: '2026-01-01' as never }),
      ).rejects.toMatchObject({
        code: 'store-damaged',
      })
      const [download] = await Promise.all([
        popup.waitForEvent('download'),
        popup.getByRole('button', { name: words('damaged_save') }).click(),
      ])
      const saved = JSON.parse(await readFile(await download.path(), 'utf8'))
      expect(saved['tillside:head']).toEqual({ scribble: true })
      expect(saved['tillside:1:000001'].entries.length).toBe(128)
    }))

  it('that lost a stretch of entries: the figures stand, it is said, and the household goes on', () =>
    withDemo(async (extension) => {
      const before = (await extension.book()).balances
      const page = await extension.popup()
      await page.evaluate(() => chrome.storage.local.remove('tillside:1:000001'))
      await extension.stopWorker()
      expect((await extension.book()).balances).toEqual(before)
      const popup = await extension.popup()
      await popup.getByText(words('gaps_one', { count: '1' })).waitFor()
      await extension.ask('pay.add', { id: entryId(uuid(8)), amount: '1.00', date: (await extension.book()).today })
      await extension.stopWorker()
      expect((await extension.book()).gaps).toBe(1)
    }))

  it('emptied under a household is not taken for a new one', () =>
    withDemo(async (extension) => {
      const page = await extension.popup()
      await page.evaluate(() => chrome.storage.local.clear())
      await extension.stopWorker()
      expect(await extension.ask('book.look', {})).toEqual({ status: 'damaged', what: 'missing' })
    }))

  it('is there again after the browser was closed and opened', async () => {
    const profile = await mkdtemp(join(tmpdir(), 'tillside-kept-'))
    let before = ''
    await withDemo(
      async (extension) => {
        before = JSON.stringify((await extension.book()).balances)
      },
      { profile },
    )
    const again = await openExtension({ profile })
    expect(JSON.stringify((await again.book()).balances)).toBe(before)
    const page = await goToCheckout(again, shop, 'corvid', 'manuscript:1')
    await orderButton(page, 'corvid').click()
    await panelOf(page)
    await again.close()
    await rm(profile, { recursive: true, force: true })
  })
})

describe('what a page can see', () => {
  it('no frame handle, no figure and no key of the panel', () =>
    withShared(async (extension) => {
      const page = await goToCheckout(extension, shop, 'corvid', 'evening-piano:1')
      await page.evaluate(() => {
        const heard: string[] = []
        Object.assign(window, { heard })
        for (const type of ['keydown', 'keypress', 'keyup', 'input', 'message']) {
          addEventListener(type, (e) => heard.push(e.type), { capture: true })
        }
      })
      await orderButton(page, 'corvid').click()
      const panel = await panelOf(page)
      await choosePot(panel, 'Garden')
      await panel
        .getByText(/left: /)
        .first()
        .waitFor()
      await page.keyboard.type('secret')
      const seen = await page.evaluate(() => ({
        frames: window.length,
        html: document.documentElement.outerHTML,
        heard: (window as unknown as { heard: string[] }).heard,
        iframes: document.querySelectorAll('iframe').length,
      }))
      expect([seen.frames, seen.iframes]).toEqual([0, 0])
      expect(seen.heard).toEqual([])
      expect(seen.html).not.toMatch(/Piano lessons|41\.20|Garden has/)
    }))

  it('a click made by its own script does not reach the panel, and places nothing', () =>
    withShared(async (extension) => {
      const page = await goToCheckout(extension, shop, 'fernhill', 'seed-mix:1')
      await page.evaluate(() => document.querySelector<HTMLElement>('form.place button')?.click())
      await panelOf(page)
      expect(shop.orders().length).toBe(0)
    }))
})

describe('the network', () => {
  it('the extension makes no request of its own', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'tillside-net-'))
    const netLog = join(folder, 'net.json')
    await withDemo(
      async (extension) => {
        const page = await goToCheckout(extension, shop, 'corvid', 'manuscript:1')
        const popup = await extension.popup(page)
        await choosePot(popup, 'Household things')
        await popup.keyboard.press('Enter')
        await popup.getByText(/^Tagged/).waitFor()
        await Promise.all([page.waitForURL(/thanks/), orderButton(page, 'corvid').click()])
        const held = await goToCheckout(extension, shop, 'fernhill', 'seed-mix:1')
        await orderButton(held, 'fernhill').click()
        await panelOf(held)
      },
      { netLog },
    )
    const log = await readFile(netLog, 'utf8')
    const initiators = [...log.matchAll(/"initiator":"([^"]*)"/g)].map((m) => m[1] ?? '')
    // The log is proof only if it saw what the shop's pages asked for. What the browser asks on its own has no origin.
    expect(initiators.some((origin) => origin.startsWith('http://corvid.localhost'))).toBe(true)
    expect(initiators.filter((origin) => origin.startsWith('chrome-extension:'))).toEqual([])
    await rm(folder, { recursive: true, force: true })
  })
})

describe('a request by our own code', () => {
  it('is refused by the content security policy, in a page and in the worker', () =>
    withShared(async (extension) => {
      const popup = await extension.popup()
      const before = shop.requests().length
      const ask = (url: string) =>
        fetch(url).then(
          () => 'sent',
          () => 'refused',
        )
      const url = shop.url('fernhill', '/robots.txt')
      expect(await popup.evaluate(ask, url)).toBe('refused')
      expect(await extension.context.serviceWorkers()[0]?.evaluate(ask, url)).toBe('refused')
      expect(shop.requests().length).toBe(before)
    }))
})

describe('permissions', () => {
  it('the release asks for no host at install, and its guard is nowhere', async () => {
    const manifest = JSON.parse(await readFile(new URL('../../dist/extension/manifest.json', import.meta.url), 'utf8'))
    expect(manifest.host_permissions).toBeUndefined()
    expect(manifest.content_scripts).toBeUndefined()
    const extension = await openExtension({ extension: new URL('../../dist/extension', import.meta.url).pathname })
    const popup = await extension.popup()
    const granted = await popup.evaluate(() => chrome.permissions.getAll())
    expect(granted.origins).toEqual([])
    await extension.close()
  })
})
