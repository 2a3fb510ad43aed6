import { amountOfNumber } from '../money/price-amount.ts'
import { lex } from './lexer.ts'

/** One amount that a page states for machines. */
export interface StructuredMoney {
  /** Where it stood: `/offers/price`, `Order/price`. */
  readonly path: string
  /** The schema.org type of the thing it belongs to (`Offer`), or null. */
  readonly type: string | null
  /** The outermost type around it: an Offer inside an Order speaks of the order. */
  readonly outer: string | null
  readonly property: string
  readonly amount: string
  readonly currency: string | null
}

/** What a block of structured data says about money and orders. */
export interface StructuredData {
  readonly money: readonly StructuredMoney[]
  readonly types: ReadonlySet<string>
  readonly orderNumbers: readonly string[]
  /** Things ordered, by name, with how many. */
  readonly ordered: readonly { readonly name: string; readonly quantity: number }[]
}

const AMOUNTS: ReadonlySet<string> = new Set([
  'price',
  'lowPrice',
  'highPrice',
  'minPrice',
  'maxPrice',
  'totalPrice',
  'discount',
  'value',
])
const NESTED_AMOUNTS: ReadonlySet<string> = new Set([
  'totalPaymentDue',
  'minimumPaymentDue',
  'shippingRate',
  'totalPrice',
])
const DECIMAL = /^-?\d+(?:\.\d+)?$/
const MOST_VALUES = 20_000
const CODE = /^[A-Z]{3}$/

/**
 * Reads the amounts out of parsed JSON-LD: objects, arrays, `@graph`, nested specifications, numbers or texts. The price
 * rule of schema.org: `.` as decimal mark, no grouping, an ISO 4217 code in `priceCurrency`.
 *
 * @example readStructured({'@type': 'Offer', price: '55.00', priceCurrency: 'USD'}).money[0]?.amount // '55.00'
 */
export function readStructured(value: unknown): StructuredData {
  const money: StructuredMoney[] = []
  const types = new Set<string>()
  const orderNumbers: string[] = []
  const ordered: { name: string; quantity: number }[] = []
  // A list, not recursion: hostile data can nest as deep as it likes.
  const open: { value: unknown; path: string; outer: string | null; currency: string | null }[] = [
    { value, path: '', outer: null, currency: null },
  ]
  for (let count = 0; open.length > 0 && count < MOST_VALUES; count += 1) {
    const at = open.shift()
    if (!at) break
    if (Array.isArray(at.value)) {
      at.value.forEach((each: unknown, index) => {
        open.push({ ...at, value: each, path: `${at.path}[${index}]` })
      })
      continue
    }
    if (!isRecord(at.value)) continue
    const type = typeOf(at.value)
    if (type) types.add(type)
    const currency = currencyOf(at.value) ?? at.currency
    const outer = at.outer ?? (type === 'ItemList' || type === 'WebPage' ? null : type)
    const number = textOf(at.value.orderNumber) ?? textOf(at.value.confirmationNumber)
    if (number && (outer === 'Order' || outer === 'Invoice')) orderNumbers.push(number)
    if (type === 'OrderItem' || (outer === 'Order' && type === 'Product')) addOrdered(at.value, ordered)
    for (const [property, inner] of Object.entries(at.value)) {
      const path = `${at.path}/${property}`
      const amount = AMOUNTS.has(property) || NESTED_AMOUNTS.has(property) ? amountOf(inner, currency) : null
      if (amount !== null && (property !== 'value' || currency !== null)) {
        money.push({ path, type, outer, property, amount: amount.amount, currency: amount.currency ?? currency })
      } else if (typeof inner === 'object') {
        open.push({ value: inner, path, outer, currency: null })
      }
    }
  }
  return { money, types, orderNumbers, ordered }
}

function addOrdered(value: Thing, ordered: { name: string; quantity: number }[]): void {
  const item = isRecord(value.orderedItem) ? value.orderedItem : value
  const name = textOf(item.name)
  const quantity = Number(textOf(value.orderQuantity) ?? '1')
  if (name && Number.isFinite(quantity) && ordered.length < 200) ordered.push({ name, quantity })
}

// Named, so that a property reads as one: `value.orderNumber`.
interface Thing {
  readonly [property: string]: unknown
  readonly orderNumber?: unknown
  readonly confirmationNumber?: unknown
  readonly orderedItem?: unknown
  readonly orderQuantity?: unknown
  readonly name?: unknown
}

function isRecord(value: unknown): value is Thing {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function typeOf(value: Thing): string | null {
  const type = value['@type']
  const name: unknown = Array.isArray(type) ? type[0] : type
  return typeof name === 'string' ? name.replace(/^.*[/#:]/u, '') : null
}

function textOf(value: unknown): string | null {
  if (isRecord(value) && '@value' in value) return textOf(value['@value'])
  if (typeof value === 'number') return Number.isFinite(value) ? String(value) : null
  return typeof value === 'string' && value.trim() !== '' ? value.trim() : null
}

function currencyOf(value: Thing): string | null {
  for (const name of ['priceCurrency', 'currency', 'discountCurrency']) {
    const code = textOf(value[name])?.toUpperCase()
    if (code && CODE.test(code)) return code
  }
  return null
}

/** A machine value by the price rule; a price text where a shop wrote one instead (`$750`). */
export function amountOf(value: unknown, currency: string | null): { amount: string; currency: string | null } | null {
  const text = textOf(value)
  if (text === null || text.length > 60) return null
  if (DECIMAL.test(text)) return { amount: text, currency: null }
  // `10-` and `1-0` are no amounts here, whatever a price text may mean by them.
  if (typeof value === 'number' || /\d\s*[-–]/u.test(text)) return null
  const tokens = lex(text)
  const [number, ...others] = tokens.filter((token) => token.kind === 'number')
  const marks = tokens.flatMap((token) => (token.kind !== 'number' && token.money ? [token.money] : []))
  if (!number || others.length > 0 || marks.length + 1 < tokens.length) return null
  const fits = currency !== null && marks.every((mark) => mark.codes.includes(currency))
  const [only, ...more] = marks[0]?.codes ?? []
  const own = fits ? currency : more.length === 0 ? (only ?? null) : null
  const amount = amountOfNumber(number.text, own, null)
  return amount === null ? null : { amount, currency: marks.length > 0 ? own : currency }
}
