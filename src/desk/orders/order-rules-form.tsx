import { useState } from 'preact/hooks'
import { HOLD_DAYS } from '../../book/ordering.ts'
import { ask } from '../../ui/ask.ts'
import { plainNumber } from '../../ui/checkout/order-draft.ts'
import { TextField } from '../../ui/field.tsx'
import { t } from '../../ui/text.ts'
import { WentWrong } from '../../ui/went-wrong.tsx'
import { useHousehold } from '../household.ts'
import { useStep } from './use-step.ts'

/** How careful holds are: the usual margin, the card's fee abroad, and after how many days a hold is asked about. */
export function OrderRulesForm() {
  const { ordering = {} } = useHousehold().book.household
  const step = useStep('order.rules', 'rules')
  const [days, setDays] = useState(String(ordering.holdDays ?? HOLD_DAYS))
  const [margin, setMargin] = useState(ordering.marginPercent ?? '10')
  const [fee, setFee] = useState(ordering.foreignFeePercent ?? '0')
  const [isSaved, setSaved] = useState(false)
  const [plainMargin, plainFee] = [plainNumber(margin), plainNumber(fee)]
  const isDays = /^\d{1,3}$/.test(days.trim())
  const go = async (): Promise<void> => {
    if (plainMargin === null || plainFee === null || !isDays) return
    const rules = { holdDays: Number(days), marginPercent: plainMargin, foreignFeePercent: plainFee }
    const before = {
      holdDays: ordering.holdDays ?? HOLD_DAYS,
      marginPercent: ordering.marginPercent ?? '10',
      foreignFeePercent: ordering.foreignFeePercent ?? '0',
    }
    const setting = { said: t('done_saved'), back: () => ask('order.rules', before) }
    setSaved((await step.run(rules, () => rules, undefined, setting)) !== null)
  }
  const edit = (set: (value: string) => void) => (value: string) => {
    set(value)
    setSaved(false)
  }
  return (
    <details class="order-extra">
      <summary>{t('rules_title')}</summary>
      <form
        class="step-form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault()
          void go()
        }}
      >
        <TextField
          label={t('rules_days')}
          isAmount
          maxLength={3}
          value={days}
          onValue={edit(setDays)}
          hint={t('rules_days_hint')}
          error={isDays ? null : t('rules_number_wrong')}
        />
        <TextField
          label={t('more_margin')}
          isAmount
          value={margin}
          onValue={edit(setMargin)}
          error={plainMargin === null ? t('rules_number_wrong') : null}
        />
        <TextField
          label={t('rules_fee')}
          isAmount
          value={fee}
          onValue={edit(setFee)}
          error={plainFee === null ? t('rules_number_wrong') : null}
        />
        <button type="submit" disabled={step.isBusy}>
          {t('rules_save')}
        </button>
        {isSaved && <p role="status">{t('rules_saved')}</p>}
        <WentWrong error={step.error} />
      </form>
    </details>
  )
}
