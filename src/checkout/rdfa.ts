import { attribute, drawnParent, nearest } from './dom.ts'
import { type MachineMoney, pick } from './microdata.ts'
import { amountOf } from './structured-money.ts'
import { tidy } from './words.ts'

const PROPERTIES: ReadonlySet<string> = new Set([
  'price',
  'lowPrice',
  'highPrice',
  'minPrice',
  'maxPrice',
  'totalPrice',
])

/** Every element that says something in RDFa. */
export function describedIn(document: Document): Element[] {
  return pick(document, '[typeof], [typeof] [property]')
}

/**
 * Amounts in RDFa Lite, as schema.org's examples write it: `typeof` says what a thing is, `property` what is said of it,
 * `content` the machine value. A prefix (`schema:price`) counts for nothing.
 */
export function readRdfa(described: readonly Element[], types: Set<string>, orderNumbers: string[]): MachineMoney[] {
  const money: MachineMoney[] = []
  for (const element of described) {
    const kind = nameIn(attribute(element, 'typeof'))
    if (kind !== '') types.add(kind)
    const property = nameIn(attribute(element, 'property'))
    const thing = nearest(drawnParent(element), '[typeof]')
    if (property === 'orderNumber' || property === 'confirmationNumber') orderNumbers.push(valueIn(element))
    if (!thing || !PROPERTIES.has(property)) continue
    const currency = currencyIn(thing)
    const found = amountOf(valueIn(element), currency)
    if (!found) continue
    const type = nameIn(attribute(thing, 'typeof'))
    const above = nearest(drawnParent(thing), '[typeof]')
    money.push({
      path: `${type}/${property}`,
      type,
      outer: above ? nameIn(attribute(above, 'typeof')) : type,
      property,
      amount: found.amount,
      currency: found.currency ?? currency,
      source: 'microdata',
      element,
    })
  }
  return money
}

function currencyIn(thing: Element): string | null {
  for (const each of thing.querySelectorAll('[property]')) {
    const code = nameIn(attribute(each, 'property')) === 'priceCurrency' ? valueIn(each).toUpperCase() : ''
    if (/^[A-Z]{3}$/.test(code)) return code
  }
  return null
}

/** The last part of the first name: `https://schema.org/Order`, `schema:price`. */
function nameIn(value: string | null): string {
  return (value?.trim().split(/\s+/u)[0] ?? '').replace(/^.*[/#:]/u, '')
}

function valueIn(element: Element): string {
  return tidy(attribute(element, 'content') ?? element.textContent ?? '').slice(0, 80)
}
