import { useEffect, useState } from 'preact/hooks'
import type { HouseholdView, Weighed, WishText } from '../../background/protocol.ts'
import type { OrderId } from '../../book/ids.ts'
import { ask } from '../ask.ts'

/** A wish weighed. `wish` says which, so that an older answer is never taken for a newer one. */
export interface WeighedWish {
  readonly wish: string
  readonly weighed: Weighed
}

/**
 * Asks what a split, foreign or estimated order does to its pots, again whenever it or the book changes.
 *
 * @param wish null while there is nothing to weigh
 */
export function useWeigh(
  view: HouseholdView,
  shop: string,
  order: OrderId | null,
  wish: WishText | null,
): { weighed: Weighed | null; error: unknown } {
  const [found, setFound] = useState<WeighedWish | null>(null)
  const [error, setError] = useState<unknown>(null)
  const key = wish === null ? '' : JSON.stringify(wish)
  useEffect(() => {
    if (wish === null) {
      setError(null)
      return
    }
    let isWanted = true
    ask('order.weigh', { shop, order, wish }).then(
      (weighed) => {
        if (!isWanted) return
        setFound({ wish: key, weighed })
        setError(null)
      },
      (cause: unknown) => isWanted && setError(cause),
    )
    return () => {
      isWanted = false
    }
  }, [view, shop, order, key])
  return { weighed: error === null && found?.wish === key ? found.weighed : null, error }
}
