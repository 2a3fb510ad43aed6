import type { ComponentChildren } from 'preact'
import type { Outcome } from '../book/assess.ts'
import { OutcomeMark } from './mark.tsx'

/** Something to know, with a mark and in words; spoken when it appears. */
export function Notice(props: {
  readonly outcome: Outcome
  readonly children: ComponentChildren
  readonly isUrgent?: boolean
}) {
  return (
    <div class={`notice notice-${props.outcome}`} role={props.isUrgent ? 'alert' : 'status'}>
      <OutcomeMark outcome={props.outcome} />
      <div class="notice-text">{props.children}</div>
    </div>
  )
}
