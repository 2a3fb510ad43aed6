/**
 * The sentences a plan is explained in, in English. `{names}` are filled in by `say-plan.ts`; the extension's build puts
 * these texts among its messages, where translators find them. `_one` is for one pay (or month) left, `_other` for all else.
 */
export const planSentences = {
  plan_rhythm_weekly: '{amount} a week',
  plan_rhythm_fortnight: '{amount} a fortnight',
  plan_rhythm_half_month: '{amount} twice a month',
  plan_rhythm_month: '{amount} a month',
  plan_rhythm_pay: '{amount} each pay',

  plan_sinking_one: '{rate}: {target} by {due}, 1 pay left, {in} in.',
  plan_sinking_other: '{rate}: {target} by {due}, {pays} pays left, {in} in.',
  plan_sinking_rounded: 'To the cent it would be {exact}; the last pay brings {last}.',
  plan_status_reached: 'All of {target} is in, {due} can come.',
  plan_status_overdue:
    '{target} was due on {due} and {in} is in: {missing} is missing. Enter what was paid, or move the date.',
  plan_status_no_pay_left: '{target} is due on {due}, before the next pay. {in} is in: {missing} is missing.',
  plan_status_behind: '{behind} behind.',
  plan_status_behind_since: '{behind} behind since {date}.',
  plan_status_on_track: 'On track.',
  plan_status_ahead: '{ahead} ahead.',
  plan_status_open: 'Nothing tells yet whether this is on track.',
  plan_reached_on: 'At {rate} it is reached on {date}.',
  plan_reached_never: 'At {rate} it is not reached within thirty years.',

  plan_why_each_pay: '{rate}, as it is set.',
  plan_why_month_one: '{wants} now: {budget} a month, {filled} in already, the last pay of the month.',
  plan_why_month_other: '{wants} now: {budget} a month, {filled} in already, {pays} pays left with this one.',
  plan_why_goal_one: '{wants} now: {target} by {due}, this is the last pay before it, {in} in.',
  plan_why_goal_other: '{rate}: {target} by {due}, {pays} pays left with this one, {in} in.',
  plan_why_goal_reached: '{target} by {due} is in already: {in}.',
  plan_why_goal_overdue: '{target} was due on {due} and {in} is in. Enter what was paid, or move the date.',
  plan_why_goal_spent: 'The cost of {target} due on {due} was paid, and it does not come again.',
  plan_why_reserve: '{rate} until {target} is in: {months} times {need}. {in} is in.',
  plan_why_reserve_reached: '{target} is in: {months} times {need}.',
  plan_need_spent: 'the {need} that a month takes (median of {count} months)',
  plan_need_budgets: 'the {need} that the pots are given in a month (three whole months are not known yet)',
  plan_why_no_budget: 'No budget and no goal, so nothing is put in.',

  plan_side_only_cash: 'Kept in notes only.',
  plan_side_only_card: 'Kept on the card only.',
  plan_side_all_cash: 'All in notes, as you set it.',
  plan_side_all_card: 'All on the card, as you set it.',
  plan_side_learned: '{percent} in notes, as it was spent in the last three months.',
  plan_side_as_set: 'Notes and card as its fill is set.',
  plan_side_nothing_spent: 'Nothing was spent in the last three months, so notes and card as its fill is set.',
  plan_side_nothing_set: 'Nothing says which side, so all on the card.',

  plan_short: '{short} short.',
  plan_effect_goal_later_one: 'Then the one pay left to {due} must bring {each}.',
  plan_effect_goal_later_other: 'Then each of the {pays} pays left to {due} must bring {each}.',
  plan_effect_goal_late: 'With {wants} a pay as before it is reached on {date}.',
  plan_effect_goal_missed: 'No pay comes before {due}: {missing} will be missing then.',
  plan_effect_month_later_one: 'Then the last pay of the month must bring {each}.',
  plan_effect_month_later_other: 'Then each of the {pays} pays left of the month must bring {each}.',
  plan_effect_month_short: 'The month ends {missing} under its budget.',

  plan_learnt: 'A month took {median} (median of {count} months), half of them between {lower} and {upper}.',
  plan_learnt_suggested: '{suggested} would have been enough in three months of four.',
  plan_learnt_outliers: 'Not counted, for they lie far outside: {amounts}.',
  plan_learnt_few_one: 'One whole month is known. Three are needed to say what a month takes.',
  plan_learnt_few_other: '{count} whole months are known. Three are needed to say what a month takes.',
} as const
