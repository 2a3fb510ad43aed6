import type { Look } from '../../background/protocol.ts'
import type { Entry } from '../../book/entry.ts'
import type { Household } from '../../book/household.ts'
import { errorText } from '../error-text.ts'
import { OutcomeMark } from '../mark.tsx'
import { Notice } from '../notice.tsx'
import { sayEntry } from '../say-entry.ts'
import { t } from '../text.ts'
import { useEntry } from './use-entry.ts'

/** The entry that was just made, in a sentence, with its undo at hand. */
export function JustSaid(props: {
  readonly household: Household
  readonly entry: Entry
  readonly onLook: (look: Look) => void
}) {
  const { household, entry } = props
  const { enter, isBusy, error } = useEntry('entry.undo', props.onLook)
  return (
    <>
      <p class="quick-said">
        <OutcomeMark outcome="allow" />
        <span>{sayEntry(household, entry)}</span>
        <button
          type="button"
          class="link"
          disabled={isBusy}
          onClick={() => void enter({ target: entry.id }, (id) => ({ id, target: entry.id }))}
        >
          {t('undo')}
        </button>
      </p>
      {error !== null && (
        <Notice outcome="block" isUrgent>
          {errorText(error)}
        </Notice>
      )}
    </>
  )
}
