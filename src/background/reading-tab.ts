import browser from 'webextension-polyfill'
import type { SeenPage } from './protocol.ts'
import { pageRequests } from './schemas.ts'
import { READER_FILE } from './shops.ts'

const seenPage = pageRequests['page.seen'].def.shape.page

/** Brings the reader into a tab's top frame; it stays there until the page goes. @throws when the tab may not be read */
export async function bringReader(tab: number): Promise<void> {
  await browser.scripting.executeScript({ target: { tabId: tab }, files: [READER_FILE] })
}

/**
 * Reads a tab's page now. Null when the browser does not let us (no permission for this page, a browser page).
 *
 * @param currency the household's currency, for pages that write `$` alone
 */
export async function readTab(tab: number, currency: string): Promise<SeenPage | null> {
  try {
    await bringReader(tab)
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
