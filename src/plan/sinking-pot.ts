import { type Book, balanceOf } from '../book/book.ts'
import type { CalendarDate } from '../book/calendar-date.ts'
import { findPot, type Pot } from '../book/household.ts'
import type { PotId } from '../book/ids.ts'
import { type Money, ofMinor } from '../money/money.ts'
import { currentGoal, inAt } from './goal.ts'
import { type PotChange, potHistory } from './history.ts'
import { paysAhead } from './pays-ahead.ts'
import type { SinkingPot } from './sinking.ts'

/**
 * A pot's goal with what the book says of it, as `planSinking` takes it: the cost it saves for now (the next one where the
 * last was spent), what is in, what each pay brings, and what was in on earlier days. Null for a pot without a goal, or
 * when its cost was paid and does not come again.
 *
 * @throws BookError `unknown-pot`
 */
export function sinkingPot(book: Book, id: PotId, today: CalendarDate): SinkingPot | null {
  const pot = findPot(book.household, id)
  const set = pot.plan?.goal
  if (!set) return null
  const changes = potHistory(book).get(id) ?? []
  const goal = currentGoal(set, changes, today)
  if (goal.isSpent) return null
  const of = (minor: number): Money => ofMinor(book.household.currency, minor)
  const balance = (side: 'cash' | 'card' | 'held'): number => balanceOf(book, `${side}:${id}`)
  const fill = presentRate(book, pot, changes, today)
  const { since, yearlyRate } = goal
  return {
    goal: {
      target: of(goal.target),
      due: goal.due,
      ...(since ? { since: { date: since.date, in: of(since.in) } } : {}),
      ...(yearlyRate === undefined ? {} : { yearlyRate }),
    },
    in: of(balance('cash') + balance('card') - balance('held')),
    ...(fill > 0 ? { eachPay: of(fill) } : {}),
    history: daysOf(changes).map((date) => ({ date, in: of(inAt(changes, date)) })),
  }
}

/** Pays whose fills make the present rate. */
const RATE_PAYS = 6

/**
 * What a pay brings at present: the mean of the latest six pays' fills, rounded down; the pot's fill before any pay. A day
 * on which it was filled counts as a pay, also when the pay came on another day than its own.
 */
function presentRate(book: Book, pot: Pot, changes: readonly PotChange[], today: CalendarDate): number {
  const fills = changes.filter((change) => change.what === 'filled' && change.date <= today)
  const first = fills[0]?.date
  if (first === undefined) return pot.fill.cash + pot.fill.card
  const due = paysAhead(book.household, first, today).map((pay) => pay.date)
  const pays = [...new Set([...due, ...fills.map((fill) => fill.date)])].sort().slice(-RATE_PAYS)
  const [since] = pays
  if (since === undefined) return pot.fill.cash + pot.fill.card
  const sum = fills.filter((change) => change.date >= since).reduce((all, change) => all + change.cash + change.card, 0)
  return Math.max(0, Math.floor(sum / pays.length))
}

function daysOf(changes: readonly PotChange[]): CalendarDate[] {
  return [...new Set(changes.map((change) => change.date))]
}
