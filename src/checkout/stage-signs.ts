import type { Box } from './box.ts'
import type { Control } from './controls.ts'
import { attribute, isInput, titleOf } from './dom.ts'
import type { Meaning } from './label.ts'
import type { MachineValues } from './machine-values.ts'
import { notesOf } from './notes.ts'
import { trait } from './page-elements.ts'
import { labelOf, type PageText } from './page-text.ts'
import { saysPayment } from './payment-frame.ts'
import type { Stage } from './reading.ts'
import type { Sight } from './sight.ts'
import { stageOfUrl } from './stage-url.ts'
import type { Stream } from './stream.ts'
import { oncePerText, type Vocabulary } from './vocabulary.ts'
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
      .filter((each) => sight.seen(each.element) !== 'gone')
      .map((each) => textOf(page, each)),
  ]
  for (const text of texts) {
    if (text.length <= 120) for (const kind of words.stages.longest(plain(text)).keys()) headings.add(kind)
  }
  // What says nothing of itself in an attribute is not asked for one.
  const named = page.fields.filter((box) => box.traits & trait.attributed)
  const kinds = new Set(controls.map((control) => control.kind))
  const { types } = machine
  return {
    url: stageOfUrl(context.url),
    headings,
    thanked: isThanked(context, texts.slice(1)),
    payment: hasPayment(page, named, sight),
    address: named.some(({ element }) => ADDRESS.test(attribute(element, 'autocomplete') ?? '')),
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

function hasPayment(page: PageText, named: readonly Box[], sight: Sight): boolean {
  const field = named.some(({ element: each }) => {
    if (CARD.test(attribute(each, 'autocomplete') ?? '')) return true
    const names = `${attribute(each, 'name') ?? ''} ${attribute(each, 'id') ?? ''}`
    return isInput(each) && PAYMENT_NAMES.test(names)
  })
  // Card fields often live in a frame of another origin, which can be known by its title or name alone.
  const frame = page.frames.some(({ element: each }) => {
    const named = `${attribute(each, 'title') ?? ''} ${attribute(each, 'name') ?? ''}`
    return saysPayment(named) && sight.seen(each) !== 'gone'
  })
  return field || frame
}

function namesTotal({ stream, words, sight }: StageContext): boolean {
  return stream.items.some((item) => {
    if (item.kind !== 'words' || item.text.length > 40) return false
    const { meaning } = notesOf(item, words)
    return meaning !== null && SUMS.has(meaning) && sight.seen(item.box.element) === 'shown'
  })
}

function hasTerms(page: PageText, words: Vocabulary): boolean {
  return page.fields.some((box) => {
    if (box.name !== 'input') return false
    const field = box.element
    if (!isInput(field) || field.type !== 'checkbox') return false
    const label = labelOf(page, box)
    const text = plain((label?.element.textContent ?? attribute(field, 'aria-label') ?? '').slice(0, 400))
    return words.terms.first(text) !== null
  })
}

function textOf(page: PageText, box: Box): string {
  return page.leaves
    .slice(box.from, Math.min(box.to, box.from + 12))
    .map((leaf) => leaf.text)
    .join(' ')
}

const thanksIn = oncePerText((text, words) => words.stages.longest(plain(text)).get('thanks') ?? null)

/** "Thank you for your order" anywhere; a bare "thank you" only as a heading. */
function isThanked({ stream, words, sight }: StageContext, headings: readonly string[]): boolean {
  const thanks = (text: string) => thanksIn(text, words)
  if (headings.some((text) => text.length <= 120 && thanks(text))) return true
  let looked = 0
  for (const item of stream.items) {
    if (item.kind !== 'words') continue
    looked += 1
    if (looked > 200) return false
    const hit = thanks(item.text.slice(0, 160))
    if (
      hit &&
      (hit.length > 12 || saysAll(item.text, hit.length)) &&
      hit.at < 40 &&
      sight.seen(item.box.element) === 'shown'
    )
      return true
  }
  return false
}

/** "下单成功", "주문이 완료되었습니다": four signs can say it all in such scripts, where they are all that is said. */
function saysAll(text: string, length: number): boolean {
  const letters = text.replace(
    /[^\p{Script=Han}\p{Script=Hangul}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Thai}]/gu,
    '',
  )
  return length >= 4 && letters.length <= length + 4
}
