import { attribute, drawnParent, nameOf } from './dom.ts'
import { styleOf } from './look.ts'

const MOST_STEPS = 12

/**
 * Whether a figure is shown in a way that no person reads as it is written: in the colour of what is behind it, or with its
 * signs turned round. Asked only of what may be the total, because each step up costs two looks at a style.
 */
export function isDisguised(element: Element): boolean {
  if (/\u202e/u.test(element.textContent ?? '')) return true
  let ink = ''
  for (let at: Element | null = element, step = 0; at && step < MOST_STEPS; at = drawnParent(at), step += 1) {
    const look = styleOf(at)
    if (isTurned(at, look('unicode-bidi'), look('direction'))) return true
    if (ink === '') ink = look('color')
    const ground = look('background-color')
    // A picture may be anything: then colours say nothing.
    if (!/^(?:none)?$/.test(look('background-image'))) return false
    if (ground !== '' && !isClear(ground)) return ink !== '' && plainColour(ink) === plainColour(ground)
  }
  return false
}

function isTurned(element: Element, bidi: string, direction: string): boolean {
  const overrides = /override/.test(bidi) || nameOf(element) === 'bdo'
  return overrides && (direction === 'rtl' || attribute(element, 'dir') === 'rtl')
}

function isClear(colour: string): boolean {
  return colour === 'transparent' || /^rgba\(.*,\s*0(?:\.0+)?\)$/.test(colour)
}

/** Computed colours are all `rgb()`; those of a style attribute may be names or short. */
function plainColour(colour: string): string {
  const flat = colour.toLowerCase().replace(/\s+/g, '')
  const short = /^#([0-9a-f])([0-9a-f])([0-9a-f])$/.exec(flat)
  return short
    ? `#${short
        .slice(1)
        .map((digit) => digit + digit)
        .join('')}`
    : flat
}
