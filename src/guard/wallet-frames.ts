import { attribute, frameDocument, select } from '../checkout/dom.ts'

/** Names of frames that hold a button to pay, not fields to fill in. From general knowledge of payment providers' names. */
const BUTTON_FRAME =
  /wallet|express|pay(?:ment)?[-_ ]?(?:request|button|sheet)|button[-_ ]?frame|\b\w+[- ]?pay\b|paypal/i
const FIELD_FRAME =
  /card[-_ ]?(?:number|field|input|expir|cv)|cvc|cvv|iban|secure (?:card|payment) (?:field|input)|3d-?s|challenge/i
const MOST_FRAMES = 40

/**
 * Buttons to pay inside frames of another origin: their clicks never reach this page. While the order is held such a frame
 * is made inert, so that a press on it falls through to the page, where it is heard.
 */
export class WalletFrames {
  readonly #held = new Set<HTMLElement>()

  shield(on: boolean): void {
    for (const frame of this.#held) if (!on || !frame.isConnected) this.#free(frame)
    if (!on) return
    for (const frame of select(document, 'iframe', MOST_FRAMES)) {
      if (!(frame instanceof HTMLElement) || frame.inert || frameDocument(frame) || !isButtonFrame(frame)) continue
      frame.inert = true
      this.#held.add(frame)
    }
  }

  /** Whether a press was meant for one of the frames. */
  takes(event: Event): boolean {
    if (!(event instanceof MouseEvent) || !event.isTrusted || this.#held.size === 0) return false
    return [...this.#held].some((frame) => {
      const { left, right, top, bottom } = frame.getBoundingClientRect()
      return event.clientX >= left && event.clientX <= right && event.clientY >= top && event.clientY <= bottom
    })
  }

  #free(frame: HTMLElement): void {
    frame.inert = false
    this.#held.delete(frame)
  }
}

function isButtonFrame(frame: Element): boolean {
  const names = ['title', 'name', 'id', 'class', 'aria-label', 'src']
    .map((name) => attribute(frame, name) ?? '')
    .join(' ')
  return BUTTON_FRAME.test(names) && !FIELD_FRAME.test(names)
}
