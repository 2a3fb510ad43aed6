import { element, totalLine } from './element.js'
import { stopAsking } from './total.js'

/** The confirmation, in place of the checkout. */
export function drawThanks(shop, order) {
  stopAsking()
  shop.replaceChildren(
    element(
      'section',
      { className: 'thanks' },
      element('h1', {}, 'Merci\u00a0!'),
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

/** The confirmation of an order placed before, after a reload or on the way forward. */
export async function drawKnownOrder(shop, number) {
  const response = await fetch(`/commandes/${number}`)
  if (response.ok) drawThanks(shop, await response.json())
}
