import { useState } from 'preact/hooks'
import type { At, HouseholdView, OpenTag } from '../../background/protocol.ts'
import { ask } from '../ask.ts'
import { amountText } from '../money-text.ts'
import { t } from '../text.ts'
import { WentWrong } from '../went-wrong.tsx'
import { potNames } from './pot-order.ts'
import { useArmed } from './use-armed.ts'

/**
 * The tag of this shop's order was used already. Only the person knows whether the shop's page failed (the same order,
 * no second entry) or this is a second order.
 */
export function PlacedBefore(props: {
  readonly at: At
  readonly view: HouseholdView
  readonly tag: OpenTag
  readonly onAgain: () => void
  readonly onNew: () => void
}) {
  const { tag, view } = props
  const [error, setError] = useState<unknown>(null)
  const isArmed = useArmed('nonce' in props.at)
  const again = (): void => {
    if (!isArmed()) return
    ask('order.again', { at: props.at }).then(props.onAgain, setError)
  }
  const pot = potNames(view, tag.lines)
  return (
    <section class="placed-before">
      <p>{t('placed_before_said', { amount: amountText(tag.amount), pot })}</p>
      <WentWrong error={error} />
      <div class="big-choices">
        <button type="button" onClick={again}>
          <strong>{t('same_order')}</strong>
          <span>{t('same_order_hint')}</span>
        </button>
        <button type="button" onClick={() => isArmed() && props.onNew()}>
          <strong>{t('new_order')}</strong>
          <span>{t('new_order_hint')}</span>
        </button>
      </div>
    </section>
  )
}
