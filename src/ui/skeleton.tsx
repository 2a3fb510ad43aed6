import { t } from './text.ts'

/** What is seen while the worker is asked. It fades in late, so that a quick answer never makes it flash. */
export function Skeleton() {
  return (
    <div class="skeleton" role="status">
      <span class="unseen">{t('loading')}</span>
      <div class="skeleton-bar" />
      <div class="skeleton-bar" />
      <div class="skeleton-bar" />
    </div>
  )
}
