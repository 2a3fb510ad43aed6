import { DateField, SelectField, TextField } from '../../src/ui/field.tsx'
import { t } from '../../src/ui/text.ts'
import { type FirstRunDraft, type FirstRunProblems, RHYTHMS } from './first-run-draft.ts'

/** How pay arrives, if the household wants its fills counted from it. */
export function PayFields(props: {
  readonly draft: FirstRunDraft
  readonly problems: FirstRunProblems | null
  readonly onDraft: (draft: FirstRunDraft) => void
}) {
  const { draft, problems, onDraft } = props
  return (
    <fieldset class="part">
      <legend>{t('pay_title')}</legend>
      <div class="pay-fields">
        <SelectField
          label={t('pay_rhythm')}
          value={draft.rhythm}
          options={RHYTHMS.map((value) => ({ value, label: t(rhythmKey(value)) }))}
          onValue={(rhythm) => onDraft({ ...draft, rhythm })}
        />
        {draft.rhythm !== 'none' && (
          <DateField
            label={t('pay_next')}
            value={draft.nextPay}
            onValue={(nextPay) => onDraft({ ...draft, nextPay })}
            error={problems?.nextPay ? t(`error_pay_${problems.nextPay}`) : null}
          />
        )}
        {draft.rhythm === 'twice-a-month' && (
          <TextField
            label={t('pay_other_day')}
            maxLength={2}
            value={draft.otherDay}
            onValue={(otherDay) => onDraft({ ...draft, otherDay })}
            error={problems?.otherDay ? t('error_pay_other_day') : null}
          />
        )}
      </div>
    </fieldset>
  )
}

function rhythmKey(rhythm: FirstRunDraft['rhythm']) {
  switch (rhythm) {
    case 'none':
      return 'rhythm_none'
    case 'weekly':
      return 'rhythm_weekly'
    case 'every-two-weeks':
      return 'rhythm_two_weeks'
    case 'twice-a-month':
      return 'rhythm_twice_a_month'
    case 'monthly':
      return 'rhythm_monthly'
    case 'last-working-day':
      return 'rhythm_last_working_day'
  }
}
