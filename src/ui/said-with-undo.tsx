import { OutcomeMark } from './mark.tsx'
import { t } from './text.ts'
import { WentWrong } from './went-wrong.tsx'

/** What was just done, in a sentence, with its undo at hand, and why that failed if it did. */
export function SaidWithUndo(props: {
  readonly said: string
  readonly onUndo: () => void
  readonly isBusy: boolean
  readonly error: unknown
}) {
  return (
    <>
      <p class="said">
        <OutcomeMark outcome="allow" />
        <span>{props.said}</span>
        <button type="button" class="link" disabled={props.isBusy} onClick={props.onUndo}>
          {t('undo')}
        </button>
      </p>
      <WentWrong error={props.error} />
    </>
  )
}
