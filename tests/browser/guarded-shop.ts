import type { Frame, Locator, Page } from 'playwright-core'
import { checkoutPath, type DemoShop, type ShopName } from '../../demo-data/shop/server.ts'
import type { Extension } from './extension.ts'
import { words } from './words.ts'

/*
 * What a person does at a guarded shop: go to the checkout, press the shop's button, choose a pot in the panel. Used by
 * the browser tests, the tour and the bench alike.
 */

const PANEL_PATH = '/src/guard/panel/panel.html'
const ORDER_WORDS: Readonly<Record<ShopName, string>> = {
  fernhill: 'Place order',
  lunaire: 'Payer la commande',
  corvid: 'Pay now',
}

/** Lets the guard watch demo shops; the demo build holds the browser's permission already. */
export async function watchShops(extension: Extension, shop: DemoShop, names: readonly ShopName[]): Promise<void> {
  for (const name of names) await extension.ask('shop.watch', { origin: shop.url(name) })
}

/** Opens a shop's checkout with a basket, as far as the page that can place the order. */
export async function goToCheckout(
  extension: Extension,
  shop: DemoShop,
  name: ShopName,
  basket: string,
  shipping?: string,
): Promise<Page> {
  const page = await extension.context.newPage()
  await page.goto(shop.url(name, checkoutPath(name, basket, shipping)))
  if (name === 'fernhill') await page.getByRole('checkbox', { name: 'I have read the terms of sale.' }).check()
  if (name === 'lunaire') await page.getByText('Calcul en cours').first().waitFor({ state: 'hidden' })
  return page
}

/** The shop's own button that places the order. */
export function orderButton(page: Page, name: ShopName): Locator {
  return page.getByRole('button', { name: ORDER_WORDS[name] })
}

/** The panel's frame, once it stands in front of the page. It lies in a closed shadow root, where no selector reaches. */
export async function panelOf(page: Page): Promise<Frame> {
  const isPanel = (frame: Frame): boolean => frame.url().includes(PANEL_PATH) && !frame.isDetached()
  const found = page.frames().find(isPanel) ?? (await page.waitForEvent('framenavigated', isPanel))
  await found.getByRole('main').waitFor()
  return found
}

/** Chooses a pot in the panel or popup by its name. */
export async function choosePot(panel: Frame | Page, pot: string): Promise<void> {
  await panel.getByRole('radio', { name: pot }).check()
}

/**
 * Presses the panel's or popup's main button, or Enter, and waits until the order is tagged. In a shop's page the panel
 * takes no press in its first moments (they may have been meant for the page), so one that was not heard is made again.
 */
export async function pressTag(panel: Frame | Page, by: 'button' | 'Enter' = 'button'): Promise<void> {
  const button = panel.locator('.order-foot button.primary')
  const done = panel.locator('.tagged')
  while ((await done.count()) === 0) {
    if (by === 'Enter') await ('page' in panel ? panel.page() : panel).keyboard.press('Enter')
    else await button.click({ timeout: 5000 }).catch(() => undefined)
    await done.waitFor({ timeout: 2000 }).catch(() => undefined)
  }
}

/** The panel leaves, and the page is the person's again. */
export async function backToShop(page: Page, panel: Frame): Promise<void> {
  const gone = page.waitForEvent('framedetached', (frame) => frame === panel)
  await panel.locator('button.primary', { hasText: words('back_to_shop') }).click()
  await gone
}
