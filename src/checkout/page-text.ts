import { type Box, boxNamed, type Leaf } from './box.ts'
import { type Cuts, createCuts } from './cuts.ts'
import { attribute, nameOf, rootOf } from './dom.ts'
import { LOOSE, trait } from './page-elements.ts'
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
  /** What can change its drawing without a change of the tree. */
  readonly loose: readonly Box[]
  /** `label[for]` by the id it names. */
  readonly labelFor: ReadonlyMap<string, Box>
  /** How far the walk came, to take it up again. */
  readonly walk: Walk
  /** True when the page was too large to be read to its end. */
  readonly cut: boolean
}

/** What a page is made of by its boxes alone. */
interface Found {
  readonly controls: Box[]
  readonly fields: Box[]
  readonly headings: Box[]
  readonly frames: Box[]
  readonly loose: Box[]
  readonly labelFor: Map<string, Box>
}

/** A stretch of leaves that was read again: where it stands now, and where it stood. */
export interface Change {
  readonly from: number
  readonly to: number
  readonly oldFrom: number
  readonly oldTo: number
}

const NOTED = trait.control | trait.field | trait.heading | trait.label | LOOSE

/**
 * Walks the page once as it is drawn - open shadow roots, slots and same-origin frames included - and leaves out what
 * markup alone already hides. Linear, not recursive, and stops after 100,000 nodes.
 */
export function readPageText(document: Document, cuts: Cuts = createCuts()): PageText {
  const walk: Walk = { leaves: [], cuts, line: 0, spaced: true, nodes: 0, popovers: [], sources: [document] }
  const start = rootOf(document)
  const root = start ? boxFor(start, nameOf(start), null, walk) : null
  if (root) walkInto(root, walk)
  const found = nothingFound()
  for (let box = root; box; box = box.first ?? beside(box, 0)) note(box, found)
  return pageOf(root, walk, found)
}

/**
 * Walks again only what is in the boxes given - each one that breaks the line, so that nothing outside depends on it - and
 * moves what stands behind. The page before must not be used any more. Null where the page has become too large.
 *
 * @param units boxes of this page, none inside another
 */
export function renewPageText(
  page: PageText,
  units: ReadonlySet<Box>,
): { readonly page: PageText; readonly changes: readonly Change[] } | null {
  const walk: Walk = { ...page.walk, leaves: [] }
  const found = nothingFound()
  const changes: Change[] = []
  let taken = 0
  let shift = 0
  for (let box = page.root; box; ) {
    if (!units.has(box)) {
      box.from += shift
      note(box, found)
      if (!box.first) box.to += shift
      box = box.first ?? beside(box, shift)
      continue
    }
    const { from: oldFrom, to: oldTo } = box
    takeOver(page.leaves, taken, oldFrom, walk.leaves)
    taken = oldTo
    for (let around: Box | null = box; around; around = around.parent) around.own = null
    box.first = null
    box.from = walk.leaves.length
    walkInto(box, walk)
    changes.push({ from: box.from, to: box.to, oldFrom, oldTo })
    shift = box.to - oldTo
    for (let inner: Box | null = box; inner; inner = inner.first ?? insideNext(inner, box)) note(inner, found)
    box = beside(box, shift)
  }
  takeOver(page.leaves, taken, page.leaves.length, walk.leaves)
  return walk.nodes > MOST_NODES ? null : { page: pageOf(page.root, walk, found), changes }
}

function takeOver(leaves: readonly Leaf[], from: number, to: number, into: Leaf[]): void {
  for (let index = from; index < to; index += 1) {
    const leaf = leaves[index]
    if (leaf) into.push(leaf)
  }
}

function pageOf(root: Box | null, walk: Walk, found: Found): PageText {
  return { root, leaves: walk.leaves, ...found, walk, cut: walk.nodes > MOST_NODES }
}

function nothingFound(): Found {
  return { controls: [], fields: [], headings: [], frames: [], loose: [], labelFor: new Map() }
}

/** The next box beside a box or beside one around it. Those around that end here are moved by `shift` leaves. */
export function beside(box: Box, shift: number): Box | null {
  let at: Box | null = box
  while (at && !at.next) {
    at = at.parent
    if (at) at.to += shift
  }
  return at?.next ?? null
}

function insideNext(box: Box, within: Box): Box | null {
  let at: Box | null = box
  while (at && at !== within && !at.next) at = at.parent
  return at && at !== within ? at.next : null
}

function note(box: Box, found: Found): void {
  const { traits } = box
  if ((traits & NOTED) === 0) return
  if (traits & trait.control) found.controls.push(box)
  if (traits & trait.field) found.fields.push(box)
  if (traits & trait.heading) found.headings.push(box)
  if (traits & trait.frame) found.frames.push(box)
  if (traits & LOOSE) found.loose.push(box)
  const target = traits & trait.label ? attribute(box.element, 'for') : null
  if (target) found.labelFor.set(target, box)
}

/** The label of a field: the one that names it, else the one around it. */
export function labelOf(page: PageText, field: Box): Box | null {
  const id = attribute(field.element, 'id')
  return (id ? page.labelFor.get(id) : undefined) ?? boxNamed(field, 'label', field.depth)
}
