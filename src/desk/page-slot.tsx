import type { ComponentType } from 'preact'
import { useContext, useEffect, useErrorBoundary, useState } from 'preact/hooks'
import { locale } from '../ui/browser.ts'
import { errorText } from '../ui/error-text.ts'
import { Notice } from '../ui/notice.tsx'
import { Skeleton } from '../ui/skeleton.tsx'
import { t } from '../ui/text.ts'
import { BookContext } from './household.ts'
import type { Partly } from './load-book.ts'
import type { DeskPage, PageProps } from './pages.ts'
import { Busy } from './parts/busy.tsx'
import { PageHead } from './parts/page-head.tsx'

/**
 * Loads a page and draws it. A page that fails says so and leaves the rest of the desk as it is; one that needs the book
 * says how far the reading has come.
 */
export function PageSlot(props: {
  readonly page: DeskPage
  readonly rest: readonly string[]
  readonly partly: Partly | null
}) {
  const { page, rest, partly } = props
  const book = useContext(BookContext)
  const [loaded, setLoaded] = useState<{ name: string; Page: ComponentType<PageProps> } | null>(null)
  const [loadError, setLoadError] = useState<unknown>(null)
  useEffect(() => {
    let isCurrent = true
    setLoadError(null)
    page.load().then(
      (Page) => isCurrent && setLoaded({ name: page.name, Page }),
      (error: unknown) => isCurrent && setLoadError(error),
    )
    return () => {
      isCurrent = false
    }
  }, [page])
  if (loadError !== null) return <Failed error={loadError} />
  if (!book && page.needsBook(rest)) return <Reading page={page} partly={partly} />
  if (loaded?.name !== page.name) return <Skeleton />
  return <Caught key={page.name} Page={loaded.Page} rest={rest} />
}

function Reading({ page, partly }: { page: DeskPage; partly: Partly | null }) {
  const figure = (count: number): string => new Intl.NumberFormat(locale()).format(count)
  const { done = 0, of = 0 } = partly ?? {}
  return (
    <>
      <PageHead title={t(page.title)} />
      {of > 0 ? (
        <Busy text={t('desk_reading_of', { done: figure(done), of: figure(of) })} part={done / of} />
      ) : (
        <Busy text={t('desk_reading')} />
      )}
    </>
  )
}

function Caught({ Page, rest }: { Page: ComponentType<PageProps>; rest: readonly string[] }) {
  const [error, reset] = useErrorBoundary((cause: unknown) => console.error('Tillside: a page failed.', cause))
  if (error) return <Failed error={error} onRetry={reset} />
  return <Page rest={rest} />
}

function Failed({ error, onRetry }: { error: unknown; onRetry?: () => void }) {
  return (
    <>
      <Notice outcome="block" isUrgent>
        {errorText(error)}
      </Notice>
      <button type="button" onClick={() => (onRetry ? onRetry() : location.reload())}>
        {t('try_again')}
      </button>
    </>
  )
}
