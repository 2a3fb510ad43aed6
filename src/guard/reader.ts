import type { FigurePlace, SeenFigure, SeenPage } from '../background/protocol.ts'
import { readPage } from '../checkout/page-reader.ts'
import type { CheckoutReading, Evidence } from '../checkout/reading.ts'
import { drawCurtain } from './curtain.ts'
import { clicks, leavesByOrder, orders, submits, withhold } from './ordering.ts'
import type { PageReader } from './reader-global.ts'
import { cachedReading } from './reading-cache.ts'
import { seatOf } from './seat.ts'
import { WalletFrames } from './wallet-frames.ts'

/*
 * The reader as it is brought into a page, by the gate on a watched shop or by the popup elsewhere. It only looks: it
 * changes nothing in the page and sends nothing.
 */

const MOST_FIGURES = 12
const MOST_ITEMS = 500
const MOST_PARTS = 20
const LONGEST_TEXT = 200

let currencyHint = ''
const seat = seatOf(window)
const walletFrames = new WalletFrames()
const readNow = cachedReading(seat.document)

const reader: PageReader = {
  seen: (currency) => pageOf(read(currency)),
  ordering,
  leaving,
  find: (figure) => read(currencyHint).evidence.find((each) => isSame(figureOf(each), figure))?.element ?? null,
  roots: () => read(currencyHint).placeOrder.map((control) => control.getRootNode()),
  clicks,
  submits,
  withhold,
  drawCurtain,
  shield: (on) => walletFrames.shield(on && read(currencyHint).total !== null),
}

// A frame of that name would be taken for what is not there yet.
if (!Object.hasOwn(globalThis, 'tillsideReader') || !globalThis.tillsideReader) {
  Object.defineProperty(globalThis, 'tillsideReader', { value: reader, writable: true, configurable: true })
}
warmUp()

/**
 * Reads a page of a few lines, which nobody sees: the words are made ready to search and the patterns compiled in the task
 * that brings the reader, and the first reading of the shop's page is a task of its own.
 */
function warmUp(): void {
  // Of a new document: the page can hide what its own can do behind an element of that name.
  const sample = new Document().implementation.createHTMLDocument('')
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
  currencyHint = currency
  const url = seat.location.href
  return readNow(currency === '' ? { url } : { url, currency }, globalThis.tillsideLexicons ?? [])
}

function ordering(event: Event, currency: string): SeenPage | null {
  const reading = read(currency)
  return orders(event, reading, globalThis.tillsideLexicons ?? []) || (walletFrames.takes(event) && reading.total)
    ? pageOf(reading)
    : null
}

function leaving(event: NavigateEvent, form: Element | null, currency: string): SeenPage | null {
  const reading = read(currency)
  return leavesByOrder(event, form, reading) ? pageOf(reading) : null
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

function isSame(a: FigurePlace, b: FigurePlace): boolean {
  return a.label === b.label && a.text === b.text
}

function cut(text: string): string {
  return text.length > LONGEST_TEXT ? `${text.slice(0, LONGEST_TEXT - 1)}…` : text
}
