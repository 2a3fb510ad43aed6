import type { Cut } from './cuts.ts'

/** One element of the page as it is drawn, with the range of leaves it holds. */
export interface Box {
  readonly element: Element
  /** The element's name: `td`. */
  readonly name: string
  /** What is known of the element at a glance: bits of `trait`. */
  readonly traits: number
  readonly parent: Box | null
  readonly depth: number
  /** The table cell or list item it is, or stands in. */
  cell: Box | null
  /** Inside `del`, `s` or `strike`. */
  readonly struck: boolean
  /** The outermost `aria-hidden` box around it, or itself. */
  hushed: Box | null
  /** First box inside, and the next one beside it. */
  first: Box | null
  next: Box | null
  /** The words of its own, once somebody asked for them (see `controls.ts`). */
  own: string | null
  /** What can change without the page's tree changing, as it was when the box was walked (see `page-elements.ts`). */
  state: unknown
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
  readonly cut: Cut
}

/** The smallest box that holds both. */
export function commonBox(a: Box, b: Box): Box {
  let x = a
  let y = b
  while (x !== y) {
    const up = x.depth >= y.depth ? x.parent : null
    if (up) x = up
    else if (y.parent) y = y.parent
    else return x
  }
  return x
}

/** The box itself or the nearest around it with that name, at most `most` boxes further out; null where there is none. */
export function boxNamed(start: Box, name: string, most: number): Box | null {
  let box: Box | null = start
  for (let step = 0; box && step <= most; step += 1, box = box.parent) if (box.name === name) return box
  return null
}

/** The box of an element that is drawn directly inside another; null where it is not. */
export function childBox(parent: Box, element: Element): Box | null {
  for (let box = parent.first; box; box = box.next) if (box.element === element) return box
  return null
}
