import { useState } from 'preact/hooks'
import { isCalendarDate } from '../../book/calendar-date.ts'
import { type OrderState, orderSums } from '../../book/order-state.ts'
import { ofMinor, toDecimal } from '../../money/money.ts'
import { readAmount } from '../../ui/amount-text.ts'
import { locale } from '../../ui/browser.ts'
import { DateField, TextField } from '../../ui/field.tsx'
import { editText } from '../../ui/money-text.ts'
import { t } from '../../ui/text.ts'
import { WentWrong } from '../../ui/went-wrong.tsx'
import { useHousehold } from '../household.ts'
import { AccountField, useAccount } from './account-field.tsx'
import { ItemsField } from './items-field.tsx'
import { useStep } from './use-step.ts'

/** Money back: announced by the shop, or posted. */
export function RefundForm({ state }: { state: OrderState }) {
  const { book, view } = useHousehold()
  const { currency } = book.household
  const { expected } = orderSums(state)
  const refund = useStep('order.refund', state.order)
  const expect = useStep('order.expect-refund', state.order)
  const [text, setText] = useState(expected > 0 ? editText(ofMinor(currency, expected)) : '')
  const [date, setDate] = useState<string>(view.today)
  const [items, setItems] = useState<readonly number[]>([])
  const account = useAccount()
  const read = readAmount(text, currency, locale())
  const isWrong = (read.ok && read.money.minor === 0) || (!read.ok && read.problem !== 'empty')
  const chosen = items.length > 0 ? items : null
  const go = (): void => {
    if (!read.ok || !isCalendarDate(date)) return
    const amount = toDecimal(read.money)
    void refund.run({ amount, date, items, account: account.id }, (id) => ({
      id,
      order: state.order,
      amount,
      date,
      lines: null,
      items: chosen,
      account: account.id,
    }))
  }
  const announce = (): void => {
    if (!read.ok) return
    const amount = toDecimal(read.money)
    void expect.run({ amount, items, expected }, (id) => ({ id, order: state.order, amount, items: chosen }))
  }
  return (
    <form
      class="step-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        go()
      }}
    >
      <TextField
        label={t('act_amount', { currency })}
        isAmount
        currency={currency}
        value={text}
        onValue={setText}
        error={isWrong ? t('act_amount_wrong') : null}
      />
      <DateField
        label={t('act_date')}
        value={date}
        onValue={setDate}
        error={isCalendarDate(date) ? null : t('act_date_wrong')}
      />
      <AccountField account={account} />
      <ItemsField
        state={state}
        label={t('act_refund_items')}
        chosen={items}
        onChoose={(places, cost) => {
          setItems(places)
          if (places.length > 0) setText(editText(cost))
        }}
      />
      <div class="buttons">
        <button type="submit" class="primary" disabled={refund.isBusy || expect.isBusy || !read.ok}>
          {t('act_refund_go')}
        </button>
        <button type="button" disabled={refund.isBusy || expect.isBusy || !read.ok} onClick={announce}>
          {t('act_refund_expect')}
        </button>
      </div>
      <p class="field-hint">{t('act_refund_hint')}</p>
      <WentWrong error={refund.error ?? expect.error} />
    </form>
  )
}
