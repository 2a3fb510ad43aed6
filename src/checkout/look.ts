import { viewOf } from './dom.ts'

export interface Look {
  readonly display: string
  readonly visibility: string
  readonly opacity: string
  readonly position: string
  readonly overflow: string
  readonly width: string
  readonly height: string
  readonly maxHeight: string
  readonly clip: string
  readonly clipPath: string
  readonly textIndent: string
  readonly left: string
  readonly top: string
  readonly transform: string
  readonly fontSize: string
  readonly color: string
  readonly backgroundClip: string
  readonly contentVisibility: string
  readonly textDecoration: string
}

export function styleOf(element: Element): Look {
  const style = computedStyle(element) ?? inlineStyle(element)
  const read = (name: string): string => style?.getPropertyValue(name) ?? ''
  return {
    display: read('display'),
    visibility: read('visibility'),
    opacity: read('opacity'),
    position: read('position'),
    overflow: `${read('overflow')} ${read('overflow-x')} ${read('overflow-y')}`,
    width: read('width'),
    height: read('height'),
    maxHeight: read('max-height'),
    clip: read('clip'),
    clipPath: read('clip-path'),
    textIndent: read('text-indent'),
    left: read('left'),
    top: read('top'),
    transform: read('transform'),
    fontSize: read('font-size'),
    color: read('color'),
    backgroundClip: `${read('background-clip')} ${read('-webkit-background-clip')}`,
    contentVisibility: read('content-visibility'),
    textDecoration: `${read('text-decoration')} ${read('text-decoration-line')}`,
  }
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
