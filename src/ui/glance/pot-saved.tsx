import type { HouseholdView, Look } from '../../background/protocol.ts'
import type { Pot } from '../../book/household.ts'
import { locale } from '../browser.ts'
import { checkPot, draftOf } from '../pot-draft.ts'
import { SaidWithUndo } from '../said-with-undo.tsx'
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
      <SaidWithUndo said={t('pot_saved', { pot: now.name })} onUndo={back} isBusy={isBusy} error={error} />
    </div>
  )
}
