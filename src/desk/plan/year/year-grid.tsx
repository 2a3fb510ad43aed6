import { useEffect, useRef } from 'preact/hooks'
import type { MonthName } from '../../../book/month.ts'
import { ofMinor } from '../../../money/money.ts'
import { locale } from '../../../ui/browser.ts'
import { amountText } from '../../../ui/money-text.ts'
import { monthText } from '../../../ui/month-text.ts'
import { t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'
import { TableBox } from '../../parts/table-box.tsx'
import type { YearCell, YearRows } from './year-rows.ts'

/** Pots by months on one page. In a cell: filled, spent, and in months to come planned. */
export function YearGrid({ grid, now }: { grid: YearRows; now: MonthName }) {
  const running = useRef<HTMLTableCellElement>(null)
  // Where the table scrolls, the running month is what one wants to see first.
  useEffect(() => running.current?.scrollIntoView({ block: 'nearest', inline: 'center' }), [])
  return (
    <TableBox label={t('year_page')} class="year-box">
      <table class="year-grid">
        <caption>
          <span class="year-key year-filled">{t('year_filled')}</span>
          <span class="year-key year-spent">{t('year_spent')}</span>
          <span class="year-key year-planned">{t('year_planned')}</span>
        </caption>
        <thead>
          <tr>
            <th scope="col">{t('desk_col_pot')}</th>
            {grid.months.map((month) => (
              <th
                key={month}
                ref={month === now ? running : null}
                scope="col"
                class="figure"
                aria-current={month === now ? 'date' : undefined}
              >
                <abbr title={monthText(month)}>{monthShort(month)}</abbr>
                <PayCount count={grid.pays.get(month) ?? 0} />
              </th>
            ))}
            <th scope="col" class="figure">
              {t('year_sum')}
            </th>
          </tr>
        </thead>
        <tbody>
          {grid.rows.map((row) => (
            <tr key={row.pot}>
              <th scope="row">{row.name}</th>
              {row.cells.map((cell) => (
                <Cell key={cell.month} cell={cell} />
              ))}
              <Cell cell={row.sum} />
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">{t('desk_all_pots')}</th>
            {grid.totals.map((cell) => (
              <Cell key={cell.month} cell={cell} />
            ))}
            <Cell cell={grid.sum} />
          </tr>
        </tfoot>
      </table>
    </TableBox>
  )
}

function Cell({ cell }: { cell: YearCell }) {
  const { book } = useHousehold()
  const text = (minor: number): string => amountText(ofMinor(book.household.currency, minor))
  return (
    <td class="figure">
      {cell.filled !== 0 && (
        <span class="year-filled">
          <span class="unseen">{t('year_filled')} </span>
          {text(cell.filled)}
        </span>
      )}
      {cell.spent !== 0 && (
        <span class="year-spent">
          <span class="unseen">{t('year_spent')} </span>
          {text(cell.spent)}
        </span>
      )}
      {cell.planned !== 0 && (
        <span class="year-planned">
          <span class="unseen">{t('year_planned')} </span>
          {text(cell.planned)}
        </span>
      )}
    </td>
  )
}

/** As many dots as a month still has pays; told in words to those who do not see them. */
function PayCount({ count }: { count: number }) {
  if (count === 0) return null
  return (
    <span class="year-pay-count" title={t('year_pays_left', { count: String(count) })}>
      <span aria-hidden="true">{'●'.repeat(Math.min(count, 6))}</span>
      <span class="unseen">{t('year_pays_left', { count: String(count) })}</span>
    </span>
  )
}

function monthShort(month: MonthName): string {
  const format = new Intl.DateTimeFormat(locale(), { month: 'short', timeZone: 'UTC' })
  return format.format(new Date(`${month}-01T00:00:00Z`))
}
