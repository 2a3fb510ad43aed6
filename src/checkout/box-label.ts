import { type Box, childBox } from './box.ts'
import { nameOf } from './dom.ts'
import { isCount, type Meaning } from './label.ts'
import type { Liveness } from './liveness.ts'
import type { PageText } from './page-text.ts'
import type { SetAside } from './set-aside.ts'
import type { Item, Stream, Words } from './stream.ts'
import type { Vocabulary } from './vocabulary.ts'

export interface Label {
  readonly text: string
  readonly meaning: Meaning | null
}

export const REACH = 12

export interface Context {
  readonly page: PageText
  readonly stream: Stream
  readonly words: Vocabulary
  readonly live: Liveness
  readonly means: (item: Words) => Meaning | null
  readonly aside: SetAside
}

/** The label that a box gives to one of its amounts; null when the box has no words for it. */
export function labelWithin(context: Context, box: Box, index: number): Label | null {
  const [from, to] = context.stream.within(box)
  // The words of a column of values ("by post") are no labels of the amounts below them.
  const beside = box.parent?.first?.next === box ? besideColumn(context, box.parent, index) : null
  if (beside) return beside
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

export function neighbours(context: Context, from: number, to: number): Item[] {
  const found: Item[] = []
  for (let at = Math.max(0, from); at < to; at += 1) {
    const item = context.stream.items[at]
    if (!item || context.aside.has(at)) continue
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

/** Two boxes with as many rows each, labels in the first, values in the second: what stands in the same row of the first. */
function besideColumn(context: Context, box: Box, index: number): Label | null {
  const labels = box.first
  const values = labels?.next
  if (!labels || !values || values.next || box.name === 'tr' || labels.name === 'tr') return null
  const heads = childrenOf(labels)
  const cells = childrenOf(values)
  if (heads.length < 3 || heads.length !== cells.length || labels.name !== values.name) return null
  const place = cells.findIndex((cell) => isWithin(context, cell, index))
  const head = heads[place]
  // A first column with amounts is no column of labels.
  if (!head || heads.some((each) => wordsIn(context, each).length === 0 || hasFigure(context, each))) return null
  return bestLabel(context, wordsIn(context, head).reverse())
}

function childrenOf(box: Box): Box[] {
  const children: Box[] = []
  for (let child = box.first; child; child = child.next) children.push(child)
  return children
}

function isWithin({ stream }: Context, box: Box, index: number): boolean {
  const [from, to] = stream.within(box)
  return index >= from && index < to
}

function wordsIn(context: Context, box: Box): Words[] {
  return neighbours(context, ...context.stream.within(box)).filter((item) => item.kind === 'words')
}

function hasFigure(context: Context, box: Box): boolean {
  return neighbours(context, ...context.stream.within(box)).some((item) => item.kind === 'figure')
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
  const head = heading && cells.length === cellsOf(row.element).length ? rowBox(row, heading) : null
  const box = head && childBox(head, cells[place] ?? row.element)
  if (!box) return null
  const [from, to] = context.stream.within(box)
  const words = neighbours(context, from, to).filter((item) => item.kind === 'words')
  return words.length > 0 ? bestLabel(context, words) : null
}

/** The box of a row beside this one, or in the section before its own. */
function rowBox(row: Box, other: Element): Box | null {
  const section = row.parent
  if (!section) return null
  const before = row.element.parentElement?.previousElementSibling
  const home = other.parentElement === before && before && section.parent ? childBox(section.parent, before) : section
  return home && childBox(home, other)
}

function cellsOf(row: Element): Element[] {
  return Array.from(row.children).filter((cell) => nameOf(cell) === 'td' || nameOf(cell) === 'th')
}

function previousRow(row: Element): Element | null {
  if (row.previousElementSibling) return row.previousElementSibling
  const section = row.parentElement?.previousElementSibling
  return section && nameOf(section) === 'thead' ? section.lastElementChild : null
}
