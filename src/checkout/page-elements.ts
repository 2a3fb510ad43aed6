import {
  attribute,
  drawnChildren,
  fits,
  frameDocument,
  isElement,
  isInput,
  isSelect,
  nameOf,
  rootOf,
  shadowOf,
} from './dom.ts'

export const names = (text: string): ReadonlySet<string> => new Set(text.split(' '))

const SKIPPED = names(
  'head script style template noscript svg math canvas object embed audio textarea datalist map progress meter title',
)

// What is a control, a field or a frame even without an attribute.
export const OFTEN_BARE = names('button input select textarea iframe')

const BUTTON_TYPES = names('submit image button')

const SHOWN_VALUES = names('text number tel')

// A cheap look at the element's own style attribute; the full answer is asked only where it matters.
const STYLED_AWAY =
  /(?:^|;)\s*(?:display\s*:\s*none|visibility\s*:\s*(?:hidden|collapse)|opacity\s*:\s*0(?:\.0+)?\s*(?:;|!|$))/i

/** Without a single attribute: most of a page's elements, and nothing needs to be asked of them. */
export function isBare(element: Element): boolean {
  return typeof element.hasAttributes === 'function' && !element.hasAttributes()
}

export function childrenOf(element: Element, name: string): readonly Node[] {
  if (name === 'iframe') {
    const inner = frameDocument(element)
    const root = inner ? rootOf(inner) : null
    return root ? [root] : []
  }
  if (name === 'select') return []
  if (name !== 'details' || attribute(element, 'open') !== null) return drawnChildren(element)
  return drawnChildren(element).filter((child) => isElement(child) && nameOf(child) === 'summary')
}

export function isLeftOut(element: Element, name: string): boolean {
  if (SKIPPED.has(name)) return true
  if (isBare(element)) return name === 'dialog'
  if (attribute(element, 'hidden') !== null) return true
  if (name === 'dialog' && attribute(element, 'open') === null) return true
  if (attribute(element, 'popover') !== null && !fits(element, ':popover-open')) return true
  const style = attribute(element, 'style')
  return style !== null && STYLED_AWAY.test(style)
}

/** What a field shows as its own text: a button's words, the chosen option, or a sum the buyer cannot change. */
export function shownValue(element: Element): string | null {
  if (isSelect(element)) return element.options[element.selectedIndex]?.textContent ?? null
  if (!isInput(element)) return null
  if (BUTTON_TYPES.has(element.type)) return element.value
  const fixed = element.readOnly || element.disabled
  return fixed && SHOWN_VALUES.has(element.type) ? element.value : null
}

export function isField(element: Element, name: string): boolean {
  if (name === 'select' || name === 'textarea') return true
  return isInput(element) && !BUTTON_TYPES.has(element.type) && element.type !== 'hidden'
}

export function isControl(element: Element, name: string): boolean {
  if (name === 'button' || (isInput(element) && BUTTON_TYPES.has(element.type))) return true
  if (name === 'a' && attribute(element, 'href') !== null) return true
  const role = attribute(element, 'role')
  // A custom element without an open shadow root may be a button whose inside nobody can see.
  return role === 'button' || role === 'link' || (name.includes('-') && shadowOf(element) === null)
}
