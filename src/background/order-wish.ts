import { type CurrencyCode, type Money, money, type OrderWish, type SplitHow } from '../index.ts'
import type { PotAmountText, WishText } from './protocol.ts'

/**
 * An order as a page's texts mean it.
 *
 * @throws MoneyError when a text is not an amount of its currency
 */
export function wishFrom(shop: string, text: WishText): OrderWish {
  const { foreign, margin, credit, instalments, renewal } = text
  return {
    shop,
    total: money(text.currency, text.total),
    split: splitFrom(text),
    ...(foreign
      ? { foreign: { rate: { home: foreign.home, per: foreign.per }, feePercent: foreign.fee, from: foreign.from } }
      : {}),
    ...(margin === null ? {} : { marginPercent: margin }),
    ...(credit === null ? {} : { credit: money(text.currency, credit) }),
    ...(instalments ? { instalments } : {}),
    ...(renewal ? { renewal } : {}),
  }
}

/** Amounts of pots from texts. @throws MoneyError */
export function potAmounts(
  currency: CurrencyCode,
  texts: readonly PotAmountText[],
): { pot: PotAmountText['pot']; amount: Money }[] {
  return texts.map(({ pot, amount }) => ({ pot, amount: money(currency, amount) }))
}

function splitFrom({ split, currency }: WishText): SplitHow {
  switch (split.by) {
    case 'pot':
    case 'share':
      return split
    case 'amount': {
      const lines = potAmounts(currency, split.lines)
      return split.rest === null ? { by: 'amount', lines } : { by: 'amount', lines, rest: split.rest }
    }
    case 'item':
      return {
        by: 'item',
        items: split.items.map((i) => ({ name: i.name, pot: i.pot, amount: money(currency, i.amount) })),
        shared: split.shared.map((s) => ({ kind: s.kind, amount: money(currency, s.amount) })),
      }
  }
}
