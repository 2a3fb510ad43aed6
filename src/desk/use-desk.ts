import { useCallback, useEffect, useMemo, useRef, useState } from 'preact/hooks'
import { onBookChanged } from '../ui/browser.ts'
import { type Done, doneSince, type SavedSetting } from './done.ts'
import type { DeskView } from './household.ts'
import { type Found, loadBook, type Partly } from './load-book.ts'

export type DeskState =
  | { readonly kind: 'waiting' }
  | { readonly kind: 'failed'; readonly error: unknown }
  /** The figures are there; the book is still being read. */
  | { readonly kind: 'reading'; readonly partly: Partly }
  | { readonly kind: 'found'; readonly found: Found }

/** The household as the desk has it: read in the background, kept up to date, with what was just done. */
export function useDesk() {
  const [state, setState] = useState<DeskState>({ kind: 'waiting' })
  const [done, setDone] = useState<Done | null>(null)
  const latest = useRef<Found | null>(null)
  /** Two readings at once would each start from the same book; the second waits for the first. */
  const reading = useRef<Promise<void>>(Promise.resolve())

  const read = useCallback((): Promise<void> => {
    const next = reading.current
      .catch(() => {})
      .then(async () => {
        const earlier = latest.current?.status === 'ready' ? latest.current : null
        const tell = (partly: Partly): void => setState({ kind: 'reading', partly })
        latest.current = await loadBook(earlier, earlier ? undefined : tell)
        setState({ kind: 'found', found: latest.current })
      })
    reading.current = next
    return next
  }, [])
  const load = useCallback((): void => {
    read().catch((error: unknown) => setState({ kind: 'failed', error }))
  }, [read])
  const wrote = useCallback(
    async (length: number, setting?: SavedSetting): Promise<void> => {
      await read()
      if (latest.current?.status === 'ready') setDone(doneSince(latest.current.book, length, setting))
    },
    [read],
  )
  useEffect(load, [load])
  useEffect(
    () =>
      onBookChanged(() => {
        // What is on screen stays when another window's change cannot be read just now.
        read().catch((cause: unknown) => console.warn('Tillside: the desk could not be drawn anew.', cause))
      }),
    [read],
  )

  const view =
    state.kind === 'reading'
      ? state.partly.view
      : state.kind === 'found' && state.found.status === 'ready'
        ? state.found.view
        : null
  const desk: DeskView | null = useMemo(() => view && { view, refresh: read, wrote }, [view, read, wrote])
  return {
    state,
    desk,
    done,
    read,
    load,
    retry(): void {
      setState({ kind: 'waiting' })
      load()
    },
    /** Says that what was done is taken back. */
    async tookBack(said: string): Promise<void> {
      await read()
      setDone({ said, back: null })
    },
    forgetDone: () => setDone(null),
  }
}
