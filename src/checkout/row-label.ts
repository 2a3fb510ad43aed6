import type { Box } from './box.ts'
import { type Context, type Label, labelWithin, neighbours } from './box-label.ts'
import { attribute } from './dom.ts'
import { type Meaning, meaningOf } from './label.ts'
import { CELL_NAMES, trait } from './page-elements.ts'
import type { Figure } from './stream.ts'
import { tidy } from './words.ts'

const CHOSEN: ReadonlySet<Meaning> = new Set(['shipping', 'fee', 'tip'])

const ON_CONTROLS: ReadonlySet<Meaning> = new Set(['summary', 'total', 'grandTotal', 'payable', 'dueNow'])

const MOST_LEVELS = 10

export function hasOwnLabel(figure: Figure): boolean {
  if (figure.remark !== null) return true
  let box: Box | null = figure.box
  for (let step = 0; box && step < 3 && box.to - box.from <= figure.to - figure.from + 3; step += 1, box = box.parent) {
    if (box.traits & trait.labelled) return true
  }
  return false
}

/** A label that the markup ties to the amount: `aria-labelledby`, `label[for]`, the words of an `aria-label`. */
export function namedLabel(context: Context, figure: Figure): { label: Label; box: Box } | null {
  const { page, words } = context
  let box: Box | null = figure.box
  for (let step = 0; box && step < 3; step += 1, box = box.parent) {
    const element: Element = box.element
    if (box.to - box.from > figure.to - figure.from + 3) return null
    const id = attribute(element, 'id')
    const target = id ? page.labelFor.get(id) : undefined
    const texts = [
      ...(attribute(element, 'aria-labelledby')?.split(/\s+/u) ?? []).map((name) => textById(element, name)),
      target ? (target.element.textContent ?? '') : '',
      // What the label says in figures is for the eye to say: only its words count.
      (attribute(element, 'aria-label') ?? '').replace(/[\p{Sc}\p{Nd}.,]+/gu, ' '),
      ...CELL_NAMES.map((name) => attribute(element, name) ?? ''),
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

export function searchLabel(context: Context, figure: Figure, index: number): { label: Label; box: Box } {
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

export function controlAround(figure: Figure): Box | null {
  let box: Box | null = figure.box
  for (let step = 0; box && step < 5; step += 1, box = box.parent) {
    if (box.name === 'button' || box.name === 'a' || attribute(box.element, 'role') === 'button') return box
  }
  return null
}

/** "Add $5.00 tip" offers; "Show order summary $56.50" repeats the total. What stands around a control says neither. */
export function labelOnControl(context: Context, control: Box, index: number): { label: Label; box: Box } {
  const label = labelWithin(context, control, index) ?? { text: '', meaning: null }
  const repeats = label.meaning !== null && ON_CONTROLS.has(label.meaning)
  return { label: repeats ? label : { text: label.text, meaning: null }, box: control }
}

/** A chosen option counts for what the choice is about ("Shipping: ( ) by sea, (x) by air 9.00"), and never as a total. */
export function chosenLabel(context: Context, figure: Figure, index: number): [Label, Box] {
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
