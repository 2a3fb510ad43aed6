import { useState } from 'preact/hooks'
import { errorText } from '../ui/error-text.ts'
import { OutcomeMark } from '../ui/mark.tsx'
import { t } from '../ui/text.ts'
import type { Done } from './done.ts'

/**
 * What was just entered or saved, at the foot of the window until the next thing is done, with one press to take it back.
 * Nothing of it ends by the clock (WCAG 2.2, 2.2.1); it is spoken when it comes (4.1.3).
 */
export function DoneBar(props: {
  readonly done: Done | null
  readonly onBack: () => Promise<void>
  readonly onClose: () => void
}) {
  const [isBusy, setBusy] = useState(false)
  const [error, setError] = useState<unknown>(null)
  const { done } = props
  const back = async (): Promise<void> => {
    setBusy(true)
    setError(null)
    try {
      await done?.back?.()
      await props.onBack()
    } catch (cause) {
      setError(cause)
    }
    setBusy(false)
  }
  return (
    <div class="done-bar no-print" role="status">
      {done && (
        <div class="done-line">
          <OutcomeMark outcome={error === null ? 'allow' : 'block'} />
          <p>{error === null ? done.said : errorText(error)}</p>
          {done.back && (
            <button type="button" disabled={isBusy} onClick={() => void back()}>
              {t('done_take_back')}
            </button>
          )}
          <button type="button" class="quiet" aria-label={t('done_close')} onClick={props.onClose}>
            ×
          </button>
        </div>
      )}
    </div>
  )
}
