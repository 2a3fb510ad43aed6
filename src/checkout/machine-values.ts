import { attribute, isInput, selectNamed } from './dom.ts'
import { type MachineMoney, MOST_MARKED, pick, readMicrodata } from './microdata.ts'
import { describedIn, readRdfa } from './rdfa.ts'
import type { EvidenceSource } from './reading.ts'
import { amountOf, readStructured, type StructuredData } from './structured-money.ts'

/** Everything a page states for machines. None of it is visible, so none of it is ever the total by itself. */
export interface MachineValues extends Omit<StructuredData, 'money'> {
  readonly money: readonly MachineMoney[]
  /** Every element it was looked for in. */
  readonly found: readonly Element[]
  /** Some of it stands in a form's fields, whose values change unheard. */
  readonly tokens: boolean
  /** Currencies the page names for machines, the surest first: its own order, then offers and metadata. */
  readonly currencies: readonly { readonly code: string; readonly source: EvidenceSource; readonly label: string }[]
}

const LONGEST_JSON = 500_000

const META_AMOUNT = /^(?:product:(?:sale_)?price:amount|og:price:amount)$/

const META_CURRENCY = /^(?:product:(?:sale_)?price:currency|og:price:currency)$/

const TOKENS = /^transaction-(?:amount|currency)$/

/** Reads JSON-LD, microdata, RDFa, price metadata and autofill tokens. Broken data is passed over. */
export function readMachineValues(document: Document): MachineValues {
  const types = new Set<string>()
  const money: MachineMoney[] = []
  const orderNumbers: string[] = []
  const ordered: { name: string; quantity: number }[] = []
  const scripts = named(document, 'script', 'type')
  for (const script of scripts) {
    if (!/^\s*application\/ld\+json\b/i.test(attribute(script, 'type') ?? '')) continue
    const data = readStructured(parseJson(script.textContent ?? ''))
    for (const each of data.money) money.push({ ...each, source: 'json-ld', element: script })
    for (const type of data.types) types.add(type)
    orderNumbers.push(...data.orderNumbers)
    ordered.push(...data.ordered)
  }
  const fields = named(document, 'input', 'autocomplete').filter(isInput)
  const tokens = fields.filter((field) => tokensOf(field).some((each) => TOKENS.test(each)))
  // One look over the page for both ways of marking; most pages have neither.
  const stated = pick(document, '[itemscope], [itemprop], [typeof]')
  const says = (name: string) => (element: Element) => attribute(element, name) !== null
  const marked = stated.filter((element) => says('itemscope')(element) || says('itemprop')(element))
  const metas = named(document, 'meta', 'content')
  const described = stated.some(says('typeof')) ? describedIn(document) : []
  money.push(...readMicrodata(document, types, orderNumbers, marked), ...readRdfa(described, types, orderNumbers))
  money.push(...readMeta(metas, types), ...readTokens(tokens))
  return {
    money,
    types,
    orderNumbers,
    ordered,
    currencies: currenciesOf(tokens, money),
    found: [...scripts, ...fields, ...marked, ...described, ...metas],
    tokens: tokens.length > 0,
  }
}

function named(document: Document, name: string, withAttribute: string): Element[] {
  return selectNamed(document, name, withAttribute, MOST_MARKED)
}

function parseJson(text: string): unknown {
  if (text.length > LONGEST_JSON) return null
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}

/** Price metadata of a product page. */
function readMeta(metas: readonly Element[], types: Set<string>): MachineMoney[] {
  const stated = metas.map((meta) => ({
    name: attribute(meta, 'property') ?? attribute(meta, 'name') ?? '',
    content: attribute(meta, 'content')?.trim() ?? '',
    meta,
  }))
  if (stated.some(({ name, content }) => name === 'og:type' && content.startsWith('product'))) types.add('og:product')
  const code = stated.find(({ name }) => META_CURRENCY.test(name))?.content.toUpperCase() ?? null
  const currency = code && /^[A-Z]{3}$/.test(code) ? code : null
  const money: MachineMoney[] = []
  for (const { name, content, meta } of stated) {
    const found = META_AMOUNT.test(name) ? amountOf(content, currency) : null
    if (!found) continue
    money.push({
      path: name,
      type: 'Product',
      outer: 'Product',
      property: name,
      amount: found.amount,
      currency: found.currency ?? currency,
      source: 'meta',
      element: meta,
    })
  }
  return money
}

/** Fields that a form marks, for the browser, as the amount and currency of the payment (HTML autofill tokens). */
function readTokens(fields: readonly HTMLInputElement[]): MachineMoney[] {
  const valueWith = (token: string): string | undefined =>
    fields.find((field) => tokensOf(field).includes(token))?.value.trim()
  const code = valueWith('transaction-currency')?.toUpperCase() ?? null
  const currency = code && /^[A-Z]{3}$/.test(code) ? code : null
  const field = fields.find((each) => tokensOf(each).includes('transaction-amount'))
  const found = field ? amountOf(field.value, currency) : null
  if (!field || !found) return []
  return [
    {
      path: 'transaction-amount',
      type: null,
      outer: 'Order',
      property: 'transaction-amount',
      amount: found.amount,
      currency: found.currency ?? currency,
      source: 'autofill-token',
      element: field,
    },
  ]
}

function tokensOf(field: Element): string[] {
  return (attribute(field, 'autocomplete') ?? '').toLowerCase().split(/\s+/u)
}

function currenciesOf(
  fields: readonly HTMLInputElement[],
  money: readonly MachineMoney[],
): MachineValues['currencies'] {
  const own = fields
    .filter((field) => tokensOf(field).includes('transaction-currency'))
    .map((field) => ({
      code: field.value.trim().toUpperCase(),
      source: 'autofill-token' as const,
      label: 'transaction-currency',
    }))
    .filter(({ code }) => /^[A-Z]{3}$/.test(code))
  const rank = ({ outer }: MachineMoney): number => (outer === 'Order' || outer === 'Invoice' ? 0 : 1)
  const stated = [...money]
    .sort((a, b) => rank(a) - rank(b))
    .flatMap((each) => (each.currency ? [{ code: each.currency, source: each.source, label: each.path }] : []))
  return [...own, ...stated]
}
