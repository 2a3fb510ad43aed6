import type { HostilePage } from './page.ts'

/*
 * Every way in which a page can place an order. In each page the thing to act on is `#press`, unless the way is a page's
 * own doing. The names are those of the table in the contributor's guide.
 */

const FORM = (inner: string, attributes = ''): string =>
  `<form id="form" method="post" action="ORDER" ${attributes}>${inner}</form>`
const BUTTON = '<button id="press">Place order</button>'
const onPress = (type: string, code = 'order()'): string =>
  `document.querySelector('#press').addEventListener('${type}', (event) => { ${code} })`
/** A button beside the order's own form whose words say nothing of ordering. */
const ELSEWHERE = `<button type="button" id="press">Use this address</button>${FORM('<button id="own">Place order</button>')}`

const shadow = (mode: 'open' | 'closed', inner: string, script = ''): HostilePage => ({
  body: '<div id="host"></div>',
  script: `const root = document.querySelector('#host').attachShadow({ mode: '${mode}' })
root.innerHTML = \`${inner}\`
window.pressAt = () => { const box = root.querySelector('#press, #deep').getBoundingClientRect(); return [box.x + box.width / 2, box.y + box.height / 2] }
window.inner = root
${script}`,
})

const nested = (mode: 'open' | 'closed'): HostilePage =>
  shadow(
    mode,
    '<p>Nearly there</p><section id="deep" style="display:inline-block"></section>',
    `const deep = root.querySelector('#deep').attachShadow({ mode: '${mode}' })
deep.innerHTML = \`${FORM(BUTTON)}\``,
  )

const element = (mode: 'open' | 'closed'): HostilePage => ({
  body: '<quarry-pay></quarry-pay>',
  script: `customElements.define('quarry-pay', class extends HTMLElement {
  connectedCallback() {
    const root = this.attachShadow({ mode: '${mode}' })
    root.innerHTML = '<button id="press">Place order</button>'
    root.querySelector('button').addEventListener('click', () => order())
    window.pressAt = () => { const box = root.querySelector('button').getBoundingClientRect(); return [box.x + box.width / 2, box.y + box.height / 2] }
  }
})`,
})

export const ways: Readonly<Record<string, HostilePage>> = {
  button: { body: FORM(`<input name="name" id="field" value="Wren Castellane"> <input name="note"> ${BUTTON}`) },
  'input-submit': { body: FORM('<input type="submit" id="press" value="Place order">') },
  'input-image': { body: FORM('<input type="image" id="press" alt="Place order" width="120" height="40">') },
  'access-key': { body: FORM('<button id="press" accesskey="o">Place order</button>') },
  label: {
    body: `<label for="own" id="press">One press and it is yours</label>${FORM('<button id="own">Place order</button>')}`,
  },
  'sole-field': { body: FORM('<label>Your word <input name="word" id="field"></label> <button>Place order</button>') },
  'no-button': { body: FORM('<label>Your word <input name="word" id="field"></label>') },
  'field-key-fetch': {
    body: FORM('<label>Your word <input name="word" id="field"></label> <button>Place order</button>'),
    script: `document.querySelector('#field').addEventListener('keydown', (event) => { if (event.key === 'Enter') { event.preventDefault(); order() } })`,
  },
  'outside-button': {
    body: `${FORM('<input name="name" value="Wren">')}<button form="form" id="press">Place order</button>`,
  },
  'submit()': { body: ELSEWHERE, script: onPress('click', "document.querySelector('#form').submit()") },
  'submit() by GET': {
    body: ELSEWHERE.replace('method="post"', 'method="get"').replace('ORDER', '/order'),
    script: onPress('click', "document.querySelector('#form').submit()"),
  },
  'submit() of another realm': {
    body: ELSEWHERE,
    script: `const frame = document.createElement('iframe'); document.body.append(frame)
${onPress('click', "frame.contentWindow.HTMLFormElement.prototype.submit.call(document.querySelector('#form'))")}`,
  },
  'submit() into a frame': {
    body: `${ELSEWHERE.replace('action=', 'target="elsewhere" action=')}<iframe name="elsewhere"></iframe>`,
    script: onPress('click', "document.querySelector('#form').submit()"),
  },
  'submit() into a new tab': {
    body: ELSEWHERE.replace('action=', 'target="_blank" action='),
    script: onPress('click', "document.querySelector('#form').submit()"),
  },
  'requestSubmit()': { body: ELSEWHERE, script: onPress('click', "document.querySelector('#form').requestSubmit()") },
  'requestSubmit(button)': {
    body: ELSEWHERE,
    script: onPress('click', "document.querySelector('#form').requestSubmit(document.querySelector('#own'))"),
  },
  'button.click()': { body: ELSEWHERE, script: onPress('click', "document.querySelector('#own').click()") },
  'dispatched click': {
    body: ELSEWHERE,
    script: onPress(
      'click',
      "document.querySelector('#own').dispatchEvent(new MouseEvent('click', { bubbles: true, cancelable: true, composed: true }))",
    ),
  },
  'timer submit()': {
    body: FORM('<button>Place order</button>'),
    script: "setTimeout(() => document.querySelector('#form').submit(), 1500)",
  },
  'timer requestSubmit()': {
    body: FORM('<button>Place order</button>'),
    script: "setTimeout(() => document.querySelector('#form').requestSubmit(), 1500)",
  },
  'timer fetch': { body: FORM('<button>Place order</button>'), script: 'setTimeout(order, 1500)' },
  'timer address': {
    body: FORM('<button>Place order</button>'),
    script: "setTimeout(() => { location.href = 'ORDER' }, 1500)",
  },
  'timer beacon': {
    body: FORM('<button>Place order</button>'),
    script: "setTimeout(() => navigator.sendBeacon('ORDER'), 1500)",
  },
  'hover fetch': { body: '<button id="press" type="button">Place order</button>', script: onPress('pointerover') },
  'focus fetch': { body: '<button id="press" type="button">Place order</button>', script: onPress('focus') },
  'slider fetch': {
    body: '<label>Slide to buy <input type="range" id="press" min="0" max="9" value="0"></label>',
    script: onPress('change'),
  },
  link: { body: '<a href="ORDER" id="press">Place order</a>' },
  'link in a new tab': { body: '<a href="ORDER" target="_blank" id="press">Place order</a>' },
  'link as button': { body: '<a role="button" tabindex="0" id="press">Place order</a>', script: onPress('click') },
  'open root': shadow('open', FORM(BUTTON)),
  'closed root': shadow('closed', FORM(BUTTON)),
  'open in open root': nested('open'),
  'closed in closed root': nested('closed'),
  'open element': element('open'),
  'closed element': element('closed'),
  'closed root with a face': {
    ...shadow('closed', FORM(BUTTON)),
    body: '<div id="host"><span>Shop safely</span></div>',
  },
  'closed root requestSubmit()': shadow(
    'closed',
    FORM('<button id="press">Place order</button>'),
    "setTimeout(() => root.querySelector('form').requestSubmit(), 1500)",
  ),
  'closed root submit()': shadow(
    'closed',
    FORM('<button id="press">Place order</button>'),
    "setTimeout(() => root.querySelector('form').submit(), 1500)",
  ),
  'framed page': { body: '<iframe id="frame" src="/checkout/frame-inside" width="400" height="120"></iframe>' },
  'frame-inside': { bare: true, body: FORM(BUTTON) },
  'srcdoc frame': {
    body: `<iframe id="frame" width="400" height="120" srcdoc='${FORM(BUTTON).replaceAll("'", '"')}'></iframe>`,
  },
  'written frame': {
    body: '<iframe id="frame" width="400" height="120"></iframe>',
    script: `const inside = document.querySelector('#frame').contentDocument
inside.open(); inside.write(\`<body>${FORM(BUTTON)}</body>\`); inside.close()`,
  },
  'frame in a frame': { body: '<iframe id="frame" src="/checkout/frame-around" width="460" height="220"></iframe>' },
  'frame-around': {
    bare: true,
    body: '<iframe id="frame" src="/checkout/frame-inside" width="400" height="120"></iframe>',
  },
  'frame click fetch': {
    body: '<iframe id="frame" width="400" height="120" srcdoc="<button id=press>Place order</button>"></iframe>',
    script: `const frame = document.querySelector('#frame')
const wire = () => frame.contentDocument.querySelector('#press')?.addEventListener('click', () => order())
frame.addEventListener('load', wire); wire()`,
  },
  added: {
    body: '<div id="room"></div>',
    script: `setTimeout(() => { document.querySelector('#room').innerHTML = '${FORM(BUTTON)}' }, 400)`,
  },
  'replaced at the press': {
    body: '<div id="room"><button type="button" id="press">Place order</button></div>',
    script: `document.querySelector('#press').addEventListener('pointerover', () => {
  const fresh = document.createElement('button'); fresh.id = 'press'; fresh.textContent = 'Place order'
  fresh.addEventListener('click', () => order())
  document.querySelector('#press')?.replaceWith(fresh)
}, { once: true })`,
  },
  're-enabled': {
    body: `<label><input type="checkbox" id="terms"> I accept the terms</label>${FORM('<button id="press" disabled>Place order</button>')}`,
    script:
      "document.querySelector('#terms').addEventListener('change', () => { document.querySelector('#press').disabled = false })",
  },
  'renamed at the press': {
    body: '<button type="button" id="press">Check my address</button>',
    script: `document.querySelector('#press').addEventListener('pointerover', (event) => { event.currentTarget.textContent = 'Place order' })
${onPress('click')}`,
  },
  'click fetch': { body: '<button type="button" id="press">Place order</button>', script: onPress('click') },
  'click fetch, listener first': {
    early:
      "addEventListener('click', (event) => { event.stopImmediatePropagation(); if (event.target.id === 'press') order() }, true)",
    body: '<button type="button" id="press">Place order</button>',
  },
  ...Object.fromEntries(
    ['pointerdown', 'mousedown', 'pointerup', 'mouseup', 'touchstart', 'touchend', 'keydown', 'keyup'].map((type) => [
      `${type} fetch`,
      { body: '<button type="button" id="press">Place order</button>', script: onPress(type) },
    ]),
  ),
  'pointerdown leaves': {
    body: '<button type="button" id="press">Place order</button>',
    script: onPress('pointerdown', "location.href = 'ORDER'"),
  },
  'key on a div': {
    body: '<div role="button" tabindex="0" id="press">Place order</div>',
    script: onPress('keydown', "if (event.key === 'Enter' || event.key === ' ') order()"),
  },
  'under an invisible cover': {
    body: '<div style="position:relative;display:inline-block"><button type="button">Place order</button><div id="press" style="position:absolute;inset:0;margin:0"></div></div>',
    script: onPress('click'),
  },
  'in the page’s modal dialog': {
    body: `<dialog id="dialog">${FORM(BUTTON)}</dialog>`,
    script: "document.querySelector('#dialog').showModal()",
  },
  'form method=dialog': {
    body: '<dialog id="dialog"><form method="dialog"><button id="press">Place order</button></form></dialog>',
    script:
      "document.querySelector('#dialog').showModal(); document.querySelector('#dialog').addEventListener('close', () => order())",
  },
  'in the page’s popover': {
    body: `<div popover="manual" id="pop">${FORM(BUTTON)}</div>`,
    script: "document.querySelector('#pop').showPopover()",
  },
  'new route': {
    bare: true,
    body: '<main><h1>Your basket</h1><p>Slate coaster set</p><button type="button" id="go">Go to the checkout</button></main>',
    script: `document.querySelector('#go').addEventListener('click', () => {
  history.pushState({}, '', '/checkout/new-route-pay')
  document.querySelector('main').innerHTML = '<h1>Review and pay</h1><p>Payment: card ending 4417</p><p>Order total CA$48.20</p><button type="button" id="press">Place order</button>'
  document.querySelector('#press').addEventListener('click', () => order())
})`,
  },
  'drawn ahead': {
    bare: true,
    body: `<script type="speculationrules">{"prerender":[{"urls":["/checkout/drawn-pay"],"eagerness":"immediate"}]}</script>
<a id="go" href="/checkout/drawn-pay">Go to the checkout</a>`,
  },
  // It presses by itself once it is shown: a driver loses sight of a page that was drawn ahead.
  'drawn-pay': {
    body: '<button type="button" id="press">Place order</button>',
    script: `${onPress('click')}
const go = () => setTimeout(() => document.querySelector('#press').click(), 300)
if (document.prerendering) { document.addEventListener('prerenderingchange', go); fetch('/tell', { method: 'POST', body: 'drawn ahead' }) } else go()`,
  },
  'payment sheet': {
    body: '<button type="button" id="press">Pay now</button>',
    script: `${onPress(
      'click',
      `try { new PaymentRequest([{ supportedMethods: 'https://wallet.example/pay' }], { total: { label: 'Total', amount: { currency: 'CAD', value: '48.20' } } }).show().catch(() => undefined) } catch {} order()`,
    )}`,
  },
  'wallet frame': {
    body: '<iframe id="frame" title="Express wallet pay button" width="300" height="60"></iframe><p>or</p><button type="button">Place order</button>',
    script:
      "document.querySelector('#frame').src = location.origin.replace('quarry', 'wallet') + '/checkout/wallet-inside'",
  },
  'wallet-inside': {
    bare: true,
    style: 'body{margin:0} button{width:290px;height:50px}',
    body: '<button id="press">Pay</button>',
    script:
      "document.querySelector('#press').addEventListener('click', () => fetch('/order?from=wallet', { method: 'POST', mode: 'no-cors' }))",
  },
  'unnamed foreign frame': {
    body: '<iframe id="frame" title="Help" width="300" height="60"></iframe><p>or</p><button type="button">Place order</button>',
    script:
      "document.querySelector('#frame').src = location.origin.replace('quarry', 'help') + '/checkout/foreign-inside'",
  },
  'foreign-inside': {
    bare: true,
    style: 'body{margin:0} button{width:290px;height:50px}',
    body: '<button id="press">Pay</button>',
    script:
      "document.querySelector('#press').addEventListener('click', () => fetch('/order?from=foreign', { method: 'POST', mode: 'no-cors' }))",
  },
  'wordless picture': {
    body: '<canvas id="press" width="160" height="44"></canvas>',
    script: `const pen = document.querySelector('#press').getContext('2d'); pen.fillText('Place order', 10, 20)
${onPress('click')}`,
  },
}
