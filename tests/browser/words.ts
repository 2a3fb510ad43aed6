import { fillIn } from '../../src/index.ts'
import type { TextKey } from '../../src/ui/text.ts'
import { englishMessages } from '../english-messages.ts'

/** What the extension says in English for a message key, so that tests follow the words and do not repeat them. */
export function words(key: TextKey, values: Readonly<Record<string, string>> = {}): string {
  const found = englishMessages[key]
  if (!found) throw new Error(`There is no text "${key}".`)
  return fillIn(found.message, values)
}
