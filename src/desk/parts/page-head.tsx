import type { ComponentChildren } from 'preact'
import { useEffect, useRef } from 'preact/hooks'
import { hasMoved } from '../place.ts'

/**
 * The head of every page: what it is, one line of what it is for, and what can be done. Whoever came here by a link is
 * put onto the heading, so that keyboard and screen reader begin where the page begins (WCAG 2.2, 2.4.3).
 */
export function PageHead(props: {
  readonly title: string
  readonly lead?: string | null
  readonly back?: { readonly href: string; readonly text: string }
  /** The heading stays on paper; without this nothing of the head is printed. */
  readonly isPrinted?: boolean
  /** Actions, the main one first. */
  readonly children?: ComponentChildren
}) {
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => {
    if (!hasMoved()) return
    heading.current?.focus({ preventScroll: true })
    scrollTo(0, 0)
  }, [])
  return (
    <header class={`page-head ${props.isPrinted ? '' : 'no-print'}`}>
      {props.back && (
        <a class="page-back no-print" href={props.back.href}>
          {props.back.text}
        </a>
      )}
      <h1 ref={heading} tabIndex={-1}>
        {props.title}
      </h1>
      {props.lead && <p class="page-lead no-print">{props.lead}</p>}
      {props.children && <div class="page-actions no-print">{props.children}</div>}
    </header>
  )
}
