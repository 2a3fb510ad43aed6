import { useLayoutEffect, useRef, useState } from 'preact/hooks'
import type { HouseholdView } from '../../background/protocol.ts'
import { useActionId } from '../action-id.ts'
import { ask } from '../ask.ts'
import { errorText } from '../error-text.ts'
import { amountText } from '../money-text.ts'
import { Notice } from '../notice.tsx'
import { sillReach } from '../sill.ts'
import { SillBar } from '../sill-bar.tsx'
import { t } from '../text.ts'
import type { Tagged } from './order-form.tsx'

/** The order has its pot: what was tagged, what is left, and what to do now. */
export function TaggedView(props: {
  readonly view: HouseholdView
  readonly tagged: Tagged
  /** Undo was done. */
  readonly onUndone: () => void
  readonly onChange: () => void
  /** Present where the tagged order was placed, so that another one may follow. */
  readonly onAnother: (() => void) | null
  /** In the panel: back to the shop's page, the thing to do next. */
  readonly onBack: (() => void) | null
}) {
  const { view, tagged, onBack, onAnother } = props
  const pot = view.household.pots.find((p) => p.id === tagged.pot)
  const balance = view.balances[tagged.pot]
  const back = useRef<HTMLButtonElement>(null)
  const undo = useUndo(tagged, props.onUndone)
  useLayoutEffect(() => back.current?.focus(), [])
  const values = { amount: amountText(tagged.amount), pot: pot?.name ?? tagged.pot }
  return (
    <section class="tagged">
      <Notice outcome="allow">
        <strong>{t('tagged_said', values)}</strong> {t(onBack ? 'tagged_next_panel' : 'tagged_next')}
      </Notice>
      {pot && balance && (
        <div class="tagged-pot">
          <span class="pot-name">{pot.name}</span>
          <span class="pot-left">{t('amount_left', { amount: amountText(balance.left) })}</span>
          <SillBar balance={balance} scale={Math.max(sillReach(balance), pot.fill.cash, pot.fill.card, 1)} />
        </div>
      )}
      {undo.error !== null && (
        <Notice outcome="block" isUrgent>
          {errorText(undo.error)}
        </Notice>
      )}
      <div class="buttons">
        {onBack && (
          <button ref={back} type="button" class="primary" onClick={onBack}>
            {t('back_to_shop')}
          </button>
        )}
        {tagged.entry && (
          <button type="button" onClick={undo.run} disabled={undo.isBusy}>
            {t('undo')}
          </button>
        )}
        <button type="button" class="quiet" onClick={props.onChange}>
          {t('change_tag')}
        </button>
        {onAnother && (
          <button type="button" class="quiet" onClick={onAnother}>
            {t('another_order')}
          </button>
        )}
      </div>
    </section>
  )
}

function useUndo(tagged: Tagged, onUndone: () => void) {
  const action = useActionId('undo-tag')
  const [isBusy, setBusy] = useState(false)
  const [error, setError] = useState<unknown>(null)
  const run = async (): Promise<void> => {
    if (!tagged.entry || isBusy) return
    setBusy(true)
    setError(null)
    try {
      await ask('entry.undo', { id: action.idFor(tagged.entry), target: tagged.entry })
      action.done()
      onUndone()
    } catch (cause) {
      setError(cause)
    } finally {
      setBusy(false)
    }
  }
  return { run, isBusy, error }
}
