import { type Box, boxNamed, type Leaf } from './box.ts'
import { attribute, nameOf, rootOf } from './dom.ts'
import { trait } from './page-elements.ts'
import { boxFor, MOST_NODES, type Walk, walkInto } from './walk.ts'

/** What one walk over the page found, in drawn order. */
export interface PageText {
  readonly root: Box | null
  readonly leaves: readonly Leaf[]
  /** Everything a person could press: buttons, links, and their look-alikes. */
  readonly controls: readonly Box[]
  /** Fields: inputs and selects. */
  readonly fields: readonly Box[]
  readonly headings: readonly Box[]
  readonly frames: readonly Box[]
  /** `label[for]` by the id it names. */
  readonly labelFor: ReadonlyMap<string, Box>
  /** True when the page was too large to be read to its end. */
  readonly cut: boolean
}

/** What a page is made of by its boxes alone. */
interface Found {
  readonly controls: Box[]
  readonly fields: Box[]
  readonly headings: Box[]
  readonly frames: Box[]
  readonly labelFor: Map<string, Box>
}

const NOTED = trait.control | trait.field | trait.heading | trait.frame | trait.label

/**
 * Walks the page once as it is drawn - open shadow roots, slots and same-origin frames included - and leaves out what
 * markup alone already hides. Linear, not recursive, and stops after 100,000 nodes.
 */
export function readPageText(document: Document): PageText {
  const walk: Walk = { leaves: [], line: 0, spaced: true, nodes: 0, popovers: [] }
  const start = rootOf(document)
  const root = start ? boxFor(start, nameOf(start), null, walk) : null
  if (root) walkInto(root, walk)
  const found: Found = { controls: [], fields: [], headings: [], frames: [], labelFor: new Map() }
  for (let box = root; box; box = following(box)) note(box, found)
  return { root, leaves: walk.leaves, ...found, cut: walk.nodes > MOST_NODES }
}

/** The next box in drawn order: the first inside, else the next beside it or beside one around it. */
function following(box: Box): Box | null {
  let at: Box | null = box
  if (at.first) return at.first
  while (at && !at.next) at = at.parent
  return at?.next ?? null
}

function note(box: Box, found: Found): void {
  const { traits } = box
  if ((traits & NOTED) === 0) return
  if (traits & trait.control) found.controls.push(box)
  if (traits & trait.field) found.fields.push(box)
  if (traits & trait.heading) found.headings.push(box)
  if (traits & trait.frame) found.frames.push(box)
  const target = traits & trait.label ? attribute(box.element, 'for') : null
  if (target) found.labelFor.set(target, box)
}

/** The label of a field: the one that names it, else the one around it. */
export function labelOf(page: PageText, field: Box): Box | null {
  const id = attribute(field.element, 'id')
  return (id ? page.labelFor.get(id) : undefined) ?? boxNamed(field, 'label', field.depth)
}
