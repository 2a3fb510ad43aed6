import { vi } from 'vitest'

/** The part of the browser the worker talks to, in memory. What it was told is kept for the tests to look at. */
export function fakeBrowser() {
  const session = new Map<string, unknown>()
  const permitted = new Set<string>()
  const sent: { tab: number; message: unknown }[] = []
  const scripts: { id: string; matches: string[] }[] = []
  const tabs = new Map<number, string>()
  const browser = {
    runtime: {
      id: 'tillside-id',
      getURL: (path: string) => `chrome-extension://tillside-id/${path.replace(/^\//, '')}`,
    },
    i18n: { getUILanguage: () => 'en', getMessage: (key: string) => (key === 'language_tag' ? 'en' : key) },
    storage: {
      session: {
        get: async (key: string | null) =>
          key === null ? Object.fromEntries(session) : session.has(key) ? { [key]: session.get(key) } : {},
        set: async (items: Record<string, unknown>) => {
          for (const [k, v] of Object.entries(items)) session.set(k, structuredClone(v))
        },
        remove: async (keys: string | string[]) => {
          for (const key of [keys].flat()) session.delete(key)
        },
      },
    },
    permissions: { contains: async ({ origins }: { origins: string[] }) => origins.every((o) => permitted.has(o)) },
    scripting: {
      getRegisteredContentScripts: async () => scripts,
      registerContentScripts: async (more: typeof scripts) => void scripts.push(...more),
      unregisterContentScripts: async ({ ids }: { ids: string[] }) => {
        for (const id of ids)
          scripts.splice(
            scripts.findIndex((s) => s.id === id),
            1,
          )
      },
      executeScript: vi.fn(async () => [{ result: null }]),
    },
    tabs: {
      get: async (tab: number) => ({ id: tab, url: tabs.get(tab) }),
      query: async ({ url }: { url: string[] }) =>
        [...tabs].filter(([, at]) => url.some((u) => at.startsWith(u.slice(0, -1)))).map(([id]) => ({ id })),
      sendMessage: async (tab: number, message: unknown) => void sent.push({ tab, message }),
    },
    action: { setBadgeText: vi.fn(async () => {}), setBadgeBackgroundColor: async () => {}, setTitle: async () => {} },
  }
  return { browser, session, permitted, sent, scripts, tabs }
}
