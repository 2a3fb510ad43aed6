import type { OpenTag, SeenPage } from '../../background/protocol.ts'
import { type CurrencyCode, isCurrencyCode } from '../../money/currency.ts'
import { type Money, money } from '../../money/money.ts'

/** The total a page shows, where it is in the household's currency; else null. */
export function pageTotal(page: SeenPage | null, currency: CurrencyCode): Money | null {
  if (page?.total?.currency !== currency) return null
  try {
    return money(currency, page.total.amount)
  } catch {
    // A page may say anything; what is no amount of this currency counts as not read.
    return null
  }
}

/** The total a page shows in whatever currency it names; null where it shows none. */
export function askedTotal(page: SeenPage | null): Money | null {
  const asked = page?.total?.currency
  return asked !== undefined && isCurrencyCode(asked) ? pageTotal(page, asked) : null
}

/**
 * Whether the page asks another total than the one that was tagged. Compared is what the page said then, for the person
 * may have tagged another amount on purpose; where it said nothing then, the tagged amount itself.
 */
export function totalChanged(tag: OpenTag, page: SeenPage | null): boolean {
  if (!page?.total) return false
  if (tag.read) {
    if (tag.read.currency !== page.total.currency) return true
    return bare(tag.read.amount) !== bare(page.total.amount)
  }
  const now = pageTotal(page, tag.amount.currency)
  return now !== null && now.minor !== tag.amount.minor
}

/** A decimal text without zeros that say nothing: `55.90` and `55.9` are the same amount. */
function bare(decimal: string): string {
  return decimal.includes('.') ? decimal.replace(/\.?0+$/, '') : decimal
}
