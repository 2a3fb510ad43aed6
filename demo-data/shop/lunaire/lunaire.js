// The whole shop is drawn here: choice and checkout on one page, the confirmation under /merci/NUMBER.
// The total is asked of the server after every change and comes late; an older answer never replaces a newer one.

const { products, shipping } = JSON.parse(document.getElementById('catalogue').textContent)
const shop = document.getElementById('shop')
const basket = new Map()
let sending = shipping[0].id
let asking = new AbortController()

window.addEventListener('popstate', draw)
draw()

function draw() {
  const number = /^\/merci\/(\w+)$/.exec(location.pathname)?.[1]
  if (number === undefined) drawCheckout()
  else void drawKnownOrder(number)
}

function drawCheckout() {
  readAddressBar()
  const total = element('div', { className: 'totals', ariaLive: 'polite' })
  const lines = element('ul', { className: 'lines' })
  const show = () => {
    lines.replaceChildren(...drawLines())
    void drawTotal(total)
  }
  const refresh = () => {
    history.replaceState(null, '', `/commande?basket=${basketText()}&shipping=${sending}`)
    show()
  }
  shop.replaceChildren(
    element('div', { className: 'columns' }, drawChoice(refresh), drawOrderForm(lines, total, refresh)),
  )
  show()
}

function readAddressBar() {
  const query = new URLSearchParams(location.search)
  basket.clear()
  for (const part of (query.get('basket') ?? '').split(',')) {
    const [id, count] = part.split(':')
    if (products.some((product) => product.id === id) && Number(count) > 0) basket.set(id, Number(count))
  }
  sending = shipping.find((option) => option.id === query.get('shipping'))?.id ?? shipping[0].id
}

function basketText() {
  return [...basket].map(([id, count]) => `${id}:${count}`).join(',')
}

function drawChoice(refresh) {
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

function drawLines() {
  if (basket.size === 0) return [element('li', { className: 'note' }, 'Rien encore. Choisissez au comptoir.')]
  return [...basket].map(([id, count]) => {
    const product = products.find((candidate) => candidate.id === id)
    return element('li', {}, element('span', {}, `${count} × ${product.name}`))
  })
}

function drawOrderForm(lines, total, refresh) {
  const options = shipping.map((option) =>
    element(
      'label',
      { className: 'choice' },
      element('input', {
        type: 'radio',
        name: 'livraison',
        value: option.id,
        checked: option.id === sending,
        onchange: () => {
          sending = option.id
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
  pay.addEventListener('click', () => placeOrder(pay, complaint, email.value))
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

async function drawTotal(total) {
  asking.abort()
  asking = new AbortController()
  const { signal } = asking
  if (basket.size === 0) {
    total.replaceChildren()
    return
  }
  total.replaceChildren(element('p', { className: 'waiting' }, 'Calcul en cours…'))
  try {
    const response = await fetch(`/devis?basket=${basketText()}&shipping=${sending}`, { signal })
    if (!response.ok) throw new Error(`status ${response.status}`)
    const quote = await response.json()
    if (signal.aborted) return
    total.replaceChildren(
      ...quote.lines.map(({ label, amount }) => totalLine('line', label, amount)),
      totalLine('line payable', 'Total à payer', quote.total),
    )
  } catch {
    if (!signal.aborted) total.replaceChildren(element('p', { className: 'complaint' }, 'Le calcul n’a pas abouti.'))
  }
}

function totalLine(className, label, amount) {
  return element(
    'div',
    { className },
    element('span', {}, label),
    element('span', { className: 'dots', ariaHidden: 'true' }),
    element('span', { className: 'amount' }, amount),
  )
}

async function placeOrder(pay, complaint, email) {
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
      body: JSON.stringify({ basket: basketText(), shipping: sending, email }),
    })
    if (!response.ok) throw new Error(`status ${response.status}`)
    const order = await response.json()
    history.pushState(null, '', `/merci/${order.number}`)
    drawThanks(order)
  } catch {
    pay.disabled = false
    complaint.textContent = 'La commande n’a pas pu être passée. Rien n’a été payé.'
  }
}

async function drawKnownOrder(number) {
  const response = await fetch(`/commandes/${number}`)
  if (response.ok) drawThanks(await response.json())
}

function drawThanks(order) {
  asking.abort()
  shop.replaceChildren(
    element(
      'section',
      { className: 'thanks' },
      element('h1', {}, 'Merci !'),
      element(
        'p',
        {},
        'Votre commande ',
        element('strong', { className: 'number' }, `nº ${order.number}`),
        ' est confirmée.',
      ),
      element(
        'ul',
        { className: 'lines' },
        ...order.items.map((item) => element('li', {}, `${item.quantity} × ${item.name}`)),
      ),
      totalLine('line payable', 'Montant payé', order.total),
      element('p', { className: 'note' }, 'Nous vous écrivons dès que le paquet est cacheté.'),
      element('p', {}, element('a', { href: '/' }, 'Retour à la papeterie')),
    ),
  )
  window.scrollTo(0, 0)
}

function element(tag, properties, ...children) {
  const node = Object.assign(document.createElement(tag), properties)
  node.append(...children)
  return node
}
