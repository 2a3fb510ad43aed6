import { shops } from './catalogue.ts'
import { type Product, ShopError, type ShopName } from './model.ts'

/** One product of a basket and how many of it. */
export interface BasketLine {
  readonly product: Product
  readonly quantity: number
}

const MOST_OF_ONE = 99

/**
 * Reads a basket as every url of the shops carries it: `id:quantity`, parted by commas. The empty text is the empty basket;
 * a product named twice counts together.
 *
 * @throws ShopError `bad-basket`, `bad-quantity`, `unknown-product`
 * @example readBasket('fernhill', 'seed-mix:2,trowel:1')
 */
export function readBasket(shop: ShopName, text: string): readonly BasketLine[] {
  const quantities = new Map<Product, number>()
  for (const part of text.split(',').filter((piece) => piece !== '')) {
    const [id, count, ...rest] = part.split(':')
    if (id === undefined || count === undefined || rest.length > 0) {
      throw new ShopError('bad-basket', `“${part}” is not a product and a quantity. Write it like trowel:1.`)
    }
    const product = findProduct(shop, id)
    const sum = readQuantity(count) + (quantities.get(product) ?? 0)
    if (sum > MOST_OF_ONE) throw new ShopError('bad-quantity', `We sell at most ${MOST_OF_ONE} of one thing.`)
    quantities.set(product, sum)
  }
  return [...quantities].map(([product, quantity]) => ({ product, quantity }))
}

/** Writes a basket as urls carry it; lines with quantity 0 fall away. */
export function writeBasket(lines: readonly BasketLine[]): string {
  return lines
    .filter((line) => line.quantity > 0)
    .map((line) => `${line.product.id}:${line.quantity}`)
    .join(',')
}

/**
 * A product of a shop by its id.
 *
 * @throws ShopError `unknown-product`
 */
export function findProduct(shop: ShopName, id: string): Product {
  const product = shops[shop].products.find((candidate) => candidate.id === id)
  if (product === undefined) throw new ShopError('unknown-product', `There is no “${id}” on our shelves.`)
  return product
}

/**
 * A quantity from 0 to 99.
 *
 * @throws ShopError `bad-quantity`
 */
export function readQuantity(text: string): number {
  if (!/^\d{1,2}$/.test(text)) {
    throw new ShopError('bad-quantity', `“${text}” is not a quantity. Give a whole number up to ${MOST_OF_ONE}.`)
  }
  return Number(text)
}
