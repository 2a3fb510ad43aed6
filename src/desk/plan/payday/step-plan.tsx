import { findPot, hasSide } from '../../../book/household.ts'
import type { PotId } from '../../../book/ids.ts'
import { ofMinor } from '../../../money/money.ts'
import { sayFillLine, sayShare } from '../../../plan/say-fill.ts'
import { TextField } from '../../../ui/field.tsx'
import { amountText } from '../../../ui/money-text.ts'
import { Notice } from '../../../ui/notice.tsx'
import { t, tn } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'
import { planSpeech } from '../plan-speech.ts'
import { type DraftLine, withChange } from './payday-draft.ts'
import type { Payday } from './use-payday.ts'

/** Second step: what each pot gets, why, and on which side. Every figure can be changed; the sum is kept. */
export function StepPlan({ payday, onNext }: { payday: Payday; onNext: () => void }) {
  const { draft, change, plan, sum } = payday
  const isChanged = Object.keys(draft.changes).length > 0
  const shorts = plan.lines.filter((line) => line.short.minor > 0)
  return (
    <form
      class="payday-plan"
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        if (sum.canGoOn) onNext()
      }}
    >
      {shorts.length > 0 && (
        <Notice outcome="warn">{tn('payday_short', shorts.length, { amount: amountText(plan.short) })}</Notice>
      )}
      {sum.lines.length === 0 && <p class="field-hint">{t('payday_no_pots')}</p>}
      <ul class="payday-lines">
        {sum.lines.map((one) => (
          <PlanLine key={one.line.pot} one={one} payday={payday} />
        ))}
      </ul>
      <SumBar payday={payday} />
      <div class="buttons">
        <button type="submit" class="primary" disabled={!sum.canGoOn}>
          {t('payday_to_slip')}
        </button>
        {isChanged && (
          <button type="button" onClick={() => change({ ...draft, changes: {}, ids: null })}>
            {t('payday_as_planned')}
          </button>
        )}
      </div>
    </form>
  )
}

function PlanLine({ one, payday }: { one: DraftLine; payday: Payday }) {
  const { book } = useHousehold()
  const { household } = book
  const { line } = one
  const pot = findPot(household, line.pot)
  const why = sayFillLine(household, line, payday.draft.date, planSpeech())
  const isSplit = pot.sides === 'both' && line.gets.minor > 0
  return (
    <li class={line.short.minor > 0 ? 'is-short' : ''}>
      <div class="payday-line-head">
        <h2>{pot.name}</h2>
        <p class="payday-why">{why}</p>
        {isSplit && <p class="payday-why">{sayShare(household, line, payday.draft.date, planSpeech())}</p>}
        {one.isChanged && <p class="payday-changed">{t('payday_changed', { amount: amountText(line.gets) })}</p>}
      </div>
      <div class="payday-sides">
        {hasSide(pot, 'cash') && <SideField side="cash" one={one} pot={line.pot} payday={payday} />}
        {hasSide(pot, 'card') && <SideField side="card" one={one} pot={line.pot} payday={payday} />}
      </div>
    </li>
  )
}

function SideField(props: {
  readonly side: 'cash' | 'card'
  readonly one: DraftLine
  readonly pot: PotId
  readonly payday: Payday
}) {
  const { side, one, payday } = props
  const { currency } = payday.toPlace
  const { problem } = one
  return (
    <TextField
      class={`payday-${side}`}
      label={t(`desk_col_${side}`)}
      isAmount
      currency={currency}
      maxLength={40}
      value={one.text[side]}
      onValue={(text) => payday.change(withChange(payday.draft, props.pot, side, text))}
      error={one[side] === null && problem ? t(`error_amount_${problem}`, { currency }) : null}
    />
  )
}

/** What is placed and what has no pot yet: together always what arrived. */
function SumBar({ payday: { toPlace, sum } }: { payday: Payday }) {
  const isTooMuch = sum.rest.minor < 0
  return (
    <div class="payday-sum" role="status">
      <span>{t('payday_sum', { all: amountText(toPlace), placed: amountText(sum.placed) })}</span>
      <strong class={isTooMuch ? 'below' : ''}>
        {isTooMuch
          ? t('payday_too_much', { amount: amountText(ofMinor(sum.rest.currency, -sum.rest.minor)) })
          : t('payday_rest', { amount: amountText(sum.rest) })}
      </strong>
    </div>
  )
}
