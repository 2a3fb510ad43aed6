import type { ComponentType } from 'preact'
import { useEffect, useErrorBoundary, useState } from 'preact/hooks'
import { errorText } from '../ui/error-text.ts'
import { Notice } from '../ui/notice.tsx'
import { Skeleton } from '../ui/skeleton.tsx'
import { t } from '../ui/text.ts'
import type { DeskPage, PageProps } from './pages.ts'

/** Loads a page and draws it. A page that fails says so and leaves the rest of the desk as it is. */
export function PageSlot({ page, rest }: { page: DeskPage; rest: readonly string[] }) {
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
  if (loaded?.name !== page.name) return <Skeleton />
  return <Caught key={page.name} Page={loaded.Page} rest={rest} />
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
