import { type Book, balanceOf } from '../book/book.ts'
import type { CalendarDate } from '../book/calendar-date.ts'
import type { Entry } from '../book/entry.ts'
import { findPot } from '../book/household.ts'
import type { PotId } from '../book/ids.ts'
import { type Money, ofMinor } from '../money/money.ts'
import { type PotChange, potHistory } from './history.ts'

/** What remains in a pot: on both sides, held, and left by all of them. */
export interface SheetFigures {
  readonly cash: Money
  readonly card: Money
  readonly held: Money
  readonly left: Money
}

/** One line of a sheet: what came in (above zero) or went out on either side, what was held or let go, what remains. */
export interface SheetLine {
  readonly date: CalendarDate
  readonly entry: Entry
  readonly cash: Money
  readonly card: Money
  readonly held: Money
  readonly after: SheetFigures
}

/** A pot's running register. */
export interface Sheet {
  readonly pot: PotId
  readonly from: CalendarDate
  readonly to: CalendarDate
  readonly carriedIn: SheetFigures
  readonly lines: readonly SheetLine[]
  readonly carriedOut: SheetFigures
}

/**
 * A pot's sheet for a time, both ends included: what was carried in, then each line in the order of days. An entry that
 * was taken back is left out together with the one that took it back when both fall in this time; else both stand where
 * they were made, so that what is carried from sheet to sheet agrees.
 *
 * @throws BookError `unknown-pot`
 */
export function potSheet(book: Book, pot: PotId, from: CalendarDate, to: CalendarDate): Sheet {
  findPot(book.household, pot)
  const since = (potHistory(book, true).get(pot) ?? []).filter((change) => change.date >= from)
  const within = since.filter((change) => change.date <= to)
  const hidden = takenBackWithin(within)
  // Counted back from what the pot holds now, so that it is right also in a book opened at its latest entries.
  const before = (side: 'cash' | 'card' | 'held'): number =>
    since.reduce((sum, change) => sum - change[side], balanceOf(book, `${side}:${pot}`))
  let now = { cash: before('cash'), card: before('card'), held: before('held') }
  const figures = (): SheetFigures => {
    const of = (minor: number): Money => ofMinor(book.household.currency, minor)
    const { cash, card, held } = now
    return { cash: of(cash), card: of(card), held: of(held), left: of(cash + card - held) }
  }
  const take = ({ cash, card, held }: PotChange): void => {
    now = { cash: now.cash + cash, card: now.card + card, held: now.held + held }
  }
  const carriedIn = figures()
  const lines: SheetLine[] = []
  for (const change of within) {
    if (hidden.has(change.entry.id)) continue
    take(change)
    const of = (minor: number): Money => ofMinor(book.household.currency, minor)
    const { date, entry, cash, card, held } = change
    lines.push({ date, entry, cash: of(cash), card: of(card), held: of(held), after: figures() })
  }
  return { pot, from, to, carriedIn, lines, carriedOut: figures() }
}

/** Ids of entries and their reversals that both fall in the time. */
function takenBackWithin(changes: readonly PotChange[]): Set<string> {
  const ids = new Set<string>(changes.map((change) => change.entry.id))
  const hidden = new Set<string>()
  for (const { entry } of changes) {
    if (entry.kind !== 'reversal' || !ids.has(entry.reverses)) continue
    hidden.add(entry.id)
    hidden.add(entry.reverses)
  }
  return hidden
}
