import { useEffect, useState } from 'preact/hooks'
import type { HouseholdView, PotChoice } from '../../background/protocol.ts'
import type { OrderId } from '../../book/ids.ts'
import { ask } from '../ask.ts'

/** The pots as choices for one total. `total` says for which, so that an older answer is never taken for a newer one. */
export interface Choices {
  readonly total: string
  readonly list: readonly PotChoice[]
}

/**
 * Asks for every pot's verdict on an order, again whenever the total or the book changes.
 *
 * @param total decimal text; null while the person has not typed an amount
 * @param order an order tagged before, whose hold is replaced
 * @returns the latest choices (which may be for an older total), and what went wrong
 */
export function useChoices(
  view: HouseholdView,
  shop: string,
  total: string | null,
  order: OrderId | null,
): { choices: Choices | null; error: unknown } {
  const [choices, setChoices] = useState<Choices | null>(null)
  const [error, setError] = useState<unknown>(null)
  useEffect(() => {
    if (total === null) return
    let isWanted = true
    ask('order.assess', { shop, total, order }).then(
      (list) => {
        if (!isWanted) return
        setChoices({ total, list })
        setError(null)
      },
      (cause: unknown) => isWanted && setError(cause),
    )
    return () => {
      isWanted = false
    }
  }, [view, shop, total, order])
  return { choices, error }
}
