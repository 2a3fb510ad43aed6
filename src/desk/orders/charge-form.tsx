import { useState } from 'preact/hooks'
import type { ChargeReply } from '../../background/protocol.ts'
import { isCalendarDate } from '../../book/calendar-date.ts'
import { type OrderState, orderSums } from '../../book/order-state.ts'
import { ofMinor, toDecimal } from '../../money/money.ts'
import { readAmount } from '../../ui/amount-text.ts'
import { locale } from '../../ui/browser.ts'
import { DateField, TextField } from '../../ui/field.tsx'
import { amountText, editText } from '../../ui/money-text.ts'
import { Notice } from '../../ui/notice.tsx'
import { listText, t } from '../../ui/text.ts'
import { WentWrong } from '../../ui/went-wrong.tsx'
import { useHousehold } from '../household.ts'
import { AccountField, useAccount } from './account-field.tsx'
import { ItemsField } from './items-field.tsx'
import { useStep } from './use-step.ts'

type AboveHold = Extract<ChargeReply, { kind: 'above-hold' }>

/** What the card charged. More than is held is asked about before it is posted. */
export function ChargeForm({ state }: { state: OrderState }) {
  const { book, view } = useHousehold()
  const { currency } = book.household
  const { held } = orderSums(state)
  const { foreign } = state.details
  const step = useStep('order.charge', state.order)
  const [text, setText] = useState(held > 0 ? editText(ofMinor(currency, held)) : '')
  const [date, setDate] = useState<string>(view.today)
  const [items, setItems] = useState<readonly number[]>([])
  const [asked, setAsked] = useState(foreign ? editText(ofMinor(foreign.currency, foreign.amount)) : '')
  const [isComplete, setComplete] = useState(false)
  const [above, setAbove] = useState<AboveHold | null>(null)
  const account = useAccount()
  const read = readAmount(text, currency, locale())
  const readAsked = foreign && asked !== '' ? readAmount(asked, foreign.currency, locale()) : null
  const isWrong = (read.ok && read.money.minor === 0) || (!read.ok && read.problem !== 'empty')
  const go = async (acceptsAbove: boolean): Promise<void> => {
    if (!read.ok || read.money.minor === 0 || !isCalendarDate(date) || (readAsked && !readAsked.ok)) return
    const content = { amount: toDecimal(read.money), date, items, asked, isComplete, account: account.id, held }
    const answer = await step.run(
      content,
      (id, second) => ({
        id,
        order: state.order,
        amount: toDecimal(read.money),
        date,
        lines: null,
        items: items.length > 0 ? items : null,
        foreign: readAsked?.ok ? toDecimal(readAsked.money) : null,
        account: account.id,
        acceptsAbove,
        complete: isComplete ? second : null,
      }),
      (reply) => reply.kind === 'charged',
    )
    setAbove(answer?.kind === 'above-hold' ? answer : null)
  }
  const pots = (reply: AboveHold): string =>
    listText(
      reply.after.map((a) => {
        const name = book.household.pots.find((p) => p.id === a.pot)?.name ?? a.pot
        return t('above_pot', { pot: name, above: amountText(a.above), left: amountText(a.balance.left) })
      }),
    )
  return (
    <form
      class="step-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        void go(false)
      }}
    >
      <TextField
        label={t('act_amount', { currency })}
        isAmount
        currency={currency}
        value={text}
        onValue={(value) => {
          setText(value)
          setAbove(null)
        }}
        error={isWrong ? t('act_amount_wrong') : null}
      />
      <DateField
        label={t('act_date')}
        value={date}
        onValue={setDate}
        error={isCalendarDate(date) ? null : t('act_date_wrong')}
      />
      {foreign && (
        <TextField
          label={t('act_asked', { currency: foreign.currency })}
          isAmount
          currency={foreign.currency}
          value={asked}
          onValue={setAsked}
          hint={t('act_asked_hint')}
        />
      )}
      <AccountField account={account} />
      <ItemsField
        state={state}
        label={t('act_charge_items')}
        chosen={items}
        onChoose={(places, cost) => {
          setItems(places)
          if (places.length > 0) setText(editText(cost))
        }}
      />
      <label class="check">
        <input type="checkbox" checked={isComplete} onChange={() => setComplete(!isComplete)} />
        <span>{t('act_complete')}</span>
      </label>
      {above ? (
        <>
          <Notice outcome="warn" isUrgent>
            {t('above_said', { above: amountText(above.above), held: amountText(above.held) })} {pots(above)}
          </Notice>
          <div class="buttons">
            <button type="button" class="primary" disabled={step.isBusy} onClick={() => void go(true)}>
              {t('above_go')}
            </button>
            <button type="button" onClick={() => setAbove(null)}>
              {t('above_not')}
            </button>
          </div>
        </>
      ) : (
        <button type="submit" class="primary" disabled={step.isBusy || !read.ok}>
          {t('act_charge_go')}
        </button>
      )}
      <WentWrong error={step.error} />
    </form>
  )
}
