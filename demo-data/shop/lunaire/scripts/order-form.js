import { element } from './element.js'
import { basket, basketText, products, sending, shipping } from './order-state.js'

/** The order: its lines, ways of sending, sums and the button that pays; `onPlaced` gets the placed order. */
export function drawOrderForm(lines, total, refresh, onPlaced) {
  const options = shipping.map((option) =>
    element(
      'label',
      { className: 'choice' },
      element('input', {
        type: 'radio',
        name: 'livraison',
        value: option.id,
        checked: option.id === sending.id,
        onchange: () => {
          sending.id = option.id
          refresh()
        },
      }),
      element('span', {}, option.label),
      element('span', { className: 'amount' }, option.price),
    ),
  )
  const email = element('input', { type: 'email', value: 'wren@castellane.example', autocomplete: 'email' })
  const complaint = element('p', { className: 'complaint', role: 'alert' })
  const pay = element('button', { type: 'button', className: 'pay' }, 'Payer la commande')
  pay.addEventListener('click', () => placeOrder(pay, complaint, email.value, onPlaced))
  return element(
    'section',
    { className: 'order' },
    element('h2', {}, 'Votre commande'),
    lines,
    element('fieldset', {}, element('legend', {}, 'Livraison'), ...options),
    element('label', { className: 'field' }, 'Courriel', email),
    element('p', { className: 'note' }, 'Carte se terminant par 0017'),
    total,
    complaint,
    pay,
  )
}

/** What is in the basket, a line each. */
export function drawLines() {
  if (basket.size === 0) return [element('li', { className: 'note' }, 'Rien encore. Choisissez au comptoir.')]
  return [...basket].map(([id, count]) => {
    const product = products.find((candidate) => candidate.id === id)
    return element('li', {}, element('span', {}, `${count} × ${product.name}`))
  })
}

async function placeOrder(pay, complaint, email, onPlaced) {
  if (basket.size === 0 || !email.includes('@')) {
    complaint.textContent = basket.size === 0 ? 'Votre commande est vide.' : 'Indiquez votre courriel.'
    return
  }
  complaint.textContent = ''
  pay.disabled = true
  try {
    const response = await fetch('/commandes', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ basket: basketText(), shipping: sending.id, email }),
    })
    if (!response.ok) throw new Error(`status ${response.status}`)
    onPlaced(await response.json())
  } catch {
    pay.disabled = false
    complaint.textContent = 'La commande n’a pas pu être passée. Rien n’a été payé.'
  }
}
