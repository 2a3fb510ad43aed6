import { attribute, drawnParent, nameOf, ownerOf } from './dom.ts'
import { type Look, styleOf } from './look.ts'
import { isNowhere, type Sheet, sheetOf } from './measures.ts'

/**
 * Whether a person can see an element. `spoken` is clipped away or moved out of the page for screen readers alone: its
 * words may label something, but a figure that is only spoken is nobody's total.
 */
export type Seen = 'shown' | 'spoken' | 'gone'

/** Answers about what is drawn. Each element is asked for its style at most once. */
export interface Sight {
  seen(element: Element): Seen
  /** Whether the text of this element is struck through, by markup or by style. */
  struck(element: Element): boolean
  /** Whether the page has a layout and the element has no place in it. Always false without a layout (jsdom). */
  nowhere(element: Element): boolean
}

const WORST: readonly Seen[] = ['shown', 'spoken', 'gone']

// A hint for pages whose style sheets did not load (jsdom, a parsed document): then no style can say it.
const SPOKEN_NAMES =
  /(?:^|[\s_-])(?:sr-only|visually-?hidden|screen-?reader(?:-text)?|off-?screen|a11y-hidden)(?![a-z])/i

const STRUCK_TAGS: ReadonlySet<string> = new Set(['del', 's', 'strike'])

/** Makes the answers for one read of one page. */
export function createSight(): Sight {
  const drawnBefore = new WeakMap<Element, Drawn>()
  const sheets = new Map<Document, Sheet | null>()
  const struckBefore = new WeakMap<Element, boolean>()

  function seen(element: Element): Seen {
    // Not recursive: a hostile page can nest deeper than the stack.
    const path: Element[] = []
    let at: Element | null = element
    let known: Drawn = { tree: 'shown', visible: true }
    while (at) {
      const before = drawnBefore.get(at)
      if (before) {
        known = before
        break
      }
      path.push(at)
      at = drawnParent(at)
    }
    for (const each of path.reverse()) {
      if (known.tree !== 'gone') known = drawn(each, known, sheet(each) !== null)
      drawnBefore.set(each, known)
    }
    return known.visible ? known.tree : 'gone'
  }

  function struck(element: Element): boolean {
    let at: Element | null = element
    // A line through a whole page's ancestors says nothing about one price: four steps are enough.
    for (let step = 0; at && step < 4; step += 1) {
      let own = struckBefore.get(at)
      if (own === undefined) {
        own = STRUCK_TAGS.has(nameOf(at)) || isStruckThrough(styleOf(at))
        struckBefore.set(at, own)
      }
      if (own) return true
      at = drawnParent(at)
    }
    return false
  }

  function sheet(element: Element): Sheet | null {
    const owner = ownerOf(element)
    if (!owner) return null
    const known = sheets.get(owner)
    if (known !== undefined) return known
    const made = sheetOf(element)
    sheets.set(owner, made)
    return made
  }

  function nowhere(element: Element): boolean {
    const on = sheet(element)
    return on !== null && isNowhere(element, on)
  }

  return { seen, struck, nowhere }
}

// `visibility` alone can be taken back by a descendant, so it is kept beside what holds for the whole subtree.
interface Drawn {
  readonly tree: Seen
  readonly visible: boolean
}

function drawn(element: Element, parent: Drawn, laidOut: boolean): Drawn {
  const look = styleOf(element)
  const own = look('visibility')
  return {
    tree: worse(parent.tree, ownLook(element, look, laidOut)),
    visible: own === '' ? parent.visible : own !== 'hidden' && own !== 'collapse',
  }
}

function isStruckThrough(look: Look): boolean {
  return `${look('text-decoration')} ${look('text-decoration-line')}`.includes('line-through')
}

function worse(a: Seen, b: Seen): Seen {
  return WORST[Math.max(WORST.indexOf(a), WORST.indexOf(b))] ?? 'gone'
}

// Drawn too far to see: shrunk to nothing, or pushed out by its own width or by hundreds of pixels.
const MOVED_AWAY =
  /scale\(\s*0\s*[,)]|translate\w*\(\s*(?:[^,)]*,\s*)?-?(?:[1-9]\d\d+%|[5-9]\d\dpx|[1-9]\d{3,}px)|matrix\(\s*0,\s*0,\s*0,\s*0/

function ownLook(element: Element, look: Look, laidOut: boolean): Seen {
  if (attribute(element, 'hidden') !== null || look('display') === 'none') return 'gone'
  const opacity = look('opacity')
  if (opacity !== '' && Number.parseFloat(opacity) < 0.05) return 'gone'
  if (look('content-visibility') === 'hidden') return 'gone'
  if (pixels(look('font-size'), 16) < 2 || MOVED_AWAY.test(look('transform'))) return 'gone'
  // Transparent letters over a picture of their own are a common effect, not a hidden text.
  if (isClear(look('color')) && !`${look('background-clip')} ${look('-webkit-background-clip')}`.includes('text'))
    return 'gone'
  return boxLook(look, element, laidOut)
}

function boxLook(look: Look, element: Element, laidOut: boolean): Seen {
  const position = look('position')
  const lifted = position === 'absolute' || position === 'fixed'
  if (lifted && /rect\(\s*[01](?:px)?[,\s]/.test(look('clip'))) return 'spoken'
  if (/inset\(\s*(?:50|100)%|circle\(\s*0/.test(look('clip-path'))) return 'spoken'
  if (lifted && (pixels(look('left'), 0) <= -500 || pixels(look('top'), 0) <= -500)) return 'spoken'
  if (pixels(look('text-indent'), 0) <= -500) return 'spoken'
  if (/hidden|clip/.test(`${look('overflow')} ${look('overflow-x')} ${look('overflow-y')}`)) {
    const side = Math.min(pixels(look('width'), 99), pixels(look('height'), 99), pixels(look('max-height'), 99))
    if (side === 0) return 'gone'
    if (side <= 1) return 'spoken'
  }
  const names = attribute(element, 'class')
  return names && SPOKEN_NAMES.test(names) && !names.includes('not-sr-only') && !laidOut ? 'spoken' : 'shown'
}

function pixels(value: string, otherwise: number): number {
  const match = /^(-?[\d.]+)(px|r?em|vw|%)?$/.exec(value)
  if (!match) return otherwise
  const [, number = '', unit = 'px'] = match
  const size = Number.parseFloat(number)
  if (unit === '%') return size <= -100 ? -1000 : size === 0 ? 0 : otherwise
  return unit === 'px' ? size : size * 16
}

function isClear(colour: string): boolean {
  return colour === 'transparent' || /^rgba\(.*,\s*0(?:\.0+)?\)$/.test(colour)
}
