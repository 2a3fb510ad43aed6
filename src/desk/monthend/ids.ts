import { useRef } from 'preact/hooks'
import type { EntryId, OrderId } from '../../book/ids.ts'
import { newEntryId, newOrderId } from '../../ui/new-id.ts'

/** Makes ids and remembers them by what they are for, so that a posting asked again is the same posting. */
export interface Ids {
  entry(what: string): EntryId
  order(what: string): OrderId
}

/** Ids by what they are for, made once each for as long as the page lives. */
export function useIds(): Ids {
  const kept = useRef<Ids | null>(null)
  kept.current ??= newIds()
  return kept.current
}

function newIds(): Ids {
  const entries = new Map<string, EntryId>()
  const orders = new Map<string, OrderId>()
  return {
    entry(what) {
      const id = entries.get(what) ?? newEntryId()
      entries.set(what, id)
      return id
    },
    order(what) {
      const id = orders.get(what) ?? newOrderId()
      orders.set(what, id)
      return id
    },
  }
}
