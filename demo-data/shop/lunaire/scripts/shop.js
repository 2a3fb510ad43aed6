// The whole shop is drawn here: choice and checkout on one page, the confirmation under /merci/NUMBER.
// The total is asked of the server after every change and comes late.
import { drawChoice } from './choice.js'
import { element } from './element.js'
import { drawLines, drawOrderForm } from './order-form.js'
import { readAddressBar, writeAddressBar } from './order-state.js'
import { drawKnownOrder, drawThanks } from './thanks.js'
import { drawTotal } from './total.js'

const shop = document.getElementById('shop')

window.addEventListener('popstate', draw)
draw()

function draw() {
  const number = /^\/merci\/(\w+)$/.exec(location.pathname)?.[1]
  if (number === undefined) drawCheckout()
  else void drawKnownOrder(shop, number)
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
    writeAddressBar()
    show()
  }
  const placed = (order) => {
    history.pushState(null, '', `/merci/${order.number}`)
    drawThanks(shop, order)
  }
  const form = drawOrderForm(lines, total, refresh, placed)
  shop.replaceChildren(element('div', { className: 'columns' }, drawChoice(refresh), form))
  show()
}
