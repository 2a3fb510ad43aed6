import { useState } from 'preact/hooks'
import { entriesOf } from '../../book/book.ts'
import { ask } from '../../ui/ask.ts'
import { Field } from '../../ui/field.tsx'
import { Notice } from '../../ui/notice.tsx'
import { saveFile } from '../../ui/save-file.ts'
import { sayEntry } from '../../ui/say-entry.ts'
import { t } from '../../ui/text.ts'
import { WentWrong } from '../../ui/went-wrong.tsx'
import { useHousehold } from '../household.ts'
import { Busy } from '../parts/busy.tsx'
import { lock } from './backup.ts'
import { writeBookFile } from './book-file.ts'
import { sheetsCsv } from './sheets-csv.ts'

/** Shorter ones are guessed in an afternoon. */
const PASSPHRASE_LEAST = 12

/** Saves the book: locked with a passphrase, open, or as one table of all sheets. */
export function SaveBox() {
  const { view, book } = useHousehold()
  const [passphrase, setPassphrase] = useState('')
  const [again, setAgain] = useState('')
  const [wasTried, setTried] = useState(false)
  const [isBusy, setBusy] = useState(false)
  const [said, setSaid] = useState<string | null>(null)
  const [error, setError] = useState<unknown>(null)
  const isShort = [...passphrase].length < PASSPHRASE_LEAST
  const differs = passphrase !== again

  const save = async (make: () => Promise<{ name: string; text: string; type: string }>): Promise<void> => {
    setBusy(true)
    setError(null)
    setSaid(null)
    try {
      const { name, text, type } = await make()
      saveFile(name, text, type)
      setSaid(name)
    } catch (cause) {
      setError(cause)
    }
    setBusy(false)
  }
  const bookText = async (): Promise<string> => {
    const { device, settings, watched } = await ask('book.settings', {})
    return writeBookFile({ device, settings, watched, entries: [...entriesOf(book)] })
  }
  const saveLocked = (event: Event): void => {
    event.preventDefault()
    setTried(true)
    if (isShort || differs) return
    void save(async () => ({
      name: `tillside-${view.today}.locked.json`,
      text: await lock(await bookText(), passphrase, (count) => crypto.getRandomValues(new Uint8Array(count))),
      type: 'application/json',
    })).then(() => {
      setPassphrase('')
      setAgain('')
      setTried(false)
    })
  }
  const saveOpen = (): Promise<void> =>
    save(async () => ({ name: `tillside-${view.today}.json`, text: await bookText(), type: 'application/json' }))
  const saveSheets = (): Promise<void> =>
    save(async () => ({
      name: `tillside-${view.today}.csv`,
      text: `\ufeff${sheetsCsv(book, { columns: columns(), say: (entry) => sayEntry(view.household, entry) })}`,
      type: 'text/csv',
    }))

  return (
    <section class="safe-box">
      <h2>{t('safe_save_title')}</h2>
      <p>{t('safe_save_hint')}</p>
      <form onSubmit={saveLocked}>
        <Secret
          label={t('safe_passphrase')}
          value={passphrase}
          onValue={setPassphrase}
          hint={t('safe_passphrase_hint')}
          error={wasTried && isShort ? t('safe_passphrase_short') : null}
        />
        <Secret
          label={t('safe_passphrase_again')}
          value={again}
          onValue={setAgain}
          hint={null}
          error={wasTried && !isShort && differs ? t('safe_passphrase_differs') : null}
        />
        <button type="submit" class="primary" disabled={isBusy}>
          {t('safe_save_locked')}
        </button>
      </form>
      <div class="buttons">
        <button type="button" disabled={isBusy} onClick={() => void saveOpen()}>
          {t('safe_save_open')}
        </button>
        <button type="button" disabled={isBusy} onClick={() => void saveSheets()}>
          {t('safe_save_csv')}
        </button>
      </div>
      <p class="field-hint">{t('safe_save_open_hint')}</p>
      {isBusy && <Busy text={t('safe_busy')} />}
      {said !== null && <Notice outcome="allow">{t('safe_saved', { file: said })}</Notice>}
      <WentWrong error={error} />
    </section>
  )
}

/** A passphrase. It is not kept when the page closes. */
export function Secret(props: {
  readonly label: string
  readonly value: string
  readonly onValue: (value: string) => void
  readonly hint: string | null
  readonly error: string | null
}) {
  return (
    <Field label={props.label} hint={props.hint} error={props.error}>
      {(ties) => (
        <input
          {...ties}
          type="password"
          autocomplete="off"
          maxLength={1000}
          value={props.value}
          onInput={(event) => props.onValue(event.currentTarget.value)}
        />
      )}
    </Field>
  )
}

function columns(): Parameters<typeof sheetsCsv>[1]['columns'] {
  return [
    t('safe_col_day'),
    t('safe_col_pot'),
    t('safe_col_what'),
    t('safe_col_cash_change'),
    t('safe_col_card_change'),
    t('safe_col_held_change'),
    t('safe_col_cash_after'),
    t('safe_col_card_after'),
    t('safe_col_left_after'),
  ]
}
