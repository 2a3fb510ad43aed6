import { addDays } from '../../../book/calendar-date.ts'
import type { Pot } from '../../../book/household.ts'
import { paysAhead } from '../../../plan/pays-ahead.ts'
import { saySinking } from '../../../plan/say-sinking.ts'
import { planSinking, type SinkingStatus } from '../../../plan/sinking.ts'
import { sinkingPot } from '../../../plan/sinking-pot.ts'
import { OutcomeMark } from '../../../ui/mark.tsx'
import { amountText } from '../../../ui/money-text.ts'
import { t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'
import { planSpeech } from '../plan-speech.ts'
import { ProgressBar } from './progress-bar.tsx'

const TROUBLE: readonly SinkingStatus[] = ['behind', 'overdue', 'no-pay-left']

/** A sinking fund: how full it is, what each pay must bring and why, and whether that is on track. */
export function FundLine({ pot }: { pot: Pot }) {
  const { book, view } = useHousehold()
  const { household } = book
  const fund = sinkingPot(book, pot.id, view.today)
  if (!fund) return <p class="field-hint">{t(pot.plan?.goal ? 'goals_spent' : 'goals_no_goal')}</p>
  const schedules = (household.earners ?? []).flatMap((earner) => earner.schedules)
  const times =
    schedules.length > 0
      ? schedules
      : paysAhead(household, view.today, addDays(view.today, 4000)).map((pay) => pay.date)
  const plan = planSinking(fund, times, view.today, { roundTo: household.planning?.roundTo ?? 1 })
  const isTrouble = TROUBLE.includes(plan.status)
  return (
    <>
      <ProgressBar
        value={plan.in.minor}
        most={plan.target.minor}
        course={plan.course?.minor ?? null}
        label={t('goals_progress', { in: amountText(plan.in), target: amountText(plan.target) })}
      />
      <p class={isTrouble ? 'goals-trouble' : ''}>
        {isTrouble && <OutcomeMark outcome="warn" />}
        {saySinking(household, plan, view.today, fund.eachPay ?? null, planSpeech())}
      </p>
    </>
  )
}
