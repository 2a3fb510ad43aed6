import type { CurrencyCode } from '../money/currency.ts'
import { SelectField, TextField } from './field.tsx'
import { type AmountField, KINDS, type PotDraft, type PotProblems, RULES, SIDES, takesAmount } from './pot-draft.ts'
import { t } from './text.ts'

/** The fields of one pot, in the first run and when a pot is added or changed. */
export function PotFields(props: {
  readonly draft: PotDraft
  readonly problems: PotProblems | null
  readonly currency: CurrencyCode
  /** A new pot also says what it starts with. */
  readonly isNew: boolean
  readonly onDraft: (draft: PotDraft) => void
}) {
  const { draft, problems, currency, onDraft } = props
  const amount = (field: AmountField) => {
    const problem = problems?.[field]
    return takesAmount(draft, field) ? (
      <TextField
        key={field}
        label={t(`pot_${field}`)}
        isAmount
        currency={currency}
        maxLength={40}
        value={draft[field]}
        onValue={(value) => onDraft({ ...draft, [field]: value })}
        error={problem ? t(`error_amount_${problem}`, { currency }) : null}
      />
    ) : null
  }
  return (
    <div class="pot-fields">
      <TextField
        label={t('pot_name')}
        class="pot-name-field"
        value={draft.name}
        onValue={(name) => onDraft({ ...draft, name })}
        error={problems?.name ? t(`error_name_${problems.name}`) : null}
      />
      <SelectField
        label={t('pot_sides')}
        value={draft.sides}
        options={SIDES.map((value) => ({ value, label: t(`sides_${value}`) }))}
        onValue={(sides) => onDraft({ ...draft, sides })}
      />
      <div class="pot-amounts">
        {props.isNew && [amount('openCash'), amount('openCard')]}
        {[amount('fillCash'), amount('fillCard')]}
      </div>
      <details class="pot-more">
        <summary>{t('pot_more')}</summary>
        <SelectField
          label={t('pot_rule')}
          value={draft.rule}
          options={RULES.map((value) => ({ value, label: t(`rule_${value}`) }))}
          onValue={(rule) => onDraft({ ...draft, rule })}
        />
        <SelectField
          label={t('pot_kind')}
          value={draft.kind}
          options={KINDS.map((value) => ({ value, label: t(`kind_${value}`) }))}
          onValue={(kind) => onDraft({ ...draft, kind })}
        />
        {amount('floor')}
      </details>
    </div>
  )
}
