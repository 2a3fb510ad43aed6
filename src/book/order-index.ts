import type { Book } from './book.ts'
import type { OrderEntry } from './entry.ts'

/** Places in the book where orders were tagged: all, and those that `assess` must think of for days to come. */
interface OrderIndex {
  length: number
  readonly all: number[]
  readonly renewals: number[]
  readonly byPart: number[]
}

/**
 * Kept beside a line of books, as a cache: entries are only ever added, so it grows with them and is never wrong for a
 * shorter book of the same line.
 */
const kept = new WeakMap<Book['log'], OrderIndex>()

/** The order entries of a book, oldest first, taken back or not; with `only`, those of a renewal or in instalments held by part. */
export function orderEntries(book: Book, only?: 'renewals' | 'byPart'): OrderEntry[] {
  const index = kept.get(book.log) ?? { length: 0, all: [], renewals: [], byPart: [] }
  kept.set(book.log, index)
  for (; index.length < book.length; index.length++) {
    const entry = book.log.entries[index.length]
    if (entry?.kind !== 'order') continue
    index.all.push(index.length)
    if (entry.details?.renewal) index.renewals.push(index.length)
    if (entry.details?.instalments?.reserve === 'by-part') index.byPart.push(index.length)
  }
  const found: OrderEntry[] = []
  for (const at of index[only ?? 'all']) {
    const entry = at < book.length ? book.log.entries[at] : undefined
    if (entry?.kind === 'order') found.push(entry)
  }
  return found
}
