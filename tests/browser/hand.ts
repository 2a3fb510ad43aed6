import type { KeyInput, Page } from 'puppeteer-core'
import type { BrowserName } from './both.ts'
import { untilItLands } from './landing.ts'

/** What a person does with mouse, touch, pen and keys, in either browser. Addresses things by selector. */

export type Point = readonly [number, number]

/** Where the thing to press is: in the page, in a frame (of a frame), or where a closed root says. */
export async function pointOf(page: Page, selector = '#press'): Promise<Point> {
  return page.evaluate((wanted) => {
    const at = (Reflect.get(window, 'pressAt') as (() => Point) | undefined)?.()
    if (at) return at
    const find = (root: Document | ShadowRoot, x: number, y: number): Point | null => {
      const found = ('host' in root ? DocumentFragment : Document).prototype.querySelector.call(root, wanted)
      if (found) {
        const box = found.getBoundingClientRect()
        return [x + box.x + box.width / 2, y + box.y + box.height / 2]
      }
      for (const element of ('host' in root ? DocumentFragment : Document).prototype.querySelectorAll.call(root, '*')) {
        const inner = element.shadowRoot ? find(element.shadowRoot, x, y) : null
        if (inner) return inner
        // Of whatever realm: a frame in a frame is none of this window's.
        const framed: Document | null | undefined = Reflect.get(element, 'contentDocument')
        if (framed) {
          const box = element.getBoundingClientRect()
          const inFrame = find(framed, x + box.x + element.clientLeft, y + box.y + element.clientTop)
          if (inFrame) return inFrame
        }
      }
      return null
    }
    const point = find(document, 0, 0)
    if (!point) throw new Error(`nothing fits ${wanted}`)
    return point
  }, selector)
}

export async function click(page: Page, selector?: string, button: 'left' | 'middle' = 'left'): Promise<void> {
  const [x, y] = await pointOf(page, selector)
  await untilItLands(page, async () => {
    await page.mouse.move(x, y)
    // A hover may have changed what lies there.
    await page.mouse.click(x, y, { button, delay: 30 })
  })
}

export async function hover(page: Page): Promise<void> {
  const [x, y] = await pointOf(page)
  await page.mouse.move(x, y)
}

export async function tap(page: Page): Promise<void> {
  const [x, y] = await pointOf(page)
  await untilItLands(page, () => page.touchscreen.tap(x, y))
}

/** A pen as Chromium's own protocol moves it; Firefox's driver has no pen. */
export async function pen(page: Page): Promise<void> {
  const [x, y] = await pointOf(page)
  const session = await page.createCDPSession()
  await untilItLands(page, async () => {
    for (const type of ['mouseMoved', 'mousePressed', 'mouseReleased'] as const) {
      const button = type === 'mouseMoved' ? 'none' : 'left'
      await session.send('Input.dispatchMouseEvent', { type, x, y, button, clickCount: 1, pointerType: 'pen' })
    }
  })
  await session.detach()
}

export async function focusAndPress(page: Page, selector: string, key: KeyInput): Promise<void> {
  await page.evaluate((wanted) => {
    const inner = Reflect.get(window, 'inner')
    const root = inner instanceof ShadowRoot ? inner : document
    const found = root.querySelector(wanted)
    if (!(found instanceof HTMLElement)) throw new Error(`nothing fits ${wanted}`)
    found.focus()
  }, selector)
  await untilItLands(page, () => page.keyboard.press(key, { delay: 30 }))
}

/** Chromium hears access keys with Alt, Firefox with Alt and Shift. */
export async function accessKey(page: Page, browser: BrowserName, letter: 'o'): Promise<void> {
  if (browser === 'Firefox') {
    return untilItLands(page, async () => {
      await page.keyboard.down('Alt')
      await page.keyboard.down('Shift')
      await page.keyboard.press('O')
      await page.keyboard.up('Shift')
      await page.keyboard.up('Alt')
    })
  }
  const session = await page.createCDPSession()
  const key = { modifiers: 1, key: letter, code: 'KeyO', windowsVirtualKeyCode: 79 }
  await untilItLands(page, async () => {
    await session.send('Input.dispatchKeyEvent', { type: 'keyDown', text: letter, unmodifiedText: letter, ...key })
    await session.send('Input.dispatchKeyEvent', { type: 'keyUp', ...key })
  })
  await session.detach()
}
