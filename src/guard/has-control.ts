import { rootIn } from './engine.ts'

const PRESSABLE =
  'button, a, label, input:is([type=submit], [type=image], [type=button]), summary, [role=button], [role=link], [onclick], [tabindex]'

/** The path of an event holds something that could order when pressed, or is a form being submitted. */
export function hasControl(event: Event): boolean {
  if (event.type === 'submit') return true
  return event
    .composedPath()
    .some(
      (node) =>
        node instanceof Element &&
        (Element.prototype.matches.call(node, PRESSABLE) || `${node.localName}`.includes('-') || rootIn(node)),
    )
}
