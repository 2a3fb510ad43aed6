import { useMemo, useState } from 'preact/hooks'
import { entriesOf } from '../../../book/book.ts'
import { closedMonths } from '../../../book/close.ts'
import { closedThrough } from '../../../book/closed-through.ts'
import { isMonthName, type MonthName, monthAfter, monthNamed, monthOf } from '../../../book/month.ts'
import { monthText } from '../../../ui/month-text.ts'
import { t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'
import type { PageProps } from '../../pages.ts'
import { Empty } from '../../parts/empty.tsx'
import { PageHead } from '../../parts/page-head.tsx'
import { linkTo } from '../../place.ts'
import { CloseForm } from './close-form.tsx'
import { Summary } from './summary.tsx'
import '../monthend.css'

/** Closing a month: what becomes of each leftover, the sign-off, and the month after. Closed months can be looked at. */
export function ClosePage({ rest }: PageProps) {
  const { book, view } = useHousehold()
  const [justClosed, setJustClosed] = useState<MonthName | null>(null)
  const open = useMemo(() => {
    const start = book.household.monthStartDay
    const through = closedThrough(book)
    let first = view.today
    for (const { date } of entriesOf(book)) if (date < first) first = date
    let month = through === null ? monthOf(first, start) : monthAfter(monthOf(through, start))
    // A month before the last whole one is closed with it.
    const last = monthOf(view.today, start)
    const whole = monthNamed(book.household, last).to <= view.today ? last : monthAfter(last, -1)
    if (month < whole) month = whole
    return monthNamed(book.household, month).to <= view.today ? month : null
  }, [book, view.today])
  const closed = useMemo(() => closedMonths(book), [book])
  const [asked = ''] = rest
  const shown = closed.find((m) => m.entry.month === asked) ?? closed.find((m) => m.entry.month === justClosed)
  if (shown) return <Summary closed={shown} />
  return (
    <>
      <PageHead
        title={open === null ? t('monthend_page_close') : t('close_title', { month: monthText(open) })}
        lead={t('close_lead')}
      />
      {open === null ? (
        <Empty title={t('close_nothing')}>
          <p>{t('close_nothing_next')}</p>
        </Empty>
      ) : (
        <CloseForm key={open} month={open} onClosed={() => setJustClosed(open)} />
      )}
      {closed.length > 0 && (
        <section aria-labelledby="closed-title">
          <h2 id="closed-title">{t('close_closed')}</h2>
          <ul class="matches">
            {[...closed].reverse().map(({ entry, agrees }) => (
              <li key={entry.id}>
                <a href={linkTo('close', entry.month)}>{monthText(entry.month)}</a>
                {!agrees && ` ${t('close_disagrees')}`}
              </li>
            ))}
          </ul>
        </section>
      )}
      {asked !== '' && !isMonthName(asked) && <p>{t('close_unknown')}</p>}
    </>
  )
}
