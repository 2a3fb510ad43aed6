import type { Page } from 'puppeteer-core'
import type { BrowserName } from './both.ts'
import { accessKey, click, focusAndPress, hover, pen, tap } from './hand.ts'

/** A way to place an order, as a person or a page goes it on a page of the hostile shop. */
export interface Way {
  readonly page: string
  readonly act: (page: Page, browser: BrowserName) => Promise<void>
  /** Why it cannot be held; the README's cautions say so. */
  readonly notHoldable?: string
  /** Only in this browser. */
  readonly notHoldableIn?: BrowserName
  /** In which browser the driver cannot do it. */
  readonly notDriven?: BrowserName
}

const none = async (): Promise<void> => undefined
const press = (page: Page): Promise<void> => click(page)
const enter = (page: Page): Promise<void> => focusAndPress(page, '#press', 'Enter')
const drawnAnew = (page: Page): Promise<void> =>
  page.evaluate(
    () => new Promise<void>((done) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done)))),
  )
const NO_PRESS = 'the page orders by itself, without a press on what orders'

/** Every way, by its name in the contributor's guide. */
export const waysTable: Readonly<Record<string, Way>> = {
  mouse: { page: 'button', act: press },
  touch: { page: 'button', act: tap },
  pen: { page: 'button', act: pen, notDriven: 'Firefox' },
  'Enter in a field': { page: 'button', act: (page) => focusAndPress(page, '#field', 'Enter') },
  'Enter on the button': { page: 'button', act: enter },
  'Space on the button': { page: 'button', act: (page) => focusAndPress(page, '#press', ' ') },
  'access key': { page: 'access-key', act: (page, browser) => accessKey(page, browser, 'o') },
  'Enter in the only field': { page: 'sole-field', act: (page) => focusAndPress(page, '#field', 'Enter') },
  'Enter where there is no button': { page: 'no-button', act: (page) => focusAndPress(page, '#field', 'Enter') },
  'Enter, the page’s own key listener orders': {
    page: 'field-key-fetch',
    act: (page) => focusAndPress(page, '#field', 'Enter'),
  },
  'wallet frame': {
    page: 'wallet frame',
    act: async (page) => {
      // Chromium gives presses to frames of other sites by what was drawn last: that must be the inert one.
      await drawnAnew(page)
      await click(page, '#frame')
    },
  },
  'a picture as button': { page: 'input-image', act: press },
  'an input as button': { page: 'input-submit', act: press },
  'a label of the button': { page: 'label', act: press },
  'a button outside its form': { page: 'outside-button', act: press },
  'closed root, Enter': { page: 'closed root', act: enter },
  'link, Enter': { page: 'link', act: enter },
  'link, middle button': { page: 'link', act: (page) => click(page, '#press', 'middle') },
  'link as button': { page: 'link as button', act: press },
  're-enabled later': {
    page: 're-enabled',
    act: async (page) => {
      await click(page, '#terms')
      await click(page)
    },
  },
  'added later': {
    page: 'added',
    act: async (page) => {
      await page.waitForSelector('#press')
      await click(page)
    },
  },
  'new route': {
    page: 'new route',
    act: async (page) => {
      await click(page, '#go')
      await page.waitForSelector('#press')
      await click(page)
    },
  },
  'touchstart fetch': { page: 'touchstart fetch', act: tap },
  'touchend fetch': { page: 'touchend fetch', act: tap },
  'keydown fetch': { page: 'keydown fetch', act: enter },
  'keyup fetch': { page: 'keyup fetch', act: enter },
  'key on a div': { page: 'key on a div', act: enter },
  'timer submit()': { page: 'timer submit()', act: none },
  'timer requestSubmit()': { page: 'timer requestSubmit()', act: none },
  'closed root requestSubmit()': { page: 'closed root requestSubmit()', act: none },
  'closed root submit()': { page: 'closed root submit()', act: none },
  ...Object.fromEntries(
    [
      'submit()',
      'submit() by GET',
      'submit() of another realm',
      'submit() into a frame',
      'requestSubmit()',
      'requestSubmit(button)',
      'button.click()',
      'dispatched click',
      'link',
      'link in a new tab',
      'open root',
      'closed root',
      'open in open root',
      'closed in closed root',
      'open element',
      'closed element',
      'closed root with a face',
      'framed page',
      'srcdoc frame',
      'written frame',
      'frame in a frame',
      'frame click fetch',
      'replaced at the press',
      'renamed at the press',
      'click fetch',
      'click fetch, listener first',
      'pointerdown fetch',
      'mousedown fetch',
      'pointerup fetch',
      'mouseup fetch',
      'pointerdown leaves',
      'under an invisible cover',
      'in the page’s modal dialog',
      'form method=dialog',
      'in the page’s popover',
      'payment sheet',
    ].map((page) => [page, { page, act: press }]),
  ),
  'submit() into a new tab': {
    page: 'submit() into a new tab',
    act: press,
    notHoldable: 'Chromium raises no event that could be stopped',
    notHoldableIn: 'Chromium',
  },
  'timer fetch': { page: 'timer fetch', act: none, notHoldable: NO_PRESS },
  'timer address': { page: 'timer address', act: none, notHoldable: NO_PRESS },
  'timer beacon': { page: 'timer beacon', act: none, notHoldable: NO_PRESS },
  'hover fetch': { page: 'hover fetch', act: hover, notHoldable: NO_PRESS },
  'focus fetch': {
    page: 'focus fetch',
    act: (page) => page.evaluate(() => document.querySelector<HTMLElement>('#press')?.focus()),
    notHoldable: NO_PRESS,
  },
  'slider fetch': {
    page: 'slider fetch',
    act: (page) => focusAndPress(page, '#press', 'ArrowRight'),
    notHoldable: 'what orders is no button',
  },
  'wordless picture': { page: 'wordless picture', act: press, notHoldable: 'what orders has no words' },
  'unnamed foreign frame': {
    page: 'unnamed foreign frame',
    act: (page) => click(page, '#frame'),
    notHoldable: 'a frame of another origin that says nothing of paying',
  },
}
