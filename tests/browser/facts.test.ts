import type { Page } from 'puppeteer-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { facts } from '../../demo-data/shop/hostile/facts.ts'
import { type HostileShop, startHostileShop } from '../../demo-data/shop/hostile/server.ts'
import { type BrowserName, type Driven, openBrowser } from './both.ts'
import { type Choice, chosen } from './chosen.ts'
import { click, focusAndPress } from './hand.ts'
import { untilAllArrived } from './landing.ts'

/*
 * The numbered facts of tests/published/html-submission.md and activation.md (HTML standard, DOM, UI Events; each fact names
 * its own source there) that concern an order: an action that orders is held, one that does not is left alone.
 */

interface Fact {
  readonly act: (page: Page) => Promise<void>
  /** Nothing is ordered by it, so nothing is held. */
  readonly harmless?: true | BrowserName
}

const enter = (page: Page): Promise<void> => focusAndPress(page, '#field', 'Enter')
const special: Readonly<Record<string, Fact>> = {
  'html 4: a form that is not in the page sends nothing': { act: (page) => click(page, '#go'), harmless: true },
  'html 11: formnovalidate lets an empty required field pass': { act: enter },
  'html 13: the default button may lie outside its form': { act: enter },
  'html 15: a disabled default button stops Enter': { act: enter, harmless: true },
  'html 16: no button, a field and a box': { act: enter },
  'html 16: no button, two fields': { act: enter, harmless: true },
  'html 18: a button of type button is none': { act: enter },
  'html 19: a hidden default button is clicked by Enter': { act: enter },
  'html 19: an inert default button is clicked by Enter': { act: enter },
  'html 20: the first button counts': { act: enter },
  'html 20: the first button counts, and it is another': { act: enter, harmless: true },
  'html 23: Enter on a slider': { act: enter, harmless: 'Firefox' },
  'html 23: Enter on a box without a button': { act: enter, harmless: 'Chromium' },
  'html 41: another intent of the same form': { act: (page) => click(page), harmless: true },
  'html K: Enter on a box': { act: enter },
  'html K: Space on a box': { act: (page) => focusAndPress(page, '#field', ' '), harmless: true },
  'html K: Enter in a text area': { act: enter, harmless: true },
  'html K: Enter on a choice': { act: enter, harmless: true },
}
/** The facts that a row of ways or attacks shows too. */
const IN_TEST: Choice = {
  notInChromium: [
    'html 11: formnovalidate lets an empty required field pass',
    'html 29: a press on what lies in the button',
    'html 38: the button says where to',
  ],
  inFirefox: [
    'html 13: the default button may lie outside its form',
    'html 16: no button, a field and a box',
    'html 19: an inert default button is clicked by Enter',
    'html 20: the first button counts, and it is another',
    'html 23: Enter on a slider',
    'html 23: Enter on a box without a button',
    'activation 10: a captured pointer',
  ],
}

let shop: HostileShop
beforeAll(async () => {
  shop = await startHostileShop(facts)
})
afterAll(() => shop.close())

describe.each(['Chromium', 'Firefox'] as const)('%s', (name) => {
  let browser: Driven
  beforeAll(async () => {
    browser = await openBrowser(name, shop.origin)
  })
  afterAll(() => browser.close())

  it.each(chosen(name, facts, IN_TEST))('%s', async (fact) => {
    const { act, harmless } = special[fact] ?? { act: (page: Page) => click(page), harmless: undefined }
    shop.clear()
    await browser.clearHeld()
    const page = await browser.open(shop.url(fact))
    await expect.poll(() => browser.seen(page)).not.toBeNull()
    await act(page)
    const isHarmless = harmless === true || harmless === name
    if (!isHarmless) await expect.poll(async () => (await browser.held()) + shop.orders().length).toBeGreaterThan(0)
    // Whatever the page sent has arrived, and whatever the guard says has been said, by the time it is answered.
    await untilAllArrived(page)
    await untilAllArrived(page)
    expect({ held: await browser.held(), orders: shop.orders().length }).toEqual({
      held: isHarmless ? 0 : 1,
      orders: 0,
    })
  })
})
