import type { Box } from './box.ts'
import { attribute, ownNames } from './dom.ts'

const SMALL_CART =
  /mini-?(?:cart|basket)|cart-?(?:drawer|flyout|dropdown|preview|popup)|basket-?(?:drawer|flyout|dropdown)/i

/** Heads, menus and small carts repeat old sums on every page. A head inside a form or a section is not the page's. */
export function isPageFurniture(start: Box): boolean {
  for (let box: Box | null = start; box; box = box.parent) {
    const element = box.element
    const role = attribute(element, 'role')
    if (box.name === 'nav' || role === 'navigation' || role === 'banner') return true
    if (box.name === 'header' && isTopLevel(box)) return true
    if (SMALL_CART.test(ownNames(element))) return true
  }
  return false
}

function isTopLevel(box: Box): boolean {
  for (let at = box.parent; at; at = at.parent) {
    if (['main', 'form', 'section', 'article', 'aside', 'dialog'].includes(at.name)) return false
  }
  return true
}

export function isEmphasised(start: Box): boolean {
  let box: Box | null = start
  for (let step = 0; box && step < 4; step += 1, box = box.parent) {
    if (['strong', 'b', 'h2', 'h3', 'h4', 'tfoot', 'output'].includes(box.name)) return true
  }
  return false
}
