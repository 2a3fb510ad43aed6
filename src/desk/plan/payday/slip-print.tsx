import type { CalendarDate } from '../../../book/calendar-date.ts'
import { sayDate } from '../../../book/calendar-date.ts'
import { ofMinor } from '../../../money/money.ts'
import { locale } from '../../../ui/browser.ts'
import { amountText } from '../../../ui/money-text.ts'
import { t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'
import type { PaydaySlip } from './payday-slip.ts'
import { sidesText } from './sides-text.ts'

/** The slip on paper: one page for the bank, and under it a strip to cut off for every envelope. Seen only in print. */
export function SlipPrint({ slip: { slip, envelopes }, date }: { slip: PaydaySlip; date: CalendarDate }) {
  const { book } = useHousehold()
  const { currency, pots } = book.household
  const of = (minor: number): string => amountText(ofMinor(currency, minor))
  const day = sayDate(date, locale())
  const filled = envelopes.filter((envelope) => envelope.cash.minor > 0)
  return (
    <div class="print-only slip-paper">
      <section class="slip-page">
        <h1>{t('slip_paper_title')}</h1>
        <p>{day}</p>
        <table>
          <thead>
            <tr>
              <th scope="col">{t('slip_col_piece', { currency })}</th>
              <th scope="col" class="figure">
                {t('slip_col_count')}
              </th>
              <th scope="col" class="figure">
                {t('slip_col_worth')}
              </th>
            </tr>
          </thead>
          <tbody>
            {slip.ask.map(({ denomination, count }) => (
              <tr key={denomination}>
                <th scope="row">{of(denomination)}</th>
                <td class="figure">{count}</td>
                <td class="figure">{of(denomination * count)}</td>
              </tr>
            ))}
          </tbody>
          <tfoot>
            <tr>
              <th scope="row">{t('slip_sum')}</th>
              <td class="figure">{slip.ask.reduce((all, piece) => all + piece.count, 0)}</td>
              <td class="figure">{of(slip.asked)}</td>
            </tr>
          </tfoot>
        </table>
      </section>
      <section class="slip-strips">
        {filled.map(({ pot, cash, card, pieces }) => (
          <div key={pot} class="slip-strip">
            <h2>{pots.find((p) => p.id === pot)?.name ?? pot}</h2>
            <span class="slip-strip-day">{day}</span>
            <p class="slip-strip-pieces">
              {pieces.map(({ denomination, count }) => `${count} × ${of(denomination)}`).join('   ') ||
                t('slip_no_pieces')}
            </p>
            <p class="slip-strip-sums">{sidesText(cash, card)}</p>
          </div>
        ))}
      </section>
    </div>
  )
}
