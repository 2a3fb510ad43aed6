import type { CalendarDate } from '../book/calendar-date.ts'
import type { Household } from '../book/household.ts'
import { type Money, subtract } from '../money/money.ts'
import type { SinkingPlan } from './sinking.ts'
import { englishPlanSpeech, type PlanSpeech, Speaker } from './speech.ts'

/**
 * A sinking fund's plan in sentences: what each pay must bring and why, how it stands, and when it is reached at the
 * present rate.
 *
 * @param rate what each pay brings at present; null leaves that sentence out
 * @example "12.50 a fortnight: 300.00 by 1 June, 12 pays left, 150.00 in. On track."
 */
export function saySinking(
  household: Household,
  plan: SinkingPlan,
  today: CalendarDate,
  rate: Money | null,
  speech: PlanSpeech = englishPlanSpeech,
): string {
  const speaker = new Speaker(speech, today)
  const values = {
    target: speaker.amount(plan.target),
    due: speaker.day(plan.due),
    in: speaker.amount(plan.in),
    missing: speaker.amount(plan.toGo),
  }
  if (plan.status === 'reached') return speaker.say('plan_status_reached', values)
  if (plan.status === 'overdue') return speaker.say('plan_status_overdue', values)
  if (plan.status === 'no-pay-left') return speaker.say('plan_status_no_pay_left', values)
  const pays = plan.pays.length
  const said = [
    speaker.count('plan_sinking', pays, {
      ...values,
      rate: speaker.rate(plan.eachPay, household),
      pays: speaker.number(pays),
    }),
  ]
  if (subtract(plan.eachPay, plan.exact).minor > 0) {
    const figures = { exact: speaker.amount(plan.exact), last: speaker.amount(plan.lastPay) }
    said.push(speaker.say('plan_sinking_rounded', figures))
  }
  said.push(sayStatus(plan, speaker))
  if (rate) {
    const figures = { rate: speaker.rate(rate, household) }
    said.push(
      plan.reachedOn === null
        ? speaker.say('plan_reached_never', figures)
        : speaker.say('plan_reached_on', { ...figures, date: speaker.day(plan.reachedOn) }),
    )
  }
  return said.join(' ')
}

function sayStatus(plan: SinkingPlan, speaker: Speaker): string {
  if (plan.status === 'ahead') return speaker.say('plan_status_ahead', { ahead: speaker.amount(plan.ahead) })
  if (plan.status === 'on-track') return speaker.say('plan_status_on_track')
  if (plan.status !== 'behind') return speaker.say('plan_status_open')
  const behind = speaker.amount(plan.behind)
  return plan.behindSince === null
    ? speaker.say('plan_status_behind', { behind })
    : speaker.say('plan_status_behind_since', { behind, date: speaker.day(plan.behindSince) })
}
