import { ofMinor } from '../../../money/money.ts'
import type { PieceCount } from '../../../money/notes.ts'
import { amountText } from '../../../ui/money-text.ts'
import { t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'

/** Notes and coins as a list: how many of each. */
export function Pieces({ pieces }: { pieces: readonly PieceCount[] }) {
  const { book } = useHousehold()
  if (pieces.length === 0) return <p class="field-hint">{t('slip_no_pieces')}</p>
  return (
    <ul class="pieces">
      {pieces.map(({ denomination, count }) => (
        <li key={denomination}>
          <span class="piece-count">{count} ×</span> {amountText(ofMinor(book.household.currency, denomination))}
        </li>
      ))}
    </ul>
  )
}
