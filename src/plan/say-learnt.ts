import type { CalendarDate } from '../book/calendar-date.ts'
import { sayList } from '../book/set-apart.ts'
import type { LearntBudget } from './learn-budget.ts'
import { englishPlanSpeech, type PlanSpeech, Speaker } from './speech.ts'

/** What past months say of a pot, in sentences; also that there are too few of them. */
export function sayLearnt(learnt: LearntBudget, today: CalendarDate, speech: PlanSpeech = englishPlanSpeech): string {
  const speaker = new Speaker(speech, today)
  const count = learnt.months.length
  const { median, lower, upper, suggested, outliers } = learnt
  if (!learnt.isEnough || !median || !lower || !upper || !suggested) {
    return speaker.count('plan_learnt_few', count, { count: speaker.number(count) })
  }
  const said = [
    speaker.say('plan_learnt', {
      median: speaker.amount(median),
      lower: speaker.amount(lower),
      upper: speaker.amount(upper),
      count: speaker.number(count),
    }),
    speaker.say('plan_learnt_suggested', { suggested: speaker.amount(suggested) }),
  ]
  if (outliers.length > 0) {
    const amounts = outliers.map((month) => speaker.amount(month.spent))
    said.push(speaker.say('plan_learnt_outliers', { amounts: sayList(amounts, speech.locale) }))
  }
  return said.join(' ')
}
