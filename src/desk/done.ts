import { type Book, entriesOf } from '../book/book.ts'
import type { Entry } from '../book/entry.ts'
import { isUuidV7 } from '../book/ids.ts'
import { ask } from '../ui/ask.ts'
import { newEntryId } from '../ui/new-id.ts'
import { sayEntry } from '../ui/say-entry.ts'
import { t, tn } from '../ui/text.ts'

/** Something that was saved and is no entry of the book: a pot's rule, a pay schedule, a renewal. */
export interface SavedSetting {
  readonly said: string
  /** Saves what stood before; absent where nothing can bring it back, and `said` tells why. */
  readonly back?: () => Promise<unknown>
}

/** What was just done, in words, and the way to take it back. */
export interface Done {
  readonly said: string
  readonly back: (() => Promise<unknown>) | null
}

/**
 * What a command did, by the entries it added.
 *
 * @param length how many entries the book had before
 * @returns null where nothing came of it
 */
export function doneSince(book: Book, length: number, setting?: SavedSetting): Done | null {
  const added = [...entriesOf(book)].slice(length)
  const [first] = added
  if (!first) return setting ? { said: setting.said, back: setting.back ?? null } : null
  if (added.every((entry) => entry.kind === 'reversal')) return { said: t('done_taken_back'), back: null }
  const close = added.find((entry) => entry.kind === 'close' || entry.kind === 'reopen')
  if (close) return { said: `${sayEntry(book.household, close)}. ${t('done_month')}`, back: null }
  const said =
    added.length === 1
      ? `${sayEntry(book.household, first)}.`
      : tn('done_entries', added.length, { count: String(added.length) })
  return { said, back: () => takeBack(added) }
}

/** Takes entries back, the latest first; a payday as one. Asked again after it failed midway, it goes on from there. */
async function takeBack(entries: readonly Entry[]): Promise<void> {
  const payday = paydayOf(entries)
  if (payday !== null) {
    await ask('payday.undo', { payday, ids: entries.map(newEntryId) })
    return
  }
  for (const entry of [...entries].reverse()) {
    try {
      await ask('entry.undo', { id: newEntryId(), target: entry.id })
    } catch (cause) {
      if (!(cause instanceof Error && 'code' in cause && cause.code === 'already-reversed')) throw cause
    }
  }
}

function paydayOf(entries: readonly Entry[]) {
  const [first] = entries
  const payday = first && 'payday' in first ? first.payday : undefined
  const isWhole = payday !== undefined && entries.every((entry) => 'payday' in entry && entry.payday === payday)
  return isWhole && isUuidV7(payday) ? payday : null
}
