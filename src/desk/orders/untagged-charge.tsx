import { useState } from 'preact/hooks'
import { isCalendarDate } from '../../book/calendar-date.ts'
import { orderId } from '../../book/ids.ts'
import { toDecimal } from '../../money/money.ts'
import { readAmount } from '../../ui/amount-text.ts'
import { locale } from '../../ui/browser.ts'
import { DateField, SelectField, TextField } from '../../ui/field.tsx'
import { t } from '../../ui/text.ts'
import { WentWrong } from '../../ui/went-wrong.tsx'
import { useHousehold } from '../household.ts'
import { linkTo } from '../place.ts'
import { AccountField, useAccount } from './account-field.tsx'
import { useStep } from './use-step.ts'

/** The card charged something nobody tagged: it asks for its pot now. */
export function UntaggedCharge() {
  const { book, view } = useHousehold()
  const { currency } = book.household
  const step = useStep('order.charge-untagged', 'new')
  const [shop, setShop] = useState('')
  const [text, setText] = useState('')
  const [date, setDate] = useState<string>(view.today)
  const [pot, setPot] = useState('')
  const [isTried, setTried] = useState(false)
  const account = useAccount()
  const able = book.household.pots.filter((p) => !p.archived && p.sides !== 'cash')
  const chosen = able.find((p) => p.id === pot)
  const read = readAmount(text, currency, locale())
  const isReady = read.ok && read.money.minor > 0 && shop.trim() !== '' && chosen !== undefined && isCalendarDate(date)
  const go = async (): Promise<void> => {
    setTried(true)
    if (!read.ok || !chosen || !isReady || !isCalendarDate(date)) return
    const amount = toDecimal(read.money)
    const content = { shop: shop.trim(), amount, date, pot, account: account.id }
    const answer = await step.run(content, (id, charge) => ({
      id,
      charge,
      // The order's name is the entry's own: one is made for each charge.
      order: orderId(id),
      shop: shop.trim().toLowerCase(),
      amount,
      pots: [{ pot: chosen.id, amount }],
      date,
      account: account.id,
    }))
    if (!answer) return
    for (const clear of [setShop, setText, setPot]) clear('')
    setTried(false)
    location.hash = linkTo('orders')
  }
  return (
    <details class="order-extra">
      <summary>{t('untagged_title')}</summary>
      <form
        class="step-form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault()
          void go()
        }}
      >
        <p class="field-hint">{t('untagged_hint')}</p>
        <TextField
          label={t('untagged_shop')}
          value={shop}
          onValue={setShop}
          error={isTried && shop.trim() === '' ? t('untagged_shop_missing') : null}
        />
        <TextField
          label={t('act_amount', { currency })}
          isAmount
          currency={currency}
          value={text}
          onValue={setText}
          error={isTried && !(read.ok && read.money.minor > 0) ? t('act_amount_wrong') : null}
        />
        <DateField
          label={t('act_date')}
          value={date}
          onValue={setDate}
          error={isCalendarDate(date) ? null : t('act_date_wrong')}
        />
        <SelectField
          label={t('untagged_pot')}
          value={pot}
          options={[
            { value: '', label: t('split_choose_pot') },
            ...able.map((p) => ({ value: String(p.id), label: p.name })),
          ]}
          onValue={setPot}
          hint={isTried && !chosen ? t('pot_missing') : null}
        />
        <AccountField account={account} />
        <button type="submit" class="primary" disabled={step.isBusy}>
          {t('untagged_go')}
        </button>
        <WentWrong error={step.error} />
      </form>
    </details>
  )
}
