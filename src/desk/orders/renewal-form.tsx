import { useState } from 'preact/hooks'
import { isCalendarDate } from '../../book/calendar-date.ts'
import type { Every, Renewal } from '../../book/ordering.ts'
import { ofMinor, toDecimal } from '../../money/money.ts'
import { readAmount } from '../../ui/amount-text.ts'
import { locale } from '../../ui/browser.ts'
import { DateField, SelectField, TextField } from '../../ui/field.tsx'
import { editText } from '../../ui/money-text.ts'
import { slugOf } from '../../ui/slug-of.ts'
import { t } from '../../ui/text.ts'
import { WentWrong } from '../../ui/went-wrong.tsx'
import { useHousehold } from '../household.ts'
import { useStep } from './use-step.ts'

const RHYTHMS: readonly { readonly key: 'week' | 'month' | 'quarter' | 'year'; readonly every: Every }[] = [
  { key: 'week', every: { unit: 'week', count: 1 } },
  { key: 'month', every: { unit: 'month', count: 1 } },
  { key: 'quarter', every: { unit: 'month', count: 3 } },
  { key: 'year', every: { unit: 'year', count: 1 } },
]

/** A subscription to add, or to change. */
export function RenewalForm({ renewal, onDone }: { renewal: Renewal | null; onDone: () => void }) {
  const { book, view } = useHousehold()
  const { currency, pots, renewals = [] } = book.household
  const step = useStep('renewal.save', renewal?.id ?? 'new')
  const able = pots.filter((p) => !p.archived && p.sides !== 'cash')
  const [name, setName] = useState(renewal?.name ?? '')
  const [shop, setShop] = useState(renewal?.shop ?? '')
  const [text, setText] = useState(renewal ? editText(ofMinor(currency, renewal.amount)) : '')
  const [pot, setPot] = useState<string>(renewal?.pot ?? able[0]?.id ?? '')
  const [first, setFirst] = useState<string>(renewal?.first ?? view.today)
  const known = RHYTHMS.find((r) => r.every.unit === renewal?.every.unit && r.every.count === renewal.every.count)
  const [rhythm, setRhythm] = useState<string>(known?.key ?? (renewal ? 'other' : 'month'))
  const [isTried, setTried] = useState(false)
  const read = readAmount(text, currency, locale())
  const isAmount = read.ok && read.money.minor > 0
  const every = RHYTHMS.find((r) => r.key === rhythm)?.every ?? renewal?.every ?? { unit: 'month', count: 1 }
  const go = async (): Promise<void> => {
    setTried(true)
    const chosen = able.find((p) => p.id === pot)
    if (!read.ok || !isAmount || name.trim() === '' || !chosen || !isCalendarDate(first)) return
    const taken = renewals.map((r) => r.id)
    const ask = {
      id: renewal?.id ?? slugOf(name, taken),
      name: name.trim(),
      shop: shop.trim().toLowerCase() || null,
      pot: chosen.id,
      amount: toDecimal(read.money),
      first,
      every,
      end: renewal?.end ?? null,
    }
    if (await step.run(ask, () => ask)) onDone()
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
      <TextField
        label={t('renewal_name')}
        value={name}
        onValue={setName}
        error={isTried && name.trim() === '' ? t('renewal_name_missing') : null}
      />
      <TextField
        label={t('act_amount', { currency })}
        isAmount
        currency={currency}
        value={text}
        onValue={setText}
        error={isTried && !isAmount ? t('act_amount_wrong') : null}
      />
      <SelectField
        label={t('renewal_every')}
        value={rhythm}
        options={[
          ...RHYTHMS.map((r) => ({ value: String(r.key), label: t(`renewal_every_${r.key}`) })),
          ...(rhythm === 'other' ? [{ value: 'other', label: t('renewal_every_other') }] : []),
        ]}
        onValue={setRhythm}
      />
      <DateField
        label={t('renewal_first')}
        value={first}
        onValue={setFirst}
        error={isCalendarDate(first) ? null : t('act_date_wrong')}
      />
      <SelectField
        label={t('untagged_pot')}
        value={pot}
        options={able.map((p) => ({ value: String(p.id), label: p.name }))}
        onValue={setPot}
      />
      <TextField label={t('renewal_shop')} value={shop} onValue={setShop} />
      <div class="buttons">
        <button type="submit" class="primary" disabled={step.isBusy}>
          {t('renewal_save')}
        </button>
        <button type="button" class="quiet" onClick={onDone}>
          {t('cancel')}
        </button>
      </div>
      <WentWrong error={step.error} />
    </form>
  )
}
