/*
 * What browsers do differently, in one place, for the scripts that run in a shop's page. Everything else in this room is
 * the same in Chromium and Firefox.
 */

declare global {
  interface Element {
    /** Firefox's door into closed shadow roots, for extensions only. */
    readonly openOrClosedShadowRoot?: ShadowRoot | null
  }
}

/**
 * The extension's own interface; its replies are promises in both. Not `browser`: where a browser has none, a page's frame
 * of that name would be taken for it.
 */
export const api = globalThis.chrome

/** What can hold a shadow root (DOM standard, "valid shadow host name"). */
const MAY_HOST = /-|^(article|aside|blockquote|body|div|footer|h[1-6]|header|main|nav|p|section|span)$/

const found = new WeakMap<Element, ShadowRoot>()
const ours = new WeakSet<Element>()

/** An element's shadow root, closed ones too; null for what has none and for the guard's own. */
export function rootIn(element: Element): ShadowRoot | null {
  if (ours.has(element) || !MAY_HOST.test(element.localName)) return null
  try {
    const root = api.dom?.openOrClosedShadowRoot
      ? api.dom.openOrClosedShadowRoot(element as HTMLElement)
      : (element.openOrClosedShadowRoot ?? null)
    if (root) found.set(element, root)
    return root
  } catch {
    return found.get(element) ?? null // The extension was updated or removed under this page.
  }
}

/** Marks an element as the guard's own, so that the reader never takes its words for the shop's. */
export function keepOut(element: Element): void {
  ours.add(element)
}

/**
 * Lets all code of ours in this page see into closed shadow roots as into open ones. Our scripts have prototypes of their
 * own, so the page notices nothing. Asking costs some microseconds in Chromium: hosts that show children of their own are
 * asked only once they were pressed.
 */
export function seeClosedRoots(): void {
  const open = Object.getOwnPropertyDescriptor(Element.prototype, 'shadowRoot')?.get
  if (!open) return
  Object.defineProperty(Element.prototype, 'shadowRoot', {
    configurable: true,
    get(this: Element): ShadowRoot | null {
      const root: ShadowRoot | null = open.call(this) ?? found.get(this) ?? null
      // What is no possible host may be a form whose fields hide its own properties.
      if (root || !MAY_HOST.test(this.localName) || (this.firstChild && !this.localName.includes('-'))) return root
      return rootIn(this)
    },
  })
}
