import { useState } from 'preact/hooks'
import type { SeenFigure } from '../../background/protocol.ts'
import { ask } from '../ask.ts'
import { t } from '../text.ts'

/**
 * Shows on the shop's page where a figure was read: while the button has the keyboard, and again when it is pressed. The
 * mark goes when the keyboard leaves, at Escape, and by itself.
 */
export function WhereFound({ tab, figure }: { readonly tab: number; readonly figure: SeenFigure }) {
  const [said, setSaid] = useState<'marked' | 'gone' | null>(null)
  const { label, text } = figure
  const mark = async (): Promise<void> => {
    const { isFound } = await ask('checkout.mark', { tab, figure: { label, text } })
    setSaid(isFound ? 'marked' : 'gone')
  }
  const unmark = (): void => {
    setSaid(null)
    void ask('checkout.mark', { tab, figure: null }).catch(noMark)
  }
  return (
    <span class="where-found">
      <button
        type="button"
        class="link"
        aria-label={t('where_show_figure', { label: label || text })}
        onFocus={() => void mark().catch(noMark)}
        onClick={() => void mark().catch(noMark)}
        onBlur={unmark}
        onKeyDown={(event) => {
          if (event.key === 'Escape') unmark()
        }}
      >
        {t('where_show')}
      </button>
      <span role="status">{said && t(said === 'marked' ? 'where_marked' : 'where_gone')}</span>
    </span>
  )
}

/** The figures stand also where the page cannot be marked. */
function noMark(error: unknown): void {
  console.warn('Tillside: the page could not be marked.', error)
}
