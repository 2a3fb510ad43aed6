import { attribute, drawnParent, isElement, isInput, nearest } from './dom.ts'
import type { CheckoutReading } from './reading.ts'
import { tidy } from './words.ts'

/**
 * Whether an element is a control that places the order, or lies inside one - through shadow roots and slots, so the
 * target of a click can be asked about. For a click use `event.composedPath()[0]`, which sees into open shadow roots.
 *
 * @example isPlaceOrder(reading, button.firstElementChild) // true: the icon of the button
 */
export function isPlaceOrder(reading: Pick<CheckoutReading, 'placeOrder'>, element: Element): boolean {
  for (let at: Element | null = element; at; at = drawnParent(at)) if (reading.placeOrder.includes(at)) return true
  return false
}

/**
 * Whether submitting a form places the order. One form can hold several intents, so the submitter decides: a listed
 * control does; another control with words of its own does not. Enter in a field "clicks" the form's first submit button
 * even if it is hidden or has no words, or submits without any: then the form's own place-order control decides.
 *
 * @param submitter the `submitter` of the submit event
 */
export function submitsOrder(
  reading: Pick<CheckoutReading, 'placeOrder'>,
  form: HTMLFormElement,
  submitter: Element | null,
): boolean {
  if (submitter && isPlaceOrder(reading, submitter)) return true
  const own = reading.placeOrder.filter((control) => formOf(control) === form)
  if (own.length === 0) return false
  if (!submitter) return true
  const words = wordsOf(submitter)
  return words === '' || own.some((control) => wordsOf(control) === words)
}

function formOf(control: Element): Element | null {
  if ('form' in control && control.form) return isElement(control.form) ? control.form : null
  return nearest(control, 'form')
}

function wordsOf(control: Element): string {
  if (isInput(control)) return tidy(control.type === 'image' ? (attribute(control, 'alt') ?? '') : control.value)
  return tidy(control.textContent ?? '') || tidy(attribute(control, 'aria-label') ?? '')
}
