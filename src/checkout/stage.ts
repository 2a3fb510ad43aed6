import type { Control } from './controls.ts'
import { attribute, isInput, nearest, titleOf } from './dom.ts'
import { type Meaning, meaningOf } from './label.ts'
import type { MachineValues } from './machine-values.ts'
import type { PageText } from './page-text.ts'
import type { Stage } from './reading.ts'
import type { Sight } from './sight.ts'
import type { Stream } from './stream.ts'
import type { Vocabulary } from './vocabulary.ts'
import { plain } from './words.ts'

/** What speaks for a stage, apart from the total. */
export interface StageSigns {
  readonly url: Stage | 'history' | null
  readonly headings: ReadonlySet<'cart' | 'checkout' | 'thanks' | 'history'>
  /** Thanks in a sentence or heading, in words long enough to mean an order. */
  readonly thanked: boolean
  readonly payment: boolean
  readonly address: boolean
  readonly terms: boolean
  readonly pays: boolean
  readonly buys: boolean
  readonly completes: boolean
  readonly toCheckout: boolean
  readonly addsToCart: boolean
  readonly product: boolean
  readonly orderData: boolean
  /** The page has words for a sum to be paid, with or without an amount ("Total to pay" above a picture). */
  readonly namesTotal: boolean
}

// Words of addresses, in the languages whose shops translate them. The last one in the path counts: `/checkout/cart`.
const PATHS: readonly (readonly [Stage | 'history', RegExp])[] = [
  [
    'confirmation',
    /thank[-_]?you|thanks|order[-_]?(?:received|confirm(?:ed|ation)|complete|success|placed)|confirmation|receipt|(?:checkout|order|payment)\/(?:success|complete|done|finish)|merci|danke|bestaetigung|bestellbestaetigung|bestaetigt|gracias|bedankt|remerciement/,
  ],
  [
    'history',
    /order[-_]?history|\/orders\b|my[-_]?orders|mes[-_]commandes|historique|meine[-_]bestellungen|mis[-_]pedidos/,
  ],
  [
    'cart',
    /(?:shopping[-_]?)?(?:cart|basket|bag)\b|panier|warenkorb|einkaufswagen|winkelwagen|winkelmand|carrito|cesta|carrello/,
  ],
  [
    'checkout',
    /check[-_]?out|payment|\bpay\b|paiement|commande\b|kasse|zahlung|bezahlen|afrekenen|caisse|bestellen|bestellung|order[-_]?review|pago|finalizar|cassa|kassa|onepage|billing/,
  ],
  ['product', /\/(?:products?|produits?|produkte?|item|articles?|artikel|producto|dp|p)\//],
]

/** The stage that the words of an address speak for; of several the last in the path. */
export function stageOfUrl(url: string): Stage | 'history' | null {
  let path = ''
  try {
    const parsed = new URL(url)
    path = decodeURIComponent(`${parsed.pathname}${parsed.hash}`).toLowerCase()
  } catch {
    path = url.toLowerCase().replace(/^[a-z]+:\/\/[^/]*/, '')
  }
  let best: { stage: Stage | 'history'; at: number } | null = null
  for (const [stage, pattern] of PATHS) {
    for (const match of path.matchAll(new RegExp(pattern, 'g'))) {
      if (!best || match.index > best.at) best = { stage, at: match.index }
    }
  }
  return best?.stage ?? null
}

export interface StageContext {
  readonly document: Document
  readonly url: string
  readonly page: PageText
  readonly stream: Stream
  readonly words: Vocabulary
  readonly sight: Sight
  readonly controls: readonly Control[]
  readonly machine: MachineValues
}

const MOST_HEADINGS = 60

/** Gathers the signs of one page. */
export function readStageSigns(context: StageContext): StageSigns {
  const { page, words, sight, controls, machine } = context
  const headings = new Set<'cart' | 'checkout' | 'thanks' | 'history'>()
  const texts = [
    titleOf(context.document),
    ...page.headings
      .slice(0, MOST_HEADINGS)
      .filter((each) => sight.seen(each) !== 'gone')
      .map((each) => textOf(page, each)),
  ]
  for (const text of texts) {
    if (text.length <= 120) for (const kind of words.stages.longest(plain(text)).keys()) headings.add(kind)
  }
  const kinds = new Set(controls.map((control) => control.kind))
  const { types } = machine
  return {
    url: stageOfUrl(context.url),
    headings,
    thanked: isThanked(context, texts.slice(1)),
    payment: hasPayment(page, sight),
    address: page.fields.some((field) => ADDRESS.test(attribute(field, 'autocomplete') ?? '')),
    terms: hasTerms(page, words),
    pays: kinds.has('pays'),
    buys: kinds.has('buys'),
    completes: kinds.has('completes'),
    toCheckout: controls.some((control) => control.toCheckout),
    addsToCart: kinds.has('addToCart'),
    product: types.has('og:product') || (types.has('Product') && !types.has('Order') && !types.has('Invoice')),
    orderData: types.has('Order') || types.has('Invoice'),
    namesTotal: kinds.has('pays') && namesTotal(context),
  }
}

const SUMS: ReadonlySet<Meaning> = new Set(['dueNow', 'payable', 'grandTotal', 'total'])
const ADDRESS = /\b(?:street-address|address-line[123]|postal-code|address-level[1-4])\b/
const CARD = /\bcc-(?:number|csc|exp|name)\b/
const PAYMENT_NAMES =
  /pay(?:ment)?[-_ ]?(?:method|type|option)|payment|zahlung|paiement|\bcard[-_]?(?:number|cvc|expiry)|iban|betaal|pago/i

function hasPayment(page: PageText, sight: Sight): boolean {
  const field = page.fields.some((each) => {
    if (CARD.test(attribute(each, 'autocomplete') ?? '')) return true
    const names = `${attribute(each, 'name') ?? ''} ${attribute(each, 'id') ?? ''}`
    return isInput(each) && PAYMENT_NAMES.test(names)
  })
  // Card fields often live in a frame of another origin, which can be known by its title or name alone.
  const frame = page.frames.some((each) => {
    const named = `${attribute(each, 'title') ?? ''} ${attribute(each, 'name') ?? ''}`
    return (
      /\b(?:card|payment|pay|wallet|karte|zahlung|carte|paiement|tarjeta|kaart)/i.test(named) &&
      sight.seen(each) !== 'gone'
    )
  })
  return field || frame
}

function namesTotal({ stream, words, sight }: StageContext): boolean {
  return stream.items.some((item) => {
    if (item.kind !== 'words' || item.text.length > 40) return false
    const meaning = meaningOf(item.text, words)
    return meaning !== null && SUMS.has(meaning) && sight.seen(item.box.element) === 'shown'
  })
}

function hasTerms(page: PageText, words: Vocabulary): boolean {
  return page.fields.some((field) => {
    if (!isInput(field) || field.type !== 'checkbox') return false
    const id = attribute(field, 'id')
    const label = (id ? page.labelFor.get(id) : undefined) ?? nearest(field, 'label')
    const text = plain((label?.textContent ?? attribute(field, 'aria-label') ?? '').slice(0, 400))
    return words.terms.first(text) !== null
  })
}

function textOf(page: PageText, element: Element): string {
  const box = page.boxOf.get(element)
  return box
    ? page.leaves
        .slice(box.from, Math.min(box.to, box.from + 12))
        .map((leaf) => leaf.text)
        .join(' ')
    : ''
}

/** "Thank you for your order" anywhere; a bare "thank you" only as a heading. */
function isThanked({ stream, words, sight }: StageContext, headings: readonly string[]): boolean {
  const thanks = (text: string) => words.stages.longest(plain(text)).get('thanks')
  if (headings.some((text) => text.length <= 120 && thanks(text))) return true
  let looked = 0
  for (const item of stream.items) {
    if (item.kind !== 'words') continue
    looked += 1
    if (looked > 200) return false
    const hit = thanks(item.text.slice(0, 160))
    if (hit && hit.length > 12 && hit.at < 40 && sight.seen(item.box.element) === 'shown') return true
  }
  return false
}

/**
 * Where the page stands. Never by one sign alone: a page titled "order confirmation" may come before ordering, a cart's
 * link can say "order", a product page has a "buy now".
 *
 * @param totalShown whether a total to be paid was found on the page
 */
export function decideStage(signs: StageSigns, totalShown: boolean, hasNumber: boolean, hasItems: boolean): Stage {
  const paysHere = signs.payment || signs.terms
  const orders = signs.pays || ((signs.buys || signs.completes) && (paysHere || signs.url === 'checkout'))
  const said = signs.thanked || signs.headings.has('thanks')
  // Nothing left to press, and thanks, an address, or an order's data with a number: the order is placed.
  if (!(orders && (paysHere || totalShown)) && !signs.payment) {
    if (said && (signs.url === 'confirmation' || hasNumber || signs.thanked)) return 'confirmation'
    if (signs.url === 'confirmation' && (hasNumber || signs.orderData)) return 'confirmation'
    if (signs.orderData && hasNumber && !signs.headings.has('history') && signs.url !== 'history') return 'confirmation'
  }
  if (signs.headings.has('history') && !orders && !signs.toCheckout) return 'other'
  if (signs.url === 'history' && !orders) return 'other'
  const checkoutSigns = [
    signs.payment,
    signs.terms,
    signs.address,
    signs.url === 'checkout',
    signs.headings.has('checkout'),
  ].filter(Boolean)
  if (orders && (paysHere || signs.url === 'checkout' || (signs.pays && (totalShown || signs.namesTotal))))
    return 'checkout'
  if (isProduct(signs, totalShown, hasItems)) return 'product'
  if (signs.url === 'cart' && !signs.payment) return 'cart'
  if (signs.payment || signs.url === 'checkout' || (checkoutSigns.length >= 2 && !signs.toCheckout)) return 'checkout'
  if (signs.headings.has('checkout') && !signs.headings.has('cart') && totalShown && !signs.toCheckout)
    return 'checkout'
  if (signs.headings.has('cart') && (totalShown || hasItems || signs.toCheckout)) return 'cart'
  if (totalShown && (signs.toCheckout || hasItems || signs.url === null)) return 'cart'
  return 'other'
}

function isProduct(signs: StageSigns, totalShown: boolean, hasItems: boolean): boolean {
  if (signs.payment || signs.terms || signs.url === 'checkout' || signs.url === 'cart') return false
  if (signs.url === 'product') return true
  if (signs.product && (signs.addsToCart || signs.buys || !totalShown)) return true
  return signs.addsToCart && !totalShown && !signs.toCheckout && !(hasItems && signs.headings.has('cart'))
}
