import browser from 'webextension-polyfill'
import * as z from 'zod/mini'
import { shopLanguages } from '../guard/shop-languages.ts'
import type { SeenPage } from './protocol.ts'
import { pageRequests } from './schemas.ts'
import { LANGUAGES_FILE, READER_FILE } from './shops.ts'

/** What a frame says of itself: the languages it speaks, those whose words it has, and whether the reader is there. */
const there = z.object({ spoken: z.array(z.string()), known: z.array(z.string()), hasReader: z.boolean() })
const NOTHING: z.infer<typeof there> = { spoken: [], known: [], hasReader: false }

const seenPage = pageRequests['page.seen'].def.shape.page

/**
 * Brings the reader into a frame of a tab (0 is the page itself), with the lexicons of the languages the page speaks; it
 * stays there until the page goes. Safe to repeat: only what is missing is brought.
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
    func: () => ({
      spoken: globalThis.tillsideLanguages ?? [],
      known: (globalThis.tillsideLexicons ?? []).map(({ language }) => language),
      // A frame of the page's by that name is no reader.
      hasReader: Object.hasOwn(globalThis, 'tillsideReader') && globalThis.tillsideReader !== undefined,
    }),
  })
  const { spoken, known, hasReader } = there.safeParse(found?.result).data ?? NOTHING
  const missing = spoken.filter((language) => shopLanguages.includes(language) && !known.includes(language))
  const files = [...missing.map((language) => `lexicons/${language}.js`), ...(hasReader ? [] : [READER_FILE])]
  if (files.length > 0) await browser.scripting.executeScript({ target, injectImmediately, files })
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
