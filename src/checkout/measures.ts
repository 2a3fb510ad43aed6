import { ownerOf, rootOf, viewOf } from './dom.ts'

export interface Sheet {
  readonly scrollX: number
  readonly scrollY: number
  readonly width: number
  readonly range: Range
}

/** Measures of the page an element is on; null where nothing is laid out (jsdom, a parsed document). */
export function sheetOf(element: Element): Sheet | null {
  const owner = ownerOf(element)
  const root = owner ? rootOf(owner) : null
  const view = viewOf(element)
  if (!owner || !root || !view || root.getBoundingClientRect().height === 0) return null
  return { scrollX: view.scrollX, scrollY: view.scrollY, width: root.scrollWidth, range: new view.Range() }
}

export function isNowhere(element: Element, sheet: Sheet): boolean {
  // The contents, not the element: an element that is itself not drawn (`display: contents`) still shows its text.
  sheet.range.selectNodeContents(element)
  const contents = sheet.range.getBoundingClientRect()
  const own = typeof element.getBoundingClientRect === 'function' ? element.getBoundingClientRect() : contents
  const box = contents.width > 0 ? contents : own
  if (box.width === 0 || box.height === 0) return true
  return box.right + sheet.scrollX <= 0 || box.bottom + sheet.scrollY <= 0 || box.left + sheet.scrollX >= sheet.width
}
