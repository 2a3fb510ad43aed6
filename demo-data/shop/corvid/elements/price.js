/** A price split over elements: currency, whole dollars, a mark only heard, decimals set high. */
export function priceElement({ whole, decimals }) {
  const price = document.createElement('span')
  price.className = 'price'
  price.append(
    part('span', 'currency', 'CA$'),
    part('span', 'whole', whole),
    part('span', 'mark', '.'),
    part('sup', 'decimals', decimals),
  )
  return price
}

/** How a price looks inside a shadow root. */
export const priceStyle = `
  .price { white-space: nowrap; font-variant-numeric: tabular-nums; }
  .currency { font-size: 0.75em; margin-right: 0.15em; }
  .mark { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  .decimals { font-size: 0.7em; vertical-align: 0.4em; line-height: 0; margin-left: 0.08em; }
`

/** A style sheet for a shadow root. */
export function sheet(text) {
  const made = new CSSStyleSheet()
  made.replaceSync(text)
  return made
}

function part(tag, className, text) {
  return Object.assign(document.createElement(tag), { className, textContent: text })
}
