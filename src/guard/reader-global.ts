import type { FigurePlace, SeenPage } from '../background/protocol.ts'
import type { Lexicon } from '../checkout/lexicon/lexicon.ts'
import type { drawCurtain } from './curtain.ts'

/** What the reader, once brought into a page, offers the gate and the worker in our own isolated world. */
export interface PageReader {
  /** Reads the page now. `currency` is the household's, for pages that write `$` alone. */
  seen(currency: string): SeenPage
  /**
   * Whether an event is about to place the order: a click, press or key whose path goes through a control that does,
   * or the submit of a form by such a control. Says what the page shows at this moment; null when it is not.
   */
  ordering(event: Event, currency: string): SeenPage | null
  /**
   * Whether the page is being left by a form that places the order, however it was submitted.
   *
   * @param form the form whose entries were gathered last, for browsers that do not name the source
   */
  leaving(event: NavigateEvent, form: Element | null, currency: string): SeenPage | null
  /** The element in which a figure was read, if the page still shows it. */
  find(figure: FigurePlace): Element | null
  /** The trees (document, shadow roots) in which controls that place the order lie. */
  roots(): readonly Node[]
  /** Keeps presses from wallet buttons in frames of other origins, where nothing can be heard; or lets them be again. */
  shield(on: boolean): void
  /** Whether the browser makes a click or submit of a key on the element that has the keyboard. */
  clicks(event: Event): boolean
  /** Whether a press is on a submit button of a form: the browser may still find a field wrong, and then no order is placed. */
  submits(event: Event): boolean
  /** Keeps a form that is about to be sent from being sent; it is in the page again a moment later. */
  withhold(form: Element): void
  /** Not of the reading, but needed only where there is a reader. */
  readonly drawCurtain: typeof drawCurtain
}

declare global {
  /** The words of the page's languages: each `lexicons/*.js` brought in before the reader adds its own. */
  var tillsideLexicons: readonly Lexicon[] | undefined
  var tillsideReader: PageReader | undefined
}
