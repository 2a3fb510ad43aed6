import browser from 'webextension-polyfill'
import * as z from 'zod/mini'
import { shopLanguages } from '../guard/shop-languages.ts'
import type { SeenPage } from './protocol.ts'
import { pageRequests } from './schemas.ts'
import { LANGUAGES_FILE, READER_FILE } from './shops.ts'

const seenPage = pageRequests['page.seen'].def.shape.page

/**
 * Brings the reader into a frame of a tab (0 is the page itself), with the lexicons of the languages the page speaks; it
 * stays there until the page goes. Safe to repeat.
 *
 * @throws when the tab may not be read
 */
export async function bringReader(tab: number, frame: number): Promise<void> {
  const target = { tabId: tab, frameIds: [frame] }
  // A page may take long to load, or stop loading and never be done.
  const injectImmediately = true
  await browser.scripting.executeScript({ target, injectImmediately, files: [LANGUAGES_FILE] })
  const [found] = await browser.scripting.executeScript({
    target,
    injectImmediately,
    func: () => globalThis.tillsideLanguages ?? [],
  })
  const languages = z.array(z.string()).safeParse(found?.result).data ?? []
  const lexicons = languages.filter((l) => shopLanguages.includes(l)).map((l) => `lexicons/${l}.js`)
  await browser.scripting.executeScript({ target, injectImmediately, files: [...lexicons, READER_FILE] })
}

/**
 * Reads a tab's page now. Null when the browser does not let us (no permission for this page, a browser page).
 *
 * @param currency the household's currency, for pages that write `$` alone
 */
export async function readTab(tab: number, currency: string): Promise<SeenPage | null> {
  try {
    await bringReader(tab, 0)
    const results = await browser.scripting.executeScript({
      target: { tabId: tab },
      func: (hint: string) => globalThis.tillsideReader?.seen(hint) ?? null,
      args: [currency],
    })
    return seenPage.safeParse(results[0]?.result).data ?? null
  } catch (cause) {
    console.info('Tillside: this page cannot be read.', cause)
    return null
  }
}
