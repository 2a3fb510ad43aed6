import { useId } from 'preact/hooks'
import type { SweepTarget } from '../../../book/entry.ts'
import { accountId, potId } from '../../../book/ids.ts'
import type { Leftover } from '../../../monthend/close-plan.ts'
import { TextField } from '../../../ui/field.tsx'
import { amountText } from '../../../ui/money-text.ts'
import { t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'

/** Where a leftover goes; null: it stays. */
export interface LeftoverChoice {
  readonly to: SweepTarget | null
}

/** One pot's leftover and what becomes of it: it stays, goes to another pot, or goes out to a debt. */
export function LeftoverRow(props: {
  readonly leftover: Leftover
  readonly choice: LeftoverChoice
  readonly onChoice: (choice: LeftoverChoice) => void
}) {
  const { book } = useHousehold()
  const id = useId()
  const { leftover, choice } = props
  const { pots, accounts } = book.household
  const name = pots.find((p) => p.id === leftover.pot)?.name ?? leftover.pot
  const others = pots.filter((p) => p.id !== leftover.pot && !p.archived)
  const credits = accounts.filter((a) => a.kind === 'credit')
  return (
    <li class="leftover">
      <div>
        <strong>{name}</strong>{' '}
        {t('close_leftover', { cash: amountText(leftover.cash), card: amountText(leftover.card) })}
      </div>
      <div class="field">
        <label for={id} class="unseen">
          {t('close_leftover_of', { pot: name })}
        </label>
        <select
          id={id}
          value={optionOf(choice.to)}
          onChange={(event) => props.onChoice({ to: targetOf(event.currentTarget.value) })}
        >
          <option value="">{t('close_stays')}</option>
          <optgroup label={t('close_to_pot')}>
            {others.map((p) => (
              <option key={p.id} value={`pot ${p.id}`}>
                {p.name}
              </option>
            ))}
          </optgroup>
          <optgroup label={t('close_to_debt')}>
            {credits.map((a) => (
              <option key={a.id} value={`account ${a.id}`}>
                {a.name}
              </option>
            ))}
            <option value="debt">{t('close_other_debt')}</option>
          </optgroup>
        </select>
      </div>
      {choice.to && 'debt' in choice.to && (
        <TextField
          label={t('close_debt_name')}
          value={choice.to.debt}
          error={choice.to.debt.trim() === '' ? t('close_debt_nameless') : null}
          onValue={(debt) => props.onChoice({ to: { debt } })}
        />
      )}
    </li>
  )
}

function optionOf(to: SweepTarget | null): string {
  if (to === null) return ''
  if ('pot' in to) return `pot ${to.pot}`
  return 'account' in to ? `account ${to.account}` : 'debt'
}

function targetOf(value: string): SweepTarget | null {
  if (value === 'debt') return { debt: '' }
  const [what, id = ''] = value.split(' ')
  if (what === 'pot') return { pot: potId(id) }
  return what === 'account' ? { account: accountId(id) } : null
}
