import { readFileSync } from 'node:fs'
import type { Frame, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { z } from 'zod'
import { type DemoShop, startDemoShop } from '../../demo-data/shop/server.ts'
import { pageGroups } from '../../src/desk/pages.ts'
import type { Extension } from './extension.ts'
import { goToCheckout, orderButton, panelOf, watchShops } from './guarded-shop.ts'
import { lookAtText } from './look-at-text.ts'
import { outsidePseudo, pseudo } from './pseudo-text.ts'
import { openSpeaking } from './speaking.ts'

/*
 * Every page in a language that does not exist: what is not in it was never given to translators, and what does not fit
 * would not fit in a language whose words are longer. 320 CSS pixels is the width of WCAG 2.2, success criterion 1.4.10
 * (Reflow).
 */

const built: unknown = JSON.parse(
  readFileSync(new URL('../../dist/demo/_locales/en/messages.json', import.meta.url), 'utf8'),
)
const english = z.record(z.string(), z.object({ message: z.string() })).parse(built)
const AS_THEY_ARE = /^(language_|extension_)/
const messages = Object.fromEntries(
  Object.entries(english).map(([key, { message }]) => [
    key,
    { message: AS_THEY_ARE.test(key) ? message : pseudo(message) },
  ]),
)

let shop: DemoShop
let extension: Extension
let data: ReadonlySet<string>

beforeAll(async () => {
  shop = await startDemoShop()
  extension = await openSpeaking(messages)
})
afterAll(async () => {
  await extension.close()
  await shop.close()
})

/** Words of a household's own and of Intl, which no message file holds. */
function wordsOf(household: readonly unknown[]): ReadonlySet<string> {
  const said: string[] = ['Tillside', 'CAD', 'localhost', 'fernhill', 'corvid', 'lunaire', 'OFX', 'mm', 'in']
  const gather = (value: unknown, key: string): void => {
    if (typeof value === 'string' && /^(name|shop|purpose|reason|label|number|text|debt|origin)$/.test(key))
      said.push(value)
    if (typeof value === 'object' && value !== null) for (const [k, v] of Object.entries(value)) gather(v, k)
  }
  gather(household, '')
  for (let day = 0; day < 365; day += 15) {
    for (const style of ['short', 'long'] as const) {
      const format = new Intl.DateTimeFormat('en-US', { month: style, weekday: style, timeZone: 'UTC' })
      said.push(format.format(new Date(Date.UTC(2026, 0, 1 + day))))
    }
  }
  const currencies = new Intl.DisplayNames(['en-US'], { type: 'currency' })
  said.push(...Intl.supportedValuesOf('currency').map((code) => `${code} ${currencies.of(code)}`))
  return new Set(said.flatMap((text) => wordsIn(text)))
}

function wordsIn(text: string): string[] {
  return text.toLowerCase().match(/[a-z]{2,}/g) ?? []
}

/** What no translator was given, what is cut off, and whether the page runs sideways. */
async function wrongIn(page: Page | Frame): Promise<string[]> {
  const { texts, cut, sideways } = await lookAtText(page)
  expect(texts.length).toBeGreaterThan(3)
  const own = texts.filter(({ text }) => wordsIn(outsidePseudo(text)).some((word) => !data.has(word)))
  return [
    ...own.map(({ text, where }) => `not translated: ${where}: ${text}`),
    ...cut.map((what) => `cut off: ${what}`),
    ...(sideways > 0 ? [`runs sideways by ${sideways} px`] : []),
  ]
}

async function openAll(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true
  })
}

async function drawn(page: Page | Frame): Promise<void> {
  await page.locator('main :is(h1, h2, legend, caption)').first().waitFor()
  await expect.poll(() => page.locator('.skeleton, [role=progressbar]').count()).toBe(0)
}

describe('in a language that does not exist', () => {
  it('sees a text of no message file, a text that is cut off, and a page that runs sideways', async () => {
    data = wordsOf([])
    const popup = await extension.popup()
    await drawn(popup)
    await popup.evaluate(() => {
      const add = (text: string, css: string): void => {
        const made = document.createElement('p')
        made.textContent = text
        made.style.cssText = css
        document.body.append(made)
      }
      add('Left behind', '')
      add('[Çüť öƒƒ]', 'overflow: hidden; white-space: nowrap; inline-size: 20px')
      add('[Ŵïðé]', 'inline-size: 2000px')
    })
    const wrong = (await wrongIn(popup)).join()
    expect(wrong).toMatch(/not translated: p\.: Left behind.*cut off: p\.: \[Çüť öƒƒ\].*runs sideways by 1\d+ px/)
    await popup.close()
  })

  it('the first run', async () => {
    data = wordsOf([])
    const popup = await extension.popup()
    await drawn(popup)
    await openAll(popup)
    expect(await wrongIn(popup)).toEqual([])
    await popup.close()
    await extension.ask('household.demo', {})
    const { entries } = await extension.ask('book.entries', { from: 0 })
    data = wordsOf([await extension.book(), entries])
  })

  it('the popup', async () => {
    const popup = await extension.popup()
    for (const width of [400, 320]) {
      await popup.setViewportSize({ width, height: 600 })
      await drawn(popup)
      await openAll(popup)
      expect([width, await wrongIn(popup)]).toEqual([width, []])
    }
    await popup.close()
  })

  it('the order at a checkout, in popup and panel', async () => {
    await watchShops(extension, shop, ['fernhill'])
    const page = await goToCheckout(extension, shop, 'fernhill', 'seed-mix:2,trowel:1')
    const popup = await extension.popup(page)
    await popup.setViewportSize({ width: 320, height: 600 })
    await drawn(popup)
    await openAll(popup)
    expect(await wrongIn(popup)).toEqual([])
    await popup.close()
    await page.bringToFront()
    await orderButton(page, 'fernhill').click()
    const panel = await panelOf(page)
    await drawn(panel)
    expect(await wrongIn(panel)).toEqual([])
    await page.close()
  })

  it('every page of the desk, wide and narrow', async () => {
    const desk = await extension.context.newPage()
    const wrong: string[] = []
    for (const { name } of pageGroups.flatMap((group) => group.pages)) {
      await desk.goto(extension.url(`src/desk/desk.html#/${name}`))
      await drawn(desk)
      await openAll(desk)
      for (const width of [1200, 320]) {
        await desk.setViewportSize({ width, height: 860 })
        wrong.push(...(await wrongIn(desk)).map((what) => `${name} at ${width} px: ${what}`))
      }
    }
    expect(wrong).toEqual([])
    await desk.close()
  })
})
