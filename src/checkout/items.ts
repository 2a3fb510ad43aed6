import type { Box } from './box.ts'
import { withoutCount } from './count-words.ts'
import { type Count, countsInFields, countsInTables, countsInText, type ItemContext, MOST_CLIMBS } from './counts.ts'
import { trait } from './page-elements.ts'
import { scaled } from './pricer.ts'
import type { ReadItem } from './reading.ts'
import type { Figure, Words } from './stream.ts'
import { tidy } from './words.ts'

/** A thing bought, with the box it was read from. */
export interface FoundItem extends ReadItem {
  readonly box: Box
  /** What the page shows beside it, as a whole number of ten-thousandths; null when it shows no price. */
  readonly shown: number | null
  /** Whether `shown` is sure to be the line's sum: one piece, or two prices of which one is the product. */
  readonly sure: boolean
}

const MOST_ITEMS = 200

/**
 * The things bought, where the page makes them plain: a count ("2 ×", "Qty 2", a field for the quantity, a column of
 * whole numbers) in one box with one name and a price. Boxes that hold a label of the sum are no items.
 */
export function readItems(context: ItemContext): FoundItem[] {
  const summary = new Set(
    context.rows.filter((row) => row.meaning !== null && row.meaning !== 'aside').map((row) => row.index),
  )
  const counts = [...countsInText(context), ...countsInFields(context), ...countsInTables(context, summary)].slice(
    0,
    MOST_ITEMS,
  )
  const boxes = new Map<Box, Count[]>()
  for (const count of counts) {
    const box = itemBox(context, count, summary)
    if (box) boxes.set(box, [...(boxes.get(box) ?? []), count])
  }
  const items: FoundItem[] = []
  for (const [box, own] of boxes) {
    const [first, ...rest] = own
    // Two different counts in one box: not one thing, so not plain.
    if (!first || rest.some((count) => count.quantity !== first.quantity)) continue
    const item = readItem(context, box, first.quantity)
    if (item) items.push(item)
  }
  return items.sort((a, b) => a.box.from - b.box.from)
}

/** The smallest box around a count that also holds a name and a price; null when it would hold a sum's label too. */
function itemBox(context: ItemContext, count: Count, summary: ReadonlySet<number>): Box | null {
  let box: Box | null = count.box
  for (let level = 0; box && level < MOST_CLIMBS; level += 1, box = box.parent) {
    const [from, to] = context.stream.within(box)
    if (to - from > 30) return null
    const sums = context.rows.filter((row) => row.index >= from && row.index < to && summary.has(row.index))
    // A line of a table or list may call its own sum "total"; any other sum means that the box is too large.
    const ownTotal = sums.length === 1 && sums[0]?.meaning === 'total' && (box.name === 'tr' || box.name === 'li')
    if (sums.length > 0 && !ownTotal) return null
    const { names, figures } = contents(context, box)
    if (names.length > 0 && figures.length > 0) return box
    // "2 × Mug" in a list is plain without a price.
    if (count.named && names.length > 0 && (box.name === 'li' || box.name === 'tr')) return box
  }
  return null
}

function contents(context: ItemContext, box: Box): { names: Words[]; figures: Figure[] } {
  const [from, to] = context.stream.within(box)
  const names: Words[] = []
  const figures: Figure[] = []
  for (let at = from; at < to; at += 1) {
    const item = context.stream.items[at]
    if (item?.kind === 'words' && isName(context, item) && context.live.words(at)) names.push(item)
    if (item?.kind === 'figure' && item.bare !== 'integer' && item.remark === null && context.live.figure(at))
      figures.push(item)
  }
  return { names, figures }
}

function isName({ words }: ItemContext, item: Words): boolean {
  const text = withoutCount(item.text, words)
  if (!/\p{L}{2}/u.test(text)) return false
  const { name } = item.box
  if (name === 'button' || name === 'label' || name === 'option' || name === 'select') return false
  return (item.box.traits & trait.control) === 0 || name === 'a'
}

function readItem(context: ItemContext, box: Box, quantity: number): FoundItem | null {
  const { names, figures } = contents(context, box)
  const name = bestName(context, names)
  if (name === null) return null
  const priced = figures.flatMap((figure) => {
    const amount = context.pricer.amount(figure)
    const value = amount === null ? null : scaled(amount)
    return amount === null || value === null || value < 0 ? [] : [{ figure, amount, value }]
  })
  const product = priced.find(
    (each) => quantity > 1 && priced.some((unit) => unit.value * quantity === each.value && each.value > 0),
  )
  const line = product ?? priced.at(-1)
  const code = line ? (context.currency.of(line.figure, '')?.code ?? null) : null
  return {
    name,
    quantity,
    amount: line?.amount ?? null,
    currency: code,
    box,
    shown: line?.value ?? null,
    sure:
      quantity === 1 ||
      product !== undefined ||
      context.rows.some((row) => row.figure === line?.figure && row.meaning === 'total'),
  }
}

/** A link or heading names the thing; else the first words. */
function bestName(context: ItemContext, names: readonly Words[]): string | null {
  const strong = names.find((item) => /^(?:a|h[2-6]|strong|b)$/.test(item.box.name))
  const item = strong ?? names[0]
  return item ? tidy(withoutCount(firstLine(context, item), context.words)) : null
}

/** The text up to where an element ends and the next begins without a space: a name, and a note under it. */
function firstLine({ page }: ItemContext, item: Words): string {
  for (let leaf = item.from + 1; leaf <= item.to; leaf += 1) {
    if (page.leaves[leaf]?.spaced) continue
    const head = page.leaves
      .slice(item.from, leaf)
      .map(({ text }) => text)
      .join(' ')
    if (/\p{L}{2}/u.test(head) && item.text.startsWith(head)) return head
  }
  return item.text
}

/**
 * Says which shown prices are sums of their lines: those that, added up as shown, make the subtotal - or, taken as prices
 * of one piece, make it when multiplied. Where neither fits, a price beside a count of several stays unsaid.
 */
export function settleItems(items: readonly FoundItem[], subtotals: ReadonlySet<number>): ReadItem[] {
  const sum = (of: (item: FoundItem) => number): number => items.reduce((total, item) => total + of(item), 0)
  const asLines = subtotals.has(sum((item) => item.shown ?? 0))
  const asUnits = !asLines && subtotals.has(sum((item) => (item.shown ?? 0) * (item.sure ? 1 : item.quantity)))
  return items.map(({ name, quantity, amount, currency, shown, sure }) => {
    if (sure || asLines || amount === null || shown === null) return { name, quantity, amount, currency }
    return { name, quantity, amount: asUnits ? decimal(shown * quantity) : null, currency }
  })
}

function decimal(tenThousandths: number): string {
  const digits = String(tenThousandths).padStart(5, '0')
  const decimals = digits.slice(-4).replace(/00$/, '')
  return decimals === '' ? digits.slice(0, -4) : `${digits.slice(0, -4)}.${decimals}`
}
