// The tour: the built extension, the demo household and the demo shops, walked as a person would. Without a display it
// runs headless, prints what the book says after each step and leaves pictures in shots/. With one (--headed) it opens
// the browser on the demo household and the shops and leaves it to you.
import type { Page } from 'playwright-core'
import { startDemoShop } from '../demo-data/shop/server.ts'
import type { HouseholdView } from '../src/background/protocol.ts'
import { type PotId, potId, toDecimal } from '../src/index.ts'
import { type Extension, openExtension } from '../tests/browser/extension.ts'
import {
  backToShop,
  choosePot,
  goToCheckout,
  orderButton,
  panelOf,
  pressTag,
  watchShops,
} from '../tests/browser/guarded-shop.ts'
import { picture } from '../tests/browser/pictures.ts'
import { words } from '../tests/browser/words.ts'
import { walkOrderLives } from './tour-orders.ts'

const headed = process.argv.includes('--headed')
const shop = await startDemoShop()
if (headed) await lookAround()
else await walk()

async function lookAround(): Promise<void> {
  const extension = await openExtension({ headed: true })
  await extension.ask('household.demo', {})
  await watchShops(extension, shop, ['fernhill', 'lunaire', 'corvid'])
  for (const name of ['fernhill', 'lunaire', 'corvid'] as const) {
    await (await extension.context.newPage()).goto(shop.url(name))
  }
  console.log('The demo household and three watched shops are open. Order something; close the browser to end.')
  await new Promise<void>((resolve) => extension.context.on('close', () => resolve()))
  await shop.close()
}

async function walk(): Promise<void> {
  await firstRun()
  const extension = await openExtension()
  await extension.ask('household.demo', {})
  await watchShops(extension, shop, ['fernhill', 'lunaire', 'corvid'])
  const begin = await extension.book()
  tell('demo household', `${begin.household.pots.length} pots; ${pot(begin, 'piano-lessons')}`)
  await atAGlance(extension)
  await tagInPopup(extension)
  await heldUntilTagged(extension)
  await lateTotal(extension)
  await blocked(extension)
  await warned(extension)
  await undo(extension)
  await workerKilled(extension)
  await walkOrderLives(extension, shop, tell)
  await extension.close()
  await shop.close()
  console.log('Pictures of every step are in shots/.')
}

/** A household of one's own, typed in. */
async function firstRun(): Promise<void> {
  const extension = await openExtension()
  const popup = await extension.popup()
  await popup.getByRole('heading', { name: words('welcome_title') }).waitFor()
  await picture(popup, '01-first-run')
  await popup.getByLabel(words('currency')).selectOption('CAD')
  const amounts = popup.getByLabel(words('pot_openCash'))
  await amounts.nth(0).fill('80')
  await popup.getByLabel(words('pot_openCard')).nth(0).fill('45.50')
  await picture(popup, '02-first-run-typed')
  await popup.getByRole('button', { name: words('welcome_start') }).click()
  await popup.getByRole('heading', { name: words('pots_heading'), exact: true }).waitFor()
  await picture(popup, '03-first-run-done')
  const view = await extension.book()
  const first = view.household.pots[0]
  tell(
    'first run',
    `${view.household.pots.length} pots in ${view.household.currency}; ${first ? pot(view, first.id) : ''}`,
  )
  await extension.close()
}

/** Away from a shop: the pots at a glance, and a spend at the counter in one line. */
async function atAGlance(extension: Extension): Promise<void> {
  const popup = await extension.popup()
  const line = popup.getByLabel(words('quick_label_spend'))
  await line.fill('12.50+3 gro bread and olives')
  await picture(popup, '04-glance')
  await line.press('Enter')
  await popup.getByText('bread and olives').last().waitFor()
  tell('cash spend in one line', pot(await extension.book(), 'groceries'))
  await popup.close()
}

/** Corvid, web components: tagged in the popup first, then the shop's own button simply works. */
async function tagInPopup(extension: Extension): Promise<void> {
  const page = await goToCheckout(extension, shop, 'corvid', 'heron-waltz:2')
  const popup = await extension.popup(page)
  await choosePot(popup, 'Piano lessons')
  await popup.locator('.verdict').waitFor()
  await picture(popup, '05-popup-at-checkout')
  await popup.keyboard.press('Enter')
  await popup.getByText(/Tagged .* to Piano lessons/).waitFor()
  await picture(popup, '06-popup-tagged')
  await popup.close()
  await order(page, 'corvid')
  tell('Corvid, tagged in the popup and placed', `${placed()}; ${pot(await extension.book(), 'piano-lessons')}`)
  await page.close()
}

/** Fernhill, a classic form: held until tagged in the panel. */
async function heldUntilTagged(extension: Extension): Promise<void> {
  const before = shop.orders().length
  const page = await goToCheckout(extension, shop, 'fernhill', 'seed-mix:2,twine:1')
  await orderButton(page, 'fernhill').click()
  const panel = await panelOf(page)
  await choosePot(panel, 'Garden')
  await panel.locator('.verdict').waitFor()
  await picture(page, '07-held')
  tell(
    'Fernhill, held',
    `${shop.orders().length - before} orders reached the shop; ${pot(await extension.book(), 'garden')}`,
  )
  await pressTag(panel)
  await picture(page, '08-held-tagged')
  await backToShop(page, panel)
  await order(page, 'fernhill')
  tell('Fernhill, tagged and placed', `${placed()}; ${pot(await extension.book(), 'garden')}`)
  await page.close()
}

/** Lunaire, one page in French: the total arrives late and changes with the shipping; the tag is adjusted. */
async function lateTotal(extension: Extension): Promise<void> {
  const page = await goToCheckout(extension, shop, 'lunaire', 'carnet:1')
  await orderButton(page, 'lunaire').click()
  const first = await panelOf(page)
  await choosePot(first, 'Paper and school')
  await pressTag(first)
  await backToShop(page, first)
  tell('Lunaire, tagged', pot(await extension.book(), 'paper'))
  await page.getByRole('radio', { name: /Par messager/ }).check()
  await page.getByText('Calcul en cours').first().waitFor({ state: 'hidden' })
  await orderButton(page, 'lunaire').click()
  const second = await panelOf(page)
  await second.locator('.order-form .verdict').waitFor()
  await picture(page, '09-total-changed')
  await pressTag(second)
  await backToShop(page, second)
  await order(page, 'lunaire')
  tell(
    'Lunaire, other shipping: the tag is adjusted, not doubled',
    `${placed()}; ${pot(await extension.book(), 'paper')}`,
  )
  await page.close()
}

/** Corvid, 55.90 of a pot with less: blocked, with no way on in the panel. */
async function blocked(extension: Extension): Promise<void> {
  const before = shop.orders().length
  const page = await goToCheckout(extension, shop, 'corvid', 'evening-piano:1')
  await orderButton(page, 'corvid').click()
  const panel = await panelOf(page)
  await choosePot(panel, 'Piano lessons')
  await panel.locator('.verdict-block').waitFor()
  await picture(page, '10-blocked')
  const said = await panel.locator('.verdict p').first().textContent()
  tell('Corvid, blocked', `${shop.orders().length - before} orders reached the shop; "${said}"`)
  await panel
    .getByRole('button', { name: words('back_to_shop') })
    .first()
    .click()
  await page.close()
}

/** Fernhill, more than the Garden pot has: its rule is warn, so a reason is asked for and kept. */
async function warned(extension: Extension): Promise<void> {
  const page = await goToCheckout(extension, shop, 'fernhill', 'shears:1')
  await orderButton(page, 'fernhill').click()
  const panel = await panelOf(page)
  await choosePot(panel, 'Garden')
  await panel.getByLabel(words('reason_label')).fill('The old shears broke and the hedge is due')
  await panel.locator('.verdict').waitFor()
  await picture(page, '11-warned')
  await pressTag(panel)
  await backToShop(page, panel)
  await order(page, 'fernhill')
  const view = await extension.book()
  const tagged = view.recent.find((e) => e.kind === 'order')
  const reason = tagged?.kind === 'order' ? tagged.goOnReason : undefined
  tell('Fernhill, warned and gone on', `${placed()}; reason kept: "${reason}"; ${pot(view, 'garden')}`)
  await page.close()
}

async function undo(extension: Extension): Promise<void> {
  const popup = await extension.popup()
  await popup
    .getByRole('button', { name: words('undo') })
    .first()
    .click()
  await popup
    .getByRole('status')
    .or(popup.getByText(words('recent_heading')))
    .first()
    .waitFor()
  await picture(popup, '12-undone')
  tell('undo of the last entry', pot(await extension.book(), 'garden'))
  await popup.close()
}

/** The worker dies between the tag and the press. */
async function workerKilled(extension: Extension): Promise<void> {
  const page = await goToCheckout(extension, shop, 'corvid', 'manuscript:1')
  const popup = await extension.popup(page)
  await choosePot(popup, 'Household things')
  await popup.keyboard.press('Enter')
  await popup.getByText(/Tagged .* to Household things/).waitFor()
  await popup.close()
  await extension.stopWorker()
  await order(page, 'corvid')
  tell('Corvid, worker killed between tag and press', `${placed()}; ${pot(await extension.book(), 'household')}`)
  await page.close()
}

async function order(page: Page, name: 'corvid' | 'fernhill' | 'lunaire'): Promise<void> {
  const confirmed = { corvid: /thanks/, fernhill: /confirmation/, lunaire: /merci/ }[name]
  await Promise.all([page.waitForURL(confirmed), orderButton(page, name).click()])
}

function placed(): string {
  const last = shop.orders().at(-1)
  return last ? `the shop got ${last.number} over ${last.total}` : 'the shop got nothing'
}

function pot(view: HouseholdView, id: PotId | string): string {
  const found = view.household.pots.find((p) => p.id === id)
  const b = view.balances[potId(id)]
  if (!found || !b) return `${id} is not there`
  const { left, cash, card, held } = b
  return `${found.name} has ${toDecimal(left)} left: ${toDecimal(cash)} cash, ${toDecimal(card)} card, ${toDecimal(held)} held`
}

function tell(step: string, outcome: string): void {
  console.log(`- ${step}\n    ${outcome}`)
}
