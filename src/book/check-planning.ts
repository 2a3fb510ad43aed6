import { isCalendarDate } from './calendar-date.ts'
import type { Household, Pot } from './household.ts'
import { isSlug } from './ids.ts'
import type { Earner, PaySchedule } from './planning.ts'

const RATE = /^0(\.\d{1,8})?$/

/** What is wrong with a household's planning, as a sentence; null when nothing is. */
export function planningFault(household: Household): string | null {
  const { planning } = household
  if (planning && !isAmount(planning.roundTo, 1)) return 'Rounding up needs a whole amount above zero.'
  if (planning?.bank?.gives.some((value) => !isAmount(value, 1))) {
    return 'The notes and coins that the bank gives must be whole amounts above zero.'
  }
  const seen = new Set<string>()
  for (const earner of household.earners ?? []) {
    if (seen.has(earner.id)) return `Two earners have the id "${earner.id}". Give one of them another.`
    seen.add(earner.id)
    const wrong = earnerFault(earner)
    if (wrong) return wrong
  }
  for (const pot of household.pots) {
    const wrong = potFault(pot)
    if (wrong) return wrong
  }
  return null
}

function earnerFault(earner: Earner): string | null {
  if (!isSlug(earner.id)) return `"${earner.id}" cannot name an earner. Use letters, digits, - and _.`
  if (!isAmount(earner.pay, 0)) return `The pay of ${earner.name} must be zero or more.`
  for (const schedule of earner.schedules) {
    const wrong = scheduleFault(schedule)
    if (wrong) return wrong
  }
  return null
}

function scheduleFault(schedule: PaySchedule): string | null {
  const days = schedule.rhythm === 'monthly' ? [schedule.day] : schedule.rhythm === 'twice-a-month' ? schedule.days : []
  const bad = days.find((day) => !Number.isInteger(day) || day < 1 || day > 31)
  if (bad !== undefined) return `Pay cannot come on day ${bad} of a month. Choose a day from 1 to 31.`
  if (!isCalendarDate(schedule.first)) return `"${schedule.first}" is not a day. Write the first pay as YYYY-MM-DD.`
  return null
}

function potFault(pot: Pot): string | null {
  const { plan } = pot
  if (!plan) return null
  if (plan.importance !== undefined && ![1, 2, 3].includes(plan.importance)) {
    return `The importance of ${pot.name} must be 1, 2 or 3.`
  }
  if (plan.monthly !== undefined && !isAmount(plan.monthly, 0)) return `The budget of ${pot.name} must be zero or more.`
  const { reserveMonths, goal } = plan
  if (reserveMonths !== undefined && (!Number.isInteger(reserveMonths) || reserveMonths < 1 || reserveMonths > 60)) {
    return `The target of ${pot.name} must be from 1 to 60 months of spending.`
  }
  if (!goal) return null
  if (!isAmount(goal.target, 1)) return `The target of ${pot.name} must be above zero.`
  if (!isCalendarDate(goal.due)) return `"${goal.due}" is not a day. Write when ${pot.name} is due as YYYY-MM-DD.`
  const { everyYears, yearlyRate } = goal
  if (everyYears !== undefined && (!Number.isInteger(everyYears) || everyYears < 1 || everyYears > 30)) {
    return `${pot.name} can come again every 1 to 30 years.`
  }
  if (yearlyRate !== undefined && !RATE.test(yearlyRate)) {
    return `The interest of ${pot.name} must be a decimal below 1, such as 0.025 for 2.5 %.`
  }
  return null
}

function isAmount(minor: number, least: number): boolean {
  return Number.isSafeInteger(minor) && minor >= least
}
