import { type Book, entriesOf } from '../book/book.ts'
import type { CalendarDate } from '../book/calendar-date.ts'
import type { EntryId, OrderId, PotId } from '../book/ids.ts'
import { type Month, type MonthName, monthAfter, monthNamed } from '../book/month.ts'
import { type PotMonth, potMonths, type SideFigures } from '../book/month-figures.ts'
import { type Money, ofMinor } from '../money/money.ts'
import { wentAhead } from './review-went-ahead.ts'

/** An amount on each side of a pot, and together. */
export interface BySide {
  readonly cash: Money
  readonly card: Money
  readonly both: Money
}

/** One pot's month, budgeted against actual. */
export interface PotReview {
  readonly pot: PotId
  /** What the pot was filled with this month. */
  readonly budgeted: BySide
  /** What was spent: counter spends, charges less refunds. */
  readonly actual: BySide
  /** Budgeted less actual: positive is under the budget, negative over it. */
  readonly under: BySide
  readonly carriedIn: BySide
  readonly carriedOut: BySide
  /** What counting found over (positive) or short, as far as it was posted. */
  readonly counted: Money
  /** Leftovers that came in (positive) or went out. */
  readonly swept: Money
  /** What orders hold at the month's end. */
  readonly held: Money
  /** What may still be spent at the month's end: carried out less held. */
  readonly left: Money
}

/** One month in a picture over several. */
export interface MonthPoint {
  readonly month: MonthName
  readonly budgeted: Money
  readonly actual: Money
  readonly actualCash: Money
  readonly actualCard: Money
}

/** Several months of one pot, or of all (`pot` null), oldest first. */
export interface Picture {
  readonly pot: PotId | null
  readonly points: readonly MonthPoint[]
  readonly averageActual: Money
}

/** An order that went on although its verdict was *warn*. */
export interface WentAhead {
  readonly entry: EntryId
  readonly order: OrderId
  readonly date: CalendarDate
  readonly shop: string
  readonly amount: Money
  readonly pots: readonly PotId[]
  readonly reason: string
}

/** A month looked back on. */
export interface Review {
  readonly month: Month
  readonly pots: readonly PotReview[]
  readonly all: Omit<PotReview, 'pot'>
  /** Of every pot, and of all first. */
  readonly threeMonths: readonly Picture[]
  readonly twelveMonths: readonly Picture[]
  readonly wentAhead: readonly WentAhead[]
}

/**
 * Looks back on a month: budgeted against actual by pot, cash and card apart, and how it was over three and twelve months
 * that end with it. Months before the book's first entry are not in the pictures.
 *
 * @throws BookError `bad-date`
 * @example review(book, monthName('2026-11')).pots[0]?.under.both
 */
export function review(book: Book, name: MonthName): Review {
  const { household } = book
  const month = monthNamed(household, name)
  const year = potMonths(book, monthAfter(name, -11), name)
  const started = [...year.keys()].filter((m) => monthNamed(household, m).to >= firstDay(book))
  const pots = year.get(name) ?? []
  const sum = (list: readonly PotMonth[], of: (pot: PotMonth) => SideFigures): SideFigures => ({
    cash: list.reduce((all, pot) => all + of(pot).cash, 0),
    card: list.reduce((all, pot) => all + of(pot).card, 0),
  })
  const money = (minor: number): Money => ofMinor(household.currency, minor)
  const figures = (list: readonly PotMonth[]): Omit<PotReview, 'pot'> => {
    const [filled, spent, out] = [sum(list, (p) => p.filled), sum(list, (p) => p.spent), sum(list, (p) => p.carriedOut)]
    const held = list.reduce((all, p) => all + p.held, 0)
    return {
      budgeted: bySide(money, filled),
      actual: bySide(money, spent),
      under: bySide(money, { cash: filled.cash - spent.cash, card: filled.card - spent.card }),
      carriedIn: bySide(
        money,
        sum(list, (p) => p.carriedIn),
      ),
      carriedOut: bySide(money, out),
      counted: bySide(
        money,
        sum(list, (p) => p.counted),
      ).both,
      swept: bySide(
        money,
        sum(list, (p) => p.swept),
      ).both,
      held: money(held),
      left: money(out.cash + out.card - held),
    }
  }
  const picture = (pot: PotId | null, months: readonly MonthName[]): Picture => {
    const points = months.map((m): MonthPoint => {
      const list = (year.get(m) ?? []).filter((p) => pot === null || p.pot === pot)
      const { budgeted, actual } = figures(list)
      return {
        month: m,
        budgeted: budgeted.both,
        actual: actual.both,
        actualCash: actual.cash,
        actualCard: actual.card,
      }
    })
    const total = points.reduce((all, p) => all + p.actual.minor, 0)
    return { pot, points, averageActual: money(points.length === 0 ? 0 : Math.round(total / points.length)) }
  }
  const pictures = (count: number): Picture[] => {
    const months = started.slice(-count)
    return [null, ...household.pots.map((p) => p.id)].map((pot) => picture(pot, months))
  }
  return {
    month,
    pots: pots.map((pot) => ({ pot: pot.pot, ...figures([pot]) })),
    all: figures(pots),
    threeMonths: pictures(3),
    twelveMonths: pictures(12),
    wentAhead: wentAhead(book, month),
  }
}

function bySide(money: (minor: number) => Money, { cash, card }: SideFigures): BySide {
  return { cash: money(cash), card: money(card), both: money(cash + card) }
}

function firstDay(book: Book): string {
  let first = '9999-12-31'
  for (const { date } of entriesOf(book)) if (date < first) first = date
  return first
}
