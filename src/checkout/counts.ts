import { type Box, boxNamed } from './box.ts'
import { whole } from './count-words.ts'
import { attribute, isInput, isSelect, ownNames } from './dom.ts'
import type { Liveness } from './liveness.ts'
import { notesOf } from './notes.ts'
import type { PageCurrency } from './page-currency.ts'
import { trait } from './page-elements.ts'
import type { PageText } from './page-text.ts'
import type { Pricer } from './pricer.ts'
import type { Row } from './rows.ts'
import type { Stream } from './stream.ts'
import type { Vocabulary } from './vocabulary.ts'
import { plain, tidy } from './words.ts'

export interface ItemContext {
  readonly page: PageText
  readonly stream: Stream
  readonly rows: readonly Row[]
  readonly words: Vocabulary
  readonly live: Liveness
  readonly pricer: Pricer
  readonly currency: PageCurrency
}

export interface Count {
  readonly box: Box
  readonly quantity: number
  /** The count and the name are one text. */
  readonly named: boolean
}

const COUNT_FIELDS = /qty|quant|menge|anzahl|qte|aantal|cantidad|count|pieces/i

export const MOST_CLIMBS = 8

export function countsInText({ stream, words, live }: ItemContext): Count[] {
  const counts: Count[] = []
  for (const [index, item] of stream.items.entries()) {
    const count = item.kind === 'words' ? notesOf(item, words).count : null
    if (count && live.words(index)) counts.push({ box: item.box, ...count })
  }
  return counts
}

export function countsInFields({ page }: ItemContext): Count[] {
  const counts: Count[] = []
  for (const box of page.fields) {
    const field = box.element
    // A field without a name counts only if it takes numbers.
    const named =
      (box.traits & trait.attributed) !== 0 &&
      COUNT_FIELDS.test(`${ownNames(field)} ${attribute(field, 'aria-label') ?? ''}`)
    if (!named && box.name !== 'input') continue
    const value = isInput(field) ? field.value : isSelect(field) ? (field.options[field.selectedIndex]?.text ?? '') : ''
    const counting = isInput(field) ? field.type === 'number' || (named && field.type !== 'radio') : named
    const quantity = /^\d{1,3}$/.test(tidy(value)) ? whole(tidy(value)) : null
    if (counting && quantity !== null) counts.push({ box, quantity, named: false })
  }
  return counts
}

/** A whole number alone in a cell of a row that also has a name and a price, under a heading that says "quantity". */
export function countsInTables(context: ItemContext, summary: ReadonlySet<number>): Count[] {
  const counts: Count[] = []
  const headings = new Map<Box, readonly boolean[]>()
  for (const [index, item] of context.stream.items.entries()) {
    const text = item.kind === 'words' ? item.text : item.bare === 'integer' ? item.number : ''
    if (text.length > 3 || summary.has(index) || !/^\d{1,3}$/.test(text)) continue
    const cell = boxNamed(item.box, 'td', MOST_CLIMBS)
    const row = cell && boxNamed(cell, 'tr', MOST_CLIMBS)
    const table = row && boxNamed(row, 'table', MOST_CLIMBS)
    const quantity = whole(text)
    if (!cell || !table || quantity === null) continue
    const counting = headings.get(table) ?? countingColumns(context, table)
    headings.set(table, counting)
    if (!counting.includes(true)) continue
    const place = Array.from(row.element.children).indexOf(cell.element)
    if (counting[place]) counts.push({ box: cell, quantity, named: false })
  }
  return counts
}

/** Which columns of a table say in their heading that they count. */
function countingColumns({ words }: ItemContext, table: Box): readonly boolean[] {
  const heading = table.element.querySelector('tr')?.children ?? []
  return Array.from(heading, (cell) => words.quantity.first(plain(cell.textContent ?? '')) !== null)
}
