import { useState } from 'preact/hooks'
import { ofMinor } from '../../money/money.ts'
import { locale } from '../../ui/browser.ts'
import { Choice, Field } from '../../ui/field.tsx'
import { amountText } from '../../ui/money-text.ts'
import { Notice } from '../../ui/notice.tsx'
import { t, tn } from '../../ui/text.ts'
import { WentWrong } from '../../ui/went-wrong.tsx'
import { Busy } from '../parts/busy.tsx'
import { TableBox } from '../parts/table-box.tsx'
import { Secret } from './save-box.tsx'
import { type Here, type Restoring, useRestore } from './use-restore.ts'

/** Restores a saved book: chosen, unlocked, looked at, and only then taken. */
export function RestoreBox({ here, onDone }: { here: Here | null; onDone: () => Promise<void> }) {
  const { at, error, isBusy, choose, open, switchTo, take, cancel } = useRestore(here, onDone)
  const [passphrase, setPassphrase] = useState('')
  return (
    <section class="safe-box">
      <h2>{t('safe_restore_title')}</h2>
      {at.step === 'choose' && (
        <Field label={t('safe_restore_choose')} hint={t('safe_restore_choose_hint')}>
          {(ties) => (
            <input
              {...ties}
              type="file"
              accept=".json,application/json"
              onChange={(event) => {
                const [file] = event.currentTarget.files ?? []
                if (file) void choose(file)
              }}
            />
          )}
        </Field>
      )}
      {at.step === 'locked' && (
        <form
          onSubmit={(event) => {
            event.preventDefault()
            void open(passphrase).then(() => setPassphrase(''))
          }}
        >
          <p>{t('safe_locked', { file: at.name })}</p>
          <Secret label={t('safe_passphrase')} value={passphrase} onValue={setPassphrase} hint={null} error={null} />
          <div class="buttons">
            <button type="submit" class="primary" disabled={isBusy || passphrase === ''}>
              {t('safe_unlock')}
            </button>
            <button type="button" onClick={cancel}>
              {t('cancel')}
            </button>
          </div>
        </form>
      )}
      {at.step === 'look' && (
        <PreviewOf at={at} isBusy={isBusy} hasHere={here !== null} onHow={switchTo} onTake={take} onCancel={cancel} />
      )}
      {at.step === 'writing' && <Busy text={t('safe_writing')} part={at.done / Math.max(at.of, 1)} />}
      {at.step === 'done' && (
        <>
          <Notice outcome="allow">{tn('safe_restored', at.entries)}</Notice>
          <button type="button" onClick={cancel}>
            {t('safe_restore_another')}
          </button>
        </>
      )}
      {isBusy && at.step !== 'writing' && <Busy text={t('safe_busy')} />}
      <WentWrong error={error} />
    </section>
  )
}

function PreviewOf(props: {
  readonly at: Extract<Restoring, { step: 'look' }>
  readonly isBusy: boolean
  readonly hasHere: boolean
  readonly onHow: (how: 'replace' | 'join') => Promise<void>
  readonly onTake: () => Promise<void>
  readonly onCancel: () => void
}) {
  const { file, how, preview, isAltered, name } = props.at
  const text = (minor: number | null): string =>
    minor === null ? t('safe_no_pot') : amountText(ofMinor(file.settings.currency, minor))
  const changed = preview.pots.filter((pot) => pot.before !== pot.after)
  return (
    <>
      <p>
        {t('safe_look', {
          file: name,
          entries: new Intl.NumberFormat(locale()).format(file.entries.length),
          day: preview.lastDay ?? '–',
        })}
      </p>
      {isAltered && <Notice outcome="warn">{t('safe_altered')}</Notice>}
      {preview.ahead > 0 && <Notice outcome="warn">{tn('safe_ahead', preview.ahead)}</Notice>}
      {props.hasHere && (
        <>
          <Choice
            label={t('safe_how')}
            name="restore-how"
            value={how}
            options={[
              { value: 'replace', label: t('safe_how_replace') },
              { value: 'join', label: t('safe_how_join') },
            ]}
            onValue={(value) => void props.onHow(value)}
          />
          <ul>
            <li>{tn('safe_only_there', preview.onlyThere)}</li>
            <li>{tn(how === 'replace' ? 'safe_only_here_gone' : 'safe_only_here_kept', preview.onlyHere)}</li>
            <li>{tn('safe_in_both', preview.inBoth)}</li>
          </ul>
        </>
      )}
      {changed.length === 0 ? (
        <p>{t('safe_no_change')}</p>
      ) : (
        <TableBox label={t('safe_changes')}>
          <table>
            <caption>{t('safe_changes')}</caption>
            <thead>
              <tr>
                <th scope="col">{t('desk_col_pot')}</th>
                <th scope="col" class="figure">
                  {t('safe_before')}
                </th>
                <th scope="col" class="figure">
                  {t('safe_after')}
                </th>
              </tr>
            </thead>
            <tbody>
              {changed.map((pot) => (
                <tr key={pot.id}>
                  <th scope="row">{pot.name}</th>
                  <td class="figure">{text(pot.before)}</td>
                  <td class="figure">{text(pot.after)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </TableBox>
      )}
      <div class="buttons">
        <button type="button" class="primary" disabled={props.isBusy} onClick={() => void props.onTake()}>
          {how === 'replace' ? t('safe_take_replace') : t('safe_take_join')}
        </button>
        <button type="button" onClick={props.onCancel}>
          {t('cancel')}
        </button>
      </div>
    </>
  )
}
