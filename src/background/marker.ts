import { get, set } from 'idb-keyval'

/**
 * A second witness, in IndexedDB, that a household is kept here. The browser gives back an *empty* storage.local when it
 * could not repair a damaged one; without a witness that would look like a new household and be written over.
 */
export interface Marker {
  /** Whether a household was kept here before. */
  read(): Promise<boolean>
  write(kept: boolean): Promise<void>
}

const KEY = 'tillside-household-kept'

export const browserMarker: Marker = {
  read: async () => (await get<boolean>(KEY)) === true,
  write: (kept) => set(KEY, kept),
}
