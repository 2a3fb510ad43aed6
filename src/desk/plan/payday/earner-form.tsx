import { useState } from 'preact/hooks'
import type { Earner } from '../../../book/planning.ts'
import { locale } from '../../../ui/browser.ts'
import { DateField, SelectField, TextField } from '../../../ui/field.tsx'
import { t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'
import { DaysOff } from './days-off.tsx'
import { checkEarner, type EarnerDraft, RHYTHMS, WEEKENDS } from './earner-draft.ts'
import { rhythmText } from './rhythm-text.ts'

/** One earner: who, how much, and in which rhythm. */
export function EarnerForm(props: {
  readonly start: EarnerDraft
  readonly earners: readonly Earner[]
  readonly isBusy: boolean
  readonly onSave: (earners: readonly Earner[]) => void
  readonly onCancel: () => void
}) {
  const { book } = useHousehold()
  const { currency } = book.household
  const [draft, setDraft] = useState(props.start)
  const [wasTried, setTried] = useState(false)
  const check = checkEarner(draft, props.earners, currency, locale())
  const problems = wasTried ? check.problems : null
  return (
    <form
      class="payday-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        setTried(true)
        if (check.earners) props.onSave(check.earners)
      }}
    >
      <TextField
        label={t('earner_name')}
        value={draft.name}
        onValue={(name) => setDraft({ ...draft, name })}
        error={problems?.name ? t('error_name_empty') : null}
      />
      <TextField
        label={t('earner_pay')}
        isAmount
        currency={currency}
        maxLength={40}
        value={draft.pay}
        onValue={(pay) => setDraft({ ...draft, pay })}
        hint={t('earner_pay_hint')}
        error={problems?.pay ? t('error_amount_not_a_number', { currency }) : null}
      />
      <SelectField
        label={t('pay_rhythm')}
        value={draft.rhythm}
        options={RHYTHMS.map((value) => ({ value, label: rhythmText(value) }))}
        onValue={(rhythm) => setDraft({ ...draft, rhythm })}
      />
      <DateField
        label={t('earner_first')}
        value={draft.first}
        onValue={(first) => setDraft({ ...draft, first })}
        error={problems?.first ? t('error_pay_missing') : null}
      />
      {draft.rhythm === 'twice-a-month' && (
        <TextField
          label={t('pay_other_day')}
          value={draft.otherDay}
          onValue={(otherDay) => setDraft({ ...draft, otherDay })}
          error={problems?.otherDay ? t('error_pay_other_day') : null}
        />
      )}
      <SelectField
        label={t('earner_weekend')}
        value={draft.weekend}
        options={WEEKENDS.map((value) => ({ value, label: t(`weekend_${value}`) }))}
        onValue={(weekend) => setDraft({ ...draft, weekend })}
      />
      {(draft.weekend !== 'stays' || draft.rhythm === 'last-working-day') && (
        <DaysOff days={draft.daysOff} onDays={(daysOff) => setDraft({ ...draft, daysOff })} />
      )}
      <p class="field-hint">{t('earner_rhythm_hint')}</p>
      <div class="buttons">
        <button type="submit" class="primary" disabled={props.isBusy}>
          {t('earner_save')}
        </button>
        <button type="button" onClick={props.onCancel}>
          {t('cancel')}
        </button>
      </div>
    </form>
  )
}
