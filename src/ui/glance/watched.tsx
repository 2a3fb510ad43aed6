import { useState } from 'preact/hooks'
import type { HouseholdView, Look } from '../../background/protocol.ts'
import { stopWatching } from '../stop-watching.ts'
import { t } from '../text.ts'
import { WentWrong } from '../went-wrong.tsx'

/** The shops the guard may watch, each with a way to end it. */
export function Watched({ view, onLook }: { view: HouseholdView; onLook: (look: Look) => void }) {
  const [error, setError] = useState<unknown>(null)
  return (
    <section class="watched">
      <h2>{t('watched_heading')}</h2>
      {view.watched.length === 0 && <p class="field-hint">{t('watched_none')}</p>}
      <ul>
        {view.watched.map((host) => (
          <li key={host}>
            <span>{host}</span>
            <button
              type="button"
              class="link"
              aria-label={t('unwatch_host', { shop: host })}
              onClick={() => stopWatching(host).then(onLook, setError)}
            >
              {t('unwatch')}
            </button>
          </li>
        ))}
      </ul>
      <WentWrong error={error} />
    </section>
  )
}
