import { v7 } from 'uuid'
import { type EntryId, entryId, type OrderId, orderId } from '../book/ids.ts'

/*
 * Ids are made by the page before it asks (UUID version 7, RFC 9562), so that asking twice is one entry. The library
 * keeps them rising within a page, also within one millisecond.
 */

/** A new id for an entry. Make it once for an intended action and keep it when you try again: see `action-id.ts`. */
export function newEntryId(): EntryId {
  return entryId(v7())
}

/** A new id for an order that was never tagged. */
export function newOrderId(): OrderId {
  return orderId(v7())
}
