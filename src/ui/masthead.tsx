import type { ComponentChildren } from 'preact'
import { SignMark } from './mark.tsx'
import { t } from './text.ts'
import './masthead.css'

/** Our name, and beside it where one can go. */
export function Masthead({ children }: { children?: ComponentChildren }) {
  return (
    <header class="masthead">
      <SignMark />
      <span class="wordmark">{t('extension_name')}</span>
      {children}
    </header>
  )
}
