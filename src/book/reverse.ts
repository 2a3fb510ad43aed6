import { type Book, entriesOf, entriesOfOrder, findEntry, isReversed } from './book.ts'
import { BookError } from './book-error.ts'
import { closedThrough } from './closed-through.ts'
import type { Entry, ReversalEntry, Stamp } from './entry.ts'
import type { EntryId } from './ids.ts'
import { entryBase } from './posting.ts'

/**
 * The entry that takes another one back: the same postings with the other sign.
 *
 * @throws BookError `unknown-entry`, `already-reversed`, `not-reversible` (a reversal, or an order's step that later
 *   steps rest on: take those back first; a month's close), `month-closed` (a sweep of a closed month)
 */
export function reverse(book: Book, stamp: Stamp, id: EntryId): ReversalEntry {
  const target = findEntry(book, id)
  if (!target) throw new BookError('unknown-entry', `There is no entry ${id} to take back.`)
  if (isReversed(book, id)) throw new BookError('already-reversed', 'This entry was taken back already.')
  if (target.kind === 'reversal') {
    throw new BookError('not-reversible', 'This entry takes another one back. Enter the first one again instead.')
  }
  if (target.kind === 'close' || target.kind === 'reopen') {
    throw new BookError('not-reversible', 'A closed month is opened again with a reason, and closed anew.')
  }
  const through = closedThrough(book)
  if (target.kind === 'sweep' && through !== null && target.date <= through) {
    throw new BookError('month-closed', `${target.month} is closed. Open it again before taking its sweep back.`)
  }
  if (hasLaterSteps(book, target)) {
    throw new BookError('not-reversible', 'Later steps of this order rest on this one. Take the latest back first.')
  }
  const flip = <T extends { amount: number }>(p: T): T => ({ ...p, amount: -p.amount })
  // A sweep belongs to its month's end: between month-ends no money moves from pot to pot, nor back.
  const date = target.kind === 'sweep' ? target.date : stamp.date
  const base = entryBase({ ...stamp, date }, target.postings.map(flip), target.places.map(flip))
  return { ...base, kind: 'reversal', reverses: id }
}

/** The latest entry that can still be taken back, or null: what "undo" undoes. It does not reach past a month's close. */
export function lastUndoable(book: Book): Entry | null {
  let last: Entry | null = null
  for (const entry of entriesOf(book)) {
    if (entry.kind === 'close' || entry.kind === 'reopen') last = null
    else if (entry.kind !== 'reversal' && !isReversed(book, entry.id) && !isSeenOnPage(entry)) last = entry
  }
  return last
}

/** A confirmation read from a shop's page is no step of the person's, and nothing rests on it. */
function isSeenOnPage(entry: Entry): boolean {
  return entry.kind === 'confirm' && entry.from === 'page' && entry.postings.length === 0
}

function hasLaterSteps(book: Book, target: Entry): boolean {
  if (!('order' in target)) return false
  const steps = entriesOfOrder(book, target.order).filter((e) => e.id === target.id || !isSeenOnPage(e))
  return steps.at(-1)?.id !== target.id
}
