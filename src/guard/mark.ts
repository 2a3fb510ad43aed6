import './mark-global.ts'
import './reader-global.ts'

/*
 * Shows a person where on the shop's page a figure was read: the page is brought to the place, and a ring stands around it
 * for a moment. Brought in by the worker only when somebody asks. The ring holds no words and takes no press; it is drawn
 * above the page in a closed shadow root, so nothing of the page moves.
 */

const SHOWN_MS = 5_000
/** Between the figure and the ring, in pixels. */
const SPACE = 6

const HOST =
  'all:initial;position:fixed;inset:0;width:100%;height:100%;max-width:none;max-height:none;margin:0;padding:0;border:0;' +
  'background:none;overflow:visible;pointer-events:none;z-index:2147483647'
// Dark beside light: seen on any ground.
const RING = 'position:fixed;box-sizing:border-box;border:3px solid #4b1d5c;outline:3px solid #fff;border-radius:8px'

let end: (() => void) | null = null

if (!Object.hasOwn(globalThis, 'tillsideMark')) Object.defineProperty(globalThis, 'tillsideMark', { value: mark })

function mark(figure: Parameters<NonNullable<typeof globalThis.tillsideMark>>[0]): boolean {
  end?.()
  const element = figure && globalThis.tillsideReader?.find(figure)
  if (!element?.isConnected) return false
  Element.prototype.scrollIntoView.call(element, { block: 'center', inline: 'nearest' })
  end = drawRing(element)
  return true
}

/** Draws the ring; what is returned takes it away again. It goes by itself after a while, at Escape and at a press. */
function drawRing(element: Element): () => void {
  const over = element.ownerDocument
  const host = make(over, HOST)
  const ring = make(over, RING)
  host.attachShadow({ mode: 'closed' }).append(ring)
  Document.prototype.querySelector.call(over, ':root')?.append(host)
  // Above dialogs of the page too.
  host.popover = 'manual'
  host.showPopover()
  let frame = 0
  const follow = (): void => {
    place(ring, element)
    frame = requestAnimationFrame(follow)
  }
  follow()
  const timer = setTimeout(stop, SHOWN_MS)
  const byKey = (event: KeyboardEvent): void => {
    if (event.key === 'Escape') stop()
  }
  addEventListener('keydown', byKey, { capture: true })
  addEventListener('pointerdown', stop, { capture: true })
  function stop(): void {
    clearTimeout(timer)
    cancelAnimationFrame(frame)
    removeEventListener('keydown', byKey, { capture: true })
    removeEventListener('pointerdown', stop, { capture: true })
    host.remove()
    end = null
  }
  return stop
}

/** Around the element's contents where it has any: an element that is itself not drawn still shows its text. */
function place(ring: HTMLElement, element: Element): void {
  const contents = new Range()
  contents.selectNodeContents(element)
  const inner = contents.getBoundingClientRect()
  const { left, top, width, height } = inner.width > 0 ? inner : element.getBoundingClientRect()
  const sides = { left: left - SPACE, top: top - SPACE, width: width + 2 * SPACE, height: height + 2 * SPACE }
  for (const [side, pixels] of Object.entries(sides)) ring.style.setProperty(side, `${pixels}px`, 'important')
}

// A page can hide the document's methods behind elements of that name; its policy does not stop the CSS object model.
function make(over: Document, css: string): HTMLElement {
  const made: HTMLElement = Document.prototype.createElement.call(over, 'div')
  made.style.cssText = `${css};`.replaceAll(';', '!important;')
  return made
}
