import type { PotChoice } from '../../background/protocol.ts'
import type { PotBalance } from '../../book/balances.ts'
import type { Pot } from '../../book/household.ts'
import { OutcomeMark } from '../mark.tsx'
import { amountText } from '../money-text.ts'
import { sillReach } from '../sill.ts'
import { SillBar } from '../sill-bar.tsx'
import { type TextKey, t } from '../text.ts'
import { Figures } from './figures.tsx'

/** A longer amount stands on a line of its own, so that neither it nor the name is broken. */
const LONGEST_BESIDE_NAME = 11

/**
 * One pot to choose: its name, what is left now, its bar with this order's bite, and a word where it does not simply
 * fit. The chosen one opens and shows its figures.
 */
export function PotRow(props: {
  readonly pot: Pot
  readonly balance: PotBalance
  readonly choice: PotChoice | null
  readonly number: number
  readonly isChosen: boolean
  readonly isFirstStop: boolean
  readonly onChoose: () => void
}) {
  const { pot, choice, number, isChosen } = props
  const line = choice?.verdict.lines[0]
  const before = line?.before ?? props.balance
  const after = line?.after ?? props.balance
  const scale = Math.max(sillReach(before), sillReach(after), pot.fill.cash, pot.fill.card, 1)
  const outcome = choice?.verdict.outcome ?? 'allow'
  const word = wordFor(choice)
  const left = amountText(before.left)
  const isLong = left.length > LONGEST_BESIDE_NAME
  return (
    <div class={`pot-row pot-row-${outcome}${isLong ? ' pot-row-long' : ''}`}>
      <label>
        <input
          type="radio"
          name="pot"
          value={pot.id}
          checked={isChosen}
          tabIndex={props.isFirstStop ? 0 : -1}
          onChange={props.onChoose}
        />
        <span class="pot-number" aria-hidden="true">
          {number <= 9 ? number : ''}
        </span>
        <span class="pot-name">{pot.name}</span>
        <span class="pot-left">
          {left} <span class="unseen">{t('left')}</span>
        </span>
        <SillBar balance={after} before={before} scale={scale} />
        {word && (
          <span class="pot-word">
            {outcome !== 'allow' && <OutcomeMark outcome={outcome} />}
            {t(word)}
          </span>
        )}
      </label>
      {isChosen && line && <Figures line={line} />}
    </div>
  )
}

function wordFor(choice: PotChoice | null): TextKey | null {
  switch (choice?.verdict.reasons[0]?.code) {
    case 'below-zero':
      return 'word_below_zero'
    case 'below-floor':
      return 'word_below_floor'
    case 'cash-only':
      return 'word_cash_only'
    case 'renewal-ahead':
      return 'word_renewal_ahead'
    case 'uses-notes':
      return 'word_uses_notes'
    default:
      return null
  }
}
