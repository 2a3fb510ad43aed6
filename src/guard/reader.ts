import type { SeenFigure, SeenPage } from '../background/protocol.ts'
import { readPage } from '../checkout/read-page.ts'
import type { CheckoutReading, Evidence } from '../checkout/reading.ts'
import { drawCurtain } from './curtain.ts'
import { leavesByOrder, orders } from './ordering.ts'
import type { PageReader } from './reader-global.ts'
import { cachedReading } from './reading-cache.ts'
import { seatOf } from './seat.ts'
import { WalletFrames } from './wallet-frames.ts'

/*
 * The reader as it is brought into a page, by the gate on a watched shop or by the popup elsewhere. It only looks: it
 * changes nothing in the page and sends nothing.
 */

const MOST_FIGURES = 12
const LONGEST_TEXT = 200

let currencyHint = ''
const seat = seatOf(window)
const walletFrames = new WalletFrames()
// A frame belongs to the page around it, whose changes are not watched from here: that page is read anew each time.
const readNow = seat === window ? cachedReading(readSeat) : readSeat

const reader: PageReader = {
  seen: (currency) => pageOf(read(currency)),
  ordering,
  leaving,
  roots: () => read(currencyHint).placeOrder.map((control) => control.getRootNode()),
  drawCurtain,
  shield: (on) => walletFrames.shield(on && read(currencyHint).total !== null),
}

// A frame of that name would be taken for what is not there yet.
if (!Object.hasOwn(globalThis, 'tillsideReader') || !globalThis.tillsideReader) {
  Object.defineProperty(globalThis, 'tillsideReader', { value: reader, writable: true, configurable: true })
}

function readSeat(): CheckoutReading {
  const url = seat.location.href
  const options = currencyHint === '' ? { url } : { url, currency: currencyHint }
  return readPage(seat.document, options, globalThis.tillsideLexicons ?? [])
}

function read(currency: string): CheckoutReading {
  currencyHint = currency
  return readNow()
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
  }
}

function figureOf({ label, text, used, why }: Evidence): SeenFigure {
  return { label: cut(label), text: cut(text), used, why: cut(why) }
}

function cut(text: string): string {
  return text.length > LONGEST_TEXT ? `${text.slice(0, LONGEST_TEXT - 1)}…` : text
}
