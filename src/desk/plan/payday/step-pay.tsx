import { useState } from 'preact/hooks'
import { unplaced } from '../../../book/balances.ts'
import { addDays, isCalendarDate } from '../../../book/calendar-date.ts'
import { monthOf } from '../../../book/month.ts'
import { type Money, ofMinor } from '../../../money/money.ts'
import { payMonths, paysAhead } from '../../../plan/pays-ahead.ts'
import { readAmount } from '../../../ui/amount-text.ts'
import { locale } from '../../../ui/browser.ts'
import { DateField, TextField } from '../../../ui/field.tsx'
import { amountText } from '../../../ui/money-text.ts'
import { monthText } from '../../../ui/month-text.ts'
import { shortDate } from '../../../ui/short-date.ts'
import { listText, t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'
import type { Payday } from './use-payday.ts'

/** First step: what arrived, on which day, and whether money that has no pot yet is placed with it. */
export function StepPay({ payday, onNext }: { payday: Payday; onNext: () => void }) {
  const { book, view } = useHousehold()
  const { draft, change, toPlace } = payday
  const { currency } = book.household
  const [wasTried, setTried] = useState(false)
  const earlier = unplaced(book)
  const read = draft.amount.trim() === '' ? null : readAmount(draft.amount, currency, locale())
  const problem = read && !read.ok ? read.problem : toPlace.minor === 0 ? 'empty' : null
  const submit = (): void => {
    setTried(true)
    if (problem === null) onNext()
  }
  return (
    <form
      class="payday-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        submit()
      }}
    >
      <Expected />
      <TextField
        label={t('payday_amount')}
        isAmount
        currency={currency}
        maxLength={40}
        value={draft.amount}
        onValue={(amount) => change({ ...draft, amount, ids: null })}
        error={wasTried && problem ? t(`error_amount_${problem}`, { currency }) : null}
      />
      <DateField
        label={t('payday_date')}
        value={draft.date}
        onValue={(date) => {
          if (isCalendarDate(date)) change({ ...draft, date, ids: null })
        }}
        error={draft.date > view.today ? t('payday_date_ahead') : null}
      />
      {earlier.minor !== 0 && (
        <label class="check">
          <input
            type="checkbox"
            checked={draft.takesUnplaced}
            onChange={(event) => change({ ...draft, takesUnplaced: event.currentTarget.checked, ids: null })}
          />
          <span>{unplacedText(earlier)}</span>
        </label>
      )}
      <div class="buttons">
        <button type="submit" class="primary">
          {t('payday_to_plan', { amount: amountText(toPlace) })}
        </button>
      </div>
    </form>
  )
}

function unplacedText(earlier: Money): string {
  const amount = amountText(ofMinor(earlier.currency, Math.abs(earlier.minor)))
  return earlier.minor > 0 ? t('payday_take_unplaced', { amount }) : t('payday_make_good', { amount })
}

/** The next pays, and the months ahead in which one more comes than usual. */
function Expected() {
  const { book, view } = useHousehold()
  const { household } = book
  const next = paysAhead(household, view.today, addDays(view.today, 40)).slice(0, 3)
  const more = payMonths(household, monthOf(view.today, household.monthStartDay), 12).filter((m) => m.more.length > 0)
  if (next.length === 0) return <p class="field-hint">{t('payday_no_schedule')}</p>
  const nameOf = (id: string): string => household.earners?.find((earner) => earner.id === id)?.name ?? ''
  return (
    <dl class="payday-expected">
      <div>
        <dt>{t('payday_next')}</dt>
        <dd>
          {listText(
            next.map(({ date, earner, amount }) =>
              [shortDate(date, true), nameOf(earner), amount > 0 ? amountText(ofMinor(household.currency, amount)) : '']
                .filter((part) => part !== '')
                .join(' '),
            ),
          )}
        </dd>
      </div>
      {more.length > 0 && (
        <div>
          <dt>{t('payday_more')}</dt>
          <dd>
            {listText(
              more.map(({ month, more: [one] }) =>
                t('payday_more_month', { month: monthText(month), count: String(one?.count ?? 0) }),
              ),
            )}
          </dd>
        </div>
      )}
    </dl>
  )
}
