import type { Box, Leaf } from './box.ts'
import type { Cuts } from './cuts.ts'
import { assignedTo, attribute, attributeNames, firstOf, kindOf, nameOf, nextOf } from './dom.ts'
import {
  isLeftOut,
  LOOSE,
  looseState,
  shownValue,
  specialChildren,
  trait,
  traitsOf,
  traitsOfName,
} from './page-elements.ts'
import { tidy } from './words.ts'

/** How far a walk has come; one walk may be taken up where another left off. */
export interface Walk {
  readonly leaves: Leaf[]
  readonly cuts: Cuts
  line: number
  /** White space stands at the end of what was read last. */
  spaced: boolean
  /** How many nodes were met. */
  nodes: number
  /** Elements that are drawn or not by a state of the browser's, not by their markup. */
  popovers: Element[]
  /** The documents and open shadow roots that were walked and nobody has asked for yet. */
  sources: Node[]
}

/** More than any shop's page has; what is beyond is not read. */
export const MOST_NODES = 100_000

const LONGEST_TEXT = 2_000

// Deeper than any parser nests; a script could go on, and every climb would pay for it.
const DEEPEST = 600

// Asked even where they have no attribute: closed dialogs, fields by their type, names of the page's own making.
const ASKED = trait.custom | trait.value | trait.dialog

interface Step {
  readonly box: Box
  /** The child to look at next. */
  at: Node | null
  /** The children, where they are no simple list of siblings, and how many were looked at. */
  readonly list: readonly Node[] | null
  done: number
  /** The last box put inside. */
  last: Box | null
  /** A closed `details` shows its summary alone. */
  readonly closed: boolean
}

/** A box for an element, with nothing in it yet; null where markup alone hides it. */
export function boxFor(element: Element, name: string, parent: Box | null, walk: Walk): Box | null {
  let traits = traitsOfName(name)
  if (traits & trait.skipped) return null
  const attributes = attributeNames(element)
  let hushes = false
  if (attributes.length > 0 || (traits & ASKED) !== 0) {
    if (attributes.includes('popover')) walk.popovers.push(element)
    if (isLeftOut(element, name, attributes)) return null
    traits = traitsOf(element, name, traits, attributes)
    hushes = attributes.includes('aria-hidden') && attribute(element, 'aria-hidden') === 'true'
  }
  const box: Box = {
    element,
    name,
    traits,
    parent,
    depth: parent === null ? 0 : parent.depth + 1,
    cell: parent === null ? null : parent.cell,
    struck: parent?.struck === true || (traits & trait.struck) !== 0,
    hushed: parent === null ? null : parent.hushed,
    first: null,
    next: null,
    own: null,
    state: traits & LOOSE ? looseState(element, name) : null,
    from: walk.leaves.length,
    to: walk.leaves.length,
  }
  if (traits & trait.cell) box.cell = box
  if (hushes) box.hushed ??= box
  return box
}

/** Reads what is drawn in a box, itself included, behind what the walk has read already. */
export function walkInto(start: Box, walk: Walk): void {
  const stack: Step[] = []

  function enter(box: Box): void {
    turn(box)
    if (box.traits & trait.value) {
      const value = shownValue(box.element)
      if (value) add(value, box)
    }
    const step = stepInto(box, walk)
    if (step.at) stack.push(step)
    else leave(box)
  }

  function leave(box: Box): void {
    box.to = walk.leaves.length
    turn(box)
  }

  function turn({ traits }: Box): void {
    if ((traits & trait.block) === 0) return
    walk.line += 1
    walk.spaced = true
  }

  function add(raw: string, box: Box): void {
    // Most texts have their spaces inside.
    const begins = raw.charCodeAt(0)
    const ends = raw.charCodeAt(raw.length - 1)
    const text = tidy(raw.length > LONGEST_TEXT ? raw.slice(0, LONGEST_TEXT) : raw)
    if (text === '') {
      if (raw !== '') walk.spaced = true
      return
    }
    walk.leaves.push({ text, box, spaced: walk.spaced || isSpace(begins), line: walk.line, cut: walk.cuts.of(text) })
    walk.spaced = isSpace(ends)
  }

  enter(start)
  let step = stack.at(-1)
  while (step) {
    const child: Node | null = step.at
    if (child === null || walk.nodes > MOST_NODES) {
      leave(step.box)
      stack.pop()
      step = stack.at(-1)
      continue
    }
    walk.nodes += 1
    const kind = kindOf(child)
    const name = isElementOf(child, kind) ? nameOf(child) : ''
    if (step.list === null) step.at = nextOf(child, name)
    else {
      step.done += 1
      step.at = step.list[step.done] ?? null
    }
    if (kind === TEXT) {
      if (!step.closed && isTextOf(child, kind)) add(child.data, step.box)
    } else if (isElementOf(child, kind) && step.box.depth < DEEPEST && (!step.closed || name === 'summary')) {
      const box = boxFor(child, name, step.box, walk)
      if (box) {
        if (step.last) step.last.next = box
        else step.box.first = box
        step.last = box
        enter(box)
        step = stack.at(-1)
      }
    }
  }
}

const ELEMENT = 1
const TEXT = 3

function isElementOf(_node: Node, kind: number): _node is Element {
  return kind === ELEMENT
}

function isTextOf(_node: Node, kind: number): _node is Text {
  return kind === TEXT
}

function isSpace(code: number): boolean {
  return code === 0x20 || (code >= 9 && code <= 13) || (code >= 0xa0 && /\s/u.test(String.fromCharCode(code)))
}

function stepInto(box: Box, walk: Walk): Step {
  const { element, name, traits } = box
  let list: readonly Node[] | null = null
  if (traits & trait.special) {
    const assigned = traits & trait.slot ? assignedTo(element) : []
    list = assigned.length > 0 ? assigned : specialChildren(element, name)
  }
  const shadow = traits & trait.host && list === null ? element.shadowRoot : null
  const at = list === null ? firstOf(shadow ?? element, name) : (list[0] ?? null)
  if (traits & trait.host && list === null) box.state = shadow
  if (shadow) walk.sources.push(shadow)
  if (traits & trait.frame && at?.parentNode) walk.sources.push(at.parentNode)
  const closed = name === 'details' && attribute(element, 'open') === null
  return { box, at, list, done: 0, last: null, closed }
}
