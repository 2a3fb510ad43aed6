import { useState } from 'preact/hooks'
import { addDays } from '../../book/calendar-date.ts'
import type { Renewal } from '../../book/ordering.ts'
import { dueRenewals, fundFor, nextDue } from '../../book/renewal.ts'
import { ofMinor, toDecimal } from '../../money/money.ts'
import { amountText } from '../../ui/money-text.ts'
import { newOrderId } from '../../ui/new-id.ts'
import { shortDate } from '../../ui/short-date.ts'
import { t, tn } from '../../ui/text.ts'
import { WentWrong } from '../../ui/went-wrong.tsx'
import { useHousehold } from '../household.ts'
import { Empty } from '../parts/empty.tsx'
import { PageHead } from '../parts/page-head.tsx'
import { linkTo } from '../place.ts'
import { RenewalForm } from './renewal-form.tsx'
import { useStep } from './use-step.ts'
import './orders.css'

/** How far ahead and back due days are listed. */
const AHEAD_DAYS = 92
const BACK_DAYS = 45

/** What renews by itself: the next days, each subscription, and a sinking fund for those that come once a year. */
export function RenewalsPage() {
  const { book, view } = useHousehold()
  const [edited, setEdited] = useState<string | null>(null)
  const { renewals = [] } = book.household
  const due = dueRenewals(book, addDays(view.today, -BACK_DAYS), addDays(view.today, AHEAD_DAYS))
  return (
    <>
      <PageHead title={t('desk_page_renewals')} lead={t('renewals_lead')}>
        {edited !== '' && (
          <button type="button" class={renewals.length === 0 ? 'primary' : ''} onClick={() => setEdited('')}>
            {t('renewals_add')}
          </button>
        )}
      </PageHead>
      {edited === '' && (
        <section class="panel">
          <h2>{t('renewals_add')}</h2>
          <RenewalForm renewal={null} onDone={() => setEdited(null)} />
        </section>
      )}
      {renewals.length === 0 && edited === null && <Empty title={t('renewals_none')} />}
      {due.length > 0 && (
        <section>
          <h2>{t('renewals_due')}</h2>
          <ul class="order-items">
            {due.map((d) => (
              <DueRow key={`${d.renewal.id} ${d.due}`} renewal={d.renewal} due={d.due} isPast={d.due <= view.today} />
            ))}
          </ul>
        </section>
      )}
      {renewals.length > 0 && (
        <section>
          <h2>{t('renewals_all')}</h2>
          <ul class="renewals">
            {renewals.map((renewal) =>
              edited === renewal.id ? (
                <li key={renewal.id}>
                  <RenewalForm renewal={renewal} onDone={() => setEdited(null)} />
                </li>
              ) : (
                <RenewalRow key={renewal.id} renewal={renewal} onEdit={() => setEdited(renewal.id)} />
              ),
            )}
          </ul>
        </section>
      )}
    </>
  )
}

function DueRow({ renewal, due, isPast }: { renewal: Renewal; due: Parameters<typeof shortDate>[0]; isPast: boolean }) {
  const { book, view } = useHousehold()
  const step = useStep('renewal.pay', `${renewal.id}:${due}`)
  const [order] = useState(newOrderId)
  const pot = book.household.pots.find((p) => p.id === renewal.pot)?.name ?? renewal.pot
  return (
    <li>
      <time dateTime={due}>{shortDate(due, true)}</time>
      <span>
        {renewal.name} <span class="order-pots">{pot}</span>
      </span>
      <span class="figure">{amountText(ofMinor(book.household.currency, renewal.amount))}</span>
      {isPast && (
        <button
          type="button"
          class="link"
          disabled={step.isBusy}
          onClick={() =>
            void step.run({ due }, (id, charge) => ({
              id,
              charge,
              order,
              renewal: renewal.id,
              due,
              date: due < view.today ? due : view.today,
            }))
          }
        >
          {t('renewals_charged')}
        </button>
      )}
      <WentWrong error={step.error} />
    </li>
  )
}

function RenewalRow({ renewal, onEdit }: { renewal: Renewal; onEdit: () => void }) {
  const { book, view } = useHousehold()
  const end = useStep('renewal.save', `${renewal.id}:end`)
  const next = nextDue(renewal, view.today)
  const fund = fundFor(book, renewal, view.today)
  const pot = book.household.pots.find((p) => p.id === renewal.pot)
  const amount = amountText(ofMinor(book.household.currency, renewal.amount))
  const { unit, count } = renewal.every
  const every = count === 1 ? t(`each_${unit}`) : tn(`every_${unit}`, count)
  return (
    <li>
      <div class="renewal-head">
        <strong>{renewal.name}</strong>
        <span>{t('renewals_said', { amount, every, pot: pot?.name ?? renewal.pot })}</span>
        <span class="order-signs">{next ? t('renewals_next', { date: shortDate(next) }) : t('renewals_ended')}</span>
      </div>
      {fund && pot?.kind !== 'sinking' && (
        <p class="field-hint">
          {t('renewals_fund', { amount, date: shortDate(fund.due) })}{' '}
          <a href={linkTo('goals')}>{t('renewals_fund_go')}</a>
        </p>
      )}
      <div class="buttons">
        <button type="button" onClick={onEdit}>
          {t('renewals_change')}
        </button>
        {next && (
          <button
            type="button"
            class="quiet"
            disabled={end.isBusy}
            onClick={() =>
              void end.run({ end: view.today }, () => ({
                id: renewal.id,
                name: renewal.name,
                shop: renewal.shop ?? null,
                pot: renewal.pot,
                amount: amountOf(book.household.currency, renewal.amount),
                first: renewal.first,
                every: renewal.every,
                end: addDays(view.today, -1),
              }))
            }
          >
            {t('renewals_end')}
          </button>
        )}
      </div>
      <WentWrong error={end.error} />
    </li>
  )
}

function amountOf(currency: Parameters<typeof ofMinor>[0], minor: number): string {
  return toDecimal(ofMinor(currency, minor))
}
