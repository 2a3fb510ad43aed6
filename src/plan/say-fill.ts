import type { CalendarDate } from '../book/calendar-date.ts'
import { findPot, type Household } from '../book/household.ts'
import { ofMinor } from '../money/money.ts'
import type { FillLine } from './plan-fill.ts'
import { englishPlanSpeech, type PlanSpeech, Speaker } from './speech.ts'

/**
 * Why a line of a plan gets what it does, in sentences: where the figure comes from, and when it goes short, by how much
 * and what follows. Amounts carry no currency sign.
 *
 * @param today the day of the plan
 * @example "12.50 a fortnight: 300.00 by 1 June, 12 pays left with this one, 150.00 in."
 */
export function sayFillLine(
  household: Household,
  line: FillLine,
  today: CalendarDate,
  speech: PlanSpeech = englishPlanSpeech,
): string {
  const speaker = new Speaker(speech, today)
  return [sayReason(household, line, speaker), ...sayEffect(line, speaker)].join(' ')
}

/** By which rule a line is put on its sides, in a sentence. */
export function sayShare(
  household: Household,
  line: FillLine,
  today: CalendarDate,
  speech: PlanSpeech = englishPlanSpeech,
): string {
  const speaker = new Speaker(speech, today)
  const { rule, cash, all } = line.share
  switch (rule) {
    case 'only-side':
      return speaker.say(findPot(household, line.pot).sides === 'cash' ? 'plan_side_only_cash' : 'plan_side_only_card')
    case 'all-cash':
      return speaker.say('plan_side_all_cash')
    case 'all-card':
      return speaker.say('plan_side_all_card')
    case 'learned':
      return speaker.say('plan_side_learned', { percent: speaker.percent(cash, all) })
    case 'as-set':
      return speaker.say('plan_side_as_set')
    case 'nothing-spent':
      return speaker.say('plan_side_nothing_spent')
    case 'nothing-set':
      return speaker.say('plan_side_nothing_set')
  }
}

function sayReason(household: Household, { reason, wants }: FillLine, speaker: Speaker): string {
  const of = (minor: number): string => speaker.amount(ofMinor(household.currency, minor))
  switch (reason.code) {
    case 'each-pay':
      return speaker.say('plan_why_each_pay', { rate: speaker.rate(reason.amount, household) })
    case 'month':
      return speaker.count('plan_why_month', reason.paysLeft, {
        wants: speaker.amount(wants),
        budget: speaker.amount(reason.budget),
        filled: speaker.amount(reason.filled),
        pays: speaker.number(reason.paysLeft),
      })
    case 'goal':
      return speaker.count('plan_why_goal', reason.paysLeft, {
        rate: speaker.rate(reason.each, household),
        wants: speaker.amount(wants),
        target: speaker.amount(reason.target),
        due: speaker.day(reason.due),
        in: speaker.amount(reason.in),
        pays: speaker.number(reason.paysLeft),
      })
    case 'goal-reached':
    case 'goal-overdue':
      return speaker.say(reason.code === 'goal-reached' ? 'plan_why_goal_reached' : 'plan_why_goal_overdue', {
        target: speaker.amount(reason.target),
        due: speaker.day(reason.due),
        in: speaker.amount(reason.in),
      })
    case 'goal-spent':
      return speaker.say('plan_why_goal_spent', { target: speaker.amount(reason.target), due: speaker.day(reason.due) })
    case 'reserve':
    case 'reserve-reached': {
      const { need } = reason
      const values = { need: of(need.amount), count: speaker.number(need.months) }
      return speaker.say(reason.code === 'reserve' ? 'plan_why_reserve' : 'plan_why_reserve_reached', {
        rate: speaker.rate(reason.amount, household),
        target: speaker.amount(reason.target),
        months: speaker.number(reason.months),
        need: speaker.say(need.from === 'spent' ? 'plan_need_spent' : 'plan_need_budgets', values),
        in: speaker.amount(reason.in),
      })
    }
    case 'no-budget':
      return speaker.say('plan_why_no_budget')
  }
}

function sayEffect({ short, wants, effect }: FillLine, speaker: Speaker): string[] {
  if (short.minor === 0) return []
  const said = [speaker.say('plan_short', { short: speaker.amount(short) })]
  switch (effect?.code) {
    case 'goal-later': {
      const due = speaker.day(effect.due)
      const each = speaker.amount(effect.laterEach)
      said.push(
        speaker.count('plan_effect_goal_later', effect.paysLeft, { due, each, pays: speaker.number(effect.paysLeft) }),
      )
      if (effect.reachedOn !== null && effect.reachedOn > effect.due) {
        const values = { wants: speaker.amount(wants), date: speaker.day(effect.reachedOn) }
        said.push(speaker.say('plan_effect_goal_late', values))
      }
      return said
    }
    case 'goal-missed': {
      const values = { due: speaker.day(effect.due), missing: speaker.amount(effect.missing) }
      return [...said, speaker.say('plan_effect_goal_missed', values)]
    }
    case 'month-later': {
      const values = { pays: speaker.number(effect.paysLeft), each: speaker.amount(effect.laterEach) }
      return [...said, speaker.count('plan_effect_month_later', effect.paysLeft, values)]
    }
    case 'month-short':
      return [...said, speaker.say('plan_effect_month_short', { missing: speaker.amount(effect.missing) })]
    case undefined:
      return said
  }
}
