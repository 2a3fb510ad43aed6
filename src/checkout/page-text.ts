import { attribute, isElement, isText, nameOf, rootOf } from './dom.ts'
import { childrenOf, isBare, isControl, isField, isLeftOut, names, OFTEN_BARE, shownValue } from './page-elements.ts'
import { tidy } from './words.ts'

/** One element of the page as it is drawn, with the range of leaves it holds. */
export interface Box {
  readonly element: Element
  /** The element's name: `td`. */
  readonly name: string
  readonly parent: Box | null
  readonly depth: number
  /** First leaf inside. */
  from: number
  /** One past the last leaf inside. */
  to: number
}

/** One piece of visible text: a text node, or the value of a control. */
export interface Leaf {
  readonly text: string
  readonly box: Box
  /** Whether white space stands between this leaf and the one before. */
  readonly spaced: boolean
  /** Leaves on one line have one number: no block begins or ends between them. */
  readonly line: number
  /** Leaves of one table cell or list item have one number. */
  readonly cell: number
  /** Inside `del`, `s` or `strike`. */
  readonly struck: boolean
  /** The outermost `aria-hidden` box around it, if any. */
  readonly hushed: Box | null
}

/** What one walk over the page found, in drawn order. */
export interface PageText {
  readonly root: Box | null
  readonly leaves: readonly Leaf[]
  readonly boxOf: ReadonlyMap<Element, Box>
  /** Everything a person could press: buttons, links, and their look-alikes. */
  readonly controls: readonly Element[]
  /** Fields: inputs, selects, text areas. */
  readonly fields: readonly Element[]
  readonly headings: readonly Element[]
  readonly frames: readonly Element[]
  /** `label[for]` by the id it names. */
  readonly labelFor: ReadonlyMap<string, Element>
  /** True when the page was too large to be read to its end. */
  readonly cut: boolean
}

const MOST_NODES = 100_000

const LONGEST_TEXT = 2_000

// Deeper than any parser nests; a script could go on, and every climb would pay for it.
const DEEPEST = 600

const BLOCKS = names(
  'address article aside blockquote body button caption center details dialog div dl fieldset figcaption figure footer form ' +
    'h1 h2 h3 h4 h5 h6 header hgroup hr html iframe label legend main menu nav ol p pre search section select summary table tbody ' +
    'tfoot thead ul br',
)

const CELLS = names('td th tr li dt dd')

const HEADINGS = names('h1 h2 h3 legend')

interface Step {
  readonly box: Box
  readonly children: readonly Node[]
  next: number
  readonly struck: boolean
  readonly hushed: Box | null
  readonly block: boolean
  readonly cell: boolean
}

/**
 * Walks the page once as it is drawn - open shadow roots, slots and same-origin frames included - and leaves out what
 * markup alone already hides. Linear, not recursive, and stops after 100,000 nodes.
 */
export function readPageText(document: Document): PageText {
  const leaves: Leaf[] = []
  const boxOf = new Map<Element, Box>()
  const found = { controls: [] as Element[], fields: [] as Element[], headings: [] as Element[] }
  const frames: Element[] = []
  const labelFor = new Map<string, Element>()
  const stack: Step[] = []
  let line = 0
  let cell = 0
  let spaced = true
  let nodes = 0

  function enter(element: Element, name: string, parent: Step | null): void {
    const bare = isBare(element)
    const box: Box = {
      element,
      name,
      parent: parent?.box ?? null,
      depth: (parent?.box.depth ?? -1) + 1,
      from: leaves.length,
      to: leaves.length,
    }
    boxOf.set(element, box)
    note(element, name, bare)
    const block = BLOCKS.has(name) || CELLS.has(name)
    const hush = !bare && attribute(element, 'aria-hidden') === 'true'
    const step: Step = {
      box,
      children: childrenOf(element, name),
      next: 0,
      struck: (parent?.struck ?? false) || name === 'del' || name === 's' || name === 'strike',
      hushed: parent?.hushed ?? (hush ? box : null),
      block,
      cell: CELLS.has(name),
    }
    turn(step)
    stack.push(step)
    const value = shownValue(element)
    if (value) add(value, step)
  }

  function turn(step: Step): void {
    if (!step.block) return
    line += 1
    spaced = true
    if (step.cell) cell += 1
  }

  function note(element: Element, name: string, bare: boolean): void {
    if (bare && !HEADINGS.has(name) && !OFTEN_BARE.has(name) && !name.includes('-')) return
    if (isControl(element, name)) found.controls.push(element)
    if (isField(element, name)) found.fields.push(element)
    if (HEADINGS.has(name) || attribute(element, 'role') === 'heading') found.headings.push(element)
    if (name === 'iframe') frames.push(element)
    const target = name === 'label' ? attribute(element, 'for') : null
    if (target) labelFor.set(target, element)
  }

  function add(raw: string, step: Step): void {
    const text = tidy(raw.slice(0, LONGEST_TEXT))
    if (text === '') {
      if (raw !== '') spaced = true
      return
    }
    const before = spaced || /^\s/u.test(raw)
    leaves.push({ text, box: step.box, spaced: before, line, cell, struck: step.struck, hushed: step.hushed })
    spaced = /\s$/u.test(raw)
  }

  const start = rootOf(document)
  if (start) enter(start, nameOf(start), null)
  let step = stack.at(-1)
  while (step) {
    const child = step.children[step.next]
    step.next += 1
    if (child) nodes += 1
    if (!child || nodes > MOST_NODES) {
      step.box.to = leaves.length
      turn(step)
      stack.pop()
    } else if (isText(child)) {
      add(child.data, step)
    } else if (isElement(child) && step.box.depth < DEEPEST) {
      const name = nameOf(child)
      if (!isLeftOut(child, name)) enter(child, name, step)
    }
    step = stack.at(-1)
  }
  const root = start ? (boxOf.get(start) ?? null) : null
  return { root, leaves, boxOf, ...found, frames, labelFor, cut: nodes > MOST_NODES }
}
