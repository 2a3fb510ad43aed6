import { sheet } from './price.js'

const style = sheet(`
  :host { display: block; margin-top: 1.2rem; }
  button { width: 100%; border: 0; background: #14171a; color: #fff; font: inherit; font-weight: 700;
    padding: 1rem; cursor: pointer; }
  button:hover { background: #2a7f78; }
  button:disabled { background: #7b8388; cursor: wait; }
  button:focus-visible { outline: 3px solid #e8b931; outline-offset: 2px; }
`)

/** The button that pays: it asks whether the scores are in stock, then submits the form it stands in. */
class PayButton extends HTMLElement {
  #button = Object.assign(document.createElement('button'), { type: 'button', textContent: 'Pay now' })

  constructor() {
    super()
    const root = this.attachShadow({ mode: 'open' })
    root.adoptedStyleSheets = [style]
    root.append(this.#button)
    this.#button.addEventListener('click', () => this.#pay())
  }

  /** True while the sums are being asked for. */
  set busy(busy) {
    this.#button.disabled = busy
  }

  async #pay() {
    const form = this.closest('form')
    if (!form.reportValidity()) return
    this.busy = true
    try {
      const response = await fetch(`/stock?basket=${new FormData(form).get('basket')}`)
      const { available } = await response.json()
      if (available) form.requestSubmit()
    } finally {
      this.busy = false
    }
  }
}

customElements.define('cv-pay-button', PayButton)
