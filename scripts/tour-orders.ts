// Three lives of orders, walked as a person would: split and charged in part, abroad, and money back.
import type { Page } from 'playwright-core'
import type { DemoShop } from '../demo-data/shop/server.ts'
import { potId, toDecimal } from '../src/index.ts'
import type { Extension } from '../tests/browser/extension.ts'
import { backToShop, choosePot, goToCheckout, orderButton, panelOf, pressTag } from '../tests/browser/guarded-shop.ts'
import { picture } from '../tests/browser/pictures.ts'

type Tell = (step: string, outcome: string) => void

/** Walks the three lives. Needs the demo household and a watched Fernhill. */
export async function walkOrderLives(extension: Extension, shop: DemoShop, tell: Tell): Promise<void> {
  await splitAndPartCharge(extension, shop, tell)
  await abroad(extension, shop, tell)
  await moneyBack(extension, tell)
}

/** Fernhill, two things for two pots: split by item in the popup, then the card charges one parcel of the two. */
async function splitAndPartCharge(extension: Extension, shop: DemoShop, tell: Tell): Promise<void> {
  const page = await goToCheckout(extension, shop, 'fernhill', 'seed-mix:2,trowel:1')
  const popup = await extension.popup(page)
  await choosePot(popup, 'Household things')
  await popup.getByRole('button', { name: 'Split over several pots' }).click()
  await popup.getByRole('combobox', { name: /Ash-handled trowel/ }).selectOption({ label: 'Presents' })
  await popup.locator('.split-lines li').nth(1).waitFor()
  await picture(popup, '13-split')
  await popup.locator('.order-foot button.primary').click()
  await popup.locator('.tagged').waitFor()
  tell('Fernhill, split by item', `${await pot(extension, 'household')}; ${await pot(extension, 'presents')}`)
  await popup.close()
  await Promise.all([page.waitForURL(/confirmation/), orderButton(page, 'fernhill').click()])
  const desk = await orderOnDesk(extension, 'fernhill.localhost')
  const charge = formOf(desk, 'The card charged it')
  await charge.getByRole('checkbox', { name: /Ash-handled trowel/ }).check()
  await charge.getByRole('button', { name: 'Enter the charge' }).click()
  await desk.locator('.story', { hasText: 'The card charged' }).waitFor()
  await picture(desk, '14-part-charge')
  tell('one parcel of it charged, on the desk', `${await lastOfStory(desk)} ${await pot(extension, 'presents')}`)
  await desk.close()
  await page.close()
}

/** A sister nursery that asks euros: held at a rate that is given, charged at the card's own. */
async function abroad(extension: Extension, shop: DemoShop, tell: Tell): Promise<void> {
  const page = await extension.context.newPage()
  await page.goto(shop.url('fernhill', '/strange/abroad'))
  await page.getByRole('button', { name: 'Place order' }).click()
  const panel = await panelOf(page)
  await choosePot(panel, 'Household things')
  await panel.getByLabel('CAD for 1 EUR').fill('1.50')
  await panel.getByLabel("Card's fee, %").fill('2.5')
  await panel.getByText(/^Comes to/).waitFor()
  await panel.locator('.verdict').waitFor()
  await picture(page, '15-abroad')
  await pressTag(panel)
  await backToShop(page, panel)
  await Promise.all([page.waitForURL(/thanks/), page.getByRole('button', { name: 'Place order' }).click()])
  tell('an order of 28.40 euros, held', await pot(extension, 'household'))
  const desk = await orderOnDesk(extension, 'fernhill.localhost')
  const charge = formOf(desk, 'The card charged it')
  if (!(await charge.getByLabel('Amount, CAD').isVisible())) await charge.locator('summary').click()
  await charge.getByLabel('Amount, CAD').fill('43.10')
  await charge.getByRole('checkbox', { name: 'All is delivered; let the rest go' }).check()
  await charge.getByRole('button', { name: 'Enter the charge' }).click()
  await desk
    .getByText(/All is delivered/)
    .last()
    .waitFor()
  await picture(desk, '16-abroad-charged')
  const said = (await desk.locator('.story li > span').allTextContents()).slice(-3).join(' ')
  tell('charged at the true rate', `${said} ${await pot(extension, 'household')}`)
  await desk.close()
  await page.close()
}

/** A lamp that goes back: the refund was announced, now it is on the account. */
async function moneyBack(extension: Extension, tell: Tell): Promise<void> {
  const before = await pot(extension, 'household')
  const desk = await orderOnDesk(extension, 'lantern-lamps.example')
  await picture(desk, '17-refund-expected')
  await formOf(desk, 'Money back').getByRole('button', { name: 'It came back' }).click()
  await desk.locator('.story', { hasText: 'came back' }).waitFor()
  tell('a refund that was expected came', `${before} before; ${await pot(extension, 'household')} now`)
  await desk.close()
}

async function orderOnDesk(extension: Extension, host: string): Promise<Page> {
  const desk = await extension.context.newPage()
  await desk.goto(extension.url('src/desk/desk.html#/orders'))
  await desk.locator('.order-rows a', { hasText: host }).first().click()
  await desk.locator('.story li').first().waitFor()
  return desk
}

function formOf(desk: Page, title: string) {
  return desk.locator('.order-actions details', { hasText: title })
}

async function lastOfStory(desk: Page): Promise<string> {
  return (await desk.locator('.story li > span').last().textContent()) ?? ''
}

async function pot(extension: Extension, id: string): Promise<string> {
  const view = await extension.book()
  const found = view.household.pots.find((p) => p.id === id)
  const b = view.balances[potId(id)]
  return found && b ? `${found.name} has ${toDecimal(b.left)} left, ${toDecimal(b.held)} held` : `${id} is not there`
}
