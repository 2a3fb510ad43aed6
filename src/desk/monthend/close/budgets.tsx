import type { Pot } from '../../../book/household.ts'
import type { PotId } from '../../../book/ids.ts'
import type { LearntBudget } from '../../../plan/learn-budget.ts'
import { readAmount } from '../../../ui/amount-text.ts'
import { locale } from '../../../ui/browser.ts'
import { TextField } from '../../../ui/field.tsx'
import { amountText, editText } from '../../../ui/money-text.ts'
import { t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'

/** What the next month brings to each everyday pot: what past months suggest, to be changed before it is taken. */
export function Budgets(props: {
  readonly title: string
  readonly rows: readonly { readonly pot: Pot; readonly learnt: LearntBudget }[]
  readonly texts: Readonly<Record<PotId, string>>
  readonly onText: (pot: PotId, text: string) => void
}) {
  const { book } = useHousehold()
  return (
    <section aria-labelledby="budgets-title">
      <h2 id="budgets-title">{props.title}</h2>
      <p class="field-hint">{t('close_next_hint')}</p>
      <div class="targets">
        {props.rows.map(({ pot, learnt }) => {
          const text = props.texts[pot.id] ?? (learnt.suggested ? editText(learnt.suggested) : '')
          const read = text.trim() === '' ? null : readAmount(text, book.household.currency, locale())
          return (
            <TextField
              key={pot.id}
              label={pot.name}
              isAmount
              currency={book.household.currency}
              value={text}
              hint={learnt.median ? t('close_median', { amount: amountText(learnt.median) }) : t('close_not_learnt')}
              error={read && !read.ok ? t(`error_amount_${read.problem}`) : null}
              onValue={(value) => props.onText(pot.id, value)}
            />
          )
        })}
      </div>
    </section>
  )
}
