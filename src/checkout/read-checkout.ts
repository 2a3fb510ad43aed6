import { lexicons } from './lexicon/index.ts'
import { readPage } from './page-reader.ts'
import type { ReadOptions } from './read-page.ts'
import type { CheckoutReading } from './reading.ts'

/**
 * Reads a shop's page: where it stands on the way to an order, what the card will be charged now, of what the sum is made,
 * the things bought, the order's number, and the controls that place the order. What the page does not say, or not surely,
 * is null or empty; `evidence` says what was seen, used and set aside, and why. Never throws, and never changes the page.
 *
 * Only what a person can see counts. Amounts are decimal texts of the currency's major unit, with as many decimals as the
 * page shows.
 *
 * @param document a live page, or one made by a parser; open shadow roots and same-origin frames are read too
 * @example readCheckout(document, { url: location.href, currency: 'CAD' }).total // {amount: '55.90', currency: 'CAD'}
 */
export function readCheckout(document: Document, options: ReadOptions): CheckoutReading {
  return readPage(document, options, lexicons)
}
