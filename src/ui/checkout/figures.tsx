import type { VerdictLine } from '../../book/assess.ts'
import type { Money } from '../../money/money.ts'
import { amountText } from '../money-text.ts'
import { type TextKey, t } from '../text.ts'

/** A pot's figures before this order and after it. What changes is set in strong type. */
export function Figures({ line }: { line: VerdictLine }) {
  const { before, after } = line
  return (
    <table class="figures">
      <thead>
        <tr>
          <td />
          <th scope="col">{t('figure_now')}</th>
          <th scope="col">{t('figure_after')}</th>
        </tr>
      </thead>
      <tbody>
        <Row label="figure_cash" before={before.cash} after={after.cash} />
        <Row label="figure_card" before={before.card} after={after.card} />
        <Row label="figure_held" before={before.held} after={after.held} />
        {(after.spokenFor.minor > 0 || before.spokenFor.minor > 0) && (
          <Row label="figure_spoken" before={before.spokenFor} after={after.spokenFor} />
        )}
        <Row label="figure_left" before={before.left} after={after.left} isResult />
      </tbody>
    </table>
  )
}

function Row(props: { label: TextKey; before: Money; after: Money; isResult?: boolean }) {
  const { before, after } = props
  return (
    <tr class={props.isResult ? 'figures-left' : ''}>
      <th scope="row">{t(props.label)}</th>
      <td>{amountText(before)}</td>
      <td class={before.minor === after.minor ? 'same' : 'changed'}>{amountText(after)}</td>
    </tr>
  )
}
