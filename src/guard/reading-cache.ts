import type { Lexicon } from '../checkout/lexicon/lexicon.ts'
import { createPageReader } from '../checkout/page-reader.ts'
import type { ReadOptions } from '../checkout/read-page.ts'
import type { CheckoutReading } from '../checkout/reading.ts'

/** Nothing we can hear tells of every change (a style sheet edited by script): a reading is never older than this. */
const OLDEST_MS = 3_000

/** What people do that can change a page by its style alone. */
const TOUCHES = ['input', 'change', 'click', 'keyup', 'toggle', 'resize', 'popstate', 'hashchange', 'load'] as const

/** Everything a reading can depend on in the markup. */
const ALL_CHANGES = { childList: true, subtree: true, characterData: true, attributes: true }

/**
 * Keeps the last reading while the page stays as it was - one press is several events (pointer, mouse, click, submit), and
 * reading anew for each would be felt - and what is known of the page where only a part of it changed. Watches the document,
 * every open shadow root and the documents of frames.
 *
 * @param page the document to read: in a frame, the one around it
 */
export function cachedReading(page: Document): (options: ReadOptions, lexicons: readonly Lexicon[]) => CheckoutReading {
  const reader = createPageReader(page)
  let kept: { readonly reading: CheckoutReading; readonly by: string; readonly at: number } | null = null
  let rootsSoughtAt = Number.NEGATIVE_INFINITY
  const forget = (): void => {
    kept = null
  }
  const heed = (records: readonly MutationRecord[]): void => {
    if (records.length === 0) return
    forget()
    reader.changed(records)
  }
  const observer = new MutationObserver(heed)
  for (const type of TOUCHES) addEventListener(type, forgetUnlessPress, { capture: true, passive: true })

  /** A press on a control is what is being judged: it changes nothing before the page hears it. */
  function forgetUnlessPress(event: Event): void {
    if (event.type === 'click' || event.type === 'keyup') setTimeout(forget)
    else forget()
  }

  return (options, lexicons) => {
    heed(observer.takeRecords())
    const now = performance.now()
    const by = `${options.url} ${options.currency} ${lexicons.map(({ language }) => language)}`
    if (kept && kept.by === by && now - kept.at < OLDEST_MS) return kept.reading
    if (now - rootsSoughtAt > OLDEST_MS) {
      reader.lookForRoots()
      rootsSoughtAt = now
    }
    const reading = reader.read(options, lexicons)
    for (const source of reader.takeSources()) observer.observe(source, ALL_CHANGES)
    kept = { reading, by, at: now }
    return reading
  }
}
