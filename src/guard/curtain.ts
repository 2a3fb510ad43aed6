import type { CurtainTexts } from '../background/protocol.ts'
import { keepOut } from './engine.ts'

/*
 * The curtain in front of the shop: a modal dialog in a closed shadow root, with our panel in a frame of the extension's
 * own origin, which the page can neither read nor press. When the worker does not answer, the curtain itself says so in
 * plain words without a figure. The listeners hold the order, not the curtain: a page that tears it down gains nothing.
 */

export interface Curtain {
  /** Shows the panel. */
  frame(url: string): void
  /** Shows a sentence of ours and lets the person decide. */
  say(what: 'no_answer' | 'gone' | 'no_panel'): void
  close(): void
  isOpen(): boolean
  /** Whether an event happened to the curtain itself. */
  holds(event: Event): boolean
  /** Gives the keyboard back to the panel, when the page took it. */
  focus(): void
  /** Looks whether the curtain can be seen, and shows it again when it cannot. */
  check(): void
}

/** A press sooner than this after the curtain rose was meant for the page. */
const SETTLE_MS = 400
const LOOK_EVERY_MS = 200
/** How often a covered or hidden curtain is shown again before it gives way. */
const MOST_SHOWS = 3
const MOST_FOCUSES = 40

const FILL =
  'all:initial;position:fixed;inset:0;width:100vw;height:100vh;max-width:none;max-height:none;margin:0;padding:16px;' +
  'border:0;box-sizing:border-box;display:grid;place-items:center;background:rgb(38 22 44 / 62%);color-scheme:light dark'
const FRAME =
  'all:initial;width:min(440px,100%);height:min(720px,100%);border:0;border-radius:14px;background-color:Canvas;' +
  'box-shadow:0 18px 60px rgb(20 8 26 / 45%)'
const BOX =
  'font:16px/1.5 system-ui,sans-serif;padding:24px;border-radius:14px;max-width:440px;background:Canvas;' +
  'color:CanvasText;display:grid;gap:16px'
const BUTTON = 'font:inherit;padding:10px 16px;min-height:44px;cursor:pointer'
const HOST = 'all:initial;display:block'

/**
 * Draws the curtain over a document.
 *
 * @param text what it says, in the person's language
 * @param goOn called when the person lets the order go without an answer
 * @param lost called when the page took the curtain away or would not let it be seen; the page is then free again
 */
export function drawCurtain(
  over: Document,
  text: (key: keyof CurtainTexts) => string,
  goOn: () => void,
  lost: () => void,
): Curtain {
  const before = deepFocus(over)
  // A page can hide the document's methods behind elements of that name, never those of a new element.
  const make = (name: 'div' | 'dialog' | 'iframe' | 'p' | 'button'): HTMLElement =>
    Document.prototype.createElement.call(over, name)
  const host = make('div')
  keepOut(host)
  style(host, HOST)
  const inside = host.attachShadow({ mode: 'closed' })
  const dialog = make('dialog') as HTMLDialogElement
  dialog.setAttribute('aria-label', text('label'))
  style(dialog, FILL)
  inside.append(dialog)
  Document.prototype.querySelector.call(over, ':root')?.append(host)
  // Escape goes back to the shop; it never goes on.
  dialog.addEventListener('close', () => {
    // Told in a task of its own: by then the dialog may be shown again.
    if (!dialog.open) close()
  })
  let content: HTMLElement = dialog
  let ended = false
  let shows = 0
  let focuses = 0
  let next: ReturnType<typeof setTimeout>
  show()
  next = setTimeout(check, LOOK_EVERY_MS)

  function show(): void {
    if (dialog.open) dialog.close()
    dialog.showModal()
  }

  function close(): void {
    ended = true
    clearTimeout(next)
    host.remove()
    if (before) HTMLElement.prototype.focus.call(before)
  }

  function isSeen(): boolean {
    const view = over.defaultView ?? window
    const [right, bottom] = [view.innerWidth, view.innerHeight]
    if (right * bottom === 0) return true
    const { width, height } = dialog.getBoundingClientRect()
    return (
      dialog.matches(':modal') &&
      width >= right * 0.9 &&
      height >= bottom * 0.9 &&
      Document.prototype.elementFromPoint.call(over, right / 2, bottom / 2) === host
    )
  }

  function check(): void {
    clearTimeout(next)
    if (ended) return
    if (host.isConnected && !isSeen() && shows++ < MOST_SHOWS) {
      style(host, HOST)
      host.inert = host.hidden = false
      show()
      content.focus()
    }
    if (shows <= MOST_SHOWS && host.isConnected) {
      // A page that fights gets ever more time between two shows.
      next = setTimeout(check, LOOK_EVERY_MS * 2 ** shows)
    } else {
      close()
      lost()
    }
  }

  function fill(made: HTMLElement): void {
    dialog.replaceChildren(made)
  }

  function button(says: string, press: () => void): HTMLElement {
    const shownAt = performance.now()
    const made = make('button')
    made.textContent = says
    style(made, BUTTON)
    made.addEventListener('click', (event) => {
      if (event.isTrusted && performance.now() - shownAt > SETTLE_MS) press()
    })
    return made
  }

  return {
    frame(url) {
      const frame = make('iframe') as HTMLIFrameElement
      frame.src = url
      frame.title = text('label')
      frame.allow = ''
      style(frame, FRAME)
      fill(frame)
      content = frame
      frame.focus()
    },
    say(what) {
      const box = make('div')
      // The page's own direction would come in: neither `all` nor a shadow root keeps it out.
      box.dir = 'auto'
      style(box, BOX)
      const sentence = make('p')
      style(sentence, 'margin:0')
      sentence.textContent = text(what)
      const back = button(text('back'), close)
      const on = button(text('go_on'), () => {
        goOn()
        close()
      })
      box.append(sentence, back)
      // Where the popup can still tag the order, nothing goes untagged.
      if (what !== 'no_panel') box.append(on)
      fill(box)
      content = back
      back.focus()
    },
    close,
    // Also while the page has taken it away and the next look has not found out: no second one is drawn meanwhile.
    isOpen: () => !ended,
    holds: (event) => event.composedPath().includes(host),
    focus() {
      if (over.activeElement !== host && focuses++ < MOST_FOCUSES) content.focus()
    },
    check,
  }
}

/** The element that has the keyboard, also inside shadow roots. */
function deepFocus(over: Document): Element | null {
  let found = over.activeElement
  while (found?.shadowRoot?.activeElement) found = found.shadowRoot.activeElement
  return found
}

/** Through the CSS object model, which a page's content security policy does not stop. */
function style(element: HTMLElement, css: string): void {
  element.style.cssText = `${css};`.replaceAll(';', '!important;')
}
