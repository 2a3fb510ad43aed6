import type { HostilePage } from './page.ts'

/*
 * Pages that fight the guard: that try not to be heard, to hide, cover, forge or read its panel, or to drown it. The thing
 * to press is `#press`; what a page learns it keeps in `window.learnt`, a list.
 */

const FORM = '<form id="form" method="post" action="ORDER"><button id="press">Place order</button></form>'
const FETCH = '<button type="button" id="press">Place order</button>'
const ORDERS = "document.querySelector('#press').addEventListener('click', () => order())"
/** Calls `then(host)` as soon as the curtain's host stands in the page, each time. Counts the times in `window.seenHosts`. */
const WATCH = `window.seenHosts = 0; window.learnt = []
const watchHost = (then) => new MutationObserver((records) => {
  for (const record of records) for (const node of record.addedNodes) {
    if (node.parentNode === document.documentElement && node !== document.body && node.localName === 'div') { window.seenHosts++; then(node) }
  }
}).observe(document.documentElement, { childList: true });
`
const fighting = (code: string): HostilePage => ({ body: FORM, script: `${WATCH}watchHost((host) => { ${code} })` })
const styled = (style: string): HostilePage => ({ body: FORM, style })
const early = (code: string): HostilePage => ({ body: FORM, early: code })

export const attacks: Readonly<Record<string, HostilePage>> = {
  // Not to be heard.
  'takes listeners off the window': early(`for (const type of ['click', 'submit', 'pointerdown', 'keydown', 'navigate'])
  for (const target of [window, document, navigation]) { target['on' + type] = null; target.removeEventListener(type, () => {}, true) }`),
  'overrides what events can do':
    early(`for (const name of ['preventDefault', 'stopPropagation', 'stopImmediatePropagation', 'composedPath']) Event.prototype[name] = () => []
EventTarget.prototype.addEventListener = function () {}; EventTarget.prototype.dispatchEvent = () => true`),
  'overrides what elements can do':
    early(`for (const name of ['matches', 'closest', 'querySelector', 'querySelectorAll', 'getAttribute', 'append', 'attachShadow', 'remove'])
  Element.prototype[name] = () => null
Document.prototype.createElement = () => null; HTMLDialogElement.prototype.showModal = () => {}; Node.prototype.appendChild = () => null`),
  'pollutes the prototypes':
    early(`Object.prototype.watched = false; Object.prototype.pass = { placed: false, read: null }; Object.prototype.ok = false
Array.prototype.some = () => false; Array.prototype.includes = () => false; Set.prototype.has = () => false; String.prototype.includes = () => false`),
  'freezes everything':
    early(`for (const each of [Event, Element, Node, Document, HTMLElement, EventTarget, HTMLFormElement, Object, Array]) Object.freeze(each.prototype)
Object.freeze(document); Object.freeze(document.documentElement)`),
  'overrides time and chance':
    early(`performance.now = () => 0; Date.now = () => 0; Math.random = () => 0; crypto.getRandomValues = (a) => a.fill(7)
window.setTimeout = () => 0; window.setInterval = () => 0; window.requestIdleCallback = () => 0`),
  'stops its own loading': { body: FORM, script: 'window.stop()' },
  'writes over the document': {
    body: '<p>One moment.</p>',
    script: `setTimeout(() => { document.open(); document.write('<!doctype html><title>Checkout</title><h1>Review and pay</h1><p>Payment: card ending 4417</p><p>Order total CA$48.20</p><button type="button" id="press">Place order</button>'); document.close()
document.querySelector('#press').addEventListener('click', () => order()) }, 300)`,
  },
  'writes over the document, listening first': {
    body: '<p>One moment.</p>',
    script: `setTimeout(() => { document.open(); document.write('<!doctype html><title>Checkout</title><script>addEventListener("click", (event) => { event.stopImmediatePropagation(); if (event.target.id === "press") fetch("ORDER", { method: "POST" }) }, true)</' + 'script><h1>Review and pay</h1><p>Payment: card ending 4417</p><p>Order total CA$48.20</p><button type="button" id="press">Place order</button>'); document.close() }, 300)`,
  },
  'another document element': {
    body: FORM,
    script:
      'const copy = document.documentElement.cloneNode(true); document.replaceChild(copy, document.documentElement)',
  },
  'names that hide a form’s own': {
    body: `<form id="form" method="post" action="ORDER"><input type="hidden" name="matches"><input type="hidden" name="querySelector"><input type="hidden" name="querySelectorAll">
<input type="hidden" name="method"><input type="hidden" name="submit"><input type="hidden" name="requestSubmit"><input type="hidden" name="getAttribute"><input type="hidden" name="elements">
<input type="hidden" name="parentNode"><input type="hidden" name="localName"><input type="hidden" name="target"><button id="press">Place order</button></form>`,
  },
  'names that hide the document’s own': {
    body: `${FORM}${[
      'createElement',
      'querySelector',
      'querySelectorAll',
      'documentElement',
      'activeElement',
      'elementFromPoint',
      'defaultView',
      'addEventListener',
      'body',
      'title',
    ]
      .map((name) => `<img name="${name}" alt="">`)
      .join('')}`,
  },
  'frames named like the window’s own': {
    body: `${FORM}${['top', 'parent', 'navigation', 'chrome', 'browser', 'performance', 'tillsideReader', 'tillsideGate'].map((name) => `<iframe name="${name}" hidden></iframe>`).join('')}`,
  },
  'takes the guard’s names': early(
    `for (const name of ['tillsideGate', 'tillsideReader', 'tillsideLexicons']) Object.defineProperty(window, name, { value: { ordering: () => null, seen: () => null }, writable: false })`,
  ),
  'changes without rest': {
    body: `${FETCH}<p id="noise"></p>`,
    script: `${ORDERS}; setInterval(() => { document.querySelector('#noise').textContent = Math.random() }, 20)`,
  },
  'many addresses': {
    body: FETCH,
    script: `${ORDERS}; for (let n = 0; n < 150; n++) history.pushState({}, '', '/about/' + n)`,
  },
  'goes by another address': { body: FETCH, script: `${ORDERS}; history.replaceState({}, '', '/')` },
  'a button of one pixel': {
    body: '<button type="button" id="press" style="width:240px;height:40px">Go</button><button type="button" id="tiny" style="width:1px;height:1px;padding:0;border:0;overflow:hidden">Place order</button>',
    script:
      "document.querySelector('#tiny').addEventListener('click', () => order()); document.querySelector('#press').addEventListener('click', () => document.querySelector('#tiny').click())",
  },
  'ten thousand elements': {
    body: `${FETCH}<div id="mass" style="height:20px;overflow:hidden"></div>`,
    script: `${ORDERS}; document.querySelector('#mass').innerHTML = '<div><span>x</span></div>'.repeat(10000)`,
  },
  'sandboxed frame': {
    body: `<iframe id="frame" sandbox="allow-scripts" width="300" height="80" srcdoc="<h1>Review and pay</h1><p>Order total CA$48.20</p><p>Payment: card ending 4417</p><button id=press>Place order</button><script>document.querySelector('#press').onclick = () => fetch('ORDER', { method: 'POST', mode: 'no-cors' })</script>"></iframe>`,
  },
  'frame from a blob': {
    body: '<iframe id="frame" width="300" height="120"></iframe>',
    script: `document.querySelector('#frame').src = URL.createObjectURL(new Blob(['<button id=press onclick="fetch(\\'' + location.origin + 'ORDER\\', { method: \\'POST\\' })">Place order</button>'], { type: 'text/html' }))`,
  },
  'another total at the last moment': {
    body: FETCH,
    script: `document.querySelector('#press').addEventListener('pointerover', () => { document.querySelector('tr:last-child th:last-child').textContent = 'CA$480.20' }); ${ORDERS}`,
  },
  'another total as the form is sent': {
    body: '<form id="form" method="post" action="ORDER"><button id="press">Place order</button></form>',
    script: `document.querySelector('#form').addEventListener('submit', (event) => { event.preventDefault(); document.querySelector('tr:last-child th:last-child').textContent = 'CA$480.20'; document.querySelector('#form').submit() })`,
  },
  // To drown it.
  'two thousand presses by script': {
    body: FETCH,
    script: `${ORDERS}; ${WATCH}watchHost(() => {}); setTimeout(() => { for (let n = 0; n < 2000; n++) document.querySelector('#press').click() }, 1200)`,
  },
  'presses by script, panel removed': {
    body: FETCH,
    script: `${ORDERS}; ${WATCH}watchHost((host) => host.remove()); setTimeout(() => { const at = performance.now(); const go = () => { document.querySelector('#press').click(); if (performance.now() - at < 2500) setTimeout(go) }; go() }, 1200)`,
  },
  'forged messages': {
    body: FETCH,
    script: `${ORDERS}; window.learnt = []
addEventListener('message', (event) => learnt.push(JSON.stringify(event.data)))
const forged = { to: 'gate', pass: { order: '0193b000-0000-7000-8000-000000000001', read: { amount: '48.20', currency: 'CAD' }, placed: false }, closePanel: true }
setInterval(() => { postMessage(forged, '*'); dispatchEvent(new CustomEvent('tillside', { detail: forged })); for (let n = 0; n < window.length; n++) window[n].postMessage(forged, '*') }, 50)`,
  },
  'speaks to the extension': {
    body: FETCH,
    script: `${ORDERS}; window.learnt = []
for (const api of [window.chrome, window.browser]) try { learnt.push(typeof api?.runtime?.sendMessage); api?.runtime?.sendMessage('EXTENSION', { command: 'book.look', ask: {} }, (answer) => learnt.push(JSON.stringify(answer ?? null))) } catch (error) { learnt.push('refused') }`,
  },
  // To hide, cover or remove the panel.
  'removes the panel': fighting('host.remove()'),
  'removes the panel later': fighting('setTimeout(() => host.remove(), 400)'),
  'hides the panel by its style': fighting("host.style.setProperty('display', 'none', 'important')"),
  'hides the panel by a style sheet': styled('html > div { display: none !important }'),
  'hides the panel again and again': fighting(
    "setInterval(() => host.style.setProperty('display', 'none', 'important'), 30)",
  ),
  'makes the panel inert': fighting('host.inert = true; host.hidden = true'),
  'moves the panel away': fighting('document.body.append(host)'),
  'puts the panel into a hidden room': fighting(
    "const room = document.createElement('section'); room.hidden = true; document.body.append(room); room.append(host)",
  ),
  'makes all transparent': styled(
    'html, body { opacity: 0.02 !important } html > div { opacity: 0.01 !important; visibility: hidden !important; pointer-events: none !important }',
  ),
  'filters and shrinks all': styled('html { filter: opacity(0); transform: scale(0.02); clip-path: inset(50%) }'),
  'zooms all away': styled('html { zoom: 0.05 }'),
  'restyles the panel': styled(
    'html > div, dialog, iframe { all: unset !important; width: 1px !important; height: 1px !important; transform: translateX(-9999px) !important } ::backdrop { opacity: 0 }',
  ),
  'covers it with a dialog': fighting(
    "const cover = document.createElement('dialog'); cover.textContent = 'You have won'; document.body.append(cover); setTimeout(() => cover.showModal(), 100)",
  ),
  'covers it with dialogs without end': fighting(
    "setInterval(() => { const cover = document.createElement('dialog'); cover.textContent = 'You have won'; document.body.append(cover); cover.showModal(); document.querySelectorAll('dialog').forEach((each) => { if (each !== cover) each.remove() }) }, 30)",
  ),
  'covers it with a popover': fighting(
    "const cover = document.createElement('div'); cover.popover = 'manual'; cover.style.cssText = 'inset:0;width:100vw;height:100vh;margin:0'; cover.textContent = 'You have won'; document.body.append(cover); setTimeout(() => cover.showPopover(), 100)",
  ),
  'draws over it where clicks pass through': fighting(
    "const cover = document.createElement('div'); cover.popover = 'manual'; cover.style.cssText = 'position:fixed;inset:0;width:100vw;height:100vh;margin:0;pointer-events:none;background:white'; cover.textContent = 'Press below to win'; document.body.append(cover); setTimeout(() => cover.showPopover(), 1200)",
  ),
  'goes full screen': {
    body: FETCH,
    script: `${ORDERS}; document.querySelector('#press').addEventListener('pointerup', () => document.documentElement.requestFullscreen())`,
  },
  // To forge or press it.
  'draws a panel of its own': {
    body: `${FETCH}<dialog id="fake"><h2>Tillside</h2><p>Tagged to Household things.</p><button type="button" id="fake-ok">Back to the shop</button></dialog>`,
    script: `${ORDERS}; document.querySelector('#fake').showModal(); document.querySelector('#fake-ok').onclick = () => document.querySelector('#fake').close()`,
  },
  'presses the panel by script':
    fighting(`setInterval(() => { for (const target of [host, document, document.activeElement, document.body]) {
  for (const type of ['pointerdown', 'mousedown', 'mouseup', 'click']) target.dispatchEvent(new MouseEvent(type, { bubbles: true, composed: true, clientX: innerWidth / 2, clientY: innerHeight / 2 }))
  for (const key of ['Enter', ' ', 'Escape', 'Tab']) target.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, composed: true }))
  host.click() } }, 40)`),
  'forces shadow roots open': {
    body: FORM,
    early: `window.learnt = []; const attach = Element.prototype.attachShadow
Element.prototype.attachShadow = function (options) { const root = attach.call(this, { ...options, mode: 'open' }); learnt.push(root.mode); return root }`,
  },
  'looks into the panel':
    fighting(`setTimeout(() => { const look = (get) => { try { return String(get()) } catch { return 'refused' } }
learnt.push(look(() => host.shadowRoot), look(() => host.attachShadow({ mode: 'open' })), look(() => window.length), look(() => window.frames[0]), look(() => document.querySelectorAll('iframe').length),
look(() => host.innerHTML), look(() => host.textContent), look(() => JSON.stringify([...host.attributes].map((each) => each.name))),
look(() => performance.getEntries().map((entry) => entry.name).filter((name) => /extension/.test(name)).join()), look(() => [...document.styleSheets].length)) }, 900)`),
  'reads all resource addresses': {
    body: FORM,
    early: `window.learnt = []; new PerformanceObserver((list) => { for (const entry of list.getEntries()) learnt.push(entry.name) }).observe({ entryTypes: ['resource', 'navigation', 'mark', 'measure'] })
document.addEventListener('securitypolicyviolation', (event) => learnt.push(event.blockedURI)); addEventListener('error', (event) => learnt.push(String(event.filename)), true)`,
  },
  'guesses the panel’s address':
    fighting(`const guesses = document.createElement('section'); document.body.append(guesses)
for (const scheme of ['chrome-extension', 'moz-extension']) { const guess = scheme + '://EXTENSION/src/guard/panel/panel.html'
  const frame = document.createElement('iframe'); frame.src = guess; guesses.append(frame)
  fetch(guess).then(() => learnt.push('read'), () => learnt.push('refused')) }`),
  'listens to what is typed':
    fighting(`for (const type of ['keydown', 'keypress', 'keyup', 'beforeinput', 'input', 'textInput', 'compositionstart', 'paste'])
  for (const target of [window, document, document.documentElement, host]) target.addEventListener(type, (event) => learnt.push(event.key ?? event.data ?? type), true)`),
  'steals the keyboard': fighting(`addEventListener('keydown', (event) => learnt.push(event.key), true)
const field = document.createElement('input'); document.body.append(field); window.field = field
setInterval(() => { window.focus(); field.focus(); document.body.focus() }, 25)`),
  'steals the keyboard by a frame':
    fighting(`const frame = document.createElement('iframe'); document.body.append(frame)
frame.contentDocument.body.innerHTML = '<input>'; frame.contentWindow.addEventListener('keydown', (event) => learnt.push(event.key), true)
setInterval(() => { frame.contentWindow.focus(); frame.contentDocument.querySelector('input').focus() }, 25)`),
  // Headers that might keep the panel out.
  'a policy against all frames and scripts': {
    body: FORM,
    headers: {
      'content-security-policy':
        "default-src 'none'; script-src 'unsafe-inline'; form-action *; require-trusted-types-for 'script'",
    },
  },
  'a policy against embedding': {
    body: FORM,
    headers: { 'cross-origin-embedder-policy': 'require-corp', 'cross-origin-opener-policy': 'same-origin' },
  },
  'a sandboxed page': {
    body: FETCH,
    script: ORDERS,
    headers: { 'content-security-policy': 'sandbox allow-scripts allow-same-origin allow-forms' },
  },
  // To be gone.
  'goes back while held': fighting('setTimeout(() => history.back(), 300)'),
  'loads again while held': fighting(
    'if (!sessionStorage.again) { sessionStorage.again = 1; setTimeout(() => location.reload(), 300) }',
  ),
  'leaves while held': fighting("setTimeout(() => { location.href = '/checkout/leaves while held?again' }, 300)"),
}
