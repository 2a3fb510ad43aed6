import { controlKind } from '../checkout/controls.ts'
import { attribute, drawnParent, fits, isElement, nameOf, nearest } from '../checkout/dom.ts'
import { submitsOrder } from '../checkout/is-place-order.ts'
import type { Lexicon } from '../checkout/lexicon/lexicon.ts'
import type { CheckoutReading } from '../checkout/reading.ts'
import { vocabularyOf } from '../checkout/vocabulary.ts'
import { rootIn } from './engine.ts'
import { pressed } from './pressed.ts'

type Read = Pick<CheckoutReading, 'placeOrder' | 'total' | 'stage'>

/** Fields that keep Enter in another field from submitting a form without a button (HTML, implicit submission). */
const TEXT_FIELDS =
  'input:is(:not([type]), [type=text], [type=search], [type=tel], [type=url], [type=email], [type=password], [type=number], [type=date], [type=month], [type=week], [type=time], [type=datetime-local])'
const BUTTONS = 'button, input:is([type=submit], [type=image], [type=button])'
const PRESSABLE = `${BUTTONS}, a, [role=button]`
const PAYING: ReadonlySet<unknown> = new Set(['pays', 'completes'])
/** Where a total is asked for, "buy" orders too. */
const ORDERING: ReadonlySet<unknown> = new Set([...PAYING, 'buys'])
const CLICKED_BY_KEY: ReadonlySet<string> = new Set(['a', 'button', 'input', 'summary'])
const FAINT = 0.1
/** Less than this many pixels is nothing to press. */
const TINY = 3

/** Whether an event is about to place the order: a press on a control that does, or the submit of a form by one. */
export function orders(event: Event, reading: Read, lexicons: readonly Lexicon[]): boolean {
  if (event.type === 'submit' || event.type === 'formdata') {
    return bySubmit(event.composedPath()[0], event instanceof SubmitEvent ? event.submitter : null, reading)
  }
  const controls = new Set<unknown>(reading.placeOrder)
  const nodes = pressed(event)
  if (nodes.some((node) => controls.has(node)) || byEnter(event, reading)) return true
  const kinds = reading.total !== null || reading.stage === 'checkout' ? ORDERING : PAYING
  return nodes.some(
    (node) =>
      isElement(node) && (isUnseen(node, event) || isBehindClosed(node, event)) && kinds.has(kindOf(node, lexicons)),
  )
}

/**
 * What cannot be seen is no control to the reader. A page can still have it pressed: by script, or by laying it, invisible,
 * over something else. Then its words alone decide.
 */
function isUnseen(element: Element, event: Event): boolean {
  if (!fits(element, PRESSABLE)) return false
  const box = element.getBoundingClientRect()
  const isSeen =
    event.isTrusted && Math.min(box.width, box.height) > TINY && element.checkVisibility({ opacityProperty: true })
  return !isSeen || upTo(element).some((each) => Number(getComputedStyle(each).opacity) < FAINT)
}

/** In a closed root that may have been found only by this press: the reading does not know it yet. */
function isBehindClosed(element: Element, event: Event): boolean {
  return (
    fits(element, PRESSABLE) && !event.composedPath().includes(element) && element.getRootNode() instanceof ShadowRoot
  )
}

function kindOf(element: Element, lexicons: readonly Lexicon[]): unknown {
  const words = element.textContent?.trim() || attribute(element, 'value') || attribute(element, 'aria-label') || ''
  return controlKind(words, vocabularyOf(lexicons))
}

function upTo(element: Element): Element[] {
  const found: Element[] = []
  for (let at: Element | null = element; at; at = drawnParent(at)) found.push(at)
  return found
}

/** Whether the page is left by a form that places the order. See `PageReader.leaving`. */
export function leavesByOrder(event: NavigateEvent, form: Element | null, reading: Read): boolean {
  const source = event.sourceElement ?? form
  if (source) {
    const own = formOf(source)
    // Entries may have been gathered for another reason (`new FormData(form)`): then the form does not lead there.
    if (!own || !(event.sourceElement || leadsTo(own, event))) return false
    return bySubmit(own, own === source ? null : source, reading)
  }
  return event.formData !== null && reading.placeOrder.some((control) => leadsTo(formOf(control), event))
}

/**
 * By its submitter. A form submitted without one (Enter in its only field, a script) orders when an ordering control
 * belongs to it, or when it has no button at all on a page that asks for payment of a total.
 */
function bySubmit(form: unknown, submitter: Element | null, { placeOrder, total }: Read): boolean {
  if (!isForm(form)) return false
  if (submitsOrder({ placeOrder }, form, submitter)) return true
  const isBare = Element.prototype.querySelector.call(form, BUTTONS) === null
  const isPost = attribute(form, 'method')?.trim().toLowerCase() === 'post'
  return isBare && isPost && total !== null && placeOrder.length === 0
}

/**
 * Enter in the only field of an order's form. A page's own listener might order at the key itself; in forms of several
 * fields it may as well choose an address, so there only the submit is heard.
 */
function byEnter(event: Event, { placeOrder }: Read): boolean {
  if (!(event instanceof KeyboardEvent) || event.key !== 'Enter' || event.isComposing) return false
  const field = event.composedPath()[0]
  if (!isElement(field) || nameOf(field) !== 'input') return false
  const form = formOf(field)
  if (!isForm(form)) return false
  return (
    Element.prototype.querySelectorAll.call(form, TEXT_FIELDS).length === 1 && submitsOrder({ placeOrder }, form, null)
  )
}

/** See `PageReader.clicks`. */
export function clicks(event: Event): boolean {
  const target = event.composedPath()[0]
  return !isElement(target) || CLICKED_BY_KEY.has(nameOf(target)) || rootIn(target) !== null
}

/** See `PageReader.submits`. */
export function submits(event: Event): boolean {
  if (event.type !== 'click') return false
  return event.composedPath().some((node) => {
    const isButton = node instanceof HTMLButtonElement || node instanceof HTMLInputElement
    return isButton && (node.type === 'submit' || node.type === 'image') && node.form !== null
  })
}

/**
 * See `PageReader.withhold`. Nothing cancels the gathering of a form's entries, but a form that is not in the page by the
 * end of it is not sent (HTML, form submission algorithm: "cannot navigate").
 */
export function withhold(form: Element): void {
  const place = new Comment()
  Element.prototype.replaceWith.call(form, place)
  setTimeout(() => place.replaceWith(form))
}

function formOf(element: Element): Element | null {
  if (nameOf(element) === 'form') return element
  if ('form' in element && isElement(element.form)) return element.form
  return nearest(element, 'form') ?? hostForm(element)
}

/** A button in a component inside a form submits nothing by itself, but its script submits that form. */
function hostForm(element: Element): Element | null {
  for (let at: Element | null = element; at; at = drawnParent(at)) if (nameOf(at) === 'form') return at
  return null
}

function leadsTo(form: Element | null, event: NavigateEvent): boolean {
  if (!form) return false
  const to = new URL(event.destination.url)
  const action = new URL(attribute(form, 'action') ?? '', document.baseURI)
  return to.origin === action.origin && to.pathname === action.pathname
}

function isForm(node: unknown): node is HTMLFormElement {
  return isElement(node) && nameOf(node) === 'form'
}
