import type { CalendarDate } from '../book/calendar-date.ts'
import type { LearntBudget } from './learn-budget.ts'
import { englishPlanSpeech, type PlanSpeech, Speaker } from './speech.ts'

/** What past months say of a pot, in sentences; also that there are too few of them. */
export function sayLearnt(learnt: LearntBudget, today: CalendarDate, speech: PlanSpeech = englishPlanSpeech): string {
  const speaker = new Speaker(speech, today)
  const count = learnt.months.length
  const { median, lower, upper, suggested, outliers } = learnt
  if (!learnt.isEnough || !median || !lower || !upper || !suggested) {
    return speaker.count('plan_learnt_few', count, { count: String(count) })
  }
  const said = [
    speaker.say('plan_learnt', {
      median: speaker.amount(median),
      lower: speaker.amount(lower),
      upper: speaker.amount(upper),
      count: String(count),
    }),
    speaker.say('plan_learnt_suggested', { suggested: speaker.amount(suggested) }),
  ]
  if (outliers.length > 0) {
    const amounts = outliers.map((month) => speaker.amount(month.spent))
    const list = new Intl.ListFormat(speech.locale, { type: 'conjunction' }).format(amounts)
    said.push(speaker.say('plan_learnt_outliers', { amounts: list }))
  }
  return said.join(' ')
}
