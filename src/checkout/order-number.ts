import { attribute, drawnParent, nameOf } from './dom.ts'
import { isFootnote } from './footnote.ts'
import type { Liveness } from './liveness.ts'
import type { PageText } from './page-text.ts'
import type { Sight } from './sight.ts'
import type { Stream } from './stream.ts'
import type { Vocabulary } from './vocabulary.ts'
import { plain } from './words.ts'

/** An order's number, the words that named it, and where it stands. */
export interface FoundNumber {
  readonly number: string
  readonly label: string
  readonly element: Element
}

export interface NumberContext {
  readonly page: PageText
  readonly stream: Stream
  readonly words: Vocabulary
  readonly live: Liveness
  readonly sight: Sight
}

// In scripts without spaces a word is glued to the number: `注文番号：123456です` ends where the script changes.
const LETTER = String.raw`\p{Script=Latin}\p{Script=Cyrillic}\p{Script=Greek}\p{Nd}`
const TOKEN = new RegExp(`[${LETTER}](?:[${LETTER}._/#-]*[${LETTER}])?`, 'gu')
const NOT_A_NUMBER = /^\d{1,2}[./-]\d{1,2}[./-]\d{2,4}$|^\d{4}-\d{2}-\d{2}|^\d{1,2}:\d{2}|^\d+(?:st|nd|rd|th)$/i
// Between a label and its number: `Order number is`, `Bestellnummer lautet`, `n°`.
const FILLER =
  /^(?:[\s:：#№°º.–「『“"\u200e\u200f\u202a-\u202e\u2066-\u2069-]|は|는|은|是|为|為|คือ|n[°º]|(?:is|ist|lautet|est|es|nr|no|n|number|nummer|numéro|je|jest|to|è|é|este|č|e|е|είναι|ir|yra|on|er|är|هو|הוא|है|là|adalah|ialah|huwa|hija|ná)(?![\p{L}\p{Nd}]))*/iu
// "Number" and its like in the languages of the lexicons, accents folded.
const SURE =
  /number|num|nr\b|no\b|n[°º.]|#|id\b|code|ref|nummer|bestatigung|localizador|cislo|\bc\.|kod\b|codice|codigo|szam|azonosito|broj|stevilka|st\.|sifra|numer|номер|код|№|αριθμ|αρ\.|numara|رقم|מספר|מס['׳]|شماره|کد|नंबर|संख्या|आईडी|番号|编号|編號|订单号|訂單號|번호|หมายเลข|เลขที่|\bso\b|\bma don|nomor|numru|uimhir|bestallnings|tilausnumero|numeris|numurs/iu
const LONGEST = 40
// Where the number stands before its word: `10045 számú rendelés`, `100458 numaralı siparişiniz`.
const NUMBER_FIRST =
  /(?<![\p{L}\p{Nd}])([\p{Lu}\p{Nd}-]*\p{Nd}{3,}[\p{Lu}\p{Nd}-]*)(?:\.?\s*(?:számú|sz\.)\s+(?:meg)?rendel|\s+(?:numaralı|no'?lu|nolu)\s+sipariş)/iu

/**
 * The order's number: what follows (or stands under, or beside) words such as "order number". It may be letters only,
 * begin with zeros, carry a prefix, or be split over nodes. Numbers of payments, parcels, customers and telephones are
 * not it, even where they stand nearer to the top.
 */
export function readOrderNumber(context: NumberContext): FoundNumber | null {
  const { stream, words, live } = context
  let best: (FoundNumber & { readonly rank: number }) | null = null
  for (const [index, item] of stream.items.entries()) {
    if (item.kind !== 'words' || item.text.length > 300) continue
    const first = NUMBER_FIRST.exec(item.text)?.[1]
    if (first && live.words(index)) best ??= { number: first, label: item.text, element: item.box.element, rank: 2 }
    const flat = plain(item.text)
    const label = words.orderNumber.longest(flat)
    if (!label) continue
    const other = words.otherNumber.longest(flat)
    // "Payment reference of your order: 991" names the payment: what is named first, or at more length, decides.
    if (other && other.at <= label.at && other.length >= label.length) continue
    if (!live.words(index)) continue
    // "Order" alone can stand before anything; "order number" cannot.
    const sure = SURE.test(flat.slice(label.at, label.at + label.length))
    // A number split over touching nodes may begin in the label's own text: `Order number: INV-` `000` `123`.
    const rest =
      item.text.slice(originalEnd(item.text, flat, label.at + label.length)) + touching(context.page, item.to)
    const number = numberIn(rest, sure)
    const found = number
      ? { number, element: item.box.element }
      : isFiller(rest)
        ? numberBehind(context, item.to, sure)
        : null
    if (!found) continue
    const rank = (sure ? 2 : 0) + (number ? 1 : 0)
    if (!best || rank > best.rank) best = { ...found, label: item.text, rank }
  }
  return best ? { number: best.number, label: best.label, element: best.element } : null
}

/** The text of the nodes that follow a piece of text without any space between. */
function touching(page: PageText, after: number): string {
  let text = ''
  for (let index = after + 1; index <= after + 8; index += 1) {
    const leaf = page.leaves[index]
    if (isFootnote(page.leaves, index)) continue
    if (!leaf || leaf.spaced || leaf.line !== page.leaves[after]?.line) break
    text += leaf.text
  }
  return text
}

/** Folding can change a text's length; then the end is counted from behind. */
function originalEnd(text: string, flat: string, end: number): number {
  return Math.max(0, text.length - (flat.length - end))
}

function isFiller(text: string): boolean {
  return !/[\p{L}\p{Nd}]/u.test(text.replace(FILLER, ''))
}

/** The number at the start of what follows a label; after a weak label only with digits and right behind it. */
function numberIn(text: string, sure: boolean): string | null {
  // A sentence ends: what follows the full stop is about something else.
  // The full stop of `Order no.` ends no sentence.
  const near = (text.replace(/^[\s.:]+/u, '').split(/[.!?](?=\s|$)/u)[0] ?? '').slice(0, 90)
  const start = FILLER.exec(near)?.[0].length ?? 0
  for (const match of near.slice(start).matchAll(TOKEN)) {
    const token = match[0]
    const distance = match.index
    if (distance > (sure ? 60 : 1)) return null
    const named = /[#№]\s*$/u.test(near.slice(0, start + distance))
    const digits = token.replace(/\P{Nd}/gu, '').length
    const shouting = token.length >= 4 && token === token.toUpperCase() && token !== token.toLowerCase()
    if (token.length <= LONGEST && !NOT_A_NUMBER.test(token) && !/\p{Sc}\s*$/u.test(near.slice(0, start + distance))) {
      if (digits >= (sure || named ? 1 : 3)) return token
      if (sure && shouting && digits === 0 && distance <= 2) return token
    }
  }
  return null
}

/** The number in the next place, put together from touching nodes: `INV-` `000` `123`. */
function numberBehind({ page, sight }: NumberContext, after: number, sure: boolean): Omit<FoundNumber, 'label'> | null {
  let text = ''
  let element: Element | null = null
  let line = -1
  for (let index = after + 1; index < page.leaves.length && index <= after + 8; index += 1) {
    const leaf = page.leaves[index]
    if (!leaf) break
    if (isFootnote(page.leaves, index)) continue
    if (text !== '' && (leaf.spaced || leaf.line !== line)) break
    if (sight.seen(leaf.box.element) !== 'shown') continue
    if (text === '' && isFiller(leaf.text)) continue
    if (isPhone(leaf.box.element)) return null
    text += leaf.text
    element ??= leaf.box.element
    line = leaf.line
  }
  const number = text.length <= 60 ? numberIn(text, sure) : null
  // It must begin there: words in front of it would be a label of its own.
  return number && element && text.replace(FILLER, '').startsWith(number) ? { number, element } : null
}

function isPhone(element: Element): boolean {
  for (let at: Element | null = element, step = 0; at && step < 3; at = drawnParent(at), step += 1) {
    if (nameOf(at) === 'a' && (attribute(at, 'href') ?? '').startsWith('tel:')) return true
  }
  return false
}
