import type { ComponentType } from 'preact'
import { useEffect, useState } from 'preact/hooks'
import { BookState } from '../ui/book-state.tsx'
import { Damaged } from '../ui/damaged.tsx'
import { DemoBand } from '../ui/demo-band.tsx'
import { Masthead } from '../ui/masthead.tsx'
import { NoAnswer } from '../ui/no-answer.tsx'
import { Skeleton } from '../ui/skeleton.tsx'
import { t } from '../ui/text.ts'
import { DeskNav } from './desk-nav.tsx'
import { DoneBar } from './done-bar.tsx'
import { BookContext, ViewContext } from './household.ts'
import { PageSlot } from './page-slot.tsx'
import { pageNamed } from './pages.ts'
import { usePlace } from './place.ts'
import { useDesk } from './use-desk.ts'

/** The desk around its pages: who we are, where one can go, and the household the pages work from. */
export function DeskFrame() {
  const { state, desk, done, read, load, retry, tookBack, forgetDone } = useDesk()
  const place = usePlace()
  const page = pageNamed(place.page)
  useEffect(() => {
    if (page) document.title = `${t(page.title)} · ${t('extension_name')}`
  }, [page])
  // What was done belongs to the page it was done on.
  useEffect(forgetDone, [page?.name])

  if (state.kind === 'waiting') return <Skeleton />
  if (state.kind === 'failed') return <NoAnswer error={state.error} onRetry={retry} />
  if (!desk) {
    const found = state.kind === 'found' ? state.found : null
    return (
      <>
        {found?.status === 'damaged' ? <Damaged what={found.what} /> : <NothingYet />}
        <RestoreInstead onDone={read} />
      </>
    )
  }
  const book = state.kind === 'found' && state.found.status === 'ready' ? state.found.book : null
  const partly = state.kind === 'reading' ? state.partly : null
  return (
    <ViewContext.Provider value={desk}>
      <BookContext.Provider value={book}>
        <button type="button" class="skip" onClick={() => document.getElementById('desk-main')?.focus()}>
          {t('desk_skip')}
        </button>
        <Masthead />
        <BookState view={desk.view} />
        {desk.view.isDemo && <DemoBand onLook={load} />}
        <div class="desk-body">
          <DeskNav current={page?.name ?? ''} />
          <div class="desk-page">
            <main id="desk-main" tabIndex={-1}>
              {page && <PageSlot page={page} rest={place.rest} partly={partly} />}
            </main>
            <DoneBar done={done} onBack={() => tookBack(t('done_taken_back'))} onClose={forgetDone} />
          </div>
        </div>
      </BookContext.Provider>
    </ViewContext.Provider>
  )
}

function NothingYet() {
  return (
    <>
      <Masthead />
      <main class="desk-new">
        <h1>{t('desk_new_title')}</h1>
        <p>{t('desk_new_hint')}</p>
        <p>
          <a class="button primary" href="../../popup/popup.html">
            {t('desk_new_start')}
          </a>
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
