import { attribute, drawnParent, nameOf, nearest, select } from './dom.ts'
import type { EvidenceSource } from './reading.ts'
import { amountOf, type StructuredMoney } from './structured-money.ts'
import { tidy } from './words.ts'

/** An amount a page states for machines, with where it was found. */
export interface MachineMoney extends StructuredMoney {
  readonly source: EvidenceSource
  readonly element: Element | null
}

/** So many elements of a kind are looked at. */
export const MOST_MARKED = 4_000

const PROPERTIES = /^(?:price|lowPrice|highPrice|minPrice|maxPrice|totalPrice)$/

export function pick(document: Document, selector: string): Element[] {
  return select(document, selector, MOST_MARKED)
}

/** Every element that says something in microdata. */
function markedIn(document: Document): Element[] {
  return pick(document, '[itemscope], [itemprop]')
}

/**
 * Amounts in microdata. The value is `content` (on a `meta`, and on the spans of shops that write it there), a `data`
 * value, or the text.
 */
export function readMicrodata(
  document: Document,
  types: Set<string>,
  orderNumbers: string[],
  marked: readonly Element[] = markedIn(document),
): MachineMoney[] {
  const money: MachineMoney[] = []
  for (const element of marked) {
    const own = attribute(element, 'itemscope') === null ? null : scopeType(element)
    if (own) types.add(own)
    const property = attribute(element, 'itemprop')?.trim() ?? ''
    if (property === '') continue
    const scope = above(element)
    const type = scope ? scopeType(scope) : null
    if (property === 'orderNumber' || property === 'confirmationNumber') orderNumbers.push(machineValue(element))
    if (!PROPERTIES.test(property)) continue
    const currency = scope ? scopeCurrency(scope, element) : null
    const found = amountOf(machineValue(element), currency)
    if (!found) continue
    const outer = scope ? outerType(scope) : null
    money.push({
      path: `${type ?? ''}/${property}`,
      type,
      outer,
      property,
      amount: found.amount,
      currency: found.currency ?? currency,
      source: 'microdata',
      element,
    })
  }
  return money
}

/** The thing an element belongs to: the nearest `itemscope` outside it. */
function above(element: Element): Element | null {
  return nearest(drawnParent(element), '[itemscope]')
}

function scopeType(scope: Element): string | null {
  return (
    attribute(scope, 'itemtype')
      ?.trim()
      .split(/\s+/u)[0]
      ?.replace(/^.*[/#]/u, '') ?? null
  )
}

function outerType(scope: Element): string | null {
  let type = scopeType(scope)
  let at = above(scope)
  for (let step = 0; at && step < 20; step += 1) {
    type = scopeType(at) ?? type
    at = above(at)
  }
  return type
}

/** The currency of the same thing: the nearest before the amount, else the first after it. */
function scopeCurrency(scope: Element, element: Element): string | null {
  let before: string | null = null
  for (const each of Array.from(scope.querySelectorAll('[itemprop~="priceCurrency"]')).slice(0, 50)) {
    const code = machineValue(each).toUpperCase()
    if (!/^[A-Z]{3}$/.test(code)) continue
    const follows = (element.compareDocumentPosition(each) & 4) !== 0
    if (follows) return before ?? code
    before = code
  }
  return before
}

function machineValue(element: Element): string {
  const value = attribute(element, 'content') ?? (nameOf(element) === 'data' ? attribute(element, 'value') : null)
  return tidy(value ?? element.textContent ?? '').slice(0, 80)
}
