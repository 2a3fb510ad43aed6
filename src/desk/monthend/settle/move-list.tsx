import type { EntryId, PotId } from '../../../book/ids.ts'
import { ofMinor } from '../../../money/money.ts'
import type { Settlement } from '../../../monthend/settle.ts'
import type { SettleMove, SettlePlace } from '../../../monthend/settle-moves.ts'
import { amountText } from '../../../ui/money-text.ts'
import { t } from '../../../ui/text.ts'

/** The moves in the order to make them: between envelopes, then the one trip to the bank. Each tick is entered at once. */
export function MoveList(props: {
  readonly settlement: Settlement
  readonly ticked: readonly (EntryId | null)[]
  readonly isBusy: boolean
  readonly name: (pot: PotId) => string
  readonly onTick: (at: number) => void
  readonly onUntick: (at: number) => void
}) {
  const place = (at: SettlePlace): string => (at === 'bank' ? t('said_the_bank') : props.name(at.pot))
  const words = (move: SettleMove): string =>
    t('settle_move', {
      count: String(move.count),
      piece: amountText(ofMinor(move.amount.currency, move.denomination)),
      from: place(move.from),
      to: place(move.to),
      amount: amountText(move.amount),
    })
  return (
    <ol class="moves">
      {props.settlement.moves.map((move, at) => {
        const isTicked = (props.ticked[at] ?? null) !== null
        return (
          <li key={`${at} ${words(move)}`} class={isTicked ? 'is-ticked' : ''}>
            <label class="check">
              <input
                type="checkbox"
                checked={isTicked}
                disabled={props.isBusy}
                onChange={() => (isTicked ? props.onUntick(at) : props.onTick(at))}
              />{' '}
              {words(move)}
            </label>
          </li>
        )
      })}
    </ol>
  )
}
