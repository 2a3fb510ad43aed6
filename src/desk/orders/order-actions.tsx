import { useState } from 'preact/hooks'
import type { ReleaseReason } from '../../book/entry.ts'
import { instalmentsOf } from '../../book/instalment.ts'
import { type OrderState, orderSums } from '../../book/order-state.ts'
import { ofMinor } from '../../money/money.ts'
import { SelectField } from '../../ui/field.tsx'
import { amountText } from '../../ui/money-text.ts'
import { shortDate } from '../../ui/short-date.ts'
import { t } from '../../ui/text.ts'
import { WentWrong } from '../../ui/went-wrong.tsx'
import { useHousehold } from '../household.ts'
import { ChargeForm } from './charge-form.tsx'
import { ConfirmForm } from './confirm-form.tsx'
import { RefundForm } from './refund-form.tsx'
import { useStep } from './use-step.ts'

/** What can happen to an order next, each with its own small form. */
export function OrderActions({ state }: { state: OrderState }) {
  const { held, charged, refunded } = orderSums(state)
  const next = instalmentsOf(state).find((p) => p.state === 'to-come')
  return (
    <section class="order-actions">
      <h2>{t('order_next')}</h2>
      {!state.isConfirmed && (
        <details open>
          <summary>{t('act_confirm')}</summary>
          <ConfirmForm state={state} />
        </details>
      )}
      <details open={held > 0 && state.isConfirmed}>
        <summary>{t('act_charge')}</summary>
        <ChargeForm state={state} />
      </details>
      {next && <HoldPart state={state} />}
      {held > 0 && (
        <details>
          <summary>{t('act_release')}</summary>
          <ReleaseForm state={state} />
        </details>
      )}
      {charged - refunded + held > 0 && (
        <details open={state.parts.some((p) => p.expected > 0)}>
          <summary>{t('act_refund')}</summary>
          <RefundForm state={state} />
        </details>
      )}
    </section>
  )
}

const REASONS = ['complete', 'lapsed', 'not-placed', 'cancelled'] as const satisfies readonly ReleaseReason[]
const REASON_TEXT = {
  complete: 'why_complete',
  lapsed: 'why_lapsed',
  'not-placed': 'why_not_placed',
  cancelled: 'why_cancelled',
} as const

function ReleaseForm({ state }: { state: OrderState }) {
  const { book } = useHousehold()
  const [why, setWhy] = useState<ReleaseReason>(state.isConfirmed ? 'complete' : 'not-placed')
  const step = useStep('order.release', state.order)
  const held = amountText(ofMinor(book.household.currency, orderSums(state).held))
  return (
    <form
      class="step-form"
      onSubmit={(event) => {
        event.preventDefault()
        void step.run({ why, held }, (id) => ({ id, order: state.order, why }))
      }}
    >
      <SelectField
        label={t('act_release_why')}
        value={why}
        options={REASONS.map((value) => ({ value, label: t(REASON_TEXT[value]) }))}
        onValue={setWhy}
      />
      <button type="submit" disabled={step.isBusy}>
        {t('act_release_go', { amount: held })}
      </button>
      <WentWrong error={step.error} />
    </form>
  )
}

function HoldPart({ state }: { state: OrderState }) {
  const { book } = useHousehold()
  const step = useStep('order.hold-part', state.order)
  const next = instalmentsOf(state).find((p) => p.state === 'to-come')
  if (!next) return null
  const amount = amountText(ofMinor(book.household.currency, next.amount))
  return (
    <div class="step-form">
      <p>{t('act_part_due', { amount, date: shortDate(next.date) })}</p>
      <button
        type="button"
        disabled={step.isBusy}
        onClick={() => void step.run({ part: next.part }, (id) => ({ id, order: state.order }))}
      >
        {t('act_part_hold')}
      </button>
      <WentWrong error={step.error} />
    </div>
  )
}
