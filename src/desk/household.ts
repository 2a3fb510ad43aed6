import { createContext } from 'preact'
import { useContext } from 'preact/hooks'
import type { HouseholdView } from '../background/protocol.ts'
import type { Book } from '../book/book.ts'
import type { SavedSetting } from './done.ts'

/** What is at hand as soon as the worker has answered: every pot's figures, and the latest entries. */
export interface DeskView {
  readonly view: HouseholdView
  /** Reads what is new, and draws the page anew with it. */
  readonly refresh: () => Promise<void>
  /**
   * To be awaited after every command that wrote: reads what is new and says it, with the way to take it back.
   *
   * @param length how many entries the book had before the command
   * @param setting what was saved, where it was no entry
   */
  readonly wrote: (length: number, setting?: SavedSetting) => Promise<void>
}

/** What most pages work from. The book is read whole and opened here, so the pure engine runs in the page. */
export interface DeskHousehold extends DeskView {
  readonly book: Book
}

export const ViewContext = createContext<DeskView | null>(null)
export const BookContext = createContext<Book | null>(null)

/**
 * The household's figures, for a page that can be drawn before the book is read.
 *
 * @throws Error when it is used outside the desk's frame
 */
export function useView(): DeskView {
  const desk = useContext(ViewContext)
  if (!desk) throw new Error('A page of the desk was drawn outside its frame.')
  return desk
}

/**
 * The household with its book, for a page of the desk.
 *
 * @throws Error when it is used outside the desk's frame, or before the book is read
 */
export function useHousehold(): DeskHousehold {
  const desk = useView()
  const book = useContext(BookContext)
  if (!book) throw new Error('A page of the desk was drawn before the book was read.')
  return { ...desk, book }
}
