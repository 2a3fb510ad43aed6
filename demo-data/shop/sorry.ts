import { corvidLayout } from './corvid/layout.ts'
import { page, type Reply } from './exchange.ts'
import { fernhillLayout } from './fernhill/layout.ts'
import { type Html, html } from './html.ts'
import { lunaireMessage } from './lunaire/page.ts'
import { type ShopError, type ShopName, shopNames } from './model.ts'

/** A friendly 404 in the shop's own dress. */
export function notFound(shop: ShopName): Reply {
  if (shop === 'lunaire') return page(message(shop, 'Cette page s’est envolée', 'Rien à cette adresse.'), 404)
  return page(message(shop, 'Nothing on this shelf', 'We have no page at this address.'), 404)
}

/** What could not be done and why, with 400. */
export function sorry(shop: ShopName, error: ShopError): Reply {
  const title = shop === 'lunaire' ? 'Impossible de répondre' : 'That did not work'
  return page(message(shop, title, error.message), 400)
}

/** A 404 for a host that is none of the shops, with the way to them. */
export function unknownHost(host: string, port: number): Reply {
  const links = shopNames.map(
    (name) => html`<li><a href="http://${name}.localhost:${port}/">${name}.localhost:${port}</a></li>`,
  )
  return page(
    html`<!doctype html><html lang="en-CA"><head><meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1"><title>No shop here</title></head>
<body style="font: 18px/1.6 sans-serif; max-width: 34rem; margin: 15vh auto; padding: 0 1rem">
<h1>No shop here</h1><p>There is no shop called “${host}”. These are open:</p><ul>${links}</ul>
<p><small>An invented shop. Nothing is sold here.</small></p></body></html>`,
    404,
  )
}

function message(shop: ShopName, title: string, text: string): Html {
  if (shop === 'lunaire') return lunaireMessage(title, text)
  const back = shop === 'fernhill' ? 'Back to the shop' : 'Back to the scores'
  const body = html`<section class="message"><h1>${title}</h1><p>${text}</p><p><a class="button" href="/">${back}</a></p></section>`
  return shop === 'fernhill' ? fernhillLayout({ title, body, basket: '' }) : corvidLayout({ title, body, basket: '' })
}
