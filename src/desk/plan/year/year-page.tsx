import { findPot } from '../../../book/household.ts'
import { monthAfter, monthName, monthOf } from '../../../book/month.ts'
import { type Money, ofMinor } from '../../../money/money.ts'
import { planYear } from '../../../plan/plan-year.ts'
import { amountText } from '../../../ui/money-text.ts'
import { Notice } from '../../../ui/notice.tsx'
import { shortDate } from '../../../ui/short-date.ts'
import { t, tn } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'
import type { PageProps } from '../../pages.ts'
import { Empty } from '../../parts/empty.tsx'
import { PageHead } from '../../parts/page-head.tsx'
import { linkTo } from '../../place.ts'
import { YearGrid } from './year-grid.tsx'
import { yearGrid } from './year-rows.ts'
import './year.css'

const MONTHS = 12

/** A year of months: what was filled and spent, and for the months to come what is planned. */
export function YearPage({ rest }: PageProps) {
  const { book, view } = useHousehold()
  const { monthStartDay, currency } = book.household
  const now = monthOf(view.today, monthStartDay)
  const first = /^\d{4}$/.test(rest[0] ?? '') ? monthName(`${rest[0]}-01`) : monthName(`${now.slice(0, 4)}-01`)
  const year = Number(first.slice(0, 4))
  const ahead = planYear(book, view.today, MONTHS * 2)
  const grid = yearGrid(book, ahead, first, now)
  const last = monthAfter(first, MONTHS - 1)
  const costs = ahead.costs.filter((cost) => inYear(cost.due.slice(0, 7), first, last))
  const missing = costs.filter((cost) => cost.missing.minor > 0)
  const pays = ahead.pays.filter((pay) => inYear(pay.month, first, last))
  const sum = (of: (pay: (typeof pays)[number]) => Money): Money =>
    ofMinor(
      currency,
      pays.reduce((all, pay) => all + of(pay).minor, 0),
    )
  const isEmpty = grid.rows.length === 0
  return (
    <div class="year-page">
      <PageHead title={t('year_title', { year: String(year) })} lead={t('year_lead')} isPrinted>
        <nav class="year-nav" aria-label={t('year_choose')}>
          <a href={linkTo('year', String(year - 1))}>{year - 1}</a>
          <a href={linkTo('year', String(year + 1))}>{year + 1}</a>
        </nav>
        <button type="button" onClick={() => print()}>
          {t('print')}
        </button>
      </PageHead>
      {isEmpty ? <Empty title={t('year_empty')} /> : <YearGrid grid={grid} now={now} />}
      {pays.length > 0 && (
        <p>
          {tn('year_pays', pays.length, {
            pay: amountText(sum((pay) => pay.plan.pay)),
            rest: amountText(sum((pay) => pay.plan.unplaced)),
            short: amountText(sum((pay) => pay.plan.short)),
          })}
        </p>
      )}
      {costs.length > 0 && (
        <section>
          <h2>{t('year_costs')}</h2>
          {missing.length > 0 && <Notice outcome="warn">{tn('year_missing', missing.length)}</Notice>}
          <ul class="year-costs">
            {costs.map((cost) => (
              <li key={cost.pot + cost.due}>
                {t(cost.missing.minor > 0 ? 'year_cost_missing' : 'year_cost', {
                  date: shortDate(cost.due),
                  pot: findPot(book.household, cost.pot).name,
                  target: amountText(cost.target),
                  in: amountText(cost.in),
                  missing: amountText(cost.missing),
                })}
              </li>
            ))}
          </ul>
        </section>
      )}
    </div>
  )
}

function inYear(month: string, first: string, last: string): boolean {
  return month >= first && month <= last
}
