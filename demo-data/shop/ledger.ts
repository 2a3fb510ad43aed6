import type { PlacedItem, PlacedOrder, ShopName } from './model.ts'
import { amountText } from './price-text.ts'
import type { Quote } from './quote.ts'

/** Writes down every order that reaches the server. */
export class Ledger {
  #orders: PlacedOrder[] = []
  #count = 0

  /** The orders since the start or the last `clear`, the oldest first. */
  get orders(): readonly PlacedOrder[] {
    return [...this.#orders]
  }

  /** Writes an order down and gives it its number. */
  place(shop: ShopName, totalCents: number, items: readonly PlacedItem[]): PlacedOrder {
    this.#count += 1
    const number = orderNumber(shop, this.#count)
    const order: PlacedOrder = { shop, number, total: amountText(totalCents), currency: 'CAD', items, at: this.#count }
    this.#orders.push(order)
    return order
  }

  /** Writes down the order of a priced basket. */
  placeQuote(quote: Quote): PlacedOrder {
    const items = quote.lines.map(({ product, quantity }) => ({
      id: product.id,
      name: product.name,
      quantity,
      unitPrice: amountText(product.cents),
    }))
    return this.place(quote.shop, quote.totalCents, items)
  }

  /** An order of a shop by its number, or null. */
  find(shop: ShopName, number: string): PlacedOrder | null {
    return this.#orders.find((order) => order.shop === shop && order.number === number) ?? null
  }

  /** Forgets the orders; numbers go on, so that none is given twice. */
  clear(): void {
    this.#orders = []
  }
}

// Each shop numbers in a different way, as shops do: a prefix, leading zeros, letters only.
function orderNumber(shop: ShopName, count: number): string {
  if (shop === 'fernhill') return `FH-${20_416 + count}`
  if (shop === 'lunaire') return String(4_180 + count).padStart(6, '0')
  const letters = [17_576, 676, 26, 1].map((place) =>
    String.fromCharCode(65 + (Math.floor((count * 331) / place) % 26)),
  )
  return `CSM-${letters.join('')}`
}
