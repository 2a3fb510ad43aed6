import { addMonths, formatISO, parseISO } from 'date-fns'
import { type CalendarDate, calendarDate } from '../book/calendar-date.ts'
import type { Pot } from '../book/household.ts'
import type { PotChange } from './history.ts'

/**
 * How a pot's fill is put on its sides, with the rule that says so. `cash` of `all` goes in as notes.
 *
 * *only-side*: the pot keeps one side. *all-cash*, *all-card*: the household says so. *learned*: as it was really spent in
 * the last three months. *as-set*: as the pot's own fill has it. *nothing-spent*: it was to be learned, but nothing was
 * spent, so as set. *nothing-set*: nothing says, so all on the card side.
 */
export interface SideShare {
  readonly rule: 'only-side' | 'all-cash' | 'all-card' | 'learned' | 'as-set' | 'nothing-spent' | 'nothing-set'
  readonly cash: number
  readonly all: number
}

const LEARN_MONTHS = 3

/** The share of a pot's sides on a day. */
export function sideShare(pot: Pot, changes: readonly PotChange[], today: CalendarDate): SideShare {
  if (pot.sides !== 'both') return { rule: 'only-side', cash: pot.sides === 'cash' ? 1 : 0, all: 1 }
  const split = pot.plan?.split
  if (split === 'cash') return { rule: 'all-cash', cash: 1, all: 1 }
  if (split === 'card') return { rule: 'all-card', cash: 0, all: 1 }
  const isLearned = split === 'learned'
  if (isLearned) {
    const { cash, card } = spentBySide(changes, today)
    if (cash + card > 0) return { rule: 'learned', cash, all: cash + card }
  }
  const set = pot.fill.cash + pot.fill.card
  if (set === 0) return { rule: 'nothing-set', cash: 0, all: 1 }
  return { rule: isLearned ? 'nothing-spent' : 'as-set', cash: pot.fill.cash, all: set }
}

/**
 * What was spent from each side in the last three months, counted back from today by the calendar: 26 November reaches
 * back to 26 August, that day not included. Money back counts against its side, which is never less than nothing.
 */
function spentBySide(changes: readonly PotChange[], today: CalendarDate): { cash: number; card: number } {
  const from = calendarDate(formatISO(addMonths(parseISO(today), -LEARN_MONTHS), { representation: 'date' }))
  let [cash, card] = [0, 0]
  for (const change of changes) {
    if (change.what !== 'spent' || change.date <= from || change.date > today) continue
    cash -= change.cash
    card -= change.card
  }
  return { cash: Math.max(0, cash), card: Math.max(0, card) }
}

/** What a part in notes is rounded to, in minor units: a note the household can use, and the smallest coin there is. */
export interface CashSteps {
  readonly note: number
  readonly coin: number
}

/**
 * An amount on its two sides, in minor units. The notes' part is rounded to the nearest multiple of a note, halves up,
 * or, where all goes in as notes, down to a coin; the card side takes the rest, so that they sum exactly. A pot that keeps
 * notes alone takes all of it. An amount that is the pot's own fill goes in as it is set.
 */
export function putOnSides(
  pot: Pot,
  share: SideShare,
  amount: number,
  steps: CashSteps,
): { readonly cash: number; readonly card: number } {
  const isAsSet = share.rule === 'as-set' || share.rule === 'nothing-spent'
  if (isAsSet && amount === pot.fill.cash + pot.fill.card) return { cash: pot.fill.cash, card: pot.fill.card }
  if (share.cash === 0) return { cash: 0, card: amount }
  if (pot.sides === 'cash') return { cash: amount, card: 0 }
  const exact = (amount * share.cash) / share.all
  const cash =
    share.cash === share.all
      ? amount - (amount % steps.coin)
      : Math.min(amount, Math.round(exact / steps.note) * steps.note)
  return { cash, card: amount - cash }
}
