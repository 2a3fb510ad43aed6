import type { SeenPage } from '../background/protocol.ts'
import type { Lexicon } from '../checkout/lexicon/lexicon.ts'

/** What the reader, once brought into a page, offers the gate and the worker in our own isolated world. */
export interface PageReader {
  /** Reads the page now. `currency` is the household's, for pages that write `$` alone. */
  seen(currency: string): SeenPage
  /**
   * Whether an event is about to place the order: a click, press or key whose path goes through a control that does,
   * or the submit of a form by such a control. Says what the page shows at this moment; null when it is not.
   */
  ordering(event: Event, currency: string): SeenPage | null
}

declare global {
  /** The words of the page's languages: each `lexicons/*.js` brought in before the reader adds its own. */
  var tillsideLexicons: readonly Lexicon[] | undefined
  var tillsideReader: PageReader | undefined
}
