import type { HouseholdView, Look } from '../../background/protocol.ts'
import { sayEntry } from '../say-entry.ts'
import { shortDate } from '../short-date.ts'
import { t } from '../text.ts'
import { WentWrong } from '../went-wrong.tsx'
import { useEntry } from './use-entry.ts'

/** The latest entries in plain sentences; the last one can be taken back. */
export function Recent({ view, onLook }: { view: HouseholdView; onLook: (look: Look) => void }) {
  const { enter, isBusy, error } = useEntry('entry.undo', onLook)
  const { undoable } = view
  if (view.recent.length === 0) return null
  return (
    <section class="recent">
      <h2>{t('recent_heading')}</h2>
      <ol>
        {view.recent.map((entry) => (
          <li key={entry.id}>
            <time dateTime={entry.date}>{shortDate(entry.date)}</time>
            <span>{sayEntry(view.household, entry)}</span>
            {undoable?.id === entry.id && (
              <button
                type="button"
                class="link"
                disabled={isBusy}
                onClick={() => void enter({ target: entry.id }, (id) => ({ id, target: entry.id }))}
              >
                {t('undo')}
              </button>
            )}
          </li>
        ))}
      </ol>
      <WentWrong error={error} />
    </section>
  )
}
