import { createContext } from 'preact'
import { useContext } from 'preact/hooks'
import type { HouseholdView } from '../background/protocol.ts'
import type { Book } from '../book/book.ts'

/** What every page of the desk works from. The book is read whole and opened here, so the pure engine runs in the page. */
export interface DeskHousehold {
  readonly view: HouseholdView
  readonly book: Book
  /** Reads what is new; to be awaited after every command that wrote. The page is drawn anew with it. */
  readonly refresh: () => Promise<void>
}

export const HouseholdContext = createContext<DeskHousehold | null>(null)

/**
 * The household, for a page of the desk.
 *
 * @throws Error when it is used outside the desk's frame
 */
export function useHousehold(): DeskHousehold {
  const household = useContext(HouseholdContext)
  if (!household) throw new Error('A page of the desk was drawn outside its frame.')
  return household
}
