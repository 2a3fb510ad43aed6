import { readBasket } from '../basket.ts'
import { type Html, html, iconLink, markup } from '../html.ts'

const RAVEN =
  '<svg viewBox="0 0 48 40" width="48" height="40"><path d="M2 35c9-3 13-8 15-15C19 10 26 4 33 5c4 0 6 2 7 5l7 3-8 2c1 10-5 18-15 20l-3 4h-3l2-4c-6 1-12 1-18 0z" fill="#14171a"/><circle cx="34" cy="10.500" r="1.500" fill="#e8b931"/></svg>'

/** A whole page of the music shop; `head` takes the scripts a page needs. */
export function corvidLayout(parts: { title: string; body: Html; basket: string; head?: Html }): Html {
  const { title, body, basket, head = null } = parts
  const count = readBasket('corvid', basket).reduce((all, line) => all + line.quantity, 0)
  const carry = basket === '' ? '' : `?basket=${basket}`
  return html`<!doctype html>
<html lang="en-CA">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title} | Corvid Sheet Music</title>
${iconLink(RAVEN)}
<link rel="stylesheet" href="/corvid.css">
${head}
</head>
<body>
<header><a class="brand" href="/${carry}">${markup(RAVEN)}<span>Corvid<small>Sheet Music</small></span></a>
<a class="basket-link" href="/checkout${carry}">Basket <b>${count}</b></a></header>
<main>${body}</main>
<footer><span>Corvid Sheet Music, Rook Street, Halden Quay</span><span>An invented shop. Nothing is sold here.</span></footer>
</body>
</html>`
}
