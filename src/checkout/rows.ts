import { attribute, nameOf } from './dom.ts'
import { isCount, type Meaning, meaningOf, saysRate } from './label.ts'
import type { Liveness } from './liveness.ts'
import type { Box, PageText } from './page-text.ts'
import type { Figure, Item, Stream, Words } from './stream.ts'
import type { Vocabulary } from './vocabulary.ts'
import { tidy } from './words.ts'

/** An amount with the label that goes with it. */
export interface Row {
  readonly figure: Figure
  /** Place of the figure in the stream. */
  readonly index: number
  readonly label: string
  readonly meaning: Meaning | null
  /** The smallest box that holds the amount and its label. */
  readonly box: Box
  /** The price of an option that is chosen: perhaps a part of the sum, perhaps shown again as one. */
  readonly chosen: boolean
}

interface Label {
  readonly text: string
  readonly meaning: Meaning | null
}

const LABELLED_BY = ['aria-label', 'aria-labelledby', 'id']
const CHOSEN: ReadonlySet<Meaning> = new Set(['shipping', 'fee', 'tip'])
const ON_CONTROLS: ReadonlySet<Meaning> = new Set(['summary', 'total', 'grandTotal', 'payable', 'dueNow'])
const MOST_LEVELS = 10
const REACH = 12
const MOST_FIGURES = 3_000

/**
 * Pairs every visible amount with its label, whichever way the page lays them out: cells of a row, terms of a list,
 * neighbouring boxes, a label after its amount, labels in one column and amounts in another, a column's heading.
 */
export function readRows(page: PageText, stream: Stream, words: Vocabulary, live: Liveness): Row[] {
  const meanings = new Map<string, Meaning | null>()
  const means = ({ text }: Words): Meaning | null => {
    const known = meanings.get(text)
    if (known !== undefined) return known
    const meaning = meaningOf(text, words)
    meanings.set(text, meaning)
    return meaning
  }
  const rows: Row[] = []
  const near = nearKnownLabels(stream, means)
  for (const [index, figure] of stream.items.entries()) {
    if (figure.kind !== 'figure' || rows.length >= MOST_FIGURES) continue
    // No label anywhere near: nothing to pair, and no style needs to be asked.
    if ((near.has(index) || hasOwnLabel(figure)) && live.figure(index)) {
      rows.push(readRow({ page, stream, words, live, means }, figure, index))
    }
  }
  return rows
}

interface Context {
  readonly page: PageText
  readonly stream: Stream
  readonly words: Vocabulary
  readonly live: Liveness
  readonly means: (item: Words) => Meaning | null
}

function nearKnownLabels(stream: Stream, means: (item: Words) => Meaning | null): ReadonlySet<number> {
  const near = new Set<number>()
  for (const [index, item] of stream.items.entries()) {
    if (item.kind !== 'words') continue
    const meaning = means(item)
    if (meaning === null || meaning === 'aside' || meaning === 'included') continue
    for (let at = index - 4; at <= index + 2 * REACH; at += 1) near.add(at)
  }
  return near
}

function hasOwnLabel(figure: Figure): boolean {
  if (figure.remark !== null) return true
  let box: Box | null = figure.box
  for (let step = 0; box && step < 3 && box.to - box.from <= figure.to - figure.from + 3; step += 1, box = box.parent) {
    const { element } = box
    if (LABELLED_BY.some((name) => attribute(element, name) !== null)) return true
  }
  return false
}

function readRow(context: Context, figure: Figure, index: number): Row {
  const { words, live } = context
  const make = (label: Label, box: Box): Row => ({
    figure,
    index,
    label: label.text,
    meaning: label.meaning,
    box,
    chosen: live.choice(figure) === 'chosen',
  })
  if (figure.remark !== null) {
    return make(
      { text: figure.remark, meaning: meaningOf(figure.remark, words) === 'included' ? 'included' : 'aside' },
      figure.box,
    )
  }
  if (live.choice(figure) === 'chosen') return make(...chosenLabel(context, figure, index))
  const control = controlAround(figure)
  const found = control
    ? labelOnControl(context, control, index)
    : (namedLabel(context, figure) ?? searchLabel(context, figure, index))
  const meaning = followedByRate(context, figure, index) ? 'aside' : found.label.meaning
  return make({ text: found.label.text, meaning }, found.box)
}

/** A label that the markup ties to the amount: `aria-labelledby`, `label[for]`, the words of an `aria-label`. */
function namedLabel(context: Context, figure: Figure): { label: Label; box: Box } | null {
  const { page, words } = context
  let box: Box | null = figure.box
  for (let step = 0; box && step < 3; step += 1, box = box.parent) {
    const element: Element = box.element
    if (box.to - box.from > figure.to - figure.from + 3) return null
    const id = attribute(element, 'id')
    const target = id ? page.labelFor.get(id) : undefined
    const texts = [
      ...(attribute(element, 'aria-labelledby')?.split(/\s+/u) ?? []).map((name) => textById(element, name)),
      target ? (target.textContent ?? '') : '',
      // What the label says in figures is for the eye to say: only its words count.
      (attribute(element, 'aria-label') ?? '').replace(/[\p{Sc}\p{Nd}.,]+/gu, ' '),
    ]
    for (const text of texts) {
      const meaning = text === '' ? null : meaningOf(text, words)
      if (meaning !== null) return { label: { text: tidy(text), meaning }, box }
    }
  }
  return null
}

function textById(element: Element, id: string): string {
  const root = element.getRootNode()
  const target = id !== '' && 'getElementById' in root && isIdRoot(root) ? root.getElementById(id) : null
  return target?.textContent?.slice(0, 200) ?? ''
}

function isIdRoot(root: Node): root is Document | ShadowRoot {
  return root.nodeType === 9 || root.nodeType === 11
}

function searchLabel(context: Context, figure: Figure, index: number): { label: Label; box: Box } {
  let box: Box | null = figure.box
  let unknown: { label: Label; box: Box } | null = null
  for (let level = 0; box && level < MOST_LEVELS; level += 1, box = box.parent) {
    const found = labelWithin(context, box, index)
    if (found?.meaning && found.meaning !== 'included') return { label: found, box }
    if (found?.meaning === 'included' && beginsRow(context, box, index)) unknown ??= { label: found, box }
    if (found && found.meaning === null) unknown ??= { label: found, box }
    // Words before the amount are its label even if nobody knows them; a heading further up is not.
    if (unknown && unknown.label.meaning === null && level > 0) break
    const [from, to] = context.stream.within(box)
    if (to - from > 400) break
  }
  return unknown ?? { label: { text: '', meaning: null }, box: figure.box }
}

function controlAround(figure: Figure): Box | null {
  let box: Box | null = figure.box
  for (let step = 0; box && step < 5; step += 1, box = box.parent) {
    if (box.name === 'button' || box.name === 'a' || attribute(box.element, 'role') === 'button') return box
  }
  return null
}

/** "Add $5.00 tip" offers; "Show order summary $56.50" repeats the total. What stands around a control says neither. */
function labelOnControl(context: Context, control: Box, index: number): { label: Label; box: Box } {
  const label = labelWithin(context, control, index) ?? { text: '', meaning: null }
  const repeats = label.meaning !== null && ON_CONTROLS.has(label.meaning)
  return { label: repeats ? label : { text: label.text, meaning: null }, box: control }
}

/** A chosen option counts for what the choice is about ("Shipping: ( ) by sea, (x) by air 9.00"), and never as a total. */
function chosenLabel(context: Context, figure: Figure, index: number): [Label, Box] {
  const own = searchLabel(context, figure, index)
  for (let box: Box | null = own.box, level = 0; box && level < 6; level += 1, box = box.parent) {
    const found = labelWithin(context, box, index)
    if (found?.meaning && CHOSEN.has(found.meaning)) return [found, box]
  }
  return [{ text: own.label.text, meaning: 'aside' }, own.box]
}

/** "incl. VAT 8.93": a remark that is the only thing before its amount is that amount's label. */
function beginsRow(context: Context, box: Box, index: number): boolean {
  const [from] = context.stream.within(box)
  const before = neighbours(context, from, index).filter((item) => item.kind === 'words')
  return before.length === 1
}

/** The label that a box gives to one of its amounts; null when the box has no words for it. */
function labelWithin(context: Context, box: Box, index: number): Label | null {
  const [from, to] = context.stream.within(box)
  if (to - from <= 60) {
    const items = neighbours(context, from, to)
    const column = columnLabel(context, items, index)
    if (column) return column
    if (amountsLead(items)) return bestLabel(context, takeWords(neighbours(context, index + 1, to)))
  }
  if (box.name === 'tr') return rowLabel(context, box, index)
  const own = takeWords(neighbours(context, Math.max(from, index - REACH), index).reverse())
  if (own.length > 0) return bestLabel(context, own)
  const after = takeWords(neighbours(context, index + 1, Math.min(to, index + REACH)))
  // An amount before its label: only where the box begins with that amount.
  const first = neighbours(context, from, index + 1)[0]
  const label = after.length > 0 && first === context.stream.items[index] ? bestLabel(context, after) : null
  // Unknown words behind an amount ("via courier") are no label: one may still stand before it, further out.
  return label?.meaning ? label : null
}

/** Amount, label, amount, label: every label stands behind its amount. */
function amountsLead(items: readonly Item[]): boolean {
  return (
    items.length >= 4 &&
    items.length % 2 === 0 &&
    items.every((item, place) => item.kind === (place % 2 === 0 ? 'figure' : 'words'))
  )
}

/** In a table row one amount is what the row's words are about: the last one in the row's own currency. */
function rowLabel(context: Context, row: Box, index: number): Label | null {
  const [from, to] = context.stream.within(row)
  const items = neighbours(context, from, to)
  const words = items.filter((item) => item.kind === 'words')
  if (words.length === 0) return columnHeading(context, row, index)
  const figures = items.filter((item) => item.kind === 'figure')
  const home = figures[0]?.marks[0]?.codes
  const own = figures.filter((figure) => !figure.about && (figure.marks[0]?.codes ?? home) === home)
  const figure = context.stream.items[index]
  const before = words.filter((item) => item.from < (figure?.from ?? 0)).reverse()
  const label = bestLabel(context, before.length > 0 ? before : words)
  return own.at(-1) === figure ? label : { text: label.text, meaning: null }
}

function neighbours(context: Context, from: number, to: number): Item[] {
  const found: Item[] = []
  for (let at = Math.max(0, from); at < to; at += 1) {
    const item = context.stream.items[at]
    if (!item) continue
    if (item.kind === 'words' ? context.live.words(at) : item.remark === null && context.live.figure(at))
      found.push(item)
  }
  return found
}

/** The words up to the next amount; at most three runs. */
function takeWords(items: readonly Item[]): Words[] {
  const taken: Words[] = []
  for (const item of items) {
    if (item.kind === 'figure' || taken.length === 3) break
    taken.push(item)
  }
  return taken
}

function bestLabel(context: Context, nearestFirst: readonly Words[]): Label {
  const known = nearestFirst.filter((item, place) => {
    const meaning = context.means(item)
    // A summary's heading is a label only for what stands right under it.
    return meaning !== null && meaning !== 'included' && (meaning !== 'summary' || place === 0)
  })
  // "2 items" between a total and its amount counts things; it names the sum only where nothing else does.
  const best = known.find((item) => !isCount(item.text)) ?? known[0]
  const remark = nearestFirst.find((item) => context.means(item) === 'included')
  const item = best ?? remark
  return { text: (item ?? nearestFirst[0])?.text ?? '', meaning: item ? context.means(item) : null }
}

/** Labels first, then as many amounts: two columns. The n-th goes with the n-th. */
function columnLabel(context: Context, items: readonly Item[], index: number): Label | null {
  const firstFigure = items.findIndex((item) => item.kind === 'figure')
  const labels = items.slice(0, firstFigure)
  const figures = items.slice(firstFigure)
  if (labels.length < 2 || labels.length !== figures.length || figures.some((item) => item.kind === 'words'))
    return null
  const figure = context.stream.items[index]
  const place = figure ? figures.indexOf(figure) : -1
  const label = labels[place]
  return label?.kind === 'words' ? { text: label.text, meaning: context.means(label) } : null
}

/** A row of bare amounts under a row of words: the heading of the same column. */
function columnHeading(context: Context, row: Box, index: number): Label | null {
  const figure = context.stream.items[index]
  let cell = figure?.box ?? null
  while (cell && cell.parent !== row) cell = cell.parent
  const table = row.parent
  if (!cell || !table) return null
  const place = cellsOf(row.element).indexOf(cell.element)
  const heading = previousRow(row.element)
  const cells = heading ? cellsOf(heading) : []
  const box =
    cells.length === cellsOf(row.element).length ? context.page.boxOf.get(cells[place] ?? row.element) : undefined
  if (!box) return null
  const [from, to] = context.stream.within(box)
  const words = neighbours(context, from, to).filter((item) => item.kind === 'words')
  return words.length > 0 ? bestLabel(context, words) : null
}

function cellsOf(row: Element): Element[] {
  return Array.from(row.children).filter((cell) => nameOf(cell) === 'td' || nameOf(cell) === 'th')
}

function previousRow(row: Element): Element | null {
  if (row.previousElementSibling) return row.previousElementSibling
  const section = row.parentElement?.previousElementSibling
  return section && nameOf(section) === 'thead' ? section.lastElementChild : null
}

/** `/month`, `per month`, `× 4` right behind an amount make it a rate or an instalment. */
function followedByRate(context: Context, figure: Figure, index: number): boolean {
  const next = context.stream.items[index + 1]
  if (next?.kind !== 'words' || next.line !== figure.line || next.cell !== figure.cell) return false
  return saysRate(next.text, context.words)
}
