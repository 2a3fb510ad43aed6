import type { ComponentType } from 'preact'
import { useCallback, useEffect, useRef, useState } from 'preact/hooks'
import { BookState } from '../ui/book-state.tsx'
import { onBookChanged } from '../ui/browser.ts'
import { Damaged } from '../ui/damaged.tsx'
import { DemoBand } from '../ui/demo-band.tsx'
import { Masthead } from '../ui/masthead.tsx'
import { NoAnswer } from '../ui/no-answer.tsx'
import { Skeleton } from '../ui/skeleton.tsx'
import { t } from '../ui/text.ts'
import { DeskNav } from './desk-nav.tsx'
import { HouseholdContext } from './household.ts'
import { type Found, loadBook } from './load-book.ts'
import { PageSlot } from './page-slot.tsx'
import { pageNamed } from './pages.ts'
import { usePlace } from './place.ts'

type State =
  | { readonly kind: 'waiting' }
  | { readonly kind: 'failed'; readonly error: unknown }
  | { readonly kind: 'found'; readonly found: Found }

/** The desk around its pages: who we are, where one can go, and the household the pages work from. */
export function DeskFrame() {
  const [state, setState] = useState<State>({ kind: 'waiting' })
  const place = usePlace()
  const page = pageNamed(place.page)
  const latest = useRef<Found | null>(null)
  /** Two readings at once would each start from the same book; the second waits for the first. */
  const reading = useRef<Promise<void>>(Promise.resolve())

  const read = useCallback((): Promise<void> => {
    const next = reading.current
      .catch(() => {})
      .then(async () => {
        const earlier = latest.current?.status === 'ready' ? latest.current : null
        latest.current = await loadBook(earlier)
        setState({ kind: 'found', found: latest.current })
      })
    reading.current = next
    return next
  }, [])
  const load = useCallback((): void => {
    read().catch((error: unknown) => setState({ kind: 'failed', error }))
  }, [read])
  useEffect(load, [load])
  useEffect(
    () =>
      onBookChanged(() => {
        // What is on screen stays when another window's change cannot be read just now.
        read().catch((cause: unknown) => console.warn('Tillside: the desk could not be drawn anew.', cause))
      }),
    [read],
  )
  useEffect(() => {
    if (page) document.title = `${t(page.title)} · ${t('extension_name')}`
  }, [page])

  if (state.kind === 'waiting') return <Skeleton />
  if (state.kind === 'failed') {
    const retry = (): void => {
      setState({ kind: 'waiting' })
      load()
    }
    return <NoAnswer error={state.error} onRetry={retry} />
  }
  const { found } = state
  if (found.status !== 'ready') {
    return (
      <>
        {found.status === 'damaged' ? <Damaged what={found.what} /> : <NothingYet />}
        <RestoreInstead onDone={read} />
      </>
    )
  }
  return (
    <HouseholdContext.Provider value={{ view: found.view, book: found.book, refresh: read }}>
      <button type="button" class="skip" onClick={() => document.getElementById('desk-main')?.focus()}>
        {t('desk_skip')}
      </button>
      <Masthead />
      <BookState view={found.view} />
      {found.view.isDemo && <DemoBand onLook={load} />}
      <div class="desk-body">
        <DeskNav current={page?.name ?? ''} />
        <main id="desk-main" tabIndex={-1}>
          {page && <PageSlot page={page} rest={place.rest} />}
        </main>
      </div>
    </HouseholdContext.Provider>
  )
}

function NothingYet() {
  return (
    <>
      <Masthead />
      <main>
        <h1>{t('desk_new_title')}</h1>
        <p>{t('desk_new_hint')}</p>
        <p>
          <a href="../../popup/popup.html">{t('desk_new_start')}</a>
        </p>
      </main>
    </>
  )
}

/** Another book can take the place of none, and of a damaged one. Loaded when it is needed. */
function RestoreInstead({ onDone }: { onDone: () => Promise<void> }) {
  const [Box, setBox] = useState<ComponentType<{ here: null; onDone: () => Promise<void> }> | null>(null)
  useEffect(() => void import('./safe/restore-box.tsx').then((m) => setBox(() => m.RestoreBox)), [])
  return (
    <section class="restore-instead">
      <h2>{t('desk_restore_instead')}</h2>
      {Box && <Box here={null} onDone={onDone} />}
    </section>
  )
}
