import { useState } from 'preact/hooks'
import { errorText } from '../../../ui/error-text.ts'
import { Notice } from '../../../ui/notice.tsx'
import { t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'
import { Busy } from '../../parts/busy.tsx'
import { runInThread } from '../thread.ts'
import { likelyAccount, type Source } from './source.ts'

/** Larger files are no statements of a household. */
const MOST_BYTES = 200_000_000

/** Chooses files and reads them in the other thread, showing how far it has come. */
export function OpenFile({ onOpened }: { onOpened: (source: Source) => void }) {
  const { view, book } = useHousehold()
  const [progress, setProgress] = useState<{ name: string; part: number } | null>(null)
  const [errors, setErrors] = useState<readonly string[]>([])
  const open = async (files: readonly File[]): Promise<void> => {
    const failed: string[] = []
    for (const file of files) {
      setProgress({ name: file.name, part: 0 })
      try {
        if (file.size > MOST_BYTES) throw new Error(t('statement_too_large'))
        const bytes = new Uint8Array(await file.arrayBuffer())
        const options = { currency: book.household.currency, remembered: view.statements.mappings }
        const opened = await runInThread('open', { bytes, options }, undefined, (done, of) =>
          setProgress({ name: file.name, part: of > 0 ? done / of : 0 }),
        )
        const accounts = opened.accounts.flatMap((a) => likelyAccount(book.household, view.statements, opened, a) ?? [])
        onOpened({ name: file.name, bytes, file: opened, accounts, isUsed: false })
      } catch (cause) {
        failed.push(t('statement_not_read', { file: file.name, why: errorText(cause) }))
      }
    }
    setProgress(null)
    setErrors(failed)
  }
  return (
    <section class="open-file">
      <label class="file-label">
        <span>{t('statement_open')}</span>
        <input
          type="file"
          multiple
          accept=".ofx,.qfx,.qbo,.xml,.csv,.txt"
          onChange={(event) => {
            const input = event.currentTarget
            void open([...(input.files ?? [])]).then(() => {
              input.value = ''
            })
          }}
        />
      </label>
      <p class="field-hint">{t('statement_open_hint')}</p>
      {progress && <Busy text={t('statement_reading', { file: progress.name })} part={progress.part} />}
      {errors.map((error) => (
        <Notice key={error} outcome="block" isUrgent>
          {error}
        </Notice>
      ))}
    </section>
  )
}
