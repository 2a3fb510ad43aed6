import type { Frame, Page } from 'playwright-core'

/** What a page shows, as text and as boxes. */
export interface TextLook {
  /** Texts that can be seen or are spoken, with where they stand. */
  readonly texts: readonly { readonly text: string; readonly where: string }[]
  /** Texts cut off by their own box, or lying outside of the window with nothing to scroll. */
  readonly cut: readonly string[]
  /** How far the page can be scrolled sideways, in CSS pixels. */
  readonly sideways: number
}

/** Looks at every text of a page. */
export function lookAtText(page: Page | Frame): Promise<TextLook> {
  return page.evaluate(() => {
    const texts: { text: string; where: string }[] = []
    const cut: string[] = []
    const whereIs = (e: Element): string => `${e.localName}${e.id ? `#${e.id}` : ''}.${[...e.classList].join('.')}`
    /** For screen readers only: one pixel, or clipped away. */
    const isUnseen = (e: Element): boolean => e.closest('.unseen, .skip') !== null
    const scrolls = (e: Element): boolean => /auto|scroll/.test(getComputedStyle(e).overflowX)

    for (const element of document.body.querySelectorAll('*')) {
      // What keys are called comes from the browser.
      if (element.localName === 'kbd') continue
      if (!element.checkVisibility({ visibilityProperty: true })) continue
      for (const name of ['aria-label', 'title', 'placeholder', 'alt']) {
        const text = element.getAttribute(name)
        if (text) texts.push({ text, where: `${whereIs(element)} [${name}]` })
      }
      const own = [...element.childNodes].filter((n) => n.nodeType === Node.TEXT_NODE && n.textContent?.trim())
      if (own.length === 0) continue
      // Values that a component puts into a sentence are text nodes of their own: the element says it whole.
      texts.push({ text: own.map((n) => n.textContent ?? '').join(''), where: whereIs(element) })
      if (isUnseen(element) || element.localName === 'option' || element.closest('svg')) continue
      for (let box: Element | null = element; box && !scrolls(box); box = box.parentElement) {
        const { overflowX, overflowY } = getComputedStyle(box)
        const isWide = /hidden|clip/.test(overflowX) && box.scrollWidth > box.clientWidth + 1
        const isTall = /hidden|clip/.test(overflowY) && box.scrollHeight > box.clientHeight + 2
        if (box !== document.documentElement && (isWide || isTall)) cut.push(`${whereIs(box)}: ${element.textContent}`)
      }
      const isInScroller = (e: Element | null): boolean =>
        e !== null &&
        e !== document.documentElement &&
        e !== document.body &&
        (scrolls(e) || isInScroller(e.parentElement))
      for (const node of own) {
        const range = document.createRange()
        range.selectNodeContents(node)
        const { left, right } = range.getBoundingClientRect()
        if ((left < -1 || right > innerWidth + 1) && !isInScroller(element)) {
          cut.push(`${whereIs(element)} at ${Math.round(left)} to ${Math.round(right)}: ${element.textContent}`)
        }
      }
    }
    const root = document.scrollingElement ?? document.documentElement
    return { texts, cut: [...new Set(cut)], sideways: root.scrollWidth - root.clientWidth }
  })
}
