import type { SeenPage } from '../../background/protocol.ts'
import type { SharedKind } from '../../book/split.ts'
import type { CurrencyCode } from '../../money/currency.ts'
import { money, toDecimal } from '../../money/money.ts'

/** A thing bought as a page shows it, with a decimal text. */
export interface PageItem {
  readonly name: string
  readonly amount: string
}

const KINDS: Readonly<Record<string, SharedKind>> = {
  shipping: 'shipping',
  tax: 'tax',
  tip: 'tip',
  fee: 'fee',
  discount: 'discount',
  credit: 'credit',
}

/** The items of a page, where every one of them has its price; null where the order cannot be split by item. */
export function itemsOf(page: SeenPage | null, currency: CurrencyCode): PageItem[] | null {
  const items = page?.items ?? []
  if (items.length === 0) return null
  const found = items.flatMap(({ name, amount, quantity }) => {
    const read = amount === null ? null : decimalOf(amount, currency)
    if (read === null || read.startsWith('-')) return []
    return [{ name: quantity > 1 ? `${name} × ${quantity}` : name, amount: read }]
  })
  return found.length === items.length ? found : null
}

/**
 * What a page says the order costs beside its items. Sums of the items themselves are left out; what is missing then is
 * the engine's to find.
 */
export function sharedOf(page: SeenPage | null, currency: CurrencyCode): { kind: SharedKind; amount: string }[] {
  return (page?.parts ?? []).flatMap(({ kind, amount }) => {
    const known = KINDS[kind]
    const read = decimalOf(amount, currency)
    return known && read !== null ? [{ kind: known, amount: read }] : []
  })
}

function decimalOf(amount: string, currency: CurrencyCode): string | null {
  try {
    return toDecimal(money(currency, amount))
  } catch {
    // A page may say anything; what is no amount of this currency counts as not said.
    return null
  }
}
