import { type Book, entriesOf, findEntry } from './book.ts'
import type { CalendarDate } from './calendar-date.ts'
import type { Entry, PlaceAccount, PurposeAccount } from './entry.ts'
import type { PotId } from './ids.ts'
import { type Month, type MonthName, monthAfter, monthNamed, monthOf } from './month.ts'

/** An amount on either side of a pot, in minor units. */
export interface SideFigures {
  readonly cash: number
  readonly card: number
}

/**
 * One pot's month, in minor units by side. On each side `carriedIn + opened + filled - spent + counted + settled + swept
 * = carriedOut`. An entry counts in the month of its `date`; a reversal counts against what it takes back.
 */
export interface PotMonth {
  readonly pot: PotId
  readonly carriedIn: SideFigures
  /** What was there when the book was opened. */
  readonly opened: SideFigures
  readonly filled: SideFigures
  /** Spends and charges less refunds; more is positive. */
  readonly spent: SideFigures
  /** What counting found over (positive) or short, as far as it was posted. */
  readonly counted: SideFigures
  /** Notes against card side; the two sides sum to zero. */
  readonly settled: SideFigures
  /** Leftovers that came in (positive) or went out. */
  readonly swept: SideFigures
  readonly carriedOut: SideFigures
  /** What orders hold at the month's end. */
  readonly held: number
}

type Flow = 'opened' | 'filled' | 'spent' | 'counted' | 'settled' | 'swept'
type Side = 'cash' | 'card'
type Tally = Record<Flow, Record<Side, number>> & { held: number }

const FLOWS = ['opened', 'filled', 'counted', 'settled', 'swept'] as const

/**
 * Every pot's month, for all months from one to another, both included. Pots stand in the household's order.
 *
 * @throws BookError `bad-date`
 * @example potMonths(book, 'name of the first', 'name of the last').get(name)
 */
export function potMonths(book: Book, from: MonthName, to: MonthName): ReadonlyMap<MonthName, readonly PotMonth[]> {
  const { household } = book
  const first = monthNamed(household, from)
  const last = monthNamed(household, to)
  const months = new Map<MonthName, Map<string, Tally>>()
  const before = new Map<string, Tally>()
  for (const entry of entriesOf(book)) {
    if (entry.date > last.to) continue
    const tallies = entry.date < first.from ? before : inMonth(months, monthOf(entry.date, household.monthStartDay))
    addEntry(book, tallies, entry)
  }
  const figures = new Map<MonthName, PotMonth[]>()
  let carried = household.pots.map((pot) => closing(pot.id, nothing, before.get(pot.id)))
  for (let month = first; month.from <= last.from; month = monthNamed(household, monthAfter(month.name))) {
    const tallies = months.get(month.name)
    carried = carried.map((pot) => closing(pot.pot, pot, tallies?.get(pot.pot)))
    figures.set(month.name, carried)
  }
  return figures
}

/** Every pot's figures for one month. @throws BookError `bad-date` */
export function potMonth(book: Book, month: Month): readonly PotMonth[] {
  return potMonths(book, month.name, month.name).get(month.name) ?? []
}

/** An account's balance at the end of a day, in minor units. */
export function balanceAt(book: Book, account: PurposeAccount | PlaceAccount, day: CalendarDate): number {
  let sum = 0
  for (const entry of entriesOf(book)) {
    if (entry.date > day) continue
    for (const posting of [...entry.postings, ...entry.places]) if (posting.account === account) sum += posting.amount
  }
  return sum
}

/** Which flow of a pot an entry belongs to; null for those that move no side of a pot. */
function flowOf(book: Book, entry: Entry): Flow | null {
  switch (entry.kind) {
    case 'opening':
      return 'opened'
    case 'fill':
      return 'filled'
    case 'spend':
    case 'charge':
    case 'refund':
      return 'spent'
    case 'count':
      return 'counted'
    case 'settle':
      return 'settled'
    case 'sweep':
      return 'swept'
    case 'reversal': {
      const target = findEntry(book, entry.reverses)
      return target && target.kind !== 'reversal' ? flowOf(book, target) : null
    }
    default:
      return null
  }
}

function addEntry(book: Book, tallies: Map<string, Tally>, entry: Entry): void {
  const flow = flowOf(book, entry)
  for (const { account, amount } of entry.postings) {
    const [side, pot] = account.split(':')
    if (pot === undefined) continue
    const tally = tallies.get(pot) ?? newTally()
    tallies.set(pot, tally)
    if (side === 'held') tally.held += amount
    else if (flow && (side === 'cash' || side === 'card')) tally[flow][side] += flow === 'spent' ? -amount : amount
  }
}

function inMonth(months: Map<MonthName, Map<string, Tally>>, name: MonthName): Map<string, Tally> {
  const found = months.get(name) ?? new Map<string, Tally>()
  months.set(name, found)
  return found
}

const zero = (): Record<Side, number> => ({ cash: 0, card: 0 })
const newTally = (): Tally => ({
  opened: zero(),
  filled: zero(),
  spent: zero(),
  counted: zero(),
  settled: zero(),
  swept: zero(),
  held: 0,
})
const nothing = { carriedOut: zero(), held: 0 }

function closing(pot: PotId, before: Pick<PotMonth, 'carriedOut' | 'held'>, tally: Tally = newTally()): PotMonth {
  const after = (side: Side): number =>
    FLOWS.reduce((sum, flow) => sum + tally[flow][side], before.carriedOut[side] - tally.spent[side])
  return {
    ...tally,
    pot,
    carriedIn: before.carriedOut,
    carriedOut: { cash: after('cash'), card: after('card') },
    held: before.held + tally.held,
  }
}
