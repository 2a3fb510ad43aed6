import { useLayoutEffect, useRef, useState } from 'preact/hooks'
import type { HouseholdView } from '../../background/protocol.ts'
import type { PotId } from '../../book/ids.ts'
import type { Money } from '../../money/money.ts'
import { useActionId } from '../action-id.ts'
import { ask } from '../ask.ts'
import { errorText } from '../error-text.ts'
import { amountText } from '../money-text.ts'
import { Notice } from '../notice.tsx'
import { sillReach } from '../sill.ts'
import { SillBar } from '../sill-bar.tsx'
import { t } from '../text.ts'
import type { Tagged } from './order-form.tsx'
import { potNames } from './pot-order.ts'

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
  const back = useRef<HTMLButtonElement>(null)
  const undo = useUndo(tagged, props.onUndone)
  useLayoutEffect(() => back.current?.focus(), [])
  const values = { amount: amountText(tagged.amount), pot: potNames(view, tagged.lines) }
  return (
    <section class="tagged">
      <Notice outcome="allow">
        <strong>{tagged.lines.length > 0 ? t('tagged_said', values) : t('tagged_nothing')}</strong>{' '}
        {t(onBack ? 'tagged_next_panel' : 'tagged_next')}
      </Notice>
      {tagged.lines.map((line) => (
        <TaggedPot key={line.pot} view={view} id={line.pot} part={tagged.lines.length > 1 ? line.amount : null} />
      ))}
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

/** One pot of the order: what is left in it now, and of a split order what it pays. */
function TaggedPot({ view, id, part }: { view: HouseholdView; id: PotId; part: Money | null }) {
  const pot = view.household.pots.find((p) => p.id === id)
  const balance = view.balances[id]
  if (!pot || !balance) return null
  return (
    <div class="tagged-pot">
      <span class="pot-name">
        {pot.name} {part && <span class="tagged-part">{amountText(part)}</span>}
      </span>
      <span class="pot-left">{t('amount_left', { amount: amountText(balance.left) })}</span>
      <SillBar balance={balance} scale={Math.max(sillReach(balance), pot.fill.cash, pot.fill.card, 1)} />
    </div>
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
