import type { CheckoutReading } from '../../../src/checkout/reading.ts'

/** A reading in the form in which pages state what they expect. */
export function inShort(reading: CheckoutReading) {
  return {
    stage: reading.stage,
    total: reading.total ? `${reading.total.amount} ${reading.total.currency}` : null,
    orderNumber: reading.orderNumber,
    placeOrder: reading.placeOrder.map(wordsOf),
    parts: reading.parts.map((part) => `${part.kind} ${part.amount}`),
    items: reading.items.map((item) => `${item.quantity} ${item.name} ${item.amount}`),
  }
}

function wordsOf(control: Element): string {
  const slotted = control.querySelector('slot')?.assignedNodes() ?? []
  const shown = slotted.map((node) => node.textContent ?? '').join(' ') || (control.textContent ?? '')
  const value =
    control.localName === 'input' ? (control.getAttribute('value') ?? control.getAttribute('alt') ?? '') : shown
  return value.replace(/\s+/g, ' ').trim() || (control.getAttribute('aria-label') ?? '')
}
