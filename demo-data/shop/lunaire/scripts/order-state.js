// What the visitor has chosen; the address bar carries it, so that it survives a reload and the way back.

/** What the shop sells and how it sends, as the page brought it. */
export const { products, shipping } = JSON.parse(document.getElementById('catalogue').textContent)

/** The chosen products, by id, with their quantities. */
export const basket = new Map()

/** The chosen way of sending. */
export const sending = { id: shipping[0].id }

/** Takes basket and way of sending from the address bar; what the shop does not know is left out. */
export function readAddressBar() {
  const query = new URLSearchParams(location.search)
  basket.clear()
  for (const part of (query.get('basket') ?? '').split(',')) {
    const [id, count] = part.split(':')
    if (products.some((product) => product.id === id) && Number(count) > 0) basket.set(id, Number(count))
  }
  sending.id = shipping.find((option) => option.id === query.get('shipping'))?.id ?? shipping[0].id
}

/** Puts basket and way of sending into the address bar. */
export function writeAddressBar() {
  history.replaceState(null, '', `/commande?${orderQuery()}`)
}

/** Basket and way of sending as a query. */
export function orderQuery() {
  return `basket=${basketText()}&shipping=${sending.id}`
}

/** The basket as urls carry it: `carnet:2,encre:1`. */
export function basketText() {
  return [...basket].map(([id, count]) => `${id}:${count}`).join(',')
}
