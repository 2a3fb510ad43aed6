import type { CurrencyMark } from '../money/currency-names.ts'
import { type Box, commonBox, type Leaf } from './box.ts'
import { type Find, findFigure, type PlacedToken } from './figure.ts'
import type { Notes } from './notes.ts'
import type { Change, PageText } from './page-text.ts'
import { isSeam, placeTokens } from './placed-tokens.ts'

interface Place {
  /** The smallest box around it. */
  readonly box: Box
  /** First and last leaf it stands in. */
  from: number
  to: number
  readonly line: number
  readonly cell: Box | null
}

/** A run of words in one place: a label, a sentence, a heading. */
export interface Words extends Place {
  readonly kind: 'words'
  readonly text: string
  /** What the text says by itself, once somebody asked (see `notes.ts`). */
  notes: Notes | null
}

/** An amount as it stands on the page, before anyone has said what it is or in which money. */
export interface Figure extends Place {
  readonly kind: 'figure'
  /** The number with its own marks: `1.234,50`. */
  readonly number: string
  readonly negative: boolean
  readonly marks: readonly CurrencyMark[]
  /** How it would be taken for money without any currency beside it. */
  readonly bare: 'no' | 'decimal' | 'integer'
  /** As shown, for evidence. */
  readonly text: string
  /** No words share its pieces of text. */
  readonly alone: boolean
  readonly struck: boolean
  readonly hushed: Box | null
  /** The words in the brackets it stands in: `(incl. 5.00 tax)`. Such a figure is a remark on another. */
  readonly remark: string | null
  /** A sign for "about" stands before it: a restatement, not a price. */
  readonly about: boolean
}

export type Item = Words | Figure

/** The page as one line of words and figures, in drawn order. */
export interface Stream {
  readonly items: readonly Item[]
  /** The range of items a box holds: from the first, to one past the last. */
  within(box: Box): readonly [number, number]
}

const LONGEST_WORDS = 400

/** Turns the leaves of a page into words and figures. Linear in the text. */
export function readStream({ leaves }: PageText): Stream {
  const items: Item[] = []
  readInto(items, leaves, 0, leaves.length)
  return { items, within: rangesOf(items, leaves.length) }
}

/**
 * The stream of a page of which some stretches were read again. What is far enough from every change is taken over from
 * the stream before, which must not be used any more.
 */
export function renewStream(before: Stream, { leaves }: PageText, changes: readonly Change[]): Stream {
  const items: Item[] = []
  let taken = 0
  let shift = 0
  const takeOver = (end: number): void => {
    for (; taken < before.items.length; taken += 1) {
      const item = before.items[taken]
      if (!item || item.from >= end) break
      item.from += shift
      item.to += shift
      items.push(item)
    }
  }
  for (let index = 0; index < changes.length; ) {
    const first = changes[index]
    if (!first) break
    let last = first
    const from = seamBefore(leaves, first.from - MARGIN)
    let to = seamBehind(leaves, last.to + MARGIN)
    for (index += 1; index < changes.length; index += 1) {
      const next = changes[index]
      if (!next || seamBefore(leaves, next.from - MARGIN) > to) break
      last = next
      to = Math.max(to, seamBehind(leaves, last.to + MARGIN))
    }
    takeOver(from - shift)
    const oldTo = to - (last.to - last.oldTo)
    while (taken < before.items.length && (before.items[taken]?.from ?? oldTo) < oldTo) taken += 1
    readInto(items, leaves, from, to)
    shift = to - oldTo
  }
  takeOver(Number.POSITIVE_INFINITY)
  return { items, within: rangesOf(items, leaves.length) }
}

// Whether leaves hang together can depend on others of one small box, and a sign may speak for what follows.
const MARGIN = 10

function seamBefore(leaves: readonly Leaf[], index: number): number {
  let at = Math.max(0, index)
  while (at > 0 && !isSeam(leaves, at)) at -= 1
  return at
}

function seamBehind(leaves: readonly Leaf[], index: number): number {
  let at = Math.min(leaves.length, index)
  while (at < leaves.length && !isSeam(leaves, at)) at += 1
  return at
}

/** Adds what the leaves `from` up to, not including, `to` say; the page must fall apart at both ends. */
function readInto(items: Item[], leaves: readonly Leaf[], from: number, to: number): void {
  for (let start = from; start < to; ) {
    let end = start + 1
    while (end < to && !isSeam(leaves, end)) end += 1
    if (end === start + 1) readAlone(items, leaves, start)
    else readTogether(items, leaves, start, end)
    start = end
  }
}

/** A leaf that stands alone says the same wherever it stands. */
function readAlone(items: Item[], leaves: readonly Leaf[], index: number): void {
  const leaf = leaves[index]
  if (!leaf) return
  const { box, line, cut } = leaf
  const { cell } = box
  if (cut.like) {
    const pattern = { box, line, spaced: leaf.spaced, text: cut.like.text, cut: cut.like.cut }
    for (const item of readingOf(pattern))
      if (item.kind === 'figure') items.push(placedAt(item, leaf, index, cut.like.number, leaf.text))
    return
  }
  if (!cut.tokens) {
    if (HAS_WORDS.test(leaf.text))
      items.push({ kind: 'words', text: leaf.text, notes: null, box, from: index, to: index, line, cell })
    return
  }
  for (const item of readingOf(leaf)) {
    if (item.kind === 'words')
      items.push({ kind: 'words', text: item.text, notes: null, box, from: index, to: index, line, cell })
    else items.push(placedAt(item, leaf, index, item.number, item.text))
  }
}

/** What a leaf reads as alone, worked out once for each distinct text. */
function readingOf(leaf: Leaf): readonly Item[] {
  const { cut } = leaf
  if (!cut.alone) {
    const made: Item[] = []
    readTogether(made, [leaf], 0, 1)
    cut.alone = made
  }
  return cut.alone
}

function placedAt(figure: Figure, { box, line }: Leaf, index: number, number: string, text: string): Figure {
  const { negative, marks, bare, alone, remark, about } = figure
  const { cell, struck, hushed } = box
  return {
    kind: 'figure',
    box,
    from: index,
    to: index,
    line,
    cell,
    number,
    negative,
    marks,
    bare,
    text,
    alone,
    struck,
    hushed,
    remark,
    about,
  }
}

const HAS_WORDS = /[\p{L}\p{N}]/u

/** Leaves between which words or amounts may run on. */
function readTogether(items: Item[], leaves: readonly Leaf[], from: number, to: number): void {
  const tokens = placeTokens(leaves, from, to)
  let words: { text: string; from: number; to: number } | null = null

  function place(from: number, to: number): Place {
    const first = leaves[from]
    const last = leaves[to]
    if (!first || !last) throw new RangeError(`There is no text between the pieces ${from} and ${to}.`)
    return { box: commonBox(first.box, last.box), from, to, line: first.line, cell: first.box.cell }
  }

  function flush(): void {
    if (words && HAS_WORDS.test(words.text)) {
      items.push({ kind: 'words', text: words.text, notes: null, ...place(words.from, words.to) })
    }
    words = null
  }

  function say(at: number): void {
    const token = tokens[at]
    if (!token) return
    if (words && (words.text.length > LONGEST_WORDS || !runsOn(leaves, words.to, token, words.text))) flush()
    const gap =
      token.gap || (token.first && ((leaves[token.leaf]?.spaced ?? true) || partsWords(words?.text, token.text)))
    if (words) words = { text: words.text + (gap ? ' ' : '') + token.text, from: words.from, to: token.leaf }
    else words = { text: token.text, from: token.leaf, to: token.leaf }
  }

  function show(find: Find, remark: string | null): void {
    const from = tokens[find.from]?.leaf ?? 0
    const to = tokens[find.to - 1]?.leaf ?? from
    const text = textOf(tokens, leaves, find.from, find.to)
    let alone = true
    for (let leaf = from; leaf <= to; leaf += 1) alone &&= leaves[leaf]?.cut.fragment ?? false
    const first = leaves[from]
    const { box, line, cell } = place(from, to)
    const { number, negative, marks, bare } = find.money
    items.push({
      kind: 'figure',
      box,
      from,
      to,
      line,
      cell,
      number,
      negative,
      marks,
      bare,
      text,
      alone,
      struck: first?.box.struck ?? false,
      hushed: first?.box.hushed ?? null,
      remark,
      about: /^[≈~∼≃]$/u.test(tokens[find.from - 1]?.text ?? ''),
    })
  }

  function run(at: number, end: number, remark: string | null): void {
    let next = at
    while (next < end) {
      const find = findFigure(tokens, next, end)
      if (find?.range) {
        for (let each = next; each < find.to && remark === null; each += 1) say(each)
      } else if (find) {
        flush()
        show(find, remark)
      } else {
        const bracket = remark === null && tokens[next]?.kind === 'open' ? bracketRemark(tokens, leaves, next) : null
        if (bracket) {
          run(next + 1, bracket.end, bracket.text)
          next = bracket.end + 1
          continue
        }
        if (remark === null) say(next)
      }
      next = find?.to ?? next + 1
    }
  }

  run(0, tokens.length, null)
  flush()
}

/** Whether the next token continues a run of words: the same text, or text flowing into an inner or outer element. */
function runsOn(leaves: readonly Leaf[], last: number, token: PlacedToken, text: string): boolean {
  if (token.leaf === last) return true
  const a = leaves[last]
  const b = leaves[token.leaf]
  if (!a || !b || token.leaf !== last + 1 || a.line !== b.line || a.box.cell !== b.box.cell) return false
  const box = commonBox(a.box, b.box)
  if (box === a.box || box === b.box) return true
  return !b.spaced && /\p{L}$/u.test(text) && /^\p{Ll}+$/u.test(b.text)
}

/** `<b>Heron Waltz</b>Ilse Ravndal`: a small letter and a capital touch only where a line is broken by style. */
function partsWords(before: string | undefined, after: string): boolean {
  return before !== undefined && /\p{Ll}$/u.test(before) && /^\p{Lu}/u.test(after)
}

/** Brackets that hold both an amount and words, and where they close. */
function bracketRemark(
  tokens: readonly PlacedToken[],
  leaves: readonly Leaf[],
  open: number,
): { end: number; text: string } | null {
  const start = tokens[open]
  let money = false
  let words = ''
  for (let at = open + 1; at < tokens.length && at < open + 40; at += 1) {
    const token = tokens[at]
    if (!token || !start || leaves[token.leaf]?.line !== leaves[start.leaf]?.line) return null
    if (token.kind === 'close') return money && words !== '' ? { end: at, text: words.trim() } : null
    if (findFigure(tokens, at, at + 8)?.money.marks.length) money = true
    if (token.kind === 'word' && token.money === null) words += ` ${token.text}`
  }
  return null
}

function textOf(tokens: readonly PlacedToken[], leaves: readonly Leaf[], from: number, to: number): string {
  let text = ''
  for (const token of tokens.slice(from, to)) {
    const gap = token.first ? (leaves[token.leaf]?.spaced ?? false) : token.gap
    text += (gap && text !== '' ? ' ' : '') + token.text
  }
  return text
}

function rangesOf(items: readonly Item[], leafCount: number): Stream['within'] {
  // For each leaf the first item that stands in it or behind it, and the last that stands in it or before it.
  const first = new Int32Array(leafCount).fill(-1)
  const last = new Int32Array(leafCount).fill(-1)
  for (let index = 0; index < items.length; index += 1) {
    const item = items[index]
    if (!item) continue
    for (let leaf = item.from; leaf <= item.to; leaf += 1) {
      if (first[leaf] === -1) first[leaf] = index
      last[leaf] = index
    }
  }
  let next = items.length
  for (let leaf = leafCount - 1; leaf >= 0; leaf -= 1) {
    if (first[leaf] === -1) {
      first[leaf] = next
      last[leaf] = next - 1
    }
    next = first[leaf] ?? next
  }
  return (box) => (box.to > box.from ? [first[box.from] ?? 0, (last[box.to - 1] ?? -1) + 1] : [0, 0])
}
