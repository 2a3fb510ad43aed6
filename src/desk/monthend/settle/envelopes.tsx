import type { PotId } from '../../../book/ids.ts'
import { ofMinor } from '../../../money/money.ts'
import type { PieceCount } from '../../../money/notes.ts'
import type { Settlement, SettleRest } from '../../../monthend/settle.ts'
import { amountText } from '../../../ui/money-text.ts'
import { t } from '../../../ui/text.ts'
import { TableBox } from '../../parts/table-box.tsx'

/** What each envelope holds in the end, piece by piece. The two changes of a row cancel: no pot has more or less left. */
export function Envelopes({ settlement, name }: { settlement: Settlement; name: (pot: PotId) => string }) {
  const pieces = (list: readonly PieceCount[], currency: Settlement['envelopes'][number]['cash']['currency']): string =>
    list.map((p) => `${p.count} × ${amountText(ofMinor(currency, p.denomination))}`).join(', ') || '–'
  return (
    <TableBox label={t('settle_envelopes')}>
      <table>
        <caption>{t('settle_envelopes')}</caption>
        <thead>
          <tr>
            <th scope="col">{t('desk_col_pot')}</th>
            <th scope="col">{t('settle_col_pieces')}</th>
            <th scope="col" class="figure">
              {t('settle_col_cash')}
            </th>
            <th scope="col" class="figure">
              {t('settle_col_cash_change')}
            </th>
            <th scope="col" class="figure">
              {t('settle_col_card_change')}
            </th>
          </tr>
        </thead>
        <tbody>
          {settlement.envelopes.map((e) => (
            <tr key={e.pot}>
              <th scope="row">
                {name(e.pot)}
                {e.rests.map((rest) => (
                  <span key={rest.code} class="field-hint settle-rest">
                    {restText(rest)}
                  </span>
                ))}
              </th>
              <td>{pieces(e.pieces, e.cash.currency)}</td>
              <td class="figure">{amountText(e.cash)}</td>
              <td class="figure">{amountText(e.cashChange)}</td>
              <td class="figure">{amountText(e.cardChange)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </TableBox>
  )
}

function restText(rest: SettleRest): string {
  const values = { amount: amountText(rest.amount) }
  switch (rest.code) {
    case 'below-smallest-piece':
      return t('settle_rest_small', values)
    case 'pieces-missing':
      return t('settle_rest_missing', values)
    case 'left-over':
      return t('settle_rest_left', values)
  }
}
