import type { HouseholdView, Look } from '../../background/protocol.ts'
import type { Pot } from '../../book/household.ts'
import { locale } from '../browser.ts'
import { errorText } from '../error-text.ts'
import { OutcomeMark } from '../mark.tsx'
import { Notice } from '../notice.tsx'
import { checkPot, draftOf } from '../pot-draft.ts'
import { t } from '../text.ts'
import { useEntry } from './use-entry.ts'

/** A pot's settings were just changed, or it was archived: undo sets them back. */
export function PotSaved(props: {
  readonly view: HouseholdView
  /** As it was. */
  readonly before: Pot
  readonly onLook: (look: Look) => void
}) {
  const { view, before } = props
  const { enter, isBusy, error } = useEntry('pot.save', props.onLook)
  const now = view.household.pots.find((p) => p.id === before.id) ?? before
  const { pot } = checkPot(draftOf(before, view.household.currency), [], [], view.household.currency, locale())
  const back = (): void => {
    if (!pot) return
    const wish = { pot, archived: before.archived }
    void enter(wish, (id) => ({ id, ...wish }))
  }
  return (
    <div role="status">
      <p class="quick-said">
        <OutcomeMark outcome="allow" />
        <span>{t('pot_saved', { pot: now.name })}</span>
        <button type="button" class="link" disabled={isBusy} onClick={back}>
          {t('undo')}
        </button>
      </p>
      {error !== null && (
        <Notice outcome="block" isUrgent>
          {errorText(error)}
        </Notice>
      )}
    </div>
  )
}
