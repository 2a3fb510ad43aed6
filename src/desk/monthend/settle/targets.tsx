import { useState } from 'preact/hooks'
import type { PotId } from '../../../book/ids.ts'
import type { Money } from '../../../money/money.ts'
import type { EnvelopeTarget } from '../../../monthend/settle.ts'
import { readAmount } from '../../../ui/amount-text.ts'
import { locale } from '../../../ui/browser.ts'
import { TextField } from '../../../ui/field.tsx'
import { editText } from '../../../ui/money-text.ts'
import { t } from '../../../ui/text.ts'

/** What each envelope should hold, to be changed before the first move is made. */
export function Targets(props: {
  readonly targets: readonly EnvelopeTarget[]
  readonly name: (pot: PotId) => string
  readonly onChosen: (pot: PotId, cash: Money) => void
}) {
  return (
    <details class="no-print">
      <summary>{t('settle_targets')}</summary>
      <p class="field-hint">{t('settle_targets_hint')}</p>
      <div class="targets">
        {props.targets.map((target) => (
          <Target key={target.pot} target={target} name={props.name(target.pot)} onChosen={props.onChosen} />
        ))}
      </div>
    </details>
  )
}

function Target(props: {
  readonly target: EnvelopeTarget
  readonly name: string
  readonly onChosen: (pot: PotId, cash: Money) => void
}) {
  const { target } = props
  const [text, setText] = useState(() => editText(target.cash))
  const read = readAmount(text, target.cash.currency, locale())
  return (
    <TextField
      label={props.name}
      value={text}
      isAmount
      currency={target.cash.currency}
      error={read.ok ? null : t(`error_amount_${read.problem}`)}
      onValue={(value) => {
        setText(value)
        const now = readAmount(value, target.cash.currency, locale())
        if (now.ok) props.onChosen(target.pot, now.money)
      }}
    />
  )
}
