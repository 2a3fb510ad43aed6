import { JSDOM } from 'jsdom'
import type { Stage } from '../../../src/checkout/reading.ts'

/** A page of an invented shop, and what a person reading it would say. */
export interface ShopPage {
  readonly name: string
  readonly url: string
  readonly lang?: string
  readonly title?: string
  readonly head?: string
  readonly body: string
  /** The household's currency, where the page needs it. */
  readonly currency?: string
  /** For what markup alone cannot say: shadow roots, frames. */
  readonly prepare?: (document: Document) => void
  readonly stage: Stage
  /** `55.90 CAD`, or null where the page shows no total. */
  readonly total: string | null
  readonly orderNumber?: string
  /** The words of the controls that place the order, in order. */
  readonly placeOrder?: readonly string[]
  /** `kind amount`, where the parts are worth checking. */
  readonly parts?: readonly string[]
  /** `quantity name amount`. */
  readonly items?: readonly string[]
}

/** Makes the document of a page, as a parser would. */
export function documentOf(page: ShopPage): Document {
  const lang = page.lang === undefined ? '' : ` lang="${page.lang}"`
  const head = `<head><meta charset="utf-8"><title>${page.title ?? ''}</title>${page.head ?? ''}</head>`
  const dom = new JSDOM(`<!doctype html><html${lang}>${head}<body>${page.body}</body></html>`, { url: page.url })
  page.prepare?.(dom.window.document)
  return dom.window.document
}
