import axe from 'axe-core'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { type DemoShop, expectedTotal, type ShopName, startDemoShop } from '../../demo-data/shop/server.ts'
import { type PotId, potId, toDecimal } from '../../src/index.ts'
import { type Extension, openExtension } from './extension.ts'
import { backToShop, choosePot, goToCheckout, orderButton, panelOf, pressTag, watchShops } from './guarded-shop.ts'
import { words } from './words.ts'

let shop: DemoShop
let extension: Extension

beforeAll(async () => {
  shop = await startDemoShop({ delayMs: 50 })
  extension = await openExtension()
})
afterAll(async () => {
  await extension.close()
  await shop.close()
})

beforeEach(async () => {
  await extension.startOver()
  await watchShops(extension, shop, ['fernhill', 'lunaire', 'corvid'])
  shop.clearOrders()
})

const held = async (pot: string): Promise<string> => {
  const balance = (await extension.book()).balances[potId(pot) as PotId]
  return balance ? toDecimal(balance.held) : 'no such pot'
}
const orders = () => shop.orders().map((o) => `${o.shop} ${o.total}`)
const CONFIRMED: Record<ShopName, RegExp> = { fernhill: /confirmation/, lunaire: /merci/, corvid: /thanks/ }

async function tagInPanel(page: Page, pot: string): Promise<void> {
  const panel = await panelOf(page)
  await choosePot(panel, pot)
  await pressTag(panel)
  await backToShop(page, panel)
}

describe('an order on a watched shop', () => {
  const cases: readonly (readonly [ShopName, string, string, string])[] = [
    ['fernhill', 'seed-mix:2,twine:1', 'Household things', 'household'],
    ['lunaire', 'carnet:1', 'Paper and school', 'paper'],
    ['corvid', 'manuscript:1', 'Household things', 'household'],
  ]
  it.each(cases)(
    'at %s is held until it is tagged, then goes through once by the person’s own press',
    async (name, basket, pot, id) => {
      const total = expectedTotal(name, basket)
      const before = await held(id)
      const page = await goToCheckout(extension, shop, name, basket)
      await orderButton(page, name).click()
      await panelOf(page)
      expect(orders()).toEqual([])
      expect(await held(id)).toBe(before)

      await tagInPanel(page, pot)
      expect(orders()).toEqual([])
      await Promise.all([page.waitForURL(CONFIRMED[name]), orderButton(page, name).click()])
      expect(orders()).toEqual([`${name} ${total}`])
      const view = await extension.book()
      // The shop's confirmation may have been noted already.
      const entry = view.recent.find((e) => e.kind === 'order')
      expect(entry).toMatchObject({
        kind: 'order',
        shop: `${name}.localhost`,
        lines: [{ pot: id, amount: Math.round(Number(total) * 100) }],
      })
      // The confirmation ends the tag: the same sum again would be another order.
      const tab = await extension.tabId(page)
      await expect.poll(async () => (await extension.ask('checkout.look', { at: { tab } })).tag).toBeNull()
    },
  )

  it('tagged in the popup beforehand is not held at all', async () => {
    const page = await goToCheckout(extension, shop, 'corvid', 'heron-waltz:1')
    const popup = await extension.popup(page)
    await choosePot(popup, 'Piano lessons')
    await popup.keyboard.press('Enter')
    await popup.getByText(/^Tagged/).waitFor()
    await Promise.all([page.waitForURL(/thanks/), orderButton(page, 'corvid').click()])
    expect(orders()).toEqual([`corvid ${expectedTotal('corvid', 'heron-waltz:1')}`])
  })

  it('whose basket was said to be for a pot is held, and one press in the panel tags it there', async () => {
    const basket = 'seed-mix:2,twine:1'
    const before = await held('household')
    const cart = await extension.context.newPage()
    await cart.goto(shop.url('fernhill', `/basket?basket=${basket}`))
    const popup = await extension.popup(cart)
    await choosePot(popup, 'Household things')
    await popup.getByRole('button', { name: words('ahead_keep', { pot: 'Household things' }) }).click()
    await popup.getByText('This basket is for Household things').waitFor()
    await popup.close()
    expect(await held('household')).toBe(before)

    const page = await goToCheckout(extension, shop, 'fernhill', basket)
    await orderButton(page, 'fernhill').click()
    const panel = await panelOf(page)
    await panel.getByText(words('ahead_said_panel', { pot: 'Household things' })).waitFor()
    await pressTag(panel)
    await backToShop(page, panel)
    expect(Number(await held('household')) - Number(before)).toBeCloseTo(Number(expectedTotal('fernhill', basket)), 5)
    const tab = await extension.tabId(page)
    expect(await extension.ask('checkout.look', { at: { tab } })).toMatchObject({ ahead: null })
  })

  it('that its pot cannot pay is blocked: the panel has no way on, and going back places nothing', async () => {
    const page = await goToCheckout(extension, shop, 'corvid', 'evening-piano:1')
    await orderButton(page, 'corvid').click()
    const panel = await panelOf(page)
    await choosePot(panel, 'Piano lessons')
    await panel.getByText('This order of 55.90 is 14.70 too much').waitFor()
    expect(await panel.locator('button.primary').isDisabled()).toBe(true)
    await panel.getByRole('button', { name: words('back_to_shop') }).click()
    await orderButton(page, 'corvid').click()
    await panelOf(page)
    expect(orders()).toEqual([])
    expect(await held('piano-lessons')).toBe('9.30')
  })

  it('under a warn goes on with a reason, which is kept', async () => {
    const page = await goToCheckout(extension, shop, 'fernhill', 'shears:1')
    await orderButton(page, 'fernhill').click()
    const panel = await panelOf(page)
    await choosePot(panel, 'Garden')
    // A press in the panel's first moments does nothing, so it is made until it is heard.
    await expect
      .poll(async () => {
        await panel.locator('.order-foot button.primary').click()
        return panel.getByText(words('reason_missing')).count()
      })
      .toBe(1)
    expect(await held('garden')).toBe('0.00')
    await panel.getByLabel(words('reason_label')).fill('the hedge is due')
    await pressTag(panel)
    await backToShop(page, panel)
    await Promise.all([page.waitForURL(/confirmation/), orderButton(page, 'fernhill').click()])
    // The shop's confirmation may have been noted already.
    const entry = (await extension.book()).recent.find((e) => e.kind === 'order')
    expect(entry).toMatchObject({ goOnReason: 'the hedge is due' })
  })

  it('whose total changes after the tag is asked about again, and the tag adjusted', async () => {
    const page = await extension.context.newPage()
    await page.goto(shop.url('fernhill', '/strange/changing'))
    const place = page.getByRole('button', { name: /order/i }).last()
    await place.click()
    await tagInPanel(page, 'Household things')
    const first = await held('household')
    await page.getByRole('button', { name: /gift wrap/i }).click()
    await place.click()
    const panel = await panelOf(page)
    await panel.getByText('5.00 more').waitFor()
    await pressTag(panel)
    await backToShop(page, panel)
    expect(orders()).toEqual([])
    expect(Number(await held('household')) - Number(first)).toBeCloseTo(5, 5)
    await place.click()
    await expect.poll(orders).toEqual(['fernhill 45.00'])
    const steps = (await extension.book()).recent.filter((e) => e.kind === 'order' || e.kind === 'adjust').slice(0, 2)
    expect(steps.map((e) => e.kind)).toEqual(['adjust', 'order'])
  })

  it('on a page whose total cannot be read asks the person for it', async () => {
    const page = await extension.context.newPage()
    await page.goto(shop.url('fernhill', '/strange/no-total'))
    await page.getByRole('button', { name: /order/i }).last().click()
    const panel = await panelOf(page)
    await panel.getByLabel(words('order_total')).fill('61.40')
    await choosePot(panel, 'Household things')
    await pressTag(panel)
    await backToShop(page, panel)
    expect(orders()).toEqual([])
    await page.getByRole('button', { name: /order/i }).last().click()
    await expect.poll(orders).toEqual(['fernhill 61.40'])
  })
})

describe('the panel', () => {
  // Public reference implementation of the machine-checkable part of WCAG 2.2: axe-core.
  it('has no fault axe can find', async () => {
    const page = await goToCheckout(extension, shop, 'corvid', 'heron-waltz:1')
    await orderButton(page, 'corvid').click()
    const panel = await panelOf(page)
    await choosePot(panel, 'Piano lessons')
    await panel.evaluate(axe.source)
    const found = await panel.evaluate(
      `axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] }).then((found) =>
        found.violations.map((each) => each.id + ': ' + each.nodes.map((node) => node.target).join()))`,
    )
    expect(found).toEqual([])
  })

  it('is of one size, whatever the verdict', async () => {
    const sizes = new Set<string>()
    for (const basket of ['heron-waltz:1', 'evening-piano:1']) {
      const page = await goToCheckout(extension, shop, 'corvid', basket)
      await orderButton(page, 'corvid').click()
      const panel = await panelOf(page)
      await choosePot(panel, 'Piano lessons')
      await panel.locator('.verdict').waitFor()
      sizes.add(await panel.evaluate(() => `${innerWidth} ${innerHeight}`))
    }
    expect(sizes.size).toBe(1)
  })
})

describe('the toolbar button', () => {
  it('shows what is left in the pot this shop’s orders go to, and follows a tag', async () => {
    const page = await goToCheckout(extension, shop, 'corvid', 'heron-waltz:1')
    const popup = await extension.popup(page)
    const badge = async () => {
      const tab = await extension.tabId(page)
      return popup.evaluate((tabId) => chrome.action.getBadgeText({ tabId }), tab)
    }
    await expect.poll(badge).toBe('41')
    await choosePot(popup, 'Piano lessons')
    await popup.keyboard.press('Enter')
    await popup.getByText(/^Tagged/).waitFor()
    // 41.20 - 11.70 for the score, the post and the tax.
    await expect.poll(badge).toBe('29')
  })
})

describe('ways to order', () => {
  it('Enter in the only field of an order form is held', async () => {
    const page = await extension.context.newPage()
    await page.goto(shop.url('fernhill', '/strange/enter'))
    await page.getByLabel('Your customer word').fill('larch')
    await page.getByLabel('Your customer word').press('Enter')
    await panelOf(page)
    expect(orders()).toEqual([])
  })

  it('requestSubmit() by the page’s own script is held', async () => {
    const page = await extension.context.newPage()
    await page.goto(shop.url('fernhill', '/strange/script-submit'))
    await page.locator('main button, main a[role="button"]').last().click()
    await panelOf(page)
    expect(orders()).toEqual([])
  })

  it('the keyboard alone does it all: Enter on the shop’s button, choose by letters, tag, and order', async () => {
    const page = await goToCheckout(extension, shop, 'corvid', 'manuscript:1')
    await orderButton(page, 'corvid').focus()
    await page.keyboard.press('Enter')
    const panel = await panelOf(page)
    await panel.getByRole('radio', { name: 'Household things' }).waitFor()
    await page.keyboard.type('household')
    await expect.poll(() => panel.getByRole('radio', { name: 'Household things' }).isChecked()).toBe(true)
    await pressTag(panel, 'Enter')
    const gone = page.waitForEvent('framedetached')
    await page.keyboard.press('Enter')
    await gone
    await Promise.all([page.waitForURL(/thanks/), page.keyboard.press('Enter')])
    expect(orders().length).toBe(1)
  })
})

describe('what the guard leaves alone', () => {
  it('a shop that is not watched, and a page with no order on one that is', async () => {
    const plain = await extension.context.newPage()
    await plain.goto(shop.url('fernhill', '/strange/plain'))
    const before = shop.requests().length
    await plain.locator('form input').last().fill('wren@castellane.example')
    await plain.locator('form button').last().click()
    await expect
      .poll(() =>
        shop
          .requests()
          .slice(before)
          .some((r) => r.method === 'POST' && r.path === '/newsletter'),
      )
      .toBe(true)

    await extension.ask('shop.unwatch', { host: 'corvid.localhost' })
    const page = await goToCheckout(extension, shop, 'corvid', 'manuscript:1')
    await Promise.all([page.waitForURL(/thanks/), orderButton(page, 'corvid').click()])
    expect(orders().length).toBe(1)
  })
})
