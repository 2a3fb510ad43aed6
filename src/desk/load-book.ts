import type { HouseholdView, Look } from '../background/protocol.ts'
import { append, type Book, openBook, withHousehold } from '../book/book.ts'
import type { Entry } from '../book/entry.ts'
import { ask } from '../ui/ask.ts'

/** The household as the desk found it. */
export type Found =
  | Exclude<Look, { status: 'ready' }>
  | { readonly status: 'ready'; readonly view: HouseholdView; readonly book: Book }

/**
 * Asks the worker for the household and its entries. With a book read earlier only the entries that are new are asked
 * for; another household (another currency or device, or fewer entries) is read from the start.
 *
 * @throws AskError; BookError when the entries do not make a book
 */
export async function loadBook(earlier: { view: HouseholdView; book: Book } | null = null): Promise<Found> {
  const look = await ask('book.look', {})
  if (look.status !== 'ready') return look
  const { view } = look
  const known = earlier && earlier.view.device === view.device ? earlier.book : null
  const fresh = await entriesAfter(known?.length ?? 0)
  const book =
    known && fresh.length >= known.length
      ? fresh.entries.reduce(append, sameHousehold(known, view) ? known : withHousehold(known, view.household))
      : openBook(view.household, known ? (await entriesAfter(0)).entries : fresh.entries)
  return { status: 'ready', view, book }
}

async function entriesAfter(from: number): Promise<{ entries: Entry[]; length: number }> {
  const entries: Entry[] = []
  for (;;) {
    const part = await ask('book.entries', { from: from + entries.length })
    entries.push(...part.entries)
    if (part.entries.length === 0 || from + entries.length >= part.length) return { entries, length: part.length }
  }
}

function sameHousehold(book: Book, view: HouseholdView): boolean {
  return JSON.stringify(book.household) === JSON.stringify(view.household)
}
