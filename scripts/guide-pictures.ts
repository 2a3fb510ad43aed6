// npm run pictures: walks the built extension as the household's guide does and makes its pictures anew
// (src/release/pictures/). A step that finds the screen other than the guide says fails.
import { mkdir } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import type { Page } from 'playwright-core'
import { startDemoShop } from '../demo-data/shop/server.ts'
import { openExtension } from '../tests/browser/extension.ts'
import { choosePot, goToCheckout, orderButton, panelOf, watchShops } from '../tests/browser/guarded-shop.ts'
import { words } from '../tests/browser/words.ts'

const folder = fileURLToPath(new URL('../src/release/pictures', import.meta.url))
await mkdir(folder, { recursive: true })
const shop = await startDemoShop()

const deskPictures = [
  { path: 'review', heading: 'monthend_page_review' },
  { path: 'safe', heading: 'safe_save_title' },
] as const

await firstRun()
const extension = await openExtension()
await extension.ask('household.demo', {})
await watchShops(extension, shop, ['fernhill', 'corvid'])

await pots()
await checkout()
await held()
await stopped()
await payday()
for (const { path, heading } of deskPictures) await desk(path, words(heading))
await extension.close()
await shop.close()

async function firstRun(): Promise<void> {
  const fresh = await openExtension()
  const popup = await fresh.popup()
  await popup.getByRole('heading', { name: words('welcome_title') }).waitFor()
  await popup.getByLabel(words('currency')).selectOption('CAD')
  await popup.getByLabel(words('pot_openCash')).nth(0).fill('40+35.50')
  await popup.getByLabel(words('pot_openCard')).nth(0).fill('45.50')
  await keep(popup, 'first-run')
  await fresh.close()
}

async function pots(): Promise<void> {
  const popup = await extension.popup()
  await popup.getByRole('heading', { name: words('pots_heading'), exact: true }).waitFor()
  await popup.setViewportSize({ width: 400, height: 1000 })
  await keep(popup, 'pots')
  await popup.close()
}

async function checkout(): Promise<void> {
  const page = await goToCheckout(extension, shop, 'corvid', 'heron-waltz:2')
  const popup = await extension.popup(page)
  await choosePot(popup, 'Piano lessons')
  await popup.locator('.verdict').waitFor()
  await keep(popup, 'checkout')
  await popup.close()
  await page.close()
}

async function held(): Promise<void> {
  const page = await goToCheckout(extension, shop, 'fernhill', 'seed-mix:2,twine:1')
  await orderButton(page, 'fernhill').click()
  const panel = await panelOf(page)
  await choosePot(panel, 'Garden')
  await panel.locator('.verdict').waitFor()
  await keep(page, 'held')
  await page.close()
}

async function stopped(): Promise<void> {
  const page = await goToCheckout(extension, shop, 'corvid', 'evening-piano:1')
  await orderButton(page, 'corvid').click()
  const panel = await panelOf(page)
  await choosePot(panel, 'Piano lessons')
  await panel.locator('.verdict-block').waitFor()
  await keep(page, 'stopped')
  await page.close()
}

async function payday(): Promise<void> {
  const page = await extension.context.newPage()
  await page.goto(extension.url('src/desk/desk.html#/payday'))
  await page.getByLabel(words('payday_amount')).fill('724')
  await page.getByRole('button', { name: /^Plan 724/ }).click()
  await page.locator('.payday-lines > li').first().waitFor()
  await keep(page, 'payday')
  await page.close()
}

/** A page of the desk, once its heading is there. */
async function desk(path: string, heading: string): Promise<void> {
  const page = await extension.context.newPage()
  await page.goto(extension.url(`src/desk/desk.html#/${path}`))
  await page.getByRole('heading', { name: heading }).first().waitFor()
  await keep(page, path)
  await page.close()
}

async function keep(page: Page, name: string): Promise<void> {
  await page.evaluate(() => document.fonts.ready)
  await page.screenshot({ path: `${folder}/${name}.png`, animations: 'disabled' })
}
