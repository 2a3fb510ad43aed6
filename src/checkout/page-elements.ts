import { assignedTo, attribute, fits, frameDocument, isInput, isSelect, rootOf, shadowOf } from './dom.ts'

/**
 * What is known of an element at a glance, as bits: of its name alone, and of its attributes. One look-up and one list of
 * attribute names must do for most elements of a page: a reading asks for tens of thousands.
 */
export const trait = {
  /** Breaks the line before and after. */
  block: 1,
  /** A table cell, a list item: what is in it belongs together. */
  cell: 2,
  heading: 4,
  /** Nothing in it is text of the page. */
  skipped: 8,
  /** May have an open shadow root. */
  host: 16,
  struck: 32,
  /** Its children are not simply its child nodes. */
  special: 64,
  /** Something a person could press: a button, a link, or their look-alike. */
  control: 128,
  /** An input, a select. */
  field: 256,
  frame: 512,
  /** A `label` that names its field by id. */
  label: 1024,
  /** Shows a value that can change without the page's tree changing. */
  value: 2048,
  slot: 4096,
  /** A name of the page's own making. */
  custom: 8192,
  /** Drawn only while it is open. */
  dialog: 16384,
  /** Has an attribute that may name an amount inside. */
  labelled: 32768,
  /** Has any attribute at all. */
  attributed: 65536,
} as const

const NAMES: Readonly<Record<string, readonly string[]>> = {
  block: words(
    'address article aside blockquote body button caption center details dialog div dl fieldset figcaption figure footer form ' +
      'h1 h2 h3 h4 h5 h6 header hgroup hr html iframe label legend main menu nav ol p pre search section select summary table ' +
      'tbody tfoot thead ul br td th tr li dt dd',
  ),
  cell: words('td th tr li dt dd'),
  heading: words('h1 h2 h3 legend'),
  skipped: words(
    'head script style template noscript svg math canvas object embed audio textarea datalist map progress meter title',
  ),
  host: words('article aside blockquote body div footer h1 h2 h3 h4 h5 h6 header main nav p section span'),
  struck: words('del s strike'),
  special: words('iframe select details slot'),
  control: words('button'),
  field: words('select'),
  frame: words('iframe'),
  value: words('select input'),
  slot: words('slot'),
  dialog: words('dialog'),
}

const BY_NAME = new Map<string, number>()
for (const [kind, bit] of Object.entries(trait)) {
  for (const name of NAMES[kind] ?? []) BY_NAME.set(name, (BY_NAME.get(name) ?? 0) | bit)
}

// Narrow screens show a cell's heading from an attribute, by style alone.
export const CELL_NAMES: readonly string[] = ['data-title', 'data-label', 'data-th']

/** Attributes that may name an amount. */
export const LABELLING: ReadonlySet<string> = new Set(['aria-label', 'aria-labelledby', 'id', ...CELL_NAMES])

const BUTTON_TYPES: ReadonlySet<string> = new Set(['submit', 'image', 'button'])
const SHOWN_VALUES: ReadonlySet<string> = new Set(['text', 'number', 'tel'])

// A cheap look at the element's own style attribute; the full answer is asked only where it matters.
const STYLED_AWAY =
  /(?:^|;)\s*(?:display\s*:\s*none|visibility\s*:\s*(?:hidden|collapse)|opacity\s*:\s*0(?:\.0+)?\s*(?:;|!|$))/i

function words(text: string): readonly string[] {
  return text.split(' ')
}

/** What an element's name alone says of it. */
export function traitsOfName(name: string): number {
  return BY_NAME.get(name) ?? (name.includes('-') ? trait.custom | trait.host : 0)
}

/** Whether markup alone hides an element with everything in it. */
export function isLeftOut(element: Element, name: string, attributes: readonly string[]): boolean {
  if (name === 'dialog' && !attributes.includes('open')) return true
  for (const each of attributes) {
    if (each === 'hidden') return true
    if (each === 'style' && STYLED_AWAY.test(attribute(element, 'style') ?? '')) return true
    if (each === 'popover' && !fits(element, ':popover-open')) return true
  }
  return false
}

/** What the name and the attributes of an element say together. */
export function traitsOf(element: Element, name: string, named: number, attributes: readonly string[]): number {
  let traits = attributes.length > 0 ? named | trait.attributed : named
  if (name === 'input' && isInput(element)) {
    if (BUTTON_TYPES.has(element.type)) traits |= trait.control
    else if (element.type !== 'hidden') traits |= trait.field
  }
  // A custom element without an open shadow root may be a button whose inside nobody can see.
  if (traits & trait.custom && shadowOf(element) === null) traits |= trait.control
  for (const each of attributes) {
    if (LABELLING.has(each)) traits |= trait.labelled
    if (each === 'role') {
      const role = attribute(element, 'role')
      if (role === 'button' || role === 'link') traits |= trait.control
      else if (role === 'heading') traits |= trait.heading
    } else if (each === 'href' && name === 'a') traits |= trait.control
    else if (each === 'for' && name === 'label' && attribute(element, 'for')) traits |= trait.label
  }
  return traits
}

/** The children of the few elements whose children are not simply their child nodes; null where they are. */
export function specialChildren(element: Element, name: string): readonly Node[] | null {
  if (name === 'select') return []
  if (name === 'iframe') {
    const inner = frameDocument(element)
    const root = inner ? rootOf(inner) : null
    return root ? [root] : []
  }
  return null
}

/** Kinds of element whose drawing can change without a change of the tree. */
export const LOOSE = trait.value | trait.slot | trait.frame | trait.custom

/** What to compare to learn whether such an element changed: the option chosen, the value shown, what a slot or frame holds. */
export function looseState(element: Element, name: string): unknown {
  if (name === 'select' && 'selectedIndex' in element) return element.selectedIndex
  if (name === 'input') return shownValue(element)
  if (name === 'slot') return assignedTo(element)
  if (name !== 'iframe') return shadowOf(element)
  const inner = frameDocument(element)
  return inner ? rootOf(inner) : null
}

function chosenText(element: HTMLSelectElement): string | null {
  const index = element.selectedIndex
  const first = element.firstElementChild
  // The list of options is costly to ask for, and most selects show their first.
  const option = index === 0 && first?.localName === 'option' ? first : element.options[index]
  return option?.textContent ?? null
}

/** What a field shows as its own text: a button's words, the chosen option, or a sum the buyer cannot change. */
export function shownValue(element: Element): string | null {
  if (isSelect(element)) return chosenText(element)
  if (!isInput(element)) return null
  if (BUTTON_TYPES.has(element.type)) return element.value
  const fixed = element.readOnly || element.disabled
  return fixed && SHOWN_VALUES.has(element.type) ? element.value : null
}
