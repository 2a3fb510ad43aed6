import type { CalendarDate, DeviceId, EntryId } from '../index.ts'
import type { Keeper } from './keeper.ts'

/** What commands may use of the outside: the keeper of the book, the clock and new ids. */
export interface Context {
  readonly keeper: Keeper
  /** Milliseconds since 1970 UTC. */
  readonly now: () => number
  readonly today: (timeZone: string) => CalendarDate
  /** A new UUIDv7; with `msecs`, one that sorts by that time. */
  readonly newId: (msecs?: number) => EntryId
  readonly newDevice: () => DeviceId
}
