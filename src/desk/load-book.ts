import type { HouseholdView, Look, OwnCommands } from '../background/protocol.ts'
import { append, type Book, openBookAt, withHousehold } from '../book/book.ts'
import type { Entry } from '../book/entry.ts'
import { ask } from '../ui/ask.ts'

/** The household as the desk read it, and the place in the book it read up to. */
export interface ReadHousehold {
  readonly status: 'ready'
  readonly view: HouseholdView
  readonly book: Book
  readonly end: number
}

/** What is at hand while the book is read: every figure, and how far the reading has come. */
export interface Partly {
  readonly view: HouseholdView
  readonly done: number
  /** How many entries there are; 0 while that is not known. */
  readonly of: number
}

export type Found = Exclude<Look, { status: 'ready' }> | ReadHousehold

/**
 * Asks the worker for the household and its entries. With a household read earlier only the entries that are new are
 * asked for; another book is read from the start.
 *
 * @param onPart told what is at hand as soon as the worker has answered, and after each part of the book
 * @throws AskError; BookError when the entries do not make a book
 */
export async function loadBook(
  earlier: ReadHousehold | null = null,
  onPart: (partly: Partly) => void = () => {},
): Promise<Found> {
  const look = await ask('book.look', {})
  if (look.status !== 'ready') return look
  const { view } = look
  const { household } = view
  if (earlier && earlier.view.series === view.series && earlier.view.gaps === view.gaps) {
    const { entries, end } = await entriesFrom(earlier.end)
    const isSame = JSON.stringify(earlier.book.household) === JSON.stringify(household)
    const base = isSame ? earlier.book : withHousehold(earlier.book, household)
    return { status: 'ready', view, book: entries.reduce(append, base), end }
  }
  onPart({ view, done: 0, of: 0 })
  const { entries, end, sums } = await entriesFrom(0, (done, of) => onPart({ view, done, of }))
  return { status: 'ready', view, book: openBookAt(household, { sums, before: 0 }, entries), end }
}

async function entriesFrom(
  place: number,
  onPart: (done: number, of: number) => void = () => {},
): Promise<OwnCommands['book.entries']['answer'] & { entries: Entry[] }> {
  const entries: Entry[] = []
  for (let next = place; ; ) {
    const part = await ask('book.entries', { from: next })
    entries.push(...part.entries)
    if (part.next >= part.end) return { ...part, entries }
    next = part.next
    onPart(next, part.end)
  }
}
