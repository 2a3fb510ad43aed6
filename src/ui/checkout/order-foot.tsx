import type { PotChoice, Weighed, WishText } from '../../background/protocol.ts'
import type { Household, Pot } from '../../book/household.ts'
import { errorText } from '../error-text.ts'
import { TextField } from '../field.tsx'
import { Notice } from '../notice.tsx'
import { t, tn } from '../text.ts'
import { SplitOutcome, TakeOut } from './split-outcome.tsx'
import { VerdictBox } from './verdict-box.tsx'

/** What keeps an order from being tagged: something the person has not said yet. */
export type Missing = 'total' | 'pot' | 'more' | 'reason'

/** Under the form: the verdict, why to go on where it warns, what is missing, and the one button. */
export function OrderFoot(props: {
  readonly household: Household
  readonly plain: boolean
  readonly choice: PotChoice | null
  readonly choices: readonly PotChoice[]
  readonly weighed: Weighed | null
  readonly wish: WishText | null
  /** Of an order that one pot stops: the items without which it would fit. */
  readonly takeOut: { readonly weighed: Weighed; readonly wish: WishText } | null
  readonly pot: Pot | null
  readonly isChange: boolean
  readonly reason: string
  readonly onReason: (reason: string) => void
  readonly missing: Missing | null
  readonly hasTotal: boolean
  readonly error: unknown
  readonly isBusy: boolean
}) {
  const { household, choice, weighed, wish, pot, missing } = props
  const outcome = props.plain ? choice?.verdict.outcome : weighed?.verdict.outcome
  return (
    <div class="order-foot">
      <div aria-live="polite">
        {props.plain && choice && <VerdictBox household={household} chosen={choice} choices={props.choices} />}
        {props.takeOut && !props.takeOut.weighed.removal?.isAll && <TakeOut {...props.takeOut} />}
        {!props.plain && weighed && wish && <SplitOutcome household={household} weighed={weighed} wish={wish} />}
      </div>
      {outcome === 'warn' && (
        <TextField
          label={t('reason_label')}
          class="reason-field"
          maxLength={400}
          value={props.reason}
          onValue={props.onReason}
          error={missing === 'reason' && props.reason.trim() === '' ? t('reason_missing') : null}
        />
      )}
      {missing === 'total' && !props.hasTotal && (
        <Notice outcome="warn" isUrgent>
          {t('total_missing')}
        </Notice>
      )}
      {missing === 'pot' && !pot && (
        <Notice outcome="warn" isUrgent>
          {t('pot_missing')}
        </Notice>
      )}
      {missing === 'more' && !wish && (
        <Notice outcome="warn" isUrgent>
          {t('more_missing')}
        </Notice>
      )}
      {props.error !== null && (
        <Notice outcome="block" isUrgent>
          {errorText(props.error)}
        </Notice>
      )}
      <button type="submit" class="primary" disabled={outcome === 'block' || props.isBusy}>
        {buttonText(props)}
      </button>
    </div>
  )
}

function buttonText(props: Parameters<typeof OrderFoot>[0]): string {
  const { weighed, pot } = props
  const outcome = props.plain ? props.choice?.verdict.outcome : weighed?.verdict.outcome
  if (!pot) return t('tag_choose')
  const count = props.plain ? 1 : (weighed?.verdict.lines.length ?? 1)
  if (count > 1) return tn(outcome === 'block' ? 'tag_blocked_pots' : 'tag_to_pots', count)
  // With one line, that line's pot: a split may have ended on another than the one chosen first.
  const name = props.household.pots.find((p) => p.id === (props.plain ? pot.id : weighed?.verdict.lines[0]?.pot))?.name
  const values = { pot: name ?? pot.name }
  return t(outcome === 'block' ? 'tag_blocked' : props.isChange ? 'tag_change' : 'tag_to', values)
}
