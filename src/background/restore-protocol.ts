import type { DeviceId, Entry } from '../index.ts'
import type { Look } from './protocol.ts'
import type { Settings } from './store.ts'

/** Commands of the desk that move a whole book. A book can be larger than a message, so it comes in parts. */
export interface RestoreCommands {
  /** What a book file holds beside the entries. */
  'book.settings': {
    ask: Record<never, never>
    answer: { device: DeviceId; settings: Settings; watched: readonly string[] }
  }
  /** Lays down a part of a book that is to be restored, beside the book kept. Part 0 clears what lay there before. */
  'restore.stage': { ask: { part: number; entries: readonly Entry[] }; answer: Record<never, never> }
  /** Makes the parts laid down the book. Where a household is kept, its device stays. */
  'restore.take': { ask: { parts: number; count: number; device: DeviceId; settings: Settings }; answer: Look }
  /** Erases the household and all that was ever stored. `name` must be what the person was asked to type. */
  'household.erase': { ask: { word: 'erase' }; answer: Look }
}
