/**
 * How a bank's text is compared with a shop. Banks shorten: `CRVD BOOKS 0042 TORONTO ON`, `CORVIDBOO*A12-99`. Each word
 * of the shop looks for itself in the text: whole (100), cut off at the end (at least 3 letters), run together with its
 * neighbours, with letters left out (first letter kept, at least 3 left, in order), or with one letter wrong. Words count
 * by their length. It is our own measure, made for this one question; no standard lies behind it.
 */
export interface MerchantText {
  /** Words of at least two letters, places and payment words left out. */
  readonly words: readonly string[]
  /** The words with spaces between: two texts with the same key are alike in everything but codes. */
  readonly key: string
  /** All of it without spaces. */
  readonly joined: string
  /** Order numbers and the like: runs with a digit, of five signs at least, for exact comparison. */
  readonly codes: readonly string[]
}

// Words of banks and of addresses that tell nothing about the shop.
const NOISE = new Set(
  (
    'the and of de la le les der die das und card carte karte debit credit visa mastercard maestro pos purchase achat ' +
    'payment paiement zahlung kauf buy sale recurring contactless online web internet www http https com net org shop ' +
    'store example localhost ref order bestellung commande no nr ltd inc llc gmbh co sarl'
  ).split(' '),
)
/** Payment services that stand before the shop's own name, as in `SQ *CORVID`; common practice, no source. */
const PREFIX = /^(?:sq|sp|pp|tst|paypal|stripe|sumup|zettle|iz|py)\s*\*\s*/

/** Prepares a text of a statement, or a shop's host name, for comparison. */
export function merchantText(text: string): MerchantText {
  const plain = text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(PREFIX, '')
    .replace(/\bwww\./g, '')
  const codes = (plain.match(/[a-z0-9][a-z0-9-]{3,}[a-z0-9]/g) ?? []).filter((code) => /\d/.test(code))
  const all = plain.split(/[^\p{L}]+/u).filter((word) => word.length >= 2)
  const kept = all.filter((word) => !NOISE.has(word))
  const words = kept.length > 0 ? kept : all
  return { words, key: words.join(' '), joined: words.join(''), codes }
}

/** Prepares a host name: the ending that names no shop (`.ca`, `.co.uk`, `.example`) is left out. */
export function shopText(host: string): MerchantText {
  const labels = host
    .toLowerCase()
    .replace(/^www\./, '')
    .split('.')
  while (labels.length > 1 && (labels.at(-1)?.length ?? 0) <= 3) labels.pop()
  const named = labels.length > 1 && ENDINGS.has(labels.at(-1) ?? '') ? labels.slice(0, -1) : labels
  return merchantText(named.join(' '))
}

const ENDINGS = new Set(['example', 'shop', 'store', 'online', 'info', 'test', 'localhost'])

/** How much a statement's text looks like a shop: 0 (nothing) to 100 (every word is there). */
export function likeness(text: MerchantText, shop: MerchantText): number {
  if (shop.joined === '' || text.joined === '') return 0
  let found = 0
  let length = 0
  for (const word of shop.words) {
    found += word.length * wordLikeness(word, text)
    length += word.length
  }
  const byWords = Math.round(found / length)
  return Math.max(byWords, joinedLikeness(shop.joined, text))
}

function wordLikeness(word: string, text: MerchantText): number {
  let best = 0
  for (const other of text.words) {
    if (other === word) return 100
    if (other[0] !== word[0]) continue
    if (word.startsWith(other) && other.length >= 3)
      best = Math.max(best, 80 + Math.round((15 * other.length) / word.length))
    else if (other.startsWith(word) && word.length >= 4) best = Math.max(best, 90)
    else if (word.length >= 5 && isOneOff(word, other)) best = Math.max(best, 85)
    else if (other.length >= 3 && isWithin(other, word))
      best = Math.max(best, 55 + Math.round((30 * other.length) / word.length))
  }
  return best
}

/** Names run together and cut off: `corvidboo` for corvid books. */
function joinedLikeness(shop: string, text: MerchantText): number {
  if (shop.length >= 5 && text.joined.includes(shop)) return 100
  let common = 0
  while (common < shop.length && shop[common] === text.joined[common]) common++
  return common >= 5 ? Math.min(95, 50 + Math.round((50 * common) / shop.length)) : 0
}

/** Whether the letters of `short` stand in `long` in this order, with the first letter kept. */
function isWithin(short: string, long: string): boolean {
  let at = 0
  for (const letter of long) if (letter === short[at]) at++
  return at === short.length
}

/** One letter other, missing or too many. */
function isOneOff(a: string, b: string): boolean {
  if (Math.abs(a.length - b.length) > 1) return false
  let i = 0
  while (i < a.length && i < b.length && a[i] === b[i]) i++
  const [restA, restB] = [a.slice(i), b.slice(i)]
  return restA.slice(1) === restB.slice(1) || restA.slice(1) === restB || restA === restB.slice(1)
}
