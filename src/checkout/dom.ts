// The reader gets its document from elsewhere (a frame, jsdom, another realm), so nothing here uses `instanceof`. And a
// page can hide what a form or the document can do: a field named `getAttribute` or `parentNode` takes the place of the
// form's own. Prototypes cannot be hidden so; what they say is asked where it matters.

/** What an object's prototypes say a property is, whatever the page has put over it. */
function natural(target: object, name: string): unknown {
  for (let at: unknown = Object.getPrototypeOf(target); isObject(at); at = Object.getPrototypeOf(at)) {
    const found = Object.getOwnPropertyDescriptor(at, name)
    if (found) return found.get ? found.get.call(target) : found.value
  }
  return undefined
}

function isObject(value: unknown): value is object {
  return (typeof value === 'object' && value !== null) || typeof value === 'function'
}

function isNode(value: unknown): value is Node {
  return isObject(value) && 'nodeType' in value
}

function callNatural(target: object, name: string, ...rest: readonly string[]): unknown {
  const method = natural(target, name)
  return typeof method === 'function' ? method.call(target, ...rest) : null
}

/** What one of an element's methods gives for a text, whatever the page has put over its name. */
export function callOn(element: Element, method: 'querySelector', argument: string): unknown {
  return callNatural(element, method, argument)
}

function typeOf(node: Node): unknown {
  return typeof node.nodeType === 'number' ? node.nodeType : natural(node, 'nodeType')
}

/** What kind of node it is: 1 an element, 3 a text, 9 a document, 11 a shadow root. */
export function kindOf(node: Node): number {
  const own: unknown = node.nodeType
  if (typeof own === 'number') return own
  const kind = natural(node, 'nodeType')
  return typeof kind === 'number' ? kind : 0
}

/** Whether a node is an element, in any realm. */
export function isElement(node: unknown): node is Element {
  return isNode(node) && typeOf(node) === 1
}

/** The element's own name: `button`, `td`. */
export function nameOf(element: Element): string {
  const own: unknown = element.localName
  if (typeof own === 'string') return own
  const name = natural(element, 'localName')
  return typeof name === 'string' ? name : ''
}

/** Whether an element is an HTML `input`. */
export function isInput(element: Element): element is HTMLInputElement {
  return element.localName === 'input' && 'value' in element
}

/** Whether an element is an HTML `select`. */
export function isSelect(element: Element): element is HTMLSelectElement {
  return element.localName === 'select' && 'selectedIndex' in element
}

function isFrame(element: Element): element is HTMLIFrameElement {
  return element.localName === 'iframe' && 'contentDocument' in element
}

function isSlot(element: Element): element is HTMLSlotElement {
  return element.localName === 'slot' && 'assignedNodes' in element
}

function isDocument(value: unknown): value is Document {
  return isNode(value) && typeOf(value) === 9
}

/** An attribute's value, or null. */
export function attribute(element: Element, name: string): string | null {
  if (typeof element.getAttribute === 'function') return element.getAttribute(name)
  const value = callNatural(element, 'getAttribute', name)
  return typeof value === 'string' ? value : null
}

/** The names of an element's attributes. Empty for most elements, which is asked first because it is the cheaper question. */
export function attributeNames(element: Element): readonly string[] {
  if (typeof element.hasAttributes === 'function' && !element.hasAttributes()) return NONE
  if (typeof element.getAttributeNames === 'function') return element.getAttributeNames()
  const found = callNatural(element, 'getAttributeNames')
  return Array.isArray(found) ? found.filter((name) => typeof name === 'string') : NONE
}

const NONE: readonly string[] = []

/** The element's classes, id and name as one text, for the few hints that shops put nowhere else. */
export function ownNames(element: Element): string {
  return `${attribute(element, 'class') ?? ''} ${attribute(element, 'id') ?? ''} ${attribute(element, 'name') ?? ''}`
}

/** Whether an element fits a selector; false where the engine does not know the selector. */
export function fits(element: Element, selector: string): boolean {
  try {
    return callNatural(element, 'matches', selector) === true
  } catch {
    return false
  }
}

/** The nearest ancestor (or the element itself) that fits a selector, within its tree. */
export function nearest(element: Element | null, selector: string): Element | null {
  const found = element ? callNatural(element, 'closest', selector) : null
  return isElement(found) ? found : null
}

/** The document's first element. */
export function rootOf(document: Document): Element | null {
  const root = natural(document, 'documentElement')
  return isElement(root) ? root : null
}

/** The document's title. */
export function titleOf(document: Document): string {
  const title = natural(document, 'title')
  return typeof title === 'string' ? title : ''
}

/** Elements of a document that fit a selector, in document order; at most `most`. */
export function select(document: Document, selector: string, most: number): Element[] {
  const list = callNatural(document, 'querySelectorAll', selector)
  const found: Element[] = []
  if (!isObject(list) || !isIterable(list)) return found
  for (const each of list) {
    if (found.length >= most) break
    if (isElement(each)) found.push(each)
  }
  return found
}

/** Elements of a document by their name, those with an attribute alone; quicker than a selector. At most `most`. */
export function selectNamed(document: Document, name: string, withAttribute: string, most: number): Element[] {
  const list = callNatural(document, 'getElementsByTagName', name)
  const found: Element[] = []
  if (!isObject(list) || !isIterable(list)) return found
  for (const each of list) {
    if (found.length >= most) break
    if (isElement(each) && attribute(each, withAttribute) !== null) found.push(each)
  }
  return found
}

function isIterable(value: object): value is Iterable<unknown> {
  return Symbol.iterator in value
}

/** The document inside a frame of the same origin, or null. */
export function frameDocument(element: Element): Document | null {
  if (!isFrame(element)) return null
  try {
    return element.contentDocument
  } catch {
    return null
  }
}

/** The document an element belongs to. */
export function ownerOf(element: Element): Document | null {
  const owner = isDocument(element.ownerDocument) ? element.ownerDocument : natural(element, 'ownerDocument')
  return isDocument(owner) ? owner : null
}

/** The view that knows computed styles, or null (a document made by a parser has none). */
export function viewOf(element: Element): (Window & typeof globalThis) | null {
  const document = ownerOf(element)
  const view = document ? natural(document, 'defaultView') : null
  return isView(view) ? view : null
}

function isView(value: unknown): value is Window & typeof globalThis {
  return isObject(value) && 'getComputedStyle' in value
}

/** The parent as the page is drawn: through slots, out of shadow roots and out of same-origin frames. */
export function drawnParent(node: Node): Element | null {
  // Forms alone have their properties hidden by their fields; everything else is asked directly, which is faster.
  const form = isElement(node) && nameOf(node) === 'form'
  const slot = form ? natural(node, 'assignedSlot') : slotOf(node)
  if (isElement(slot)) return slot
  const parent = form ? natural(node, 'parentNode') : node.parentNode
  if (isElement(parent)) return parent
  if (isNode(parent) && 'host' in parent && isElement(parent.host)) return parent.host
  return isDocument(parent) ? frameElementOf(parent) : null
}

/** The element a node's contents are drawn in: itself, the host of a shadow root, the frame of a document. */
export function holderOf(node: Node): Element | null {
  if (isElement(node)) return node
  if ('host' in node && isElement(node.host)) return node.host
  return isDocument(node) ? frameElementOf(node) : drawnParent(node)
}

function slotOf(node: Node): unknown {
  return 'assignedSlot' in node ? node.assignedSlot : null
}

function frameElementOf(document: Document): Element | null {
  try {
    const view = natural(document, 'defaultView')
    return isView(view) ? view.frameElement : null
  } catch {
    return null
  }
}

/** An element's open shadow root, or null. */
export function shadowOf(element: Element): ShadowRoot | null {
  // A form cannot have one.
  return nameOf(element) === 'form' ? null : (element.shadowRoot ?? null)
}

/** The nodes that a slot shows in place of its own; empty where it shows its own. */
export function assignedTo(element: Element): readonly Node[] {
  return isSlot(element) ? element.assignedNodes() : NO_NODES
}

const NO_NODES: readonly Node[] = []

/** The first child of an element or shadow root; `name` is the element's own. */
export function firstOf(parent: Element | ShadowRoot, name: string): Node | null {
  // Forms alone have their properties hidden by their fields.
  if (name !== 'form') return parent.firstChild
  const first = natural(parent, 'firstChild')
  return isNode(first) ? first : null
}

/** The node that follows in the tree. */
export function nextOf(node: Node, name: string): Node | null {
  if (name !== 'form') return node.nextSibling
  const next = natural(node, 'nextSibling')
  return isNode(next) ? next : null
}
