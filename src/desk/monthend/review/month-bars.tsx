import type { Picture } from '../../../monthend/review.ts'
import { textDirection } from '../../../ui/locale.ts'
import { amountText } from '../../../ui/money-text.ts'
import { monthShort, monthText } from '../../../ui/month-text.ts'
import { t } from '../../../ui/text.ts'
import { TableBox } from '../../parts/table-box.tsx'

const WIDTH = 640
const HEIGHT = 180
const FOOT = 22

/**
 * What was spent each month, notes below and card above, with a line at what was budgeted. The picture repeats the table
 * under it, which is what a screen reader is given.
 */
export function MonthBars({ picture }: { picture: Picture }) {
  const { points } = picture
  const most = Math.max(
    1,
    ...points.flatMap((p) => [p.budgeted.minor, Math.max(0, p.actualCash.minor) + Math.max(0, p.actualCard.minor)]),
  )
  const step = WIDTH / Math.max(1, points.length)
  const bar = Math.min(72, step * 0.6)
  const tall = (minor: number): number => (Math.max(0, minor) / most) * (HEIGHT - FOOT - 8)
  const base = HEIGHT - FOOT
  return (
    <figure class="month-bars">
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true" focusable="false">
        <path class="bars-base" d={`M0 ${base}H${WIDTH}`} />
        {points.map((p, i) => {
          // Time runs the way the language does.
          const place = textDirection() === 'rtl' ? points.length - 1 - i : i
          const x = place * step + (step - bar) / 2
          const [cash, card] = [tall(p.actualCash.minor), tall(p.actualCard.minor)]
          const budget = base - tall(p.budgeted.minor)
          return (
            <g key={p.month}>
              <rect class="bar-notes" x={x} y={base - cash} width={bar} height={cash} />
              <rect class="bar-card" x={x} y={base - cash - card} width={bar} height={card} />
              <path class="bar-budget" d={`M${x - 6} ${budget}h${bar + 12}`} />
              <text x={x + bar / 2} y={HEIGHT - 6} text-anchor="middle">
                {monthShort(p.month)}
              </text>
            </g>
          )
        })}
      </svg>
      <figcaption>
        <ul class="bars-key">
          <li class="key-notes">{t('review_key_cash')}</li>
          <li class="key-card">{t('review_key_card')}</li>
          <li class="key-budget">{t('review_key_budget')}</li>
        </ul>
        {t('review_average', { amount: amountText(picture.averageActual) })}
      </figcaption>
      <TableBox label={t('review_pictures')}>
        <table>
          <caption class="unseen">{t('review_pictures')}</caption>
          <thead>
            <tr>
              <th scope="col">{t('review_month')}</th>
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
                {t('review_col_spent')}
              </th>
            </tr>
          </thead>
          <tbody>
            {points.map((p) => (
              <tr key={p.month}>
                <th scope="row">{monthText(p.month)}</th>
                <td class="figure">{amountText(p.budgeted)}</td>
                <td class="figure">{amountText(p.actualCash)}</td>
                <td class="figure">{amountText(p.actualCard)}</td>
                <td class="figure">{amountText(p.actual)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </TableBox>
    </figure>
  )
}
