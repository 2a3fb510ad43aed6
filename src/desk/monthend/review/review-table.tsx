import type { PotReview, Review } from '../../../monthend/review.ts'
import { amountText } from '../../../ui/money-text.ts'
import { t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'
import { TableBox } from '../../parts/table-box.tsx'

/** Budgeted against actual, pot by pot, cash and card apart. */
export function ReviewTable({ found }: { found: Review }) {
  const { book } = useHousehold()
  const name = (id: string): string => book.household.pots.find((p) => p.id === id)?.name ?? id
  return (
    <TableBox label={t('review_caption')}>
      <table class="review-table">
        <caption>{t('review_caption')}</caption>
        <thead>
          <tr>
            <th scope="col">{t('desk_col_pot')}</th>
            <th scope="col" class="figure">
              {t('review_col_budgeted')}
            </th>
            <th scope="col" class="figure">
              {t('review_col_cash')}
            </th>
            <th scope="col" class="figure">
              {t('review_col_card')}
            </th>
            <th scope="col" class="figure">
              {t('review_col_under')}
            </th>
            <th scope="col" class="figure">
              {t('review_col_counted')}
            </th>
            <th scope="col" class="figure">
              {t('review_col_swept')}
            </th>
            <th scope="col" class="figure">
              {t('review_col_left')}
            </th>
          </tr>
        </thead>
        <tbody>
          {found.pots.map((pot) => (
            <tr key={pot.pot}>
              <th scope="row">{name(pot.pot)}</th>
              <Figures row={pot} />
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">{t('review_all_pots')}</th>
            <Figures row={found.all} />
          </tr>
        </tfoot>
      </table>
    </TableBox>
  )
}

function Figures({ row }: { row: Omit<PotReview, 'pot'> }) {
  const over = row.under.both.minor < 0
  return (
    <>
      <td class="figure">{amountText(row.budgeted.both)}</td>
      <td class="figure">{amountText(row.actual.cash)}</td>
      <td class="figure">{amountText(row.actual.card)}</td>
      <td class={`figure ${over ? 'differs' : ''}`}>{amountText(row.under.both)}</td>
      <td class="figure">{row.counted.minor === 0 ? '–' : amountText(row.counted)}</td>
      <td class="figure">{row.swept.minor === 0 ? '–' : amountText(row.swept)}</td>
      <td class="figure">{amountText(row.left)}</td>
    </>
  )
}
