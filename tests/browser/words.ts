import { fillIn } from '../../src/index.ts'
import messages from '../../src/locales/en/messages.json' with { type: 'json' }

/** What the extension says in English for a message key, so that tests follow the words and do not repeat them. */
export function words(key: keyof typeof messages, values: Readonly<Record<string, string>> = {}): string {
  return fillIn(messages[key].message, values)
}
