import { type Book, entriesOf, isReversed } from '../book/book.ts'
import type { CountEntry, Entry, Pieces, SettleEntry } from '../book/entry.ts'
import type { PotId } from '../book/ids.ts'

/** What an envelope was last counted to hold, and what settling has moved since. */
export interface CountedPieces {
  readonly count: CountEntry
  /** The settling ticks since that count, oldest first. */
  readonly ticks: readonly SettleEntry[]
  /** What is in the envelope now: the count, less and plus the ticks. */
  readonly pieces: readonly Pieces[]
  /** Notes were spent, filled or swept since: which pieces are there is not known any more. Count again. */
  readonly isStale: boolean
}

/**
 * Which notes and coins lie in each envelope that was counted, by its last standing count and the settling since. An
 * interrupted settling goes on from here.
 */
export function countedPieces(book: Book): ReadonlyMap<PotId, CountedPieces> {
  const found = new Map<PotId, CountedPieces>()
  for (const entry of entriesOf(book)) {
    if (entry.kind === 'reversal' || isReversed(book, entry.id)) continue
    if (entry.kind === 'count') {
      found.set(entry.pot, { count: entry, ticks: [], pieces: sorted(entry.pieces), isStale: false })
      continue
    }
    for (const [pot, before] of found) {
      if (!touches(entry, pot)) continue
      found.set(pot, entry.kind === 'settle' ? ticked(before, entry, pot) : { ...before, isStale: true })
    }
  }
  return found
}

function touches(entry: Entry, pot: PotId): boolean {
  return entry.postings.some((p) => p.account === `cash:${pot}`)
}

function ticked(before: CountedPieces, entry: SettleEntry, pot: PotId): CountedPieces {
  const sign = 'pot' in entry.to && entry.to.pot === pot ? 1 : -1
  const counts = new Map(before.pieces.map((p) => [p.denomination, p.count]))
  for (const { denomination, count } of entry.pieces) {
    counts.set(denomination, (counts.get(denomination) ?? 0) + sign * count)
  }
  const pieces = [...counts].map(([denomination, count]) => ({ denomination, count })).filter((p) => p.count !== 0)
  const isStale = before.isStale || pieces.some((p) => p.count < 0)
  return { ...before, ticks: [...before.ticks, entry], pieces: sorted(pieces), isStale }
}

function sorted(pieces: readonly Pieces[]): Pieces[] {
  return [...pieces].sort((a, b) => b.denomination - a.denomination)
}
