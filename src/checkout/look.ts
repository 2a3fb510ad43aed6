import { viewOf } from './dom.ts'

/** Asks for one property at a time: each costs, and most elements are settled by the first few. */
export type Look = (property: string) => string

/** How an element is drawn: what its computed style says, or its own style attribute where nothing computes styles. */
export function styleOf(element: Element): Look {
  const style = computedStyle(element) ?? inlineStyle(element)
  return (name) => style?.getPropertyValue(name) ?? ''
}

function computedStyle(element: Element): CSSStyleDeclaration | null {
  try {
    return viewOf(element)?.getComputedStyle(element) ?? null
  } catch {
    return null
  }
}

function inlineStyle(element: Element): CSSStyleDeclaration | null {
  // A field named `style` would stand in the way on a form.
  return hasStyle(element) && 'getPropertyValue' in element.style ? element.style : null
}

function hasStyle(element: Element): element is Element & ElementCSSInlineStyle {
  return 'style' in element
}
