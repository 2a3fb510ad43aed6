import type { CheckoutReading } from '../checkout/reading.ts'

/** Nothing we can hear tells of every change (a style sheet edited by script): a reading is never older than this. */
const OLDEST_MS = 3_000

/** What people do that can change a page by its style alone. */
const TOUCHES = ['input', 'change', 'click', 'keyup', 'toggle', 'resize', 'popstate', 'hashchange'] as const

/**
 * Keeps the last reading while the page stays as it was: one press is several events (pointer, mouse, click, submit), and
 * reading anew for each would be felt. Watches the document and every open shadow root.
 *
 * @param read reads the page now
 */
export function cachedReading(read: () => CheckoutReading): () => CheckoutReading {
  let kept: { readonly reading: CheckoutReading; readonly url: string; readonly at: number } | null = null
  const forget = (): void => {
    kept = null
  }
  const roots = new WeakSet<Node>()
  // Shadow roots come with new elements; a root put on an old one is found when the reading is too old anyway.
  let scannedAt = Number.NEGATIVE_INFINITY
  const heed = (records: readonly MutationRecord[]): void => {
    if (records.length > 0) forget()
    if (records.some((record) => record.addedNodes.length > 0)) scannedAt = Number.NEGATIVE_INFINITY
  }
  const observer = new MutationObserver(heed)
  for (const type of TOUCHES) addEventListener(type, forgetUnlessPress, { capture: true, passive: true })

  /** A press on a control is what is being judged: it changes nothing before the page hears it. */
  function forgetUnlessPress(event: Event): void {
    if (event.type === 'click' || event.type === 'keyup') setTimeout(forget)
    else forget()
  }

  return () => {
    heed(observer.takeRecords())
    if (kept && kept.url === location.href && performance.now() - kept.at < OLDEST_MS) return kept.reading
    if (performance.now() - scannedAt > OLDEST_MS) {
      watch(document)
      scannedAt = performance.now()
    }
    const reading = read()
    kept = { reading, url: location.href, at: performance.now() }
    return reading
  }

  function watch(root: Document | ShadowRoot): void {
    if (!roots.has(root)) {
      roots.add(root)
      observer.observe(root, { childList: true, subtree: true, characterData: true, attributes: true })
    }
    for (const element of root.querySelectorAll('*')) if (element.shadowRoot) watch(element.shadowRoot)
  }
}
