import type { SeenFigure, SeenPage } from '../background/protocol.ts'
import { submitsOrder } from '../checkout/is-place-order.ts'
import { readPage } from '../checkout/page-reader.ts'
import type { CheckoutReading, Evidence } from '../checkout/reading.ts'
import './reader-global.ts'
import { cachedReading } from './reading-cache.ts'

/*
 * The reader as it is brought into a page, by the gate on a watched shop or by the popup elsewhere. It only looks: it
 * changes nothing in the page and sends nothing.
 */

const MOST_FIGURES = 12
const MOST_ITEMS = 500
const MOST_PARTS = 20
const LONGEST_TEXT = 200

const readNow = cachedReading()

globalThis.tillsideReader ??= { seen: (currency) => pageOf(read(currency)), ordering }
warmUp()

/**
 * Reads a page of a few lines, which nobody sees: the words are made ready to search and the patterns compiled in the task
 * that brings the reader, and the first reading of the shop's page is a task of its own.
 */
function warmUp(): void {
  const sample = document.implementation.createHTMLDocument('')
  for (const text of ['Subtotal', '2 × Mug', '$1,000.50 (incl. 5 % VAT)', 'Total', '12.00 €', 'Ł 55,90 zł']) {
    const line = sample.createElement('p')
    line.textContent = text
    sample.body.append(line)
  }
  const button = sample.createElement('button')
  button.textContent = 'Place order'
  sample.body.append(button)
  readPage(sample, { url: 'about:blank' }, globalThis.tillsideLexicons ?? [])
}

function read(currency: string): CheckoutReading {
  const url = location.href
  return readNow(currency === '' ? { url } : { url, currency }, globalThis.tillsideLexicons ?? [])
}

function ordering(event: Event, currency: string): SeenPage | null {
  const reading = read(currency)
  const controls = new Set<EventTarget>(reading.placeOrder)
  const places =
    event.type === 'submit' ? ordersBySubmit(event, reading) : event.composedPath().some((node) => controls.has(node))
  return places ? pageOf(reading) : null
}

/**
 * By its submitter. A form submitted without one (Enter in its only field, a script) orders when an ordering control
 * belongs to it, or when it has no button at all on a page that asks for payment of a total.
 */
function ordersBySubmit(event: Event, { placeOrder, total }: CheckoutReading): boolean {
  const form = event.composedPath()[0]
  const submitter = event instanceof SubmitEvent ? event.submitter : null
  if (!(form instanceof HTMLFormElement)) return false
  if (submitsOrder({ placeOrder }, form, submitter)) return true
  const isBare = form.querySelector('button, input:is([type=submit], [type=image], [type=button])') === null
  return isBare && form.method === 'post' && total !== null && placeOrder.length === 0
}

function pageOf(reading: CheckoutReading): SeenPage {
  const totals = reading.evidence.filter((e) => e.figure === 'total')
  const figures = [...totals.filter((e) => e.used), ...totals.filter((e) => !e.used)].slice(0, MOST_FIGURES)
  return {
    stage: reading.stage,
    total: reading.total ? { amount: reading.total.amount, currency: reading.total.currency } : null,
    figures: figures.map(figureOf),
    placeOrderCount: reading.placeOrder.length,
    orderNumber: reading.orderNumber,
    items: reading.items
      .slice(0, MOST_ITEMS)
      .map(({ name, amount, quantity }) => ({ name: cut(name), amount, quantity })),
    parts: reading.parts.slice(0, MOST_PARTS).map(({ kind, amount }) => ({ kind, amount })),
  }
}

function figureOf({ label, text, used, why }: Evidence): SeenFigure {
  return { label: cut(label), text: cut(text), used, why: cut(why) }
}

function cut(text: string): string {
  return text.length > LONGEST_TEXT ? `${text.slice(0, LONGEST_TEXT - 1)}…` : text
}
