import type { Outcome } from '../book/assess.ts'

/** The marks beside words: each verdict has its own shape, so that none depends on colour. */
export function OutcomeMark({ outcome }: { outcome: Outcome }) {
  return (
    <svg class={`mark mark-${outcome}`} viewBox="0 0 16 16" width="16" height="16" aria-hidden="true" focusable="false">
      {outcome === 'block' && <path d="M5 1h6l4 4v6l-4 4H5l-4-4V5zM4 7v2h8V7z" fill-rule="evenodd" />}
      {outcome === 'warn' && <path d="M8 1l7.5 14H.5zM7 6v4.5h2V6zm0 5.5v2h2v-2z" fill-rule="evenodd" />}
      {outcome === 'allow' && <path d="M2.2 8.3l1.5-1.5L6.5 9.6 12.3 3.8l1.5 1.5-7.3 7.3z" />}
    </svg>
  )
}

/** Our sign: notes to one side of the sill, the card side to the other. */
export function SignMark() {
  return (
    <svg class="sign" viewBox="0 0 24 24" width="24" height="24" aria-hidden="true" focusable="false">
      <rect class="sign-notes" x="1" y="7" width="10" height="10" rx="1.5" />
      <path class="sign-lines" d="M3.5 9l5 6M3.5 12l2.5 3M6 9l2.5 3" />
      <rect class="sign-card" x="13" y="7" width="10" height="10" rx="1.5" />
      <rect class="sign-sill" x="11.2" y="2" width="1.6" height="20" rx=".8" />
    </svg>
  )
}
