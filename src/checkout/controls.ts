import type { Box } from './box.ts'
import { attribute, drawnParent, fits, nameOf } from './dom.ts'
import { lex } from './lexer.ts'
import type { ControlKind } from './lexicon/index.ts'
import type { PageText } from './page-text.ts'
import type { Sight } from './sight.ts'
import { controlKinds, oncePerText, type Vocabulary } from './vocabulary.ts'
import { plain, tidy } from './words.ts'

/** A control that can be seen, with what its own words say. */
export interface Control {
  readonly element: Element
  readonly box: Box
  readonly words: string
  readonly kind: ControlKind
  /** `aria-disabled`: the page calls it disabled, but it can still be pressed. */
  readonly calledDisabled: boolean
  readonly isLink: boolean
  /** Its words can also mean "go to the checkout": French carts say "commander", German ones "bestellen". */
  readonly toCheckout: boolean
}

const LONGEST_WORDS = 70
const MOST_CONTROLS = 10_000
// Whether a control can be pressed is asked only where it matters, and of so many of a kind.
const MOST_ASKED = 200

/**
 * What a control's own words say it does, or null. Only these words count: not the text beside it, and not the page's
 * (Court of Justice of the EU, C-249/21). Amounts on the control are set aside first: "Pay 55.90" says "pay".
 *
 * @example controlKind('Jetzt zahlungspflichtig bestellen', words) // 'pays'
 */
export function controlKind(label: string, words: Vocabulary): ControlKind | null {
  // Most controls of a page are links with no word that is known: their money need not be found.
  const whole = plain(label)
  if (/^[\x20-\x7e]*$/.test(whole) && !words.controls.mayKnow(whole)) return null
  const text = plain(withoutMoney(label)).replace(/^[^\p{L}\p{M}]+|[^\p{L}\p{M}]+$/gu, '')
  if (text === '' || text.length > LONGEST_WORDS) return null
  let best: { kind: ControlKind; length: number } | null = null
  let start: { kind: ControlKind; length: number } | null = null
  const hits = [...words.controls.all(text)]
  for (const kind of controlKinds) {
    for (const [found, hit] of hits) {
      // Words that say next to nothing count only where they are all there is.
      if (found !== kind || (kind === 'vague' && hit.length < text.length)) continue
      if (!best || hit.length > best.length) best = { kind, length: hit.length }
      if (hit.at === 0 && (!start || hit.length > start.length)) start = { kind, length: hit.length }
    }
  }
  // "Proceed to place the order" goes on; "Continue and pay" is a phrase of its own, and longer.
  return start?.kind === 'other' ? 'other' : (best?.kind ?? null)
}

const kindOnce = oncePerText(controlKind)

function withoutMoney(label: string): string {
  if (!/[\p{Nd}\p{Sc}]/u.test(label)) return label
  return lex(label)
    .filter((token) => token.kind === 'word' && !(token.money && token.text === token.text.toUpperCase()))
    .map((token) => token.text)
    .join(' ')
}

/** Every control of the page whose words say something known. Controls that are hidden or disabled are left out. */
export function readControls(page: PageText, words: Vocabulary, sight: Sight): Control[] {
  const found: Control[] = []
  const asked = new Map<ControlKind, number>()
  for (const [index, box] of page.controls.slice(0, MOST_CONTROLS).entries()) {
    const { element } = box
    const label = ownWords(page, box)
    const kind = label === '' ? null : kindOnce(label, words)
    if (!kind) continue
    if (kind !== 'other' && kind !== 'addToCart') {
      const count = asked.get(kind) ?? 0
      asked.set(kind, count + 1)
      if (count >= MOST_ASKED || isPacking(page, index) || !isOpenToPress(element, sight)) continue
      if (isMerelyCustom(element) && (!saysOnly(label, kind, words) || holdsParts(page, box))) continue
    }
    const isLink = nameOf(element) === 'a' || attribute(element, 'role') === 'link'
    const calledDisabled = attribute(element, 'aria-disabled') === 'true'
    const toCheckout = words.controls.longest(plain(label)).has('toCheckout')
    found.push({ element, box, words: label, kind, calledDisabled, isLink, toCheckout })
  }
  return found
}

// What a custom element holds that no button holds: then it is a part of the page.
const PARTS: ReadonlySet<string> = new Set([
  'h1',
  'h2',
  'h3',
  'h4',
  'p',
  'div',
  'section',
  'li',
  'td',
  'dd',
  'dt',
  'form',
])

/** A custom element that neither its name nor an attribute calls a button. Most of them lay out the page. */
function isMerelyCustom(element: Element): boolean {
  const name = nameOf(element)
  if (!name.includes('-') || /button|btn|submit|cta/.test(name)) return false
  return ['role', 'tabindex', 'onclick', 'href'].every((each) => attribute(element, each) === null)
}

/** Whether these words are all that is said: `<buy-now>Pay now</buy-now>`, but not `<sum-label>Left to pay:</sum-label>`. */
function saysOnly(label: string, kind: ControlKind, words: Vocabulary): boolean {
  const text = plain(withoutMoney(label))
  return words.controls.longest(text).get(kind)?.length === text.length
}

function holdsParts(page: PageText, outer: Box): boolean {
  return page.leaves.slice(outer.from, outer.to).some((leaf) => {
    for (let box: Box | null = leaf.box; box && box !== outer; box = box.parent) if (PARTS.has(box.name)) return true
    return false
  })
}

/** The control's accessible name as far as it is its own: what it shows, else what its label attributes say. */
function ownWords(page: PageText, box: Box): string {
  box.own ??= wordsOf(page, box)
  return box.own
}

function wordsOf(page: PageText, box: Box): string {
  const { element } = box
  if (box.to - box.from > 12) return ''
  const shown = page.leaves.slice(box.from, box.to).map((leaf) => leaf.text)
  const text = tidy(shown.join(' '))
  if (/\p{L}/u.test(text)) return text
  const named = ['aria-label', 'alt', 'title', 'label'].map((name) => attribute(element, name) ?? '')
  return tidy(named.find((name) => name !== '') ?? text)
}

function isOpenToPress(element: Element, sight: Sight): boolean {
  if (fits(element, ':disabled') || isInert(element)) return false
  // Something that opens, chooses or switches is no order, whatever it says: "Pay by card" as a heading of a panel.
  if (
    ['aria-expanded', 'aria-haspopup', 'aria-pressed', 'aria-selected', 'aria-checked'].some(
      (name) => attribute(element, name) !== null,
    )
  ) {
    return false
  }
  return sight.seen(element) === 'shown' && !sight.nowhere(element)
}

function isInert(element: Element): boolean {
  let at: Element | null = element
  while (at) {
    if (attribute(at, 'inert') !== null) return true
    at = drawnParent(at)
  }
  return false
}

/** Whether another control lies inside: then that one is pressed, not its packing. In drawn order it comes next. */
function isPacking({ controls }: PageText, index: number): boolean {
  const own = controls[index]
  for (let box = controls[index + 1]?.parent ?? null; box; box = box.parent) if (box === own) return true
  return false
}
