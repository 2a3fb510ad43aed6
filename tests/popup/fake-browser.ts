import { englishSentences } from '../../src/book/sentences.en.ts'
import { englishMessages } from '../english-messages.ts'
import { FakeWorker } from './fake-worker.ts'

/** The messages as the build gives them to the browser: our own, and the engine's sentences. */
const texts = new Map<string, string>([
  ...Object.entries(englishMessages).map(([key, { message }]) => [key, message] as const),
  ...Object.entries(englishSentences),
])

/** What a test sets and reads of the browser. `fresh` begins a new one. */
export const state = {
  worker: new FakeWorker(),
  session: new Map<string, unknown>(),
  /** What the person answers when the browser asks for permission. */
  permits: true,
  requested: [] as string[],
  removed: [] as string[],
}

/** A new browser with this worker: nothing typed, nothing asked. */
export function fresh(worker: FakeWorker): FakeWorker {
  state.worker = worker
  state.session.clear()
  state.permits = true
  state.requested.length = 0
  state.removed.length = 0
  return worker
}

/** What our pages use of the browser, in memory. Stands in for `webextension-polyfill`. */
export default {
  i18n: {
    getUILanguage: () => 'en-CA',
    getMessage: (key: string) => texts.get(key) ?? '',
  },
  runtime: { sendMessage: (message: unknown) => state.worker.answer(message) },
  storage: {
    local: { getBytesInUse: async () => 3_000_000 },
    session: {
      get: async () => Object.fromEntries(state.session),
      set: async (items: Record<string, unknown>) => {
        for (const [key, value] of Object.entries(items)) state.session.set(key, structuredClone(value))
      },
      remove: async (key: string) => {
        state.session.delete(key)
      },
    },
  },
  permissions: {
    request: async ({ origins }: { origins: string[] }) => {
      state.requested.push(...origins)
      return state.permits
    },
    remove: async ({ origins }: { origins: string[] }) => {
      state.removed.push(...origins)
      return true
    },
  },
  tabs: { query: async () => [{ id: 7 }] },
}
