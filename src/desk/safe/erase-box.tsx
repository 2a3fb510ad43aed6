import { useState } from 'preact/hooks'
import { ask } from '../../ui/ask.ts'
import { TextField } from '../../ui/field.tsx'
import { t } from '../../ui/text.ts'
import { WentWrong } from '../../ui/went-wrong.tsx'
import { useHousehold } from '../household.ts'

/** Erases the household and all that was stored. It asks for a word, since nothing brings it back. */
export function EraseBox() {
  const { refresh } = useHousehold()
  const [isOpen, setOpen] = useState(false)
  const [typed, setTyped] = useState('')
  const [error, setError] = useState<unknown>(null)
  const word = t('safe_erase_word')
  const isSure = typed.trim().toLocaleLowerCase() === word.toLocaleLowerCase()
  const erase = async (): Promise<void> => {
    setError(null)
    try {
      await ask('household.erase', { word: 'erase' })
      await refresh()
    } catch (cause) {
      setError(cause)
    }
  }
  return (
    <section class="safe-box">
      <h2>{t('safe_erase_title')}</h2>
      <p>{t('safe_erase_hint')}</p>
      {!isOpen && (
        <button type="button" onClick={() => setOpen(true)}>
          {t('safe_erase_begin')}
        </button>
      )}
      {isOpen && (
        <form
          onSubmit={(event) => {
            event.preventDefault()
            if (isSure) void erase()
          }}
        >
          <TextField label={t('safe_erase_type', { word })} value={typed} onValue={setTyped} />
          <div class="buttons">
            <button type="submit" disabled={!isSure}>
              {t('safe_erase')}
            </button>
            <button type="button" onClick={() => setOpen(false)}>
              {t('cancel')}
            </button>
          </div>
        </form>
      )}
      <WentWrong error={error} />
    </section>
  )
}
