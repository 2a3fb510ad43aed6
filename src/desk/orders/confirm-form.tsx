import { useState } from 'preact/hooks'
import type { OrderState } from '../../book/order-state.ts'
import { toDecimal } from '../../money/money.ts'
import { readAmount } from '../../ui/amount-text.ts'
import { locale } from '../../ui/browser.ts'
import { TextField } from '../../ui/field.tsx'
import { Notice } from '../../ui/notice.tsx'
import { t } from '../../ui/text.ts'
import { WentWrong } from '../../ui/went-wrong.tsx'
import { useHousehold } from '../household.ts'
import { useStep } from './use-step.ts'

/** It went through: with the shop's number and its final total, where they are known. */
export function ConfirmForm({ state }: { state: OrderState }) {
  const { book } = useHousehold()
  const currency = state.details.foreign?.currency ?? book.household.currency
  const confirm = useStep('order.confirm', state.order)
  const release = useStep('order.release', `${state.order}:not-placed`)
  const [number, setNumber] = useState('')
  const [text, setText] = useState('')
  const [isOther, setOther] = useState(false)
  const read = readAmount(text, currency, locale())
  const isWrong = !read.ok && read.problem !== 'empty'
  const go = async (): Promise<void> => {
    if (isWrong) return
    const said = { number: number.trim() || null, total: read.ok && text !== '' ? toDecimal(read.money) : null }
    const answer = await confirm.run(
      said,
      (id) => ({ id, order: state.order, ...said }),
      (reply) => reply.kind !== 'other-order',
    )
    setOther(answer?.kind === 'other-order')
  }
  return (
    <form
      class="step-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        void go()
      }}
    >
      <TextField label={t('act_confirm_number')} value={number} onValue={setNumber} hint={t('act_confirm_hint')} />
      <TextField
        label={t('act_confirm_total', { currency })}
        isAmount
        currency={currency}
        value={text}
        onValue={setText}
        error={isWrong ? t('act_amount_wrong') : null}
        hint={t('act_confirm_total_hint')}
      />
      <div class="buttons">
        <button type="submit" class="primary" disabled={confirm.isBusy}>
          {t('unconfirmed_yes')}
        </button>
        <button
          type="button"
          disabled={release.isBusy}
          onClick={() => void release.run('no', (id) => ({ id, order: state.order, why: 'not-placed' }))}
        >
          {t('unconfirmed_no')}
        </button>
      </div>
      {isOther && <Notice outcome="warn">{t('act_confirm_other')}</Notice>}
      <WentWrong error={confirm.error ?? release.error} />
    </form>
  )
}
