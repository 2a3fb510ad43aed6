// The reader gets its document from elsewhere (a frame, jsdom, another realm), so nothing here uses `instanceof`.

/** Whether a node is an element, in any realm. */
export function isElement(node: Node | null | undefined): node is Element {
  return node?.nodeType === 1
}

/** Whether a node is a text node, in any realm. */
export function isText(node: Node): node is Text {
  return node.nodeType === 3
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

function isShadowRoot(node: Node | null): node is ShadowRoot {
  return node?.nodeType === 11 && 'host' in node
}

function isSlot(element: Element): element is HTMLSlotElement {
  return element.localName === 'slot' && 'assignedNodes' in element
}

/** An attribute's value, or null. A form control named `getAttribute` hides the method of its form; then null too. */
export function attribute(element: Element, name: string): string | null {
  return typeof element.getAttribute === 'function' ? element.getAttribute(name) : null
}

/** The element's classes, id and name as one text, for the few hints that shops put nowhere else. */
export function ownNames(element: Element): string {
  return `${attribute(element, 'class') ?? ''} ${attribute(element, 'id') ?? ''} ${attribute(element, 'name') ?? ''}`
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

/** The parent as the page is drawn: through slots, out of shadow roots and out of same-origin frames. */
export function drawnParent(node: Node): Element | null {
  const slot = isElement(node) || isText(node) ? node.assignedSlot : null
  if (slot) return slot
  const parent = node.parentNode
  if (isElement(parent)) return parent
  if (isShadowRoot(parent)) return parent.host
  return parent?.nodeType === 9 ? frameElementOf(node) : null
}

function frameElementOf(node: Node): Element | null {
  try {
    return node.ownerDocument?.defaultView?.frameElement ?? null
  } catch {
    return null
  }
}

/** The child nodes as the page is drawn: a host's shadow tree, a slot's assigned nodes (or its fallback). */
export function drawnChildren(element: Element): Node[] {
  const assigned = isSlot(element) ? element.assignedNodes() : []
  if (assigned.length > 0) return assigned
  const children: Node[] = []
  let child = (element.shadowRoot ?? element).firstChild
  while (child) {
    children.push(child)
    child = child.nextSibling
  }
  return children
}

/** The view that knows computed styles, or null (a document made by a parser has none). */
export function viewOf(element: Element): (Window & typeof globalThis) | null {
  return element.ownerDocument.defaultView
}
