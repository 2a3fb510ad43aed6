import type { HouseholdView } from '../../background/protocol.ts'
import type { Pot } from '../../book/household.ts'
import type { Money } from '../../money/money.ts'
import { Choice, TextField } from '../field.tsx'
import { OutcomeMark } from '../mark.tsx'
import { amountText, editText } from '../money-text.ts'
import { t } from '../text.ts'
import { notFree, type Split, usualSplit } from './quick-plan.ts'

/** What Enter will write, before it is written: a spend. */
export function SpendDetails(props: {
  readonly view: HouseholdView
  readonly pot: Pot
  readonly amount: Money
  readonly purpose: string
  readonly side: 'cash' | 'card'
  readonly onSide: (side: 'cash' | 'card') => void
}) {
  const { view, pot, amount, side, purpose } = props
  const values = { pot: pot.name, sides: t(`side_${side}_amount`, { amount: amountText(amount) }), purpose }
  const missing = notFree(view, pot, side, amount)
  return (
    <div class="quick-details">
      <p class="quick-will">{t(purpose === '' ? 'will_spend' : 'will_spend_for', values)}</p>
      {pot.sides === 'both' && (
        <Choice
          label={t('quick_side')}
          name="quick-side"
          value={side}
          options={[
            { value: 'cash', label: t('side_cash') },
            { value: 'card', label: t('side_card') },
          ]}
          onValue={props.onSide}
        />
      )}
      {missing.minor > 0 && (
        <p class="quick-warn">
          <OutcomeMark outcome="warn" />
          {t(side === 'cash' ? 'quick_spoken' : 'quick_too_much', { amount: amountText(missing) })}
        </p>
      )}
    </div>
  )
}

/** What Enter will write, before it is written: a fill, and how it goes to the two sides. */
export function FillDetails(props: {
  readonly view: HouseholdView
  readonly pot: Pot
  readonly amount: Money
  readonly split: Split | null
  /** What the person typed as the part in notes; null for the usual split. */
  readonly notes: string | null
  readonly onNotes: (notes: string) => void
  readonly from: 'unplaced' | 'outside'
  readonly onFrom: (from: 'unplaced' | 'outside') => void
}) {
  const { view, pot, amount, split, notes, from } = props
  const said = split && { pot: pot.name, cash: amountText(split.cash), card: amountText(split.card) }
  const beyond = from === 'unplaced' && amount.minor > view.unplaced.minor
  return (
    <div class="quick-details">
      {said && <p class="quick-will">{t(`will_fill_${pot.sides}`, said)}</p>}
      {pot.sides === 'both' && (
        <TextField
          label={t('fill_notes')}
          isAmount
          currency={amount.currency}
          maxLength={40}
          value={notes ?? editText(usualSplit(pot, amount).cash)}
          onValue={props.onNotes}
          error={split ? null : t('error_fill_notes', { amount: amountText(amount) })}
        />
      )}
      <Choice
        label={t('fill_from')}
        name="fill-from"
        value={from}
        options={[
          { value: 'unplaced', label: t('fill_from_unplaced') },
          { value: 'outside', label: t('fill_from_outside') },
        ]}
        onValue={props.onFrom}
      />
      {beyond && (
        <p class="quick-warn">
          <OutcomeMark outcome="warn" />
          {t('fill_beyond', { amount: amountText(view.unplaced) })}
        </p>
      )}
    </div>
  )
}
