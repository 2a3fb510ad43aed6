import { useRef } from 'preact/hooks'
import { type EntryId, entryId, isUuidV7 } from '../book/ids.ts'
import { useDrafts } from './draft.ts'
import { newEntryId } from './new-id.ts'

/** Ids for one kind of action. */
export interface ActionId {
  /** The id for this very content: the same one as long as the content is the same and `done` was not called. */
  idFor(content: string): EntryId
  /** The action was acknowledged; the next one is a new one, even with the same content. */
  done(): void
}

interface Pending {
  readonly content: string
  readonly id: EntryId
}

/**
 * Keeps the id of an intended action until it is acknowledged, also when the page closes in between: pressing twice, or
 * again after no answer came, is then one entry.
 */
export function useActionId(action: string): ActionId {
  const drafts = useDrafts()
  const kept = useRef<Pending | null>(null)
  const name = `action:${action}`
  return {
    idFor(content) {
      const before = kept.current ?? readPending(drafts.read(name))
      const now = before?.content === content ? before : { content, id: newEntryId() }
      kept.current = now
      drafts.write(name, now)
      return now.id
    },
    done() {
      kept.current = null
      drafts.drop(name)
    },
  }
}

function readPending(kept: unknown): Pending | null {
  if (typeof kept !== 'object' || kept === null || !('content' in kept) || !('id' in kept)) return null
  const { content, id } = kept
  if (typeof content !== 'string' || typeof id !== 'string' || !isUuidV7(id)) return null
  return { content, id: entryId(id) }
}
