import { readFileSync } from 'node:fs'
import axe from 'axe-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { z } from 'zod'
import { type DemoShop, startDemoShop } from '../../demo-data/shop/server.ts'
import type { Extension } from './extension.ts'
import { goToCheckout } from './guarded-shop.ts'
import { openSpeaking } from './speaking.ts'

const built: unknown = JSON.parse(
  readFileSync(new URL('../../dist/demo/_locales/ar/messages.json', import.meta.url), 'utf8'),
)
const arabic = z.record(z.string(), z.object({ message: z.string() })).parse(built)
const said = (key: string): string => arabic[key]?.message ?? `no ${key}`

let shop: DemoShop
let extension: Extension

beforeAll(async () => {
  shop = await startDemoShop()
  extension = await openSpeaking(arabic)
  await extension.ask('household.demo', {})
})
afterAll(async () => {
  await extension.close()
  await shop.close()
})

it('the popup at a checkout in Arabic runs from right to left, takes Arabic digits, and passes axe', async () => {
  const page = await goToCheckout(extension, shop, 'fernhill', 'seed-mix:2,trowel:1')
  const popup = await extension.popup(page)
  await popup.getByText(said('which_pot')).waitFor()
  const root = popup.locator('html')
  expect([await root.getAttribute('lang'), await root.getAttribute('dir')]).toEqual(['ar', 'rtl'])

  // The name of a pot stands at the start of its row, which is the right, and what is left at the end.
  const row = popup.locator('.pot-row').first()
  const name = await row.locator('.pot-name').boundingBox()
  const left = await row.locator('.pot-left').boundingBox()
  expect(name && left && name.x > left.x).toBe(true)

  // Arabic-Indic digits with the Arabic decimal mark (Unicode U+0660 to U+0669, U+066B); which digits `ar`
  // is shown in is for CLDR to say.
  const amount = popup.getByRole('textbox', { name: said('order_total') })
  await amount.fill('١٢٫٥٠')
  await popup.locator('.pot-row').first().click()
  await popup.locator('.verdict').first().waitFor()
  const written = new Intl.NumberFormat('ar', { minimumFractionDigits: 2 }).format(12.5)
  expect(await popup.locator('.verdict').first().textContent()).toContain(written)

  await popup.evaluate(axe.source)
  // Public reference implementation of the machine-checkable part of WCAG 2.2: axe-core.
  const faults = await popup.evaluate<string[]>(
    `axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] }).then((found) =>
      found.violations.map((v) => v.id + ': ' + v.nodes.map((n) => n.target.join(' ')).join(', ')))`,
  )
  expect(faults).toEqual([])
})
