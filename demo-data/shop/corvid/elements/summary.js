import { priceElement, priceStyle, sheet } from './price.js'

const style = sheet(`${priceStyle}
  :host { display: block; }
  dl { display: grid; grid-template-columns: 1fr auto; row-gap: 0.5rem; margin: 0; }
  dd { margin: 0; padding-left: 1rem; text-align: right; }
  .payable { border-top: 3px double #14171a; padding-top: 0.8rem; margin-top: 0.4rem; font-weight: 700; }
  dt.payable { align-content: center; }
  dd.payable { font-size: 1.9rem; line-height: 1.1; }
`)

/** The sums of the order as a description list; set `quote` to show others. */
class Summary extends HTMLElement {
  #root = this.attachShadow({ mode: 'open' })

  set quote(quote) {
    this.#root.adoptedStyleSheets = [style]
    const list = document.createElement('dl')
    for (const { label, price } of quote.rows) list.append(...pair(label, price, ''))
    list.append(...pair('Total to pay', quote.total, 'payable'))
    this.#root.replaceChildren(list)
  }
}

function pair(label, price, className) {
  const term = Object.assign(document.createElement('dt'), { className, textContent: label })
  const value = Object.assign(document.createElement('dd'), { className })
  value.append(priceElement(price))
  return [term, value]
}

customElements.define('cv-summary', Summary)
