import { element, totalLine } from './element.js'
import { basket, orderQuery } from './order-state.js'

let asking = new AbortController()

/** Asks for the sums and shows them when they come; an older answer never replaces a newer one. */
export async function drawTotal(total) {
  asking.abort()
  asking = new AbortController()
  const { signal } = asking
  if (basket.size === 0) {
    total.replaceChildren()
    return
  }
  total.replaceChildren(element('p', { className: 'waiting' }, 'Calcul en cours…'))
  try {
    const response = await fetch(`/devis?${orderQuery()}`, { signal })
    if (!response.ok) throw new Error(`status ${response.status}`)
    const quote = await response.json()
    if (signal.aborted) return
    total.replaceChildren(
      ...quote.lines.map(({ label, amount }) => totalLine('line', label, amount)),
      totalLine('line payable', 'Total à payer', quote.total),
    )
  } catch {
    if (!signal.aborted) total.replaceChildren(element('p', { className: 'complaint' }, 'Le calcul n’a pas abouti.'))
  }
}

/** Drops the question that is still open. */
export function stopAsking() {
  asking.abort()
}
