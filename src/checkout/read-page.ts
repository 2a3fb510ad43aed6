import { chooseTotal } from './choose-total.ts'
import { readControls } from './controls.ts'
import { readItems, settleItems } from './items.ts'
import { lexiconsFor } from './language.ts'
import type { Lexicon } from './lexicon/lexicon.ts'
import { createLiveness } from './liveness.ts'
import type { MachineValues } from './machine-values.ts'
import { readOrderNumber } from './order-number.ts'
import { createPageCurrency } from './page-currency.ts'
import type { PageText } from './page-text.ts'
import { partsOf } from './parts.ts'
import { placeOrderControls } from './place-order.ts'
import { createPricer, scaled } from './pricer.ts'
import type { CheckoutReading, Evidence, ReadAmount, ReadPart } from './reading.ts'
import { readRows } from './rows.ts'
import type { Sight } from './sight.ts'
import { decideStage } from './stage.ts'
import { readStageSigns } from './stage-signs.ts'
import type { Stream } from './stream.ts'
import { priceRows } from './total.ts'
import { vocabularyOf } from './vocabulary.ts'

/** What is known about the page from outside it. */
export interface ReadOptions {
  readonly url: string
  /** The household's currency (ISO 4217): taken only where the page's sign can mean it and nothing else tells. */
  readonly currency?: string
}

/** A page as far as no language is needed to read it. */
export interface Ground {
  readonly document: Document
  readonly options: ReadOptions
  readonly page: PageText
  readonly stream: Stream
  readonly sight: Sight
  readonly machine: MachineValues
  readonly lang: string | null
}

/** Reads with the words of the page's own languages; with those of all that are given where that finds too little. */
export function readGround(ground: Ground, lexicons: readonly Lexicon[]): CheckoutReading {
  const own = lexiconsFor(ground.lang, textsOf(ground.stream), lexicons)
  const first = readWith(ground, own)
  if (own.length === lexicons.length || worth(first) >= 3) return first
  const second = readWith(ground, lexicons)
  return worth(second) > worth(first) ? second : first
}

function* textsOf(stream: Stream): Generator<string> {
  for (const item of stream.items) if (item.kind === 'words') yield item.text
}

/** How much a reading found, for choosing between the page's own language and all of them. */
function worth(reading: CheckoutReading): number {
  return (
    (reading.total ? 2 : 0) +
    (reading.stage === 'other' ? 0 : 1) +
    (reading.placeOrder.length > 0 || reading.orderNumber !== null || reading.stage === 'product' ? 1 : 0)
  )
}

function hostOf(url: string): string {
  try {
    return new URL(url).hostname
  } catch {
    return ''
  }
}

function readWith(ground: Ground, languages: readonly Lexicon[]): CheckoutReading {
  const { document, options, page, stream, sight, machine, lang } = ground
  const words = vocabularyOf(languages)
  const live = createLiveness(page, stream, sight)
  const rows = readRows(page, stream, words, live)
  const assumed = options.currency ?? null
  const currency = createPageCurrency({ stream, words, machine, lang, host: hostOf(options.url), assumed })
  const pricer = createPricer(currency.usual, lang)
  const priced = priceRows(rows, pricer, currency)
  const controls = readControls(page, words, sight)
  const items = readItems({ page, stream, rows, words, live, pricer, currency })
  const signs = readStageSigns({ document, url: options.url, page, stream, words, sight, controls, machine })
  // Only after an order is there a number to look for; elsewhere it would cost a look at every text of the page.
  const after = signs.thanked || signs.headings.has('thanks') || signs.url === 'confirmation' || signs.orderData
  const number = after ? readOrderNumber({ page, stream, words, live, sight }) : null
  const hasNumber = number !== null || machine.orderNumbers.length > 0
  const confirmation = decideStage(signs, false, hasNumber, items.length > 0) === 'confirmation'
  const context = { page, stream, words, live, rows: priced, items, controls, machine, confirmation }
  // What can also mean "go to the checkout" does not show that this page is where one pays.
  const completes = controls.some((control) => control.kind === 'completes' && !control.toCheckout)
  const choice = chooseTotal(context, signs.pays || completes)
  const stage = decideStage(signs, choice.total !== null, hasNumber, items.length > 0)
  const barred = stage === 'product' || stage === 'other'
  const placed = placeOrderControls({ page, controls, signs, stage, hasTotal: choice.total !== null, sight })
  const parts = partsOf(context, choice.candidate)
  const orderNumber = stage === 'confirmation' ? (number?.number ?? machine.orderNumbers[0] ?? null) : null
  const evidence: Evidence[] = [
    stageEvidence(stage, signs.url),
    ...(barred ? choice.evidence.map((each) => ({ ...each, used: false })) : choice.evidence),
    ...parts.evidence,
    ...placed.evidence,
  ]
  if (orderNumber !== null) evidence.push(numberEvidence(orderNumber, number))
  if (page.cut)
    evidence.push({ ...stageEvidence(stage, null), used: false, why: 'the page is too large: its end was not read' })
  const subtotals = new Set(priced.filter((row) => row.meaning === 'items').map((row) => row.value))
  for (const value of remainders(choice.total, parts.parts)) subtotals.add(value)
  return {
    stage,
    total: barred ? null : choice.total,
    parts: barred ? [] : parts.parts,
    items: barred ? [] : settleItems(items, subtotals),
    orderNumber,
    placeOrder: placed.elements,
    evidence,
  }
}

/** What the items must have cost, by the total: without its other parts, and with the taxes contained. */
function remainders(total: ReadAmount | null, parts: readonly ReadPart[]): number[] {
  const value = total ? scaled(total.amount) : null
  if (value === null) return []
  const sum = (kept: readonly ReadPart[]): number => kept.reduce((all, part) => all + (scaled(part.amount) ?? 0), 0)
  const others = parts.filter((part) => part.kind !== 'items')
  return [value - sum(others), value - sum(others.filter((part) => part.kind !== 'tax'))]
}

function stageEvidence(stage: string, url: string | null): Evidence {
  const why = url
    ? `the address, headings and controls together; the address alone says ${url}`
    : 'headings and controls together'
  return { figure: 'stage', source: 'text', label: url ?? '', text: stage, used: true, why, element: null }
}

function numberEvidence(
  orderNumber: string,
  found: { number: string; label: string; element: Element } | null,
): Evidence {
  const visible = found?.number === orderNumber
  return {
    figure: 'order-number',
    source: visible ? 'label' : 'json-ld',
    label: visible ? found.label : 'orderNumber',
    text: orderNumber,
    used: true,
    why: visible ? 'stands behind words for an order number' : "stated in the page's order data",
    element: visible ? found.element : null,
  }
}
