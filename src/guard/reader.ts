import type { SeenFigure, SeenPage } from '../background/protocol.ts'
import { readCheckout } from '../checkout/read-checkout.ts'
import type { CheckoutReading, Evidence } from '../checkout/reading.ts'
import './reader-global.ts'

/*
 * The reader as it is brought into a page, by the gate on a watched shop or by the popup elsewhere. It only looks: it
 * changes nothing in the page and sends nothing.
 */

const MOST_FIGURES = 12
const LONGEST_TEXT = 200

globalThis.tillsideReader ??= { seen: (currency) => pageOf(read(currency)), ordering }

function read(currency: string): CheckoutReading {
  const url = location.href
  return readCheckout(document, currency === '' ? { url } : { url, currency })
}

function ordering(event: Event, currency: string): SeenPage | null {
  const reading = read(currency)
  const controls = new Set<EventTarget>(reading.placeOrder)
  if (controls.size === 0) return null
  const places =
    event.type === 'submit'
      ? ordersBySubmit(event, reading.placeOrder)
      : event.composedPath().some((n) => controls.has(n))
  return places ? pageOf(reading) : null
}

/** By its submitter; a form submitted without one orders when an ordering control belongs to it. */
function ordersBySubmit(event: Event, controls: readonly Element[]): boolean {
  const submitter = event instanceof SubmitEvent ? event.submitter : null
  if (submitter) return controls.some((c) => c === submitter || c.contains(submitter))
  return controls.some((c) => c.closest('form') === event.target || ('form' in c && c.form === event.target))
}

function pageOf(reading: CheckoutReading): SeenPage {
  const totals = reading.evidence.filter((e) => e.figure === 'total')
  const figures = [...totals.filter((e) => e.used), ...totals.filter((e) => !e.used)].slice(0, MOST_FIGURES)
  return {
    stage: reading.stage,
    total: reading.total ? { amount: reading.total.amount, currency: reading.total.currency } : null,
    figures: figures.map(figureOf),
    placeOrderCount: reading.placeOrder.length,
  }
}

function figureOf({ label, text, used, why }: Evidence): SeenFigure {
  return { label: cut(label), text: cut(text), used, why: cut(why) }
}

function cut(text: string): string {
  return text.length > LONGEST_TEXT ? `${text.slice(0, LONGEST_TEXT - 1)}…` : text
}
