/** One change of a page, told by three numbers: what kind, where, and with what. */
export interface Mutation {
  readonly kind: number
  readonly place: number
  readonly value: number
}

const TEXTS = [
  'Total',
  'Order total:',
  '$12.50',
  '12.50 €',
  '$',
  '12',
  '50',
  '≈',
  'Shipping',
  'Place order',
  'Tax (incl.)',
  'Qty: 2',
  '(',
  ')',
  ' ',
  '',
  'Subtotal $9.00',
  'was',
  'USD',
  '1,234.00',
]

const PIECES = [
  '<p>Total <b>$20.00</b></p>',
  '<tr><td>Shipping</td><td>$3.00</td></tr>',
  '<li>2 × Mug <span>$8.00</span></li>',
  '<span>$</span><span>7</span><sup>25</sup>',
  '<button>Pay now</button>',
  '<div aria-hidden="true">$5.00</div>',
  '<select><option>1</option><option selected>2</option></select>',
  '<input value="Buy now" type="submit">',
  '<input readonly value="$4.00">',
  '<label for="x1">Total</label><output id="x1">$6.00</output>',
  '<details><summary>Order total $9.50</summary><p>Tax $1.00</p></details>',
  '<s>$99.00</s>',
  '<label><input type="radio" name="r" checked> Express $15.00</label>',
  '<shop-total>$31.00</shop-total>',
  '<iframe title="card payment"></iframe>',
  '<h2>Checkout</h2>',
  '<dialog open>Total $1.00</dialog>',
  '<meta itemprop="price" content="5.00">',
  '<div typeof="Order"><span property="totalPrice" content="20.00">$20.00</span><meta property="priceCurrency" content="USD"></div>',
  '<script type="application/ld+json">{"@type":"Order","totalPrice":"12.50","priceCurrency":"USD"}</script>',
]

const ATTRIBUTES: readonly (readonly [name: string, value: string])[] = [
  ['hidden', ''],
  ['style', 'display: none'],
  ['style', 'color: red'],
  ['class', 'cents'],
  ['class', 'sr-only'],
  ['class', 'mini-cart'],
  ['aria-hidden', 'true'],
  ['role', 'button'],
  ['role', 'heading'],
  ['href', '/checkout'],
  ['id', 'x1'],
  ['open', ''],
  ['for', 'x1'],
  ['aria-label', 'Order total'],
  ['readonly', ''],
  ['disabled', ''],
  ['value', '$8.50'],
  ['type', 'submit'],
  ['slot', 'sum'],
  ['name', 'sum'],
  ['autocomplete', 'cc-number'],
  ['itemprop', 'price'],
  ['typeof', 'Order'],
  ['property', 'totalPrice'],
  ['lang', 'fr'],
  ['popover', ''],
  ['data-label', 'Total'],
]

/** Changes a page in one of the ways in which shops change theirs. Says what it did. */
export function mutate(document: Document, { kind, place, value }: Mutation): string {
  const elements = everyElement(document)
  const element = elements[place % elements.length]
  if (!element) return 'nothing'
  const texts = textsOf(element)
  const text = texts[value % Math.max(1, texts.length)]
  const other = elements[value % elements.length]
  const piece = PIECES[value % PIECES.length] ?? ''
  const [name, content] = ATTRIBUTES[value % ATTRIBUTES.length] ?? ['class', '']
  const what = `${element.localName} ${place}/${value}`
  switch (kind % 12) {
    case 0:
      if (text) text.data = TEXTS[value % TEXTS.length] ?? ''
      return `text in ${what}`
    case 1:
      element.append(TEXTS[value % TEXTS.length] ?? '')
      return `text put into ${what}`
    case 2:
      element.insertAdjacentHTML('beforeend', piece)
      return `${piece} into ${what}`
    case 3:
      element.insertAdjacentHTML('afterbegin', piece)
      return `${piece} first in ${what}`
    case 4:
      if (element !== document.body) element.remove()
      return `removed ${what}`
    case 5:
      if (other && element !== document.body && !isAround(element, other)) other.append(element)
      return `moved ${what} into ${other?.localName}`
    case 6:
    case 7:
      element.setAttribute(name, content)
      return `${name}="${content}" on ${what}`
    case 8:
      element.removeAttribute(name)
      return `${name} off ${what}`
    case 9:
      return changeValue(document, value)
    case 10:
      return grow(element, piece, what)
    default:
      element.replaceChildren(...Array.from(element.childNodes, (node) => node.cloneNode(true)))
      return `drawn anew: ${what}`
  }
}

/** What no record tells of: values, choices, shadow roots. */
function changeValue(document: Document, value: number): string {
  const fields = everyElement(document).filter((each) => each.localName === 'input' || each.localName === 'select')
  const field = fields[value % Math.max(1, fields.length)]
  if (!field) return 'no field'
  if ('selectedIndex' in field) field.selectedIndex = value % 3
  else if ('checked' in field && value % 2 === 0) field.checked = !field.checked
  else if ('value' in field) field.value = TEXTS[value % TEXTS.length]
  return `value of ${field.localName}`
}

function grow(element: Element, piece: string, what: string): string {
  if (element.shadowRoot) {
    element.shadowRoot.innerHTML = `${piece}<slot name="sum"></slot><slot></slot>`
    return `shadow tree of ${what} drawn anew`
  }
  if (!['div', 'p', 'span', 'section', 'shop-total', 'main'].includes(element.localName)) return 'no shadow root'
  element.attachShadow({ mode: 'open' }).innerHTML = `<slot name="sum"></slot>${piece}<slot></slot>`
  return `shadow root on ${what}`
}

function everyElement(root: Document | ShadowRoot): Element[] {
  const found: Element[] = []
  const scope = root.nodeType === 9 ? root.querySelectorAll('body, body *') : root.querySelectorAll('*')
  for (const element of scope) {
    found.push(element)
    if (element.shadowRoot) found.push(...everyElement(element.shadowRoot))
  }
  return found
}

/** Whether an element holds another, shadow trees included. */
function isAround(outer: Element, inner: Element): boolean {
  for (let at: Node | null = inner; at; at = 'host' in at && isNode(at.host) ? at.host : at.parentNode) {
    if (at === outer) return true
  }
  return false
}

function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && 'nodeType' in value
}

function textsOf(element: Element): Text[] {
  const found: Text[] = []
  for (const node of element.childNodes) if (isText(node)) found.push(node)
  return found
}

function isText(node: Node): node is Text {
  return node.nodeType === 3
}
