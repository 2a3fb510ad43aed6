import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { pageGroups } from '../../src/desk/pages.ts'
import { axeFaults } from './axe.ts'
import { type Extension, openExtension } from './extension.ts'
import { lookAtText } from './look-at-text.ts'
import { words } from './words.ts'

/*
 * Every page of the desk in the demo household, wide and narrow, light and dark, against success criteria of WCAG 2.2 by
 * their numbers (W3C, w3c/wcag): what axe-core can check of A and AA, 1.4.10 Reflow, 1.4.4 Resize Text (nothing is cut),
 * 2.4.1 Bypass Blocks, 2.4.3 Focus Order, 2.4.7 Focus Visible, 4.1.3 Status Messages.
 */

const names = pageGroups.flatMap((group) => group.pages.map((page) => page.name))
const places = [...names, 'pots/groceries', 'payday/plan', 'payday/slip', 'payday/fill']

let extension: Extension
let page: Page

beforeAll(async () => {
  extension = await openExtension()
  await extension.ask('household.demo', {})
  page = await extension.context.newPage()
})

afterAll(async () => {
  await extension.close()
})

const heading = () => page.locator('.page-head h1')
const go = async (place: string): Promise<void> => {
  // Another search is another document: the desk opens anew at this place.
  await page.goto(extension.url(`src/desk/desk.html?${place}#/${place}`))
  await heading().waitFor()
  await page.locator('main .busy').waitFor({ state: 'detached' })
}

describe('every page of the desk', () => {
  it.each(places)('%s: no fault of axe, nothing cut, nothing to scroll sideways', async (place) => {
    await page.setViewportSize({ width: 1280, height: 900 })
    await go(place)
    for (const width of [1280, 320]) {
      await page.setViewportSize({ width, height: 900 })
      expect(await axeFaults(page), `${width}`).toEqual([])
      const { cut, sideways } = await lookAtText(page)
      expect({ cut, sideways }, `${width}`).toEqual({ cut: [], sideways: 0 })
      await page.emulateMedia({ colorScheme: 'dark' })
      expect(await axeFaults(page, 'colours'), `dark, ${width}`).toEqual([])
      await page.emulateMedia({ colorScheme: 'light' })
    }
  })
})

describe('by keyboard', () => {
  it('2.4.1 and 2.4.3: the way past the navigation, and from a link onto the heading of its page', async () => {
    await page.setViewportSize({ width: 1280, height: 900 })
    await go('orders')
    await page.keyboard.press('Tab')
    await page.keyboard.press('Enter')
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('desk-main')
    const link = page.locator('.desk-nav').getByRole('link', { name: words('goals_title') })
    await link.focus()
    await page.keyboard.press('Enter')
    await expect
      .poll(() => heading().evaluate((h) => [h.textContent, h === document.activeElement]))
      .toEqual([words('goals_title'), true])
  })

  it('2.4.7 and 2.4.11: whatever has the keyboard is marked, and in sight', async () => {
    await go('pots/groceries')
    await heading().focus()
    for (let step = 0; step < 25; step++) {
      await page.keyboard.press('Tab')
      const seen = await page.evaluate(() => {
        const at = document.activeElement
        if (!at || at === document.body) return null
        const { top, bottom } = at.getBoundingClientRect()
        // A radio is drawn by the words beside it.
        const drawn = at.matches('.choice input') ? (at.nextElementSibling ?? at) : at
        const { outlineStyle, outlineWidth } = getComputedStyle(drawn)
        return {
          is: at.outerHTML.slice(0, 80),
          isMarked: outlineStyle !== 'none' && outlineWidth !== '0px',
          isInSight: bottom > 0 && top < innerHeight,
        }
      })
      if (seen) expect(seen).toEqual({ is: seen.is, isMarked: true, isInSight: true })
    }
  })

  it('4.1.3: what was entered is said, and one press takes it back', async () => {
    await go('pots/market')
    const before = (await extension.book()).recent[0]?.id
    await page.locator('.paper-purpose input').fill('pears')
    await page.locator('.paper-lines .amount-input').fill('3.20')
    await page.getByRole('button', { name: words('paper_enter') }).click()
    const line = page.locator('.done-bar[role=status]')
    await line.getByText(/pears/).waitFor()
    expect((await extension.book()).recent[0]?.id).not.toBe(before)
    await line.getByRole('button', { name: words('done_take_back') }).press('Enter')
    await line.getByText(words('done_taken_back')).waitFor()
    expect((await extension.book()).recent[0]?.id).toBe(before)
  })
})
