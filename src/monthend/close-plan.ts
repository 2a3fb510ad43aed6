import { append, type Book } from '../book/book.ts'
import { closeMonth } from '../book/close.ts'
import type { CloseEntry, Stamp, SweepEntry, SweepTarget } from '../book/entry.ts'
import type { AccountId, EntryId, PotId } from '../book/ids.ts'
import { type MonthName, monthNamed } from '../book/month.ts'
import { potMonth } from '../book/month-figures.ts'
import { sweepable, sweepPot } from '../book/sweep.ts'
import { type Money, ofMinor } from '../money/money.ts'

/** A pot's leftover, as it may be sent on: never more notes than there are, and nothing that orders hold. */
export interface Leftover {
  readonly pot: PotId
  readonly cash: Money
  readonly card: Money
  readonly both: Money
}

/** What becomes of a pot's leftover. A pot that is not named keeps it. */
export interface SweepChoice {
  readonly id: EntryId
  readonly pot: PotId
  readonly to: SweepTarget
  readonly cash: Money
  readonly card: Money
  /** The bank account the card side lies in; the household's first without it. */
  readonly account?: AccountId
}

/**
 * What each pot had left over at a month's end and still has, and may send on. Notes first; the card side goes as far as
 * what is left allows, where orders hold some of it.
 *
 * @throws BookError `bad-date`
 */
export function leftovers(book: Book, month: MonthName): Leftover[] {
  const of = (minor: number): Money => ofMinor(book.household.currency, minor)
  const archived = new Set(book.household.pots.filter((p) => p.archived).map((p) => p.id))
  return potMonth(book, monthNamed(book.household, month))
    .filter(({ pot }) => !archived.has(pot))
    .map(({ pot }) => {
      const { cash, left } = sweepable(book, month, pot)
      const notes = Math.max(0, Math.min(cash, left))
      return { pot, cash: of(notes), card: of(Math.max(0, left - notes)), both: of(Math.max(0, left)) }
    })
    .filter((leftover) => leftover.both.minor > 0)
}

/**
 * The entries that close a month, in order: its sweeps, then the close that signs off the figures with them. Written
 * together or not at all, so that money moves from pot to pot only while a month is closed.
 *
 * @param stamp of the close; `date` is today
 * @throws BookError what `sweepPot` and `closeMonth` throw
 */
export function closingEntries(
  book: Book,
  stamp: Stamp,
  month: MonthName,
  sweeps: readonly SweepChoice[],
): (SweepEntry | CloseEntry)[] {
  const entries: (SweepEntry | CloseEntry)[] = []
  let now = book
  for (const { id, pot, to, cash, card, account } of sweeps) {
    const entry = sweepPot(now, { ...stamp, id }, month, pot, { cash, card }, to, account)
    now = append(now, entry)
    entries.push(entry)
  }
  entries.push(closeMonth(now, stamp, month))
  return entries
}
