import type { Page } from 'playwright-core'
import { v7 } from 'uuid'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { type DemoShop, expectedTotal, startDemoShop } from '../../demo-data/shop/server.ts'
import { entryId, money, potId } from '../../src/index.ts'
import wcag from '../published/wcag22.json' with { type: 'json' }
import { axeFaults } from './axe.ts'
import { type Extension, openExtension } from './extension.ts'
import { backToShop, choosePot, goToCheckout, orderButton, panelOf, pressTag, watchShops } from './guarded-shop.ts'
import { picture } from './pictures.ts'

let shop: DemoShop
let extension: Extension

beforeAll(async () => {
  shop = await startDemoShop({ delayMs: 50 })
})
afterAll(() => shop.close())
beforeEach(async () => {
  extension = await openExtension()
  await extension.ask('household.demo', {})
  await watchShops(extension, shop, ['fernhill', 'corvid'])
  shop.clearOrders()
})
afterEach(() => extension.close())

const figures = async (pot: string): Promise<{ card: number; held: number; left: number }> => {
  const b = (await extension.book()).balances[potId(pot)]
  if (!b) throw new Error(`there is no pot ${pot}`)
  return { card: b.card.minor, held: b.held.minor, left: b.left.minor }
}

async function desk(hash: string): Promise<Page> {
  const page = await extension.context.newPage()
  await page.goto(extension.url(`src/desk/desk.html${hash}`))
  return page
}

/** The desk's page of the latest order at a shop. */
async function orderOnDesk(host: string): Promise<Page> {
  const page = await desk('#/orders')
  await page.locator('.order-rows a', { hasText: host }).first().click()
  await page.locator('.story li').first().waitFor()
  return page
}

const story = (page: Page): Promise<string[]> => page.locator('.story li > span').allTextContents()

describe('an order’s whole life in the browser', () => {
  it('split by item in the popup, charged in part and refunded on the desk', async () => {
    const total = expectedTotal('fernhill', 'seed-mix:2,trowel:1')
    const before = { things: await figures('household'), presents: await figures('presents') }
    const page = await goToCheckout(extension, shop, 'fernhill', 'seed-mix:2,trowel:1')
    const popup = await extension.popup(page)
    await choosePot(popup, 'Household things')
    await popup.getByRole('button', { name: 'Split over several pots' }).click()
    await popup.getByRole('combobox', { name: /Ash-handled trowel/ }).selectOption({ label: 'Presents' })
    await popup.locator('.split-lines li').nth(1).waitFor()
    await picture(popup, 'order-life-split-popup')
    await popup.getByRole('button', { name: 'Tag to 2 pots' }).click()
    await popup.locator('.tagged').waitFor()
    const held = { things: await figures('household'), presents: await figures('presents') }
    const parts = [held.things.held - before.things.held, held.presents.held - before.presents.held]
    expect(parts.every((part) => part > 0)).toBe(true)
    expect(parts.reduce((a, b) => a + b, 0)).toBe(money('CAD', total).minor)
    await popup.close()

    // It is not held by the guard, and the shop's confirmation closes the circle.
    await Promise.all([page.waitForURL(/confirmation/), orderButton(page, 'fernhill').click()])
    await expect.poll(async () => (await extension.book()).recent[0]?.kind).toBe('confirm')
    const number = shop.orders()[0]?.number ?? 'none'

    const order = await orderOnDesk('fernhill.localhost')
    expect(await story(order)).toContainEqual(`The shop confirmed it as ${number}.`)
    await picture(order, 'order-life-order-desk')
    // The trowel is charged on its own: its pot is free of the hold, the other one still holds.
    const charge = order.locator('.order-actions details', { hasText: 'The card charged it' })
    await charge.getByRole('checkbox', { name: /Ash-handled trowel/ }).check()
    await charge.getByRole('button', { name: 'Enter the charge' }).click()
    await expect.poll(async () => (await figures('presents')).held).toBe(before.presents.held)
    expect((await figures('presents')).left).toBe(held.presents.left)
    expect((await figures('household')).held).toBe(held.things.held)

    // A charge above what is held asks first.
    const amount = charge.getByLabel('Amount, CAD')
    await expect.poll(() => charge.getByRole('checkbox', { name: /Ash-handled trowel/ }).isChecked()).toBe(true)
    await charge.getByRole('checkbox', { name: /Ash-handled trowel/ }).uncheck()
    await amount.fill(((parts[0] ?? 0) / 100 + 3.25).toFixed(2))
    await charge.getByRole('button', { name: 'Enter the charge' }).click()
    await order.getByText('This is 3.25 more than').waitFor()
    expect((await figures('household')).held).toBe(held.things.held)
    await picture(order, 'order-life-above-hold')
    await order.getByRole('button', { name: 'It is right, enter it' }).click()
    await expect.poll(async () => (await figures('household')).held).toBe(before.things.held)
    expect((await figures('household')).left).toBe(held.things.left - 325)

    // The trowel goes back: announced first, then it comes.
    const back = order.locator('.order-actions details', { hasText: 'Money back' })
    await back.locator('summary').click()
    await back.getByRole('checkbox', { name: /Ash-handled trowel/ }).check()
    await back.getByRole('button', { name: 'It is only announced' }).click()
    await order
      .locator('.story')
      .getByText(/A refund of .* is expected/)
      .waitFor()
    expect((await figures('presents')).left).toBe(held.presents.left)
    await back.getByRole('button', { name: 'It came back' }).click()
    await expect.poll(async () => (await figures('presents')).left).toBe(before.presents.left)
    expect((await story(order)).at(-1)).toMatch(/came back: Presents/)
    // Each step can be taken back, the latest first.
    await order.getByRole('button', { name: 'Take back' }).click()
    await expect.poll(async () => (await figures('presents')).left).toBe(held.presents.left)
  })

  it('blocked in the panel, it says which item would have to go', async () => {
    const page = await goToCheckout(extension, shop, 'corvid', 'evening-piano:1,heron-waltz:1')
    await orderButton(page, 'corvid').click()
    const panel = await panelOf(page)
    await choosePot(panel, 'Piano lessons')
    await panel.locator('.verdict-block').waitFor()
    await panel.locator('.take-out').waitFor()
    expect(await panel.locator('.take-out').textContent()).toContain('The Evening Piano Book')
    expect(await panel.locator('.take-out').textContent()).not.toContain('Heron Waltz')
    await picture(page, 'order-life-take-out')
    expect(shop.orders()).toEqual([])
  })

  it('abroad: held at a rate that is given, charged at the true one, the difference told', async () => {
    const before = await figures('household')
    const page = await extension.context.newPage()
    await page.goto(shop.url('fernhill', '/strange/abroad'))
    await page.getByRole('button', { name: 'Place order' }).click()
    const panel = await panelOf(page)
    await choosePot(panel, 'Household things')
    // The demo household was charged in euros before: that rate is offered, with its fee in it.
    await panel.getByText(/From your charge of/).waitFor()
    await panel.getByLabel('CAD for 1 EUR').fill('1.50')
    await panel.getByLabel("Card's fee, %").fill('2.5')
    await panel.getByText('Comes to 43.67 CAD: 42.60 and 1.07 fee.').waitFor()
    await panel.locator('.verdict').waitFor()
    await picture(page, 'order-life-abroad-panel')
    await pressTag(panel)
    await backToShop(page, panel)
    await Promise.all([page.waitForURL(/thanks/), page.getByRole('button', { name: 'Place order' }).click()])
    expect((await figures('household')).held - before.held).toBe(4367)

    const order = await orderOnDesk('fernhill.localhost')
    const charge = order.locator('.order-actions details', { hasText: 'The card charged it' })
    if (!(await charge.getByLabel('Amount, CAD').isVisible())) await charge.locator('summary').click()
    await charge.getByLabel('Amount, CAD').fill('43.10')
    await charge.getByRole('button', { name: 'Enter the charge' }).click()
    await order.getByText('43.67 was held; the card’s own rate made it 0.57 less.').waitFor()
    await picture(order, 'order-life-abroad-desk')
    const after = await figures('household')
    expect([after.card - before.card, after.left - before.left]).toEqual([-4310, -4310 - (after.held - before.held)])
    // What is left of the hold is let go once all is delivered.
    await order.locator('.order-actions details', { hasText: 'Let the hold go' }).locator('summary').click()
    await order.getByRole('button', { name: /^Let .* go$/ }).click()
    await expect.poll(async () => (await figures('household')).held).toBe(before.held)
    expect((await figures('household')).left).toBe(before.left - 4310)
  })

  it('tagged and never confirmed: the popup asks, and lets the hold go', async () => {
    const before = await figures('household')
    const page = await goToCheckout(extension, shop, 'corvid', 'manuscript:1')
    await orderButton(page, 'corvid').click()
    const panel = await panelOf(page)
    await choosePot(panel, 'Household things')
    await pressTag(panel)
    await backToShop(page, panel)
    // The shop takes the press and never answers: the person is left on the checkout.
    await page.route('**/order', (route) => route.fulfill({ status: 204 }))
    await orderButton(page, 'corvid').click()
    const tab = await extension.tabId(page)
    await expect
      .poll(async () => (await extension.ask('checkout.look', { at: { tab } })).tag?.placedAt ?? null)
      .not.toBeNull()
    const popup = await extension.popup(page)
    await popup.getByRole('heading', { name: 'Did it go through?' }).waitFor()
    await picture(popup, 'order-life-unconfirmed')
    await popup.getByRole('button', { name: 'No, let the hold go' }).click()
    await expect.poll(async () => (await figures('household')).held).toBe(before.held)
    await expect.poll(() => popup.getByRole('heading', { name: 'Did it go through?' }).count()).toBe(0)
    // A slip of the finger is no loss: it is held again.
    await popup.getByText('is no longer held').waitFor()
    await popup.locator('.said').getByRole('button', { name: 'Undo' }).click()
    await expect.poll(async () => (await figures('household')).held).toBeGreaterThan(before.held)
    await expect.poll(() => popup.locator('.said').count()).toBe(0)
  })
})

async function isTooWide(page: Page): Promise<boolean> {
  return page.evaluate(() => document.documentElement.scrollWidth > innerWidth)
}

/** A success criterion by its number, with the name WCAG 2.2 gives it (w3c/wcag, in tests/published/wcag22.json). */
function criterion(number: string): string {
  const found = wcag.criteria.find(({ sc }) => sc === number)
  if (!found) throw new Error(`WCAG 2.2 has no criterion ${number}.`)
  return `${number} ${found.name}`
}

/** What can be pressed and is smaller than 24 by 24 CSS pixels, but not drawn for the eye alone. */
const smallTargets = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('button, a[href], input, select, summary')].flatMap((e) => {
      const { width, height } = e.getBoundingClientRect()
      return width > 1 && height > 1 && (width < 24 || height < 24) ? [e.outerHTML.slice(0, 120)] : []
    }),
  )

/** The criterion's own distances; what then is wider than the window, or cut off, is lost to the reader. */
async function lostBySpacing(page: Page): Promise<string[]> {
  const content =
    '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-block-end: 2em !important }'
  // The extension's own policy takes no style element.
  await page.evaluate((css) => {
    const sheet = new CSSStyleSheet()
    sheet.replaceSync(css)
    document.adoptedStyleSheets = [sheet]
  }, content)
  const lost = await page.evaluate(() =>
    [...document.body.querySelectorAll('*')].flatMap((e) => {
      if (!(e instanceof HTMLElement) || e.closest('.unseen') || e.clientWidth === 0) return []
      // What can be scrolled to is not lost: both browsers give a scrolling part to the keyboard.
      const isCut = /hidden|clip/.test(getComputedStyle(e).overflowX) && e.scrollWidth > e.clientWidth + 1
      const isOut = e.getBoundingClientRect().right > innerWidth + 1
      return (isCut && !(e instanceof HTMLInputElement)) || isOut ? [e.outerHTML.slice(0, 120)] : []
    }),
  )
  await page.evaluate(() => {
    document.adoptedStyleSheets = []
  })
  return lost
}

/** Light and dark, at the popup's own width and at 320. */
async function expectReadable(page: Page): Promise<void> {
  for (const [colorScheme, width] of [['light', 400] as const, ['dark', 320] as const]) {
    await page.emulateMedia({ colorScheme })
    await page.setViewportSize({ width, height: 600 })
    const found = { axe: await axeFaults(page), [criterion('2.5.8')]: await smallTargets(page) }
    expect(found).toEqual({ axe: [], [criterion('2.5.8')]: [] })
  }
  const narrow = { [criterion('1.4.10')]: await isTooWide(page), [criterion('1.4.12')]: await lostBySpacing(page) }
  expect(narrow).toEqual({ [criterion('1.4.10')]: false, [criterion('1.4.12')]: [] })
}

describe('the popup', () => {
  it('is readable in each state, and goes from opening to a tag by keys alone', async () => {
    const pot = {
      id: potId('long'),
      name: 'Regenschirmständerinstandhaltungsrücklagenverwaltungskonten',
      kind: 'reserve',
      rule: 'block',
      sides: 'both',
      floor: '0',
      fillCash: '0',
      fillCard: '0',
      openCash: '123456789012.34',
      openCard: '98765432101.55',
    } as const
    await extension.ask('pot.save', { id: entryId(v7()), pot, archived: false })
    const shopPage = await goToCheckout(extension, shop, 'corvid', 'evening-piano:1,heron-waltz:1')
    const popup = await extension.popup(shopPage)
    await choosePot(popup, 'Piano lessons')
    await popup.locator('.verdict-block').waitFor()
    await expectReadable(popup)
    await choosePot(popup, 'Regenschirm')
    await popup.locator('.figures-stacked').waitFor()
    await expectReadable(popup)
    await popup.getByRole('button', { name: 'Pots', exact: true }).click()
    await popup.locator('.quick-input').fill('+12.50+3 gro')
    await popup.getByLabel('Of it in notes').waitFor()
    await expectReadable(popup)
    await popup.close()

    // Keyboard: the first letters choose, Enter tags.
    const again = await extension.popup(shopPage)
    await again.locator('.pot-row').first().waitFor()
    for (let tabs = 0; tabs < 12 && (await again.locator('.pot-row input:focus').count()) === 0; tabs++) {
      await again.keyboard.press('Tab')
    }
    await again.keyboard.type('house')
    await again.locator('.verdict-allow').waitFor()
    await again.keyboard.press('Enter')
    await again.locator('.tagged').waitFor()
    expect((await extension.book()).recent[0], criterion('2.1.1')).toMatchObject({ kind: 'order' })
    await expectReadable(again)
  })
})

describe('the pages of orders', () => {
  it('have no fault axe can find, and fit a window of 320', async () => {
    const page = await desk('#/orders')
    await page.locator('.order-rows a').first().waitFor()
    await page.locator('summary', { hasText: 'A charge nobody tagged' }).click()
    await page.locator('summary', { hasText: 'How orders are held' }).click()
    expect(await axeFaults(page)).toEqual([])
    await page.setViewportSize({ width: 320, height: 800 })
    expect(await isTooWide(page)).toBe(false)
    // The split one: two pots, items, a charge and what is held still.
    await page.locator('.order-rows a', { hasText: 'Presents' }).first().click()
    await page.locator('.story li').first().waitFor()
    const shut = page.locator('.order-actions details:not([open]) > summary')
    while ((await shut.count()) > 0) await shut.first().click()
    expect([await axeFaults(page), await isTooWide(page)]).toEqual([[], false])
    await page.goto(extension.url('src/desk/desk.html#/renewals'))
    await page.locator('.renewals li').first().waitFor()
    await page.getByRole('button', { name: 'Add a renewal' }).click()
    expect([await axeFaults(page), await isTooWide(page)]).toEqual([[], false])
  })

  it('the split, the fields abroad and the question have no fault axe can find', async () => {
    const page = await goToCheckout(extension, shop, 'fernhill', 'seed-mix:2,trowel:1')
    const popup = await extension.popup(page)
    await choosePot(popup, 'Household things')
    await popup.getByRole('button', { name: 'Split over several pots' }).click()
    await popup.locator('summary', { hasText: 'Estimate' }).click()
    await popup.getByLabel('Instalments').fill('3')
    await popup.locator('.reserve').waitFor()
    expect([await axeFaults(popup), await isTooWide(popup)]).toEqual([[], false])
    await popup.close()
    await page.goto(shop.url('fernhill', '/strange/abroad'))
    const again = await extension.popup(page)
    await again.getByLabel('CAD for 1 EUR').waitFor()
    expect([await axeFaults(again), await isTooWide(again)]).toEqual([[], false])
  })

  it('a renewal is added, looked ahead to, and ended', async () => {
    const page = await desk('#/renewals')
    await page.getByRole('button', { name: 'Add a renewal' }).click()
    await page.getByRole('button', { name: 'Save' }).click()
    await page.getByText('Give it a name.').waitFor()
    await page.getByLabel('Name').fill('Choir scores')
    await page.getByLabel('Amount, CAD').fill('30')
    await page.getByLabel('Pot', { exact: true }).selectOption({ label: 'Piano lessons' })
    await page.getByRole('button', { name: 'Save' }).click()
    await page.locator('.renewals li', { hasText: 'Choir scores' }).waitFor()
    // It is due today, and 41.20 less an order of 16.05 leaves too little for it.
    const checkout = await goToCheckout(extension, shop, 'corvid', 'heron-waltz:2')
    const popup = await extension.popup(checkout)
    await choosePot(popup, 'Piano lessons')
    await popup.getByText(/too little for Choir scores 30.00 on/).waitFor()
    expect(await popup.locator('.verdict-warn').count()).toBe(1)
    await page.locator('.renewals li', { hasText: 'Choir scores' }).getByRole('button', { name: 'It ended' }).click()
    await page.locator('.renewals li', { hasText: 'Choir scores' }).getByText('Ended').waitFor()
    await popup.reload()
    await choosePot(popup, 'Piano lessons')
    await popup.locator('.verdict-allow').waitFor()
  })
})
