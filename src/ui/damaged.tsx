import { useState } from 'preact/hooks'
import type { Damage } from '../background/store.ts'
import { ask } from './ask.ts'
import { Masthead } from './masthead.tsx'
import { Notice } from './notice.tsx'
import { saveFile } from './save-file.ts'
import { t } from './text.ts'
import { WentWrong } from './went-wrong.tsx'

/** What is stored does not add up, or is of a newer Tillside. Nothing is written on top of it; the person can save it first. */
export function Damaged({ what }: { what: Damage }) {
  const [isSaved, setSaved] = useState(false)
  const [error, setError] = useState<unknown>(null)
  const save = async (): Promise<void> => {
    setError(null)
    try {
      const { json } = await ask('store.raw', {})
      saveFile('tillside-stored.json', json, 'application/json')
      setSaved(true)
    } catch (cause) {
      setError(cause)
    }
  }
  return (
    <>
      <Masthead />
      <main>
        <h1>{t(what === 'newer' ? 'newer_title' : 'damaged_title')}</h1>
        <Notice outcome="block" isUrgent>
          {t(`damage_${what}`)}
        </Notice>
        <p>{t('damaged_nothing_written')}</p>
        <button type="button" class="primary" onClick={() => void save()}>
          {t('damaged_save')}
        </button>
        {isSaved && <Notice outcome="allow">{t('damaged_saved')}</Notice>}
        <WentWrong error={error} />
        <h2>{t('damaged_next')}</h2>
        <ol class="steps">
          <li>{t('damaged_step_save')}</li>
          {what === 'newer' ? (
            <li>{t('newer_step_update')}</li>
          ) : (
            <>
              <li>{t('damaged_step_restart')}</li>
              <li>{t('damaged_step_ask')}</li>
            </>
          )}
        </ol>
      </main>
    </>
  )
}
