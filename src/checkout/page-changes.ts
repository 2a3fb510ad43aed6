import type { Box } from './box.ts'
import { attributeNames, drawnParent, holderOf, isElement, nameOf, rootOf, shadowOf } from './dom.ts'
import { isLeftOut, LABELLING, looseState, trait, traitsOfName } from './page-elements.ts'
import { beside, type PageText } from './page-text.ts'
import { isCentsText } from './placed-tokens.ts'

/** What of a change is looked at; a `MutationRecord` is one. */
export type Changed = Pick<MutationRecord, 'type' | 'target' | 'attributeName' | 'addedNodes' | 'removedNodes'>

// Beyond so many places, or so many boxes looked at on the way to them, one new walk is cheaper.
const MOST_PLACES = 200
const MOST_LOOKS = 20_000
const FEW_LEAVES = 200

// Only these attributes decide by markup alone what is drawn, can be pressed or shows as a text.
const HIDING = 'hidden style popover open'.split(' ')
const NAMING = 'class id name'.split(' ')
const DECIDING = 'role href for type value aria-hidden readonly disabled selected'.split(' ')

/**
 * The smallest boxes that hold everything these changes can have changed in the walk over the page, each breaking the line
 * and none inside another. Looks also at what changes without a record: values, slots, frames, popovers. Null where walking
 * the whole page anew is the better way.
 *
 * @param thorough whether to look for new shadow roots on old elements too: it asks every element that may have one
 */
export function dirtyBoxes(
  page: PageText,
  document: Document,
  changes: readonly Changed[],
  thorough: boolean,
): ReadonlySet<Box> | null {
  const { root } = page
  if (!root || page.cut || rootOf(document) !== root.element) return null
  const search: Search = { page, root, left: MOST_LOOKS }
  const places = new Map<Node, Set<string>>()
  const dirty = new Set<Box>()
  const add = (box: Box | null): void => {
    if (box) dirty.add(unitOf(box))
  }
  for (const { type, target, attributeName } of changes) {
    const what = type === 'attributes' ? (attributeName ?? '') : type
    const known = places.get(target) ?? new Set()
    if (known.has(what)) continue
    places.set(target, known.add(what))
    if (places.size > MOST_PLACES || search.left < 0) return null
    add(isElement(target) && type === 'attributes' ? byAttribute(search, target, what) : byContent(search, target))
  }
  if (thorough) for (const box of newHosts(page)) add(box)
  for (const box of page.loose) {
    if (!isSame(box.state, looseState(box.element, box.name))) add(box.traits & trait.custom ? box.parent : box)
  }
  page.walk.popovers = page.walk.popovers.filter((element) => {
    const way = wayTo(search, element)
    if (way && isDrawn(way) === isHidden(element)) add(isDrawn(way) ? way.box.parent : way.box)
    return way !== null
  })
  if (dirty.has(root) || search.left < 0) return null
  const units = outermost(dirty)
  let leaves = 0
  for (const { from, to } of units) leaves += to - from
  return 2 * leaves > page.leaves.length && leaves > FEW_LEAVES ? null : units
}

/** The boxes whose elements got a shadow root since they were walked: nothing tells of that by itself. */
function newHosts(page: PageText): Box[] {
  const found: Box[] = []
  for (let box = page.root; box; box = box.first ?? beside(box, 0)) {
    if (box.traits & trait.host && shadowOf(box.element) !== box.state) found.push(box)
  }
  return found
}

interface Search {
  readonly page: PageText
  readonly root: Box
  /** How many more boxes may be looked at. */
  left: number
}

/** The innermost box on the way to an element, and the first element on that way which has none. */
interface Way {
  readonly box: Box
  readonly missing: Element | null
}

function isDrawn({ missing }: Way): boolean {
  return missing === null
}

/** The way from the root to an element as the page is drawn now; null for what is not in the page any more. */
function wayTo(search: Search, element: Element): Way | null {
  const path: Element[] = []
  let at: Element | null = element
  for (; at && at !== search.root.element; at = drawnParent(at)) path.push(at)
  if (!at) return null
  let box = search.root
  for (let next = path.pop(); next; next = path.pop()) {
    let child = box.first
    for (; child && child.element !== next; child = child.next) search.left -= 1
    if (!child) return { box, missing: next }
    box = child
  }
  return { box, missing: null }
}

/** A text or the children of something changed. What is inside a part that is not drawn changes nothing. */
function byContent(search: Search, target: Node): Box | null {
  const element = holderOf(target)
  const way = element && wayTo(search, element)
  // A select draws its options itself.
  return way && (isDrawn(way) || way.box.name === 'select') ? way.box : null
}

function byAttribute(search: Search, element: Element, name: string): Box | null {
  const tag = nameOf(element)
  // The old slot is as much concerned as the new one: both are in the same host.
  if (name === 'slot') return element.parentNode && byContent(search, element.parentNode)
  if (name === 'name' && tag === 'slot') return byContent(search, element.getRootNode())
  const way = wayTo(search, element)
  if (!way) return null
  const { box, missing } = way
  if (missing !== null) {
    if (box.name === 'select') return box
    return missing === element && !isHidden(element) ? box : null
  }
  box.own = null
  if ((box.traits & trait.attributed) === 0) return box.parent ?? box
  if (name === 'open' && tag === 'details') return box
  if (HIDING.includes(name)) return isHidden(element) ? (box.parent ?? box) : null
  // What names an amount is known of a box as a trait.
  if (LABELLING.has(name) && (box.traits & trait.labelled) === 0) return box.parent ?? box
  if (NAMING.includes(name)) return holdsCents(search.page, box) ? box : null
  return DECIDING.includes(name) ? (box.parent ?? box) : null
}

function isHidden(element: Element): boolean {
  const name = nameOf(element)
  return (traitsOfName(name) & trait.skipped) !== 0 || isLeftOut(element, name, attributeNames(element))
}

/** Two digits of its own: its names can make them cents. */
function holdsCents({ leaves }: PageText, box: Box): boolean {
  for (let index = box.from; index < box.to; index += 1) {
    const leaf = leaves[index]
    if (leaf?.box === box && isCentsText(leaf.cut.tokens?.[0]?.text ?? '')) return true
  }
  return false
}

function isSame(a: unknown, b: unknown): boolean {
  if (!Array.isArray(a) || !Array.isArray(b)) return a === b
  return a.length === b.length && a.every((each, place) => each === b[place])
}

function unitOf(start: Box): Box {
  let box = start
  while ((box.traits & trait.block) === 0 && box.parent) box = box.parent
  return box
}

function outermost(boxes: ReadonlySet<Box>): ReadonlySet<Box> {
  const kept = new Set<Box>()
  for (const box of boxes) {
    let around = box.parent
    while (around && !boxes.has(around)) around = around.parent
    if (!around) kept.add(box)
  }
  return kept
}
