import { addYears, formatISO, parseISO } from 'date-fns'
import { addDays, type CalendarDate, calendarDate } from '../book/calendar-date.ts'
import type { PotGoal } from '../book/planning.ts'
import type { PotChange } from './history.ts'

/** The cost a sinking fund saves for now. Minor units. */
export interface CurrentGoal {
  readonly target: number
  readonly due: CalendarDate
  readonly since: { readonly date: CalendarDate; readonly in: number } | null
  readonly yearlyRate: string | undefined
  /** A cost that does not come again was spent: nothing more is saved for. */
  readonly isSpent: boolean
}

/** A cost may be paid so long before it is due and still be that cost. Ours, no source. */
const EARLY_DAYS = 92

/**
 * What a goal's next cost is. A cost counts as spent once nine tenths of its target went out of the pot in the 92 days
 * before it is due or later, or half of it when the due date has passed (the rule is ours, no source); if it comes again,
 * the next one is due whole years after the first, and saving for it begins on that day with what is left in the pot.
 *
 * @param changes the pot's changes, oldest first
 */
export function currentGoal(goal: PotGoal, changes: readonly PotChange[], today: CalendarDate): CurrentGoal {
  const { target, yearlyRate, everyYears } = goal
  let since = goal.since ?? null
  for (let turn = 0; ; turn++) {
    const due = yearsAfter(goal.due, turn * (everyYears ?? 0))
    const spentOn = daySpent(target, due, since?.date ?? null, changes, today)
    if (spentOn === null) return { target, due, since, yearlyRate, isSpent: false }
    if (everyYears === undefined) return { target, due, since, yearlyRate, isSpent: true }
    since = { date: spentOn, in: inAt(changes, spentOn) }
  }
}

/** What is in a pot at the end of a day: both sides, less what is held. */
export function inAt(changes: readonly PotChange[], date: CalendarDate): number {
  return changes.filter((c) => c.date <= date).reduce((sum, c) => sum + c.cash + c.card - c.held, 0)
}

/** Whole years later, counted from the first date each time: 29 February comes back in a leap year. */
export function yearsAfter(date: CalendarDate, years: number): CalendarDate {
  return calendarDate(formatISO(addYears(parseISO(date), years), { representation: 'date' }))
}

function daySpent(
  target: number,
  due: CalendarDate,
  after: CalendarDate | null,
  changes: readonly PotChange[],
  today: CalendarDate,
): CalendarDate | null {
  const earliest = addDays(due, -EARLY_DAYS)
  let spent = 0
  let half: CalendarDate | null = null
  for (const change of changes) {
    if (change.what !== 'spent' || change.date < earliest || change.date > today) continue
    if (after !== null && change.date <= after) continue
    spent -= change.cash + change.card
    if (spent * 10 >= target * 9) return change.date
    if (spent * 2 >= target) half ??= change.date
  }
  if (half === null || today <= due) return null
  return half > due ? half : due
}
