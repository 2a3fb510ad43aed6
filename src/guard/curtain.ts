/*
 * The curtain in front of the shop: a modal dialog in a closed shadow root, with our panel in a frame of the extension's
 * own origin, which the page can neither read nor press. When the worker does not answer, the curtain itself says so in
 * plain words without a figure. The listeners hold the order, not the curtain: a page that tears it down gains nothing.
 */

export interface CurtainTexts {
  readonly label: string
  readonly noAnswer: string
  readonly gone: string
  readonly back: string
  readonly goOn: string
}

export interface Curtain {
  /** Shows the panel. */
  frame(url: string): void
  /** Shows a sentence of ours and lets the person decide. */
  say(what: 'noAnswer' | 'gone'): void
  close(): void
  isOpen(): boolean
}

/** A press sooner than this after the curtain rose was meant for the page. */
const SETTLE_MS = 400

/** Draws the curtain over the page. `goOn` is called when the person lets the order go without an answer. */
export function drawCurtain(texts: CurtainTexts, goOn: () => void): Curtain {
  const before = deepFocus()
  const host = document.createElement('div')
  const root = host.attachShadow({ mode: 'closed' })
  const dialog = document.createElement('dialog')
  dialog.setAttribute('aria-label', texts.label)
  style(dialog, {
    position: 'fixed',
    inset: '0',
    width: '100vw',
    height: '100vh',
    'max-width': 'none',
    'max-height': 'none',
    margin: '0',
    padding: '16px',
    border: '0',
    'box-sizing': 'border-box',
    background: 'rgb(38 22 44 / 62%)',
    'place-items': 'center',
    display: 'grid',
    'color-scheme': 'light dark',
  })
  root.append(dialog)
  document.documentElement.append(host)
  // Escape goes back to the shop; it never goes on.
  dialog.addEventListener('close', close)
  dialog.showModal()

  function close(): void {
    host.remove()
    if (before instanceof HTMLElement) before.focus()
  }

  return {
    frame(url) {
      const frame = document.createElement('iframe')
      frame.src = url
      frame.title = texts.label
      frame.allow = ''
      style(frame, {
        width: 'min(440px, 100%)',
        height: 'min(720px, 100%)',
        border: '0',
        'border-radius': '14px',
        'background-color': 'Canvas',
        'box-shadow': '0 18px 60px rgb(20 8 26 / 45%)',
      })
      dialog.replaceChildren(frame)
      frame.focus()
    },
    say(what) {
      const shownAt = performance.now()
      const box = document.createElement('div')
      style(box, {
        font: '16px/1.5 system-ui, sans-serif',
        padding: '24px',
        'border-radius': '14px',
        'max-width': '440px',
        background: 'Canvas',
        color: 'CanvasText',
        display: 'grid',
        gap: '16px',
      })
      const sentence = document.createElement('p')
      style(sentence, { margin: '0' })
      sentence.textContent = texts[what]
      const back = button(texts.back, shownAt, close)
      box.append(
        sentence,
        back,
        button(texts.goOn, shownAt, () => {
          goOn()
          close()
        }),
      )
      dialog.replaceChildren(box)
      back.focus()
    },
    close,
    isOpen: () => host.isConnected && dialog.open,
  }
}

/** The element that has the keyboard, also inside open shadow roots. */
function deepFocus(): Element | null {
  let found = document.activeElement
  while (found?.shadowRoot?.activeElement) found = found.shadowRoot.activeElement
  return found
}

function button(text: string, shownAt: number, press: () => void): HTMLButtonElement {
  const made = document.createElement('button')
  made.type = 'button'
  made.textContent = text
  style(made, { font: 'inherit', padding: '10px 16px', 'min-height': '44px', cursor: 'pointer' })
  made.addEventListener('click', (event) => {
    if (event.isTrusted && performance.now() - shownAt > SETTLE_MS) press()
  })
  return made
}

/** Through the CSS object model, which a page's content security policy does not stop. */
function style(element: HTMLElement, values: Readonly<Record<string, string>>): void {
  for (const [name, value] of Object.entries(values)) element.style.setProperty(name, value, 'important')
}
