import type { Block, Line, Shop, SumRow } from './plan.ts'

/** Things bought: two or three goods with counts, and what they cost together. */
export function goodsOf(shop: Shop, most = 3): { lines: Line[]; sum: number } {
  const names = shop.list('goods').slice(0, shop.int(1, most))
  const lines = names.map((name) => {
    const unit = shop.price(300, 9000)
    const count = shop.int(1, 3)
    return { name, count: String(count), unit, sum: unit * count }
  })
  return { lines, sum: lines.reduce((all, line) => all + line.sum, 0) }
}

/** The rows that lead from the goods to the total, and the total. */
export interface Reckoning {
  readonly rows: readonly SumRow[]
  readonly total: number
}

export interface Wishes {
  readonly shipping?: boolean
  readonly tax?: 'added' | 'contained' | 'none'
  readonly discount?: boolean
  readonly fee?: boolean
  /** The word for the total: `total` or `due`. */
  readonly name?: 'total' | 'due'
}

/** A sum as shops reckon it: goods, shipping, fee, tax, discount, total; the tax added or contained. */
export function reckon(shop: Shop, items: number, wishes: Wishes = {}): Reckoning {
  const rows: SumRow[] = [{ label: shop.say('items'), amount: items }]
  let total = items
  const add = (label: string, amount: number): void => {
    rows.push({ label, amount })
    total += amount
  }
  const discount = wishes.discount ?? shop.often(0.3)
  const tax = wishes.tax ?? shop.pick(['added', 'contained', 'none'])
  if (discount) add(shop.say('discount'), -shop.share(items, shop.int(5, 25)))
  if (wishes.shipping ?? shop.often(0.8)) add(shop.say('shipping'), shop.price(290, 1290))
  if (wishes.fee ?? shop.often(0.15)) add(shop.say('fee'), shop.price(100, 500))
  if (tax === 'added') add(shop.say('tax'), shop.share(items, shop.int(5, 25)))
  rows.push({ label: shop.say(wishes.name ?? (shop.often(0.7) ? 'total' : 'due')), amount: total, strong: true })
  if (tax === 'contained') rows.push({ label: shop.say('contained'), amount: shop.share(total, 17) })
  return { rows, total }
}

/** The last things before ordering: how to pay, terms, the button. */
export function payHere(shop: Shop, total: number | null = null): { middle: Block[]; end: Block[] } {
  const words = shop.say('pay')
  const text = total !== null && shop.often(0.15) ? `${words} ${shop.money(total)}` : words
  const middle: Block[] = [{ kind: 'fields', fields: shop.pick(['card', 'method', 'frame', 'card'] as const) }]
  if (shop.often(0.4)) middle.push({ kind: 'terms', text: shop.say('terms') })
  const others = shop.often(0.4) ? [{ text: shop.say('back'), orders: false, link: true as const }] : []
  return { middle, end: [{ kind: 'buttons', buttons: [...others, { text, orders: true }] }] }
}

export function checkoutPath(shop: Shop): string {
  return shop.pick(['/checkout', '/checkout/payment', '/order/review', '/kasse', '/pay/9f81', '/onepage'])
}
