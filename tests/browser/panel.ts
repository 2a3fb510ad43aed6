import type { Frame, Page } from 'puppeteer-core'

/** The panel's frame, once it has drawn the order; null when there is none in time. Firefox's driver knows its address late, so it is asked. */
export async function panelIn(page: Page, withinMs = 6000): Promise<Frame | null> {
  for (const until = Date.now() + withinMs; Date.now() < until; ) {
    for (const frame of page.frames()) {
      if (frame === page.mainFrame()) continue
      const isPanel = await frame
        .evaluate(() => location.pathname.endsWith('/panel.html') && document.querySelector('main') !== null)
        .catch(() => false)
      if (isPanel) return frame
    }
  }
  return null
}

/** Whether the curtain lies over the middle of the page, as the page itself can tell. */
export function isCurtained(page: Page): Promise<boolean> {
  return page.evaluate(() => {
    // A page may hide the document's own methods.
    const top = Document.prototype.elementFromPoint.call(document, innerWidth / 2, innerHeight / 2)
    const host = [...Document.prototype.querySelectorAll.call(document, 'html > div')].at(-1)
    return top !== null && top === host
  })
}

/** What the panel says; empty when there is none. */
export async function panelText(page: Page): Promise<string> {
  const panel = await panelIn(page, 1000)
  return panel ? panel.evaluate(() => document.body.textContent ?? '').catch(() => '') : ''
}
