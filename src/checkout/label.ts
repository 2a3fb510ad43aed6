import type { LabelKind } from './lexicon/index.ts'
import { labelKinds, type Vocabulary } from './vocabulary.ts'
import { type Hit, plain } from './words.ts'

/** `included`: the figure is contained in another ("of which VAT"), and adds nothing. */
export type Meaning = LabelKind | 'included'

const TOTALS: ReadonlySet<LabelKind> = new Set(['total', 'grandTotal'])
const SUMS: ReadonlySet<Meaning> = new Set(['total', 'grandTotal', 'payable'])
const PARTS: readonly LabelKind[] = ['shipping', 'tax', 'discount', 'credit', 'fee', 'tip']
const CONTAINED: readonly LabelKind[] = ['tax', 'shipping', 'fee']
const LONGEST_LABEL = 120

/**
 * What a label says its figure is, or null when it says nothing known. Brackets and counts are no part of a label;
 * neither is what follows "incl." or "excl.", but the latter makes a total a sum without something.
 *
 * @example meaningOf('Total (incl. VAT):', words) // 'total'
 */
export function meaningOf(label: string, words: Vocabulary): Meaning | null {
  const text = plain(label.slice(-LONGEST_LABEL))
  // Most texts of a page have no known word at all.
  if (words.labels.all(text).length === 0) return remarkAlone(text, words)
  if (endsInBound(text, words)) return 'aside'
  const outside = text.replace(/[([（][^)\]）]*[)\]）]?/gu, ' ')
  const whole = outside.trim() === '' ? text.replace(/[()[\]（）]/gu, ' ') : outside
  // "4 payments of" must not lose what it counts.
  if (bestHit(whole, words)?.kind === 'aside') return 'aside'
  const bare = stripCounts(whole)
  const meaning = bare === '' ? null : cutRemarks(bare, words)
  return meaning !== null && SUMS.has(meaning) && saysWithout(text, words) ? 'net' : meaning
}

/** "Total (excl. VAT)", "Razem (netto)": the brackets say that the sum leaves something out. */
function saysWithout(text: string, words: Vocabulary): boolean {
  for (const [, inside = ''] of text.matchAll(/[([（]([^)\]）]*)/gu)) {
    const remark = inside.trim()
    const found = words.labels.longest(remark)
    // Finnish shops that sell to firms say `(alv 0 %)` for a sum without its tax.
    const untaxed = found.has('tax') && /(?<![\d.,])0\s?%/u.test(remark)
    if (untaxed || words.excluded.first(remark)?.at === 0 || found.has('net')) return true
  }
  return false
}

/** "Including", "excl.": a remark that names nothing, on what stands before it or behind. */
function remarkAlone(text: string, words: Vocabulary): Meaning | null {
  const start = text.replace(/^[^\p{L}]+/u, '')
  if (words.included.begins(start)) return 'included'
  return words.excluded.begins(start) ? 'net' : null
}

/** "Free shipping from": the amount that follows is a threshold. */
function endsInBound(text: string, words: Vocabulary): boolean {
  const end = text.replace(/[\s\p{P}\p{S}]+$/u, '')
  // The last words are enough; the whole text may have the word anywhere.
  const tail = end.slice(-40)
  for (const hit of words.bounds.all(tail)) if (hit.at + hit.length === tail.length && hit.at > 0) return true
  return false
}

/** `3 items`, `(2)`, `19 %`: how many, not what. Kept when nothing else is left. */
function stripCounts(text: string): string {
  const without = text
    .replace(/\d+(?:[.,]\d+)?\s*%/gu, ' ')
    .replace(/(?<![\p{L}\d])[1-9]\d{0,2}\s+\p{L}+/gu, ' ')
    .replace(/^[\s\p{P}\p{S}]+|[\s\p{P}\p{S}]+$/gu, '')
    .replace(/\s+/gu, ' ')
  if (/\p{L}/u.test(without)) return without
  return text
    .replace(/\d+(?:[.,]\d+)?\s*%?/gu, ' ')
    .replace(/\s+/gu, ' ')
    .trim()
}

function cutRemarks(text: string, words: Vocabulary): Meaning | null {
  const whole = bestHit(text, words)
  // Nothing in it is known: not even a remark would say what the figure is.
  if (!whole) return null
  const plus = words.plus.first(text)
  if (plus?.at === 0) return bestKind(text.slice(plus.length).trim(), words)
  const included = words.included.first(text)
  const excluded = earlier(words.excluded.first(text), plus)
  // A known phrase that holds the word itself wins over cutting there: "total before tax", "after store credit".
  if (covers(whole.hit, included ?? excluded)) return whole.kind
  if (excluded && (!included || excluded.at < included.at)) return withoutSomething(text, excluded, words)
  if (included) return withSomething(text, included, words)
  return refine(text, whole.kind, words)
}

function earlier(a: Hit | null, b: Hit | null): Hit | null {
  return a && b ? (a.at <= b.at ? a : b) : (a ?? b)
}

function covers(whole: Hit, part: Hit | null): boolean {
  return part !== null && whole.at <= part.at && whole.at + whole.length >= part.at + part.length
}

function withoutSomething(text: string, at: Hit, words: Vocabulary): Meaning | null {
  const head = bestKind(text.slice(0, at.at).trim(), words)
  if (head === null) return 'net'
  return TOTALS.has(head) || head === 'payable' || head === 'tax' ? 'net' : head
}

function withSomething(text: string, at: Hit, words: Vocabulary): Meaning | null {
  const head = text.slice(0, at.at).trim()
  if (head === '') return 'included'
  const named = words.labels.longest(head)
  // "VAT included" is a remark as a whole; "total VAT included" and "total, postage included" are totals with one.
  for (const part of CONTAINED) {
    const hit = named.get(part)
    if (!hit || hit.at + hit.length !== head.length) continue
    const rest = bestKind(head.slice(0, hit.at).trim(), words)
    if (rest !== null && SUMS.has(rest)) return rest
    if (part === 'tax') return 'included'
  }
  return bestKind(head, words)
}

function bestKind(text: string, words: Vocabulary): LabelKind | null {
  const best = text === '' ? null : bestHit(text, words)
  return best ? refine(text, best.kind, words) : null
}

function bestHit(text: string, words: Vocabulary): { kind: LabelKind; hit: Hit } | null {
  let best: { kind: LabelKind; hit: Hit } | null = null
  const hits = words.labels.longest(text)
  for (const kind of labelKinds) {
    const hit = hits.get(kind)
    if (hit && (!best || hit.length > best.hit.length)) best = { kind, hit }
  }
  return best
}

/** "Tax total" is a tax, "discount amount" a discount: a bare total beside a part's name is that part's. */
function refine(text: string, kind: LabelKind, words: Vocabulary): LabelKind {
  if (kind !== 'total') return kind
  const hits = words.labels.longest(text)
  return PARTS.find((part) => hits.has(part)) ?? kind
}

/** Whether words right behind an amount make it one of many: `/month`, `each`, `× 4`. */
export function saysRate(text: string, words: Vocabulary): boolean {
  const near = plain(text.slice(0, 60)).replace(/^[\s*†]+/u, '')
  const rate = words.rates.first(near)
  return /^[x×]\s?\d/u.test(near) || (rate !== null && rate.at <= 1)
}

/** "2 items", "(3)": how many, and perhaps of what, but no word for a sum. */
export function isCount(text: string): boolean {
  return /^[^\p{L}\p{N}]*\d+(?:[^\p{L}\p{N}]+\p{L}+)?[^\p{L}\p{N}]*$/u.test(text)
}
