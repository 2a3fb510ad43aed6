import type { Box } from './box.ts'
import { type Context, type Label, REACH } from './box-label.ts'
import { type Meaning, meaningOf, saysRate } from './label.ts'
import type { Liveness } from './liveness.ts'
import { notesOf } from './notes.ts'
import type { PageText } from './page-text.ts'
import { chosenLabel, controlAround, hasOwnLabel, labelOnControl, namedLabel, searchLabel } from './row-label.ts'
import { findSetAside } from './set-aside.ts'
import type { Figure, Stream, Words } from './stream.ts'
import type { Vocabulary } from './vocabulary.ts'

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

const MOST_FIGURES = 3_000

/**
 * Pairs every visible amount with its label, whichever way the page lays them out: cells of a row, terms of a list,
 * neighbouring boxes, a label after its amount, labels in one column and amounts in another, a column's heading.
 */
export function readRows(page: PageText, stream: Stream, words: Vocabulary, live: Liveness): Row[] {
  const means = (item: Words): Meaning | null => notesOf(item, words).meaning
  const rows: Row[] = []
  const near = nearKnownLabels(stream, means)
  const aside = findSetAside(stream, means)
  for (const [index, figure] of stream.items.entries()) {
    if (figure.kind !== 'figure' || rows.length >= MOST_FIGURES) continue
    if (aside.get(index) === null) continue
    // No label anywhere near: nothing to pair, and no style needs to be asked.
    if ((near[index] === 1 || hasOwnLabel(figure)) && live.figure(index)) {
      rows.push(readRow({ page, stream, words, live, means, aside }, figure, index))
    }
  }
  return rows
}

function nearKnownLabels(stream: Stream, means: (item: Words) => Meaning | null): Uint8Array {
  const near = new Uint8Array(stream.items.length)
  for (const [index, item] of stream.items.entries()) {
    if (item.kind !== 'words') continue
    const meaning = means(item)
    if (meaning === null || meaning === 'aside' || meaning === 'included') continue
    near.fill(1, Math.max(0, index - 4), index + 2 * REACH + 1)
  }
  return near
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
  const known = context.aside.get(index)
  if (known) return make({ text: '', meaning: known }, figure.box)
  if (live.choice(figure) === 'chosen') return make(...chosenLabel(context, figure, index))
  const control = controlAround(figure)
  const found = control
    ? labelOnControl(context, control, index)
    : (namedLabel(context, figure) ?? searchLabel(context, figure, index))
  const meaning = followedByRate(context, figure, index) ? 'aside' : found.label.meaning
  return make({ text: found.label.text, meaning }, found.box)
}

/** `/month`, `per month`, `× 4` right behind an amount make it a rate or an instalment. */
function followedByRate(context: Context, figure: Figure, index: number): boolean {
  const next = context.stream.items[index + 1]
  if (next?.kind !== 'words' || next.line !== figure.line || next.cell !== figure.cell) return false
  return saysRate(next.text, context.words)
}
