import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type HostileShop, startHostileShop } from '../../demo-data/shop/hostile/server.ts'
import { ways } from '../../demo-data/shop/hostile/ways.ts'
import { type Driven, openBrowser } from './both.ts'
import { type Choice, chosen } from './chosen.ts'
import { click } from './hand.ts'
import { untilAllArrived } from './landing.ts'
import { isCurtained } from './panel.ts'
import { waysTable } from './ways-table.ts'

/*
 * Every way to place an order, in both browsers. Held means: the guard tells the worker that it holds an order, and
 * nothing reached the shop's server. What cannot be held is shown to go through, so that the list stays honest.
 */

const IN_TEST: Choice = {
  notInChromium: [
    'an input as button',
    'Enter on the button',
    'link, Enter',
    'mousedown fetch',
    'pointerup fetch',
    'mouseup fetch',
    'touchend fetch',
    'keyup fetch',
    'open in open root',
    'open element',
    'requestSubmit(button)',
    'dispatched click',
    'in the page’s popover',
    'timer requestSubmit()',
    'closed root requestSubmit()',
    'timer beacon',
    'focus fetch',
  ],
  inFirefox: [
    'mouse',
    'touch',
    'Enter in a field',
    'Space on the button',
    'access key',
    'Enter where there is no button',
    'a label of the button',
    'submit()',
    'submit() by GET',
    'submit() into a frame',
    'submit() into a new tab',
    'requestSubmit()',
    'closed root',
    'closed root, Enter',
    'closed root submit()',
    'closed in closed root',
    'framed page',
    'srcdoc frame',
    'written frame',
    'link, middle button',
    'key on a div',
    'pointerdown leaves',
    'under an invisible cover',
    'wallet frame',
    'timer fetch',
    'timer address',
  ],
}

const ONCE = [
  'mouse',
  'Enter in a field',
  'Space on the button',
  'closed root',
  'framed page',
  'link',
  'submit()',
  'click fetch',
]

let shop: HostileShop
const results: Record<string, Record<string, string>> = {}

beforeAll(async () => {
  shop = await startHostileShop(ways)
})
afterAll(async () => {
  await shop.close()
  console.log(
    Object.entries(results)
      .map(([way, by]) => `| ${way} | ${by.Chromium ?? ''} | ${by.Firefox ?? ''} |`)
      .join('\n'),
  )
})

describe.each(['Chromium', 'Firefox'] as const)('%s', (name) => {
  let browser: Driven
  beforeAll(async () => {
    browser = await openBrowser(name, shop.origin)
  })
  afterAll(() => browser.close())

  it.each(chosen(name, waysTable, IN_TEST))(
    '%s',
    async (way, { page: pageName, act, notHoldable, notHoldableIn, notDriven }) => {
      const note = (result: string): void => {
        results[way] = { ...results[way], [name]: result }
      }
      if (notDriven === name) {
        note('not driven')
        expect(name).toBe(notDriven)
        return
      }
      shop.clear()
      await browser.clearHeld()
      const page = await browser.open(shop.url(pageName))
      // The page has been read, so what comes now is decided by the gate alone.
      if (pageName !== 'new route' && !/^timer|^closed root (?:req|sub)/.test(pageName))
        await expect.poll(() => browser.seen(page)).not.toBeNull()
      note('?')
      await act(page, name)
      await expect.poll(async () => (await browser.held()) + shop.orders().length, { timeout: 5000 }).toBeGreaterThan(0)
      const held = await browser.held()
      // Whatever the page sent has arrived by the time it is answered.
      await untilAllArrived(page)
      const orders = shop.orders().length
      note(orders === 0 && held > 0 ? 'held' : orders > 0 ? 'ORDERED' : 'nothing')
      if (notHoldable === undefined || (notHoldableIn ?? name) !== name)
        expect({ orders, held }).toEqual({ orders: 0, held: 1 })
      else expect(orders).toBeGreaterThan(0)
    },
  )

  it.each(ONCE)('%s goes through once after a yes, by the person’s own action', async (name) => {
    const way = waysTable[name]
    if (!way) throw new Error(`the table has no row "${name}"`)
    shop.clear()
    await browser.forgetTags()
    await browser.clearHeld()
    const page = await browser.open(shop.url(way.page))
    await expect.poll(() => browser.seen(page)).not.toBeNull()
    await way.act(page, browser.name)
    await expect.poll(() => browser.hasPanel()).toBe(true)
    await browser.tag(page)
    await expect
      .poll(async () => {
        await page.keyboard.press('Escape')
        return isCurtained(page)
      })
      .toBe(false)
    expect(shop.orders()).toEqual([])
    await way.act(page, browser.name)
    await expect.poll(() => shop.orders().length).toBe(1)
    await untilAllArrived(page)
    expect(shop.orders().length).toBe(1)
  })

  it('a figure is shown on the page: scrolled to, ringed above the page, and left as it was', async () => {
    const page = await browser.open(shop.url('click fetch'))
    await expect.poll(() => browser.seen(page)).not.toBeNull()
    const look = (): Promise<unknown> =>
      page.evaluate(() => {
        const last = document.documentElement.lastElementChild
        const isRing = last?.localName === 'div'
        const { scrollHeight, scrollWidth } = document.documentElement
        const shows = isRing && {
          words: last.textContent,
          isAbove: last.matches(':popover-open'),
          root: last.shadowRoot,
        }
        return { shows, isScrolled: scrollY > 0, scrollHeight, scrollWidth }
      })
    await page.evaluate(() => {
      document.body.style.paddingTop = '3000px'
    })
    const before = Object(await look())
    expect(before).toMatchObject({ shows: false, isScrolled: false })
    const tab = await browser.tabOf(page)
    const [figure] = (await browser.seen(page))?.figures ?? []
    if (!figure) throw new Error('the page shows no total')
    const { label, text } = figure
    expect(await browser.ask('checkout.mark', { tab, figure: { label, text } })).toEqual({ isFound: true })
    const shows = { words: '', isAbove: true, root: null }
    expect(await look()).toEqual({ ...before, shows, isScrolled: true })
    await page.keyboard.press('Escape')
    expect(await look()).toEqual({ ...before, isScrolled: true })
    await browser.ask('checkout.mark', { tab, figure: { label, text } })
    await browser.ask('checkout.mark', { tab, figure: null })
    expect(await look()).toEqual({ ...before, isScrolled: true })
    expect(await browser.ask('checkout.mark', { tab, figure: { label, text: '1.00' } })).toEqual({ isFound: false })
  })

  it('a page kept for going back knows of no tag that is gone', async () => {
    shop.clear()
    await browser.forgetTags()
    const page = await browser.open(shop.url('click fetch'))
    await expect.poll(() => browser.seen(page)).not.toBeNull()
    await browser.tag(page)
    await page.goto(shop.url('link'))
    await browser.forgetTags()
    await browser.clearHeld()
    await page.evaluate(() => history.back())
    await page.waitForFunction(() => document.querySelector('#press')?.localName === 'button')
    await click(page)
    await expect.poll(async () => (await browser.held()) + shop.orders().length).toBeGreaterThan(0)
    expect(shop.orders()).toEqual([])
  })

  it('a page drawn ahead is guarded once it is gone to', async () => {
    shop.clear()
    await browser.clearHeld()
    const page = await browser.open(shop.url('drawn ahead'))
    // Firefox draws nothing ahead and goes there the usual way.
    if (name === 'Chromium') await expect.poll(shop.told).toEqual(['drawn ahead'])
    expect(shop.orders()).toEqual([])
    await click(page, '#go')
    await expect.poll(async () => (await browser.held()) + shop.orders().length).toBeGreaterThan(0)
    expect(shop.orders()).toEqual([])
  })
})
