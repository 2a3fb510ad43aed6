import { element } from './element.js'
import { basket, products } from './order-state.js'

/** The counter: every product with a stepper; `refresh` is called after each change. */
export function drawChoice(refresh) {
  const cards = products.map((product) => {
    const count = element('output', {}, String(basket.get(product.id) ?? 0))
    const change = (step) => () => {
      const next = Math.min(99, Math.max(0, (basket.get(product.id) ?? 0) + step))
      if (next === 0) basket.delete(product.id)
      else basket.set(product.id, next)
      count.textContent = String(next)
      refresh()
    }
    return element(
      'li',
      { className: 'card' },
      document.getElementById(`drawing-${product.id}`).content.cloneNode(true),
      element('h3', {}, product.name),
      element('p', { className: 'note' }, product.note),
      element('p', { className: 'price' }, product.price),
      element(
        'div',
        { className: 'stepper' },
        element('button', { type: 'button', ariaLabel: `Retirer : ${product.name}`, onclick: change(-1) }, '−'),
        count,
        element('button', { type: 'button', ariaLabel: `Ajouter : ${product.name}`, onclick: change(1) }, '+'),
      ),
    )
  })
  return element('section', {}, element('h1', {}, 'Au comptoir'), element('ul', { className: 'cards' }, ...cards))
}
