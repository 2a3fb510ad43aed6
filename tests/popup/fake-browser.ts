import { vi } from 'vitest'
import { englishSentences } from '../../src/book/sentences.en.ts'
import messages from '../../src/locales/en/messages.json' with { type: 'json' }
import type { FakeWorker } from './fake-worker.ts'

/** The messages as the build gives them to the browser: our own, and the engine's sentences. */
const texts = new Map<string, string>([
  ...Object.entries(messages).map(([key, { message }]) => [key, message] as const),
  ...Object.entries(englishSentences),
])

/** What our pages use of the browser, in memory. */
export function fakeBrowser(worker: FakeWorker) {
  const session = new Map<string, unknown>()
  return {
    session,
    i18n: {
      getUILanguage: () => 'en-CA',
      getMessage: (key: string) => texts.get(key) ?? '',
    },
    runtime: { sendMessage: (message: unknown) => worker.answer(message) },
    storage: {
      session: {
        get: async () => Object.fromEntries(session),
        set: async (items: Record<string, unknown>) => {
          for (const [key, value] of Object.entries(items)) session.set(key, structuredClone(value))
        },
        remove: async (key: string) => {
          session.delete(key)
        },
      },
    },
    permissions: {
      request: vi.fn(async (_: { origins: string[] }) => true),
      remove: vi.fn(async (_: { origins: string[] }) => true),
    },
    tabs: { query: async () => [{ id: 7 }] },
  }
}
