import { rootIn } from './engine.ts'

const PRESSABLE =
  'button, a, label, input:is([type=submit], [type=image], [type=button]), summary, [role=button], [role=link], [onclick], [tabindex]'

/** The path of an event holds something that could order when pressed, or is a form being submitted. */
export function hasControl(event: Event): boolean {
  return event.type === 'submit' || event.composedPath().some(isControl)
}

/** Something that could order when pressed lies where a pointer presses, under what the page laid over it. */
export function coversControl(event: Event): boolean {
  return (
    event instanceof MouseEvent &&
    event.isTrusted &&
    Document.prototype.elementsFromPoint.call(document, event.clientX, event.clientY).some(isControl)
  )
}

function isControl(node: EventTarget): boolean {
  return (
    node instanceof Element &&
    (Element.prototype.matches.call(node, PRESSABLE) || `${node.localName}`.includes('-') || rootIn(node) !== null)
  )
}
