import './pay-button.js'
import './summary.js'
import { style } from './checkout-style.js'
import { priceElement } from './price.js'

/** The checkout form. A change of quantity or postage asks for new sums and shows them in place. */
class Checkout extends HTMLElement {
  #root = this.attachShadow({ mode: 'open' })
  #lines = element('ul', { className: 'lines' })
  #options = element('fieldset', {})
  #basket = element('input', { type: 'hidden', name: 'basket' })
  #summary = document.createElement('cv-summary')
  #pay = document.createElement('cv-pay-button')

  connectedCallback() {
    this.#root.adoptedStyleSheets = [style]
    const saved = element('span', { className: 'saved', role: 'status' })
    const save = element('button', { type: 'button', className: 'save' }, 'Save basket')
    save.addEventListener('click', async () => {
      const response = await fetch('/saved-baskets', { method: 'POST', body: this.#basket.value })
      saved.textContent = response.ok ? 'Saved for later.' : 'Could not be saved.'
    })
    const form = element('form', { method: 'post', action: '/order' }, this.#basket)
    form.append(
      element('div', { className: 'left' }, this.#lines, this.#options, details()),
      element('aside', {}, element('h2', {}, 'Summary'), this.#summary, this.#pay, terms()),
    )
    this.#root.replaceChildren(element('p', { className: 'express' }, 'Not today?', save, saved), form)
    this.#show(JSON.parse(this.querySelector('script[type="application/json"]').textContent))
  }

  #show(quote) {
    this.#basket.value = quote.basket
    this.#lines.replaceChildren(...quote.lines.map((line) => this.#line(line, quote)))
    this.#options.replaceChildren(
      element('legend', {}, 'Postage'),
      ...quote.options.map((option) => this.#option(option, quote)),
    )
    this.#summary.quote = quote
  }

  #line(line, quote) {
    const quantity = element('input', { type: 'number', min: '1', max: '99', value: line.quantity, required: true })
    quantity.setAttribute('aria-label', `Quantity of ${line.name}`)
    quantity.addEventListener('change', () => {
      if (!quantity.reportValidity()) return
      const lines = quote.lines.map(({ id, quantity: old }) => `${id}:${id === line.id ? Number(quantity.value) : old}`)
      this.#ask(lines.join(','), quote.options.find((option) => option.chosen).id)
    })
    return element(
      'li',
      {},
      element('slot', { name: `cover-${line.id}` }),
      element('span', { className: 'name' }, element('b', {}, line.name), line.note),
      quantity,
      priceElement(line.price),
    )
  }

  #option(option, quote) {
    const radio = element('input', { type: 'radio', name: 'shipping', value: option.id, checked: option.chosen })
    radio.addEventListener('change', () => this.#ask(quote.basket, option.id))
    return element('label', {}, radio, element('span', {}, option.label), priceElement(option.price))
  }

  // Nothing can be paid until the sums shown are those of the basket that would be posted.
  async #ask(basket, shipping) {
    this.#pay.busy = true
    const response = await fetch(`/quote?basket=${basket}&shipping=${shipping}`)
    if (response.ok) this.#show(await response.json())
    this.#pay.busy = false
  }
}

function details() {
  const field = (label, properties) => element('label', { className: 'field' }, label, element('input', properties))
  return element(
    'fieldset',
    {},
    element('legend', {}, 'Your details'),
    field('Name', { name: 'name', value: 'Wren Castellane', required: true, autocomplete: 'name' }),
    field('Email', { name: 'email', type: 'email', value: 'wren@castellane.example', required: true }),
  )
}

function terms() {
  return element(
    'p',
    { className: 'small' },
    'Paid with your card ending in 0017. Scores can come back within thirty days.',
  )
}

function element(tag, properties, ...children) {
  const node = Object.assign(document.createElement(tag), properties)
  node.append(...children)
  return node
}

customElements.define('cv-checkout', Checkout)
