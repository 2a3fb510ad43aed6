import { createContext } from 'preact'
import { useContext, useState } from 'preact/hooks'
import { dropSession, readSession, writeSession } from './browser.ts'

/*
 * A popup closes as soon as something else is clicked. What was typed is kept in the browser's memory, and is there when
 * it opens again; it ends with the browser and is never written to disk.
 */

const PREFIX = 'draft:'

/** What was typed and not entered yet, by the name of its field or form. */
export interface Drafts {
  read(name: string): unknown
  write(name: string, value: unknown): void
  drop(name: string): void
  /** Forgets all of them. */
  clear(): void
}

/** Reads all drafts once, so that every later read is at hand when a form is first drawn. */
export async function openDrafts(): Promise<Drafts> {
  const kept = await readSession(PREFIX)
  const warn = (cause: unknown): void => console.warn('Tillside: what was typed could not be kept.', cause)
  const drop = (name: string): void => {
    if (kept.delete(name)) dropSession(PREFIX + name).catch(warn)
  }
  return {
    read: (name) => kept.get(name),
    write(name, value) {
      kept.set(name, value)
      writeSession(PREFIX + name, value).catch(warn)
    },
    drop,
    clear() {
      for (const name of [...kept.keys()]) drop(name)
    },
  }
}

const nothingKept: Drafts = { read: () => undefined, write: () => {}, drop: () => {}, clear: () => {} }

/** Gives a page's drafts to its forms. */
export const DraftsContext = createContext<Drafts>(nothingKept)

export function useDrafts(): Drafts {
  return useContext(DraftsContext)
}

/** A text that survives the page: like `useState('')`, with a third member that forgets it. */
export function useDraft(name: string, initial = ''): [string, (value: string) => void, () => void] {
  const [value, set, forget] = useDraftOrNone(name)
  return [value ?? initial, set, forget]
}

/** Like `useDraft`, and null as long as nothing was said: an emptied field is not the same as one never touched. */
export function useDraftOrNone(name: string): [string | null, (value: string) => void, () => void] {
  const drafts = useDrafts()
  const [value, setValue] = useState(() => {
    const kept = drafts.read(name)
    return typeof kept === 'string' ? kept : null
  })
  const set = (next: string): void => {
    setValue(next)
    drafts.write(name, next)
  }
  const forget = (): void => {
    setValue(null)
    drafts.drop(name)
  }
  return [value, set, forget]
}
