import browser from 'webextension-polyfill'

/*
 * Watched shops. A shop is watched when the household said so (stored in the head) and the browser's permission for its
 * host still stands; the person can take either back.
 */

export const GATE_FILE = 'gate.js'
export const READER_FILE = 'reader.js'
export const LANGUAGES_FILE = 'languages.js'

const idOf = (host: string): string => `gate:${host}`
/** Both schemes and `www.`: the permission for one origin bounds what is really injected. */
const patternsOf = (origin: string): string[] => [`${origin}/*`]

/** Of these origins, those with permission. */
export async function permitted(origins: readonly string[]): Promise<string[]> {
  const kept = await Promise.all(
    origins.map(async (origin) =>
      (await browser.permissions.contains({ origins: patternsOf(origin) })) ? origin : null,
    ),
  )
  return kept.filter((origin) => origin !== null)
}

/** Registers the gate for exactly these origins: new ones are added, others removed. Safe to repeat. */
export async function registerGates(origins: readonly string[]): Promise<void> {
  const wanted = new Map((await permitted(origins)).map((origin) => [idOf(origin), origin]))
  const present = (await browser.scripting.getRegisteredContentScripts()).filter(({ id }) => id.startsWith('gate:'))
  const kept = new Set(present.filter((script) => wanted.has(script.id) && script.allFrames).map((script) => script.id))
  const gone = present.map((script) => script.id).filter((id) => !kept.has(id))
  if (gone.length > 0) await browser.scripting.unregisterContentScripts({ ids: gone })
  const missing = [...wanted].filter(([id]) => !kept.has(id))
  if (missing.length === 0) return
  await browser.scripting.registerContentScripts(
    missing.map(([id, origin]) => ({
      id,
      matches: patternsOf(origin),
      js: [GATE_FILE],
      runAt: 'document_start' as const,
      // Frames of the same origin can order too, also those a page writes itself.
      allFrames: true,
      matchOriginAsFallback: true,
      persistAcrossSessions: true,
    })),
  )
}

/** Tabs that show a shop. */
export async function tabsOf(origin: string): Promise<number[]> {
  const tabs = await browser.tabs.query({ url: patternsOf(origin) })
  return tabs.map((tab) => tab.id).filter((id) => id !== undefined)
}

/** Brings the gate into tabs that were open before their shop was watched; pages that refuse are left alone. */
export async function guardOpenTabs(origin: string): Promise<void> {
  for (const tab of await tabsOf(origin)) {
    await browser.scripting
      .executeScript({ target: { tabId: tab, allFrames: true }, files: [GATE_FILE], injectImmediately: true })
      .catch((cause: unknown) => console.info('Tillside: a tab could not be guarded until it is loaded again.', cause))
  }
}
