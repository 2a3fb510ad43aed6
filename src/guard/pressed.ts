import { drawnParent, isElement, nameOf } from '../checkout/dom.ts'
import { rootIn } from './engine.ts'

/** Less than this is nothing to see. */
const FAINT = 0.1
const NO_COLOUR = /^rgba\(.*, 0(?:\.0\d*)?\)$|^transparent$/

/**
 * All that a press, click or key means to press: what the browser says, and what it does not say of closed shadow roots,
 * of labels (they press their control), and of what a person sees through an invisible cover.
 */
export function pressed(event: Event): readonly EventTarget[] {
  const path = event.composedPath()
  const nodes = new Set<EventTarget>(path)
  const [target] = path
  if (isElement(target)) for (const inner of insideClosed(event, target)) nodes.add(inner)
  const point = event.isTrusted ? pointOf(event) : null
  if (point && isElement(target)) for (const under of underCover(point, target)) nodes.add(under)
  for (const node of [...nodes]) if (node instanceof HTMLLabelElement && node.control) nodes.add(node.control)
  return [...nodes]
}

interface Point {
  readonly x: number
  readonly y: number
}

/**
 * Events show a closed shadow root as its host. Where the pointer is, or which element has the keyboard, tells more; a
 * script's click tells nothing, so there all of the root counts.
 */
function insideClosed(event: Event, target: Element): Element[] {
  const root = rootIn(target)
  if (!root || event.composedPath().includes(root)) return []
  const point = pointOf(event)
  const found = event.isTrusted ? (point ? root.elementFromPoint(point.x, point.y) : root.activeElement) : null
  if (!found || found === target) return event.isTrusted && point ? [] : [...root.querySelectorAll('*')]
  return [...upTo(found, target), ...insideClosed(event, found)]
}

/** What lies under a cover that shows nothing: a person presses what is seen. */
function underCover(point: Point, target: Element): Element[] {
  const covers = Document.prototype.elementsFromPoint.call(target.ownerDocument, point.x, point.y)
  const seen = covers.find((element) => !showsNothing(element))
  return seen && seen !== target ? upTo(deepest(seen, point), null) : []
}

function deepest(element: Element, point: Point): Element {
  const inner = rootIn(element)?.elementFromPoint(point.x, point.y)
  return inner && inner !== element ? deepest(inner, point) : element
}

function showsNothing(element: Element): boolean {
  if (rootIn(element)) return false
  const style = getComputedStyle(element)
  if (Number(style.opacity) < FAINT) return true
  const isBlank =
    (element.textContent ?? '').trim() === '' && !/^(?:img|svg|canvas|input|iframe|object|embed)$/.test(nameOf(element))
  return isBlank && NO_COLOUR.test(style.backgroundColor) && style.backgroundImage === 'none'
}

function upTo(element: Element, end: Element | null): Element[] {
  const found: Element[] = []
  for (let at: Element | null = element; at && at !== end; at = drawnParent(at)) found.push(at)
  return found
}

/** Where a pointer is; null for keys and for clicks that come from none. */
function pointOf(event: Event): Point | null {
  if (event instanceof MouseEvent && (event.detail > 0 || event.type.startsWith('pointer'))) {
    return { x: event.clientX, y: event.clientY }
  }
  const touch =
    'changedTouches' in event && event instanceof UIEvent ? (event as TouchEvent).changedTouches[0] : undefined
  return touch ? { x: touch.clientX, y: touch.clientY } : null
}
