import { useState } from 'preact/hooks'
import type { HouseholdView } from '../../background/protocol.ts'
import { OpenKeys } from '../open-keys.tsx'
import { isSeen, noteSeen } from '../seen.ts'
import { t } from '../text.ts'

const HINT = 'first-order'
/** With so many entries a household has found its way. */
const FEW = 12

/** The way to the first tagged order, for a household that has none yet. It goes with the first order, or when put away. */
export function FirstOrder({ view }: { view: HouseholdView }) {
  const [isAway, setAway] = useState(() => isSeen(HINT))
  const isNew = view.recent.length < FEW && view.recent.every((entry) => !('order' in entry))
  if (isAway || !isNew) return null
  return (
    <section class="first-order">
      <h2>{t('first_order_title')}</h2>
      <ol class="steps">
        <li>{t('first_order_shop')}</li>
        <li>
          {t('first_order_press')} <OpenKeys />
        </li>
        <li>{t('first_order_pot')}</li>
      </ol>
      <button
        type="button"
        class="link"
        onClick={() => {
          noteSeen(HINT)
          setAway(true)
        }}
      >
        {t('hint_away')}
      </button>
    </section>
  )
}
