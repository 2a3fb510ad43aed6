import browser from 'webextension-polyfill'
import { locale, textDirection } from './locale.ts'
import type { StorageTold } from './room.ts'

/*
 * The few things our own pages need from the browser beside `ask`. Pages import these, so that a test replaces one
 * module and a reader sees at a glance what a page can do.
 */

export { locale }

/** The BCP 47 language the browser's own menus are in, also when Tillside has no texts in it. Tells the region. */
export function browserLanguage(): string {
  return browser.i18n.getUILanguage()
}

/** A message of the extension in that language, as it stands in `messages.json`; empty when there is none. */
export function message(key: string): string {
  return browser.i18n.getMessage(key)
}

/**
 * Asks the person to let Tillside onto one shop's pages. Must be called directly in a click handler, before anything is
 * awaited: browsers show the question only as the direct outcome of a click.
 *
 * @returns whether the person said yes
 */
export function askForOrigin(origin: string): Promise<boolean> {
  return browser.permissions.request({ origins: [`${origin}/*`] })
}

/** Gives the browser's permission for these origins back. Does nothing where there was none. */
export async function giveUpOrigins(origins: readonly string[]): Promise<void> {
  await browser.permissions.remove({ origins: origins.map((origin) => `${origin}/*`) })
}

/** The tab the person looks at in this window, or null when there is none. */
export async function activeTab(): Promise<number | null> {
  const [tab] = await browser.tabs.query({ active: true, currentWindow: true })
  return tab?.id ?? null
}

/** Firefox gives a page that a web page frames, as our panel is, no session storage: there nothing is kept. */
function session(): typeof browser.storage.session | undefined {
  return browser.storage.session
}

/** What earlier pages left in the browser's memory under a prefix, without the prefix. It ends with the browser. */
export async function readSession(prefix: string): Promise<Map<string, unknown>> {
  const all = (await session()?.get(null)) ?? {}
  return new Map(
    Object.entries(all)
      .filter(([key]) => key.startsWith(prefix))
      .map(([key, value]) => [key.slice(prefix.length), value]),
  )
}

/** Keeps a value in the browser's memory. */
export async function writeSession(key: string, value: unknown): Promise<void> {
  await session()?.set({ [key]: value })
}

/** Forgets a kept value. */
export async function dropSession(key: string): Promise<void> {
  await session()?.remove(key)
}

/** Calls back when the book was written, by whichever page. Gives the way to stop. */
export function onBookChanged(changed: () => void): () => void {
  const listen = (changes: Record<string, unknown>): void => {
    if (Object.keys(changes).some((key) => key.startsWith('tillside:'))) changed()
  }
  browser.storage.local.onChanged.addListener(listen)
  return () => browser.storage.local.onChanged.removeListener(listen)
}

/** What the browser tells of the room for the book. */
export async function storageTold(): Promise<StorageTold> {
  const book = await browser.storage.local.getBytesInUse?.(null)
  const { quota, usage } = 'storage' in navigator ? await navigator.storage.estimate() : {}
  return { quota: quota ?? null, used: usage ?? null, book: book ?? null }
}

/** Shows the desk at a place: the tab that has it, else a new one. */
export async function showDesk(hash = ''): Promise<void> {
  const address = browser.runtime.getURL('src/desk/desk.html')
  const [open] = await browser.tabs.query({ url: `${address}*` })
  if (open?.id === undefined) await browser.tabs.create({ url: address + hash })
  else await browser.tabs.update(open.id, hash === '' ? { active: true } : { active: true, url: address + hash })
}

/** Firefox for Android knows no keys of extensions. */
function commands(): typeof browser.commands | undefined {
  return browser.commands
}

/** The keys that open the popup, as the person or the browser has set them: `Alt+Shift+Y`. Null where there are none. */
export async function openKeys(): Promise<string | null> {
  const all = (await commands()?.getAll()) ?? []
  return all.find((command) => command.name === '_execute_action')?.shortcut || null
}

/** Gives the document the language and the writing direction of the messages. */
export function speakTheBrowsersLanguage(doc: Document): void {
  doc.documentElement.lang = locale()
  doc.documentElement.dir = textDirection()
}
