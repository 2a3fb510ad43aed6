import { type Book, type CalendarDate, datedFor, type EntryId, type Stamp } from '../index.ts'
import type { Context } from './context.ts'
import type { Kept } from './store.ts'

/** The stamp of an entry for something that happened on a day. In a closed month it is dated in the open one, and says so. */
export function stampOn(context: Context, kept: Kept, book: Book, id: EntryId, date: CalendarDate): Stamp {
  const dated = datedFor(book, date, context.today(book.household.timeZone))
  return { id, device: kept.head.device, ...dated }
}

/** The stamp of an entry for something that happens now. */
export function stampToday(context: Context, kept: Kept, book: Book, id: EntryId): Stamp {
  return stampOn(context, kept, book, id, context.today(book.household.timeZone))
}
