import type { ComponentChildren } from 'preact'

/** A place where nothing is yet: why, and what to do next. */
export function Empty({ title, children }: { title: string; children?: ComponentChildren }) {
  return (
    <div class="empty">
      <p class="empty-title">{title}</p>
      {children}
    </div>
  )
}
