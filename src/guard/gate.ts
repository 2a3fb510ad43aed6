import type { CurtainTexts, HeldBecause, Pass, SeenPage, ToGate } from '../background/protocol.ts'
import { mayBeCheckout } from '../checkout/may-be-checkout.ts'
import type { Curtain } from './curtain.ts'
import { api, rootIn, seeClosedRoots } from './engine.ts'
import './reader-global.ts'
import { coversControl, hasControl } from './has-control.ts'
import { seatOf } from './seat.ts'
import { NO_ANSWER_MS, send } from './tell-worker.ts'

/*
 * The gate: runs at document_start in every page and same-origin frame of a watched shop, with no library in it. It holds
 * whatever places the order until the worker says that this very total is tagged. It knows a pass, never a pot or a
 * balance, and it blocks first and asks second: a click cannot wait for an answer.
 */

/** After an order was let through, the same press may come in pieces; what a page sends off later takes longer. */
const SAME_PRESS_MS = 10_000
const SAME_ORDER_MS = 120_000
/** The person's own decision when Tillside cannot answer: once, for what the page shows. */
const WAIVED_MS = 60_000
/** Reading again after a change waits for the page to come to rest. */
const REST_MS = 250
/** A page's own policy may keep every frame out: a panel that has not spoken after so long is not there. */
const PANEL_MS = 6_000
/** A curtain that the page takes away is drawn again this often in a page's life, and then at most once per press and second. */
const MOST_LOST = 2
const DRAW_EVERY_MS = 1_000

/** Of a page that could not be read: the person says the total. */
const UNREAD: SeenPage = {
  stage: 'checkout',
  total: null,
  figures: [],
  placeOrderCount: 0,
  orderNumber: null,
  items: [],
  parts: [],
}

const seat = seatOf(window)
const isTop = seat === window

let watched = true
let currency = ''
let texts: CurtainTexts | null = null
let pass: Pass | null = null
let letThrough: { read: SeenPage['total']; at: number } | null = null
let waivedUntil = 0
let curtain: Curtain | null = null
let lost = 0
let drawnAt = Number.NEGATIVE_INFINITY
let bringing: Promise<void> | null = null
let lastSeen = ''
/** The first look at a page, kept while nothing changes. */
let first: { url: string; may: boolean } | null = null
let lastForm: HTMLFormElement | null = null
let heard: Element | null = null
let restTimer: ReturnType<typeof setTimeout> | undefined

const ORDERS = ['click', 'auxclick', 'submit'] as const
const PRESSES = [
  'pointerdown',
  'mousedown',
  'touchstart',
  'pointerup',
  'mouseup',
  'touchend',
  'keydown',
  'keyup',
] as const
const TYPING = ['keydown', 'keypress', 'keyup', 'beforeinput', 'input', 'paste', 'compositionupdate'] as const

if (!Object.hasOwn(globalThis, 'tillsideGate')) {
  Object.defineProperty(globalThis, 'tillsideGate', { value: true })
  // A global of our own, or a frame of that name would be taken for it.
  Object.defineProperty(globalThis, 'tillsideReader', { value: undefined, writable: true, configurable: true })
  seeClosedRoots()
  listen()
  new MutationObserver(changed).observe(document, { childList: true, subtree: true, characterData: true })
  api.runtime.onMessage.addListener((said: ToGate) => hear(said))
  void hello()
}

/** Safe to repeat: a listener that is there already is not added again. */
function listen(): void {
  for (const type of TYPING) addEventListener(type, keepTyping, { capture: true })
  for (const type of ORDERS) addEventListener(type, judge, { capture: true })
  addEventListener('formdata', judgeForm, { capture: true })
  for (const type of PRESSES) addEventListener(type, muffle, { capture: true, passive: true })
  for (const type of ['input', 'popstate', 'hashchange', 'load']) {
    addEventListener(type, lookSoon, { capture: true, passive: true })
  }
  // A page kept for going back, or drawn ahead, may have missed what was said meanwhile.
  addEventListener('pageshow', back, { capture: true })
  for (const type of ['focus', 'blur']) addEventListener(type, keepFocus)
  // The reader is sent for as soon as there is something to read: a press must not come before it.
  addEventListener('DOMContentLoaded', lookNow, { capture: true })
  // A pointer or the keyboard comes to a control before it is pressed: by then the page has been read.
  for (const type of ['pointerover', 'focusin']) addEventListener(type, warm, { capture: true, passive: true })
  for (const type of ['toggle', 'beforetoggle']) addEventListener(type, () => curtain?.check(), { capture: true })
  // A form that a script submits raises no event but this one, and its entries' (HTML, form submission algorithm).
  globalThis.navigation?.addEventListener('navigate', judgeLeaving)
  EventTarget.prototype.addEventListener.call(document, 'prerenderingchange', hello)
}

/** `document.open()` takes all listeners away, ours too, and leaves observers. */
function changed(): void {
  const root = Document.prototype.querySelector.call(document, ':root')
  if (root !== heard) {
    heard = root
    listen()
  }
  lookSoon()
}

function back(event: PageTransitionEvent): void {
  if (!event.persisted) return
  pass = letThrough = null
  void hello()
}

async function hello(): Promise<void> {
  const answer = await send('page.hello', {})
  if (!answer) {
    // A worker on a busy machine: it may have a tag to tell of.
    if (api.runtime?.id) setTimeout(hello, NO_ANSWER_MS)
    return
  }
  ;({ watched, currency, pass, texts } = answer)
  lookSoon()
}

/** A click or submit: lets it be, lets it through, or holds it. Decided before this returns. */
function judge(event: Event): void {
  if (!watched || curtain?.holds(event)) return
  listenInside(event)
  if (event.type === 'click') lookSoon()
  const reader = globalThis.tillsideReader
  if (reader) settle(event, () => reader.ordering(event, currency))
  else if (hasControl(event) || coversControl(event)) holdUntilRead(event)
}

/** A form is about to be sent, by whatever way. Where it goes to another window, this is the last that is heard of it. */
function judgeForm(event: Event): void {
  const form = event.composedPath()[0]
  if (!(form instanceof HTMLFormElement)) return
  lastForm = form
  const target = Element.prototype.getAttribute.call(form, 'target') ?? ''
  if (!watched || /^(?:_(?:self|top|parent))?$/i.test(target)) return
  const reader = globalThis.tillsideReader
  const page = reader && ordersOf(event, () => reader.ordering(event, currency))
  if (!page || mayPass(page, event)) return
  reader.withhold(form)
  raise(page)
}

/** The page is left for another: an order when it is by a form that orders. */
function judgeLeaving(event: NavigateEvent): void {
  const form = lastForm
  lastForm = null
  if (!watched || !event.cancelable || !(event.formData || form)) return
  const reader = globalThis.tillsideReader
  if (reader) settle(event, () => reader.leaving(event, form, currency))
  else if (event.formData && form) holdUntilRead(event, form)
}

function settle(event: Event, read: () => SeenPage | null): void {
  const page = ordersOf(event, read)
  if (!page || mayPass(page, event)) return
  stop(event)
  raise(page)
}

/** A page that makes the reader stumble gains nothing by it. */
function ordersOf(event: Event, read: () => SeenPage | null): SeenPage | null {
  try {
    return read()
  } catch {
    return hasControl(event) ? UNREAD : null
  }
}

/** Presses that come before the click: a page that orders on one of them must not hear it either. */
function muffle(event: Event): void {
  if (!watched || curtain?.holds(event)) return
  if (event instanceof KeyboardEvent && event.key !== 'Enter' && (event.key !== ' ' || !hasControl(event))) return
  listenInside(event)
  const reader = globalThis.tillsideReader
  if (reader) {
    const page = ordersOf(event, () => reader.ordering(event, currency))
    if (!page || isGood(page, event)) return
    event.stopImmediatePropagation()
    // A click follows most presses and is held then; a key on what only looks like a button is all there is.
    if (event.type === 'keydown' && !reader.clicks(event)) raise(page)
  } else if ((hasControl(event) || coversControl(event)) && mayBe()) event.stopImmediatePropagation()
}

/** While the curtain is up, what is typed is typed into it or not at all; the page hears none of it. */
function keepTyping(event: Event): void {
  const isOpen = curtain?.isOpen()
  if (!isOpen && (isTop || !isCurtained())) return
  event.stopImmediatePropagation()
  if (isOpen && curtain?.holds(event)) return
  event.preventDefault()
  curtain?.focus()
}

/** A page can give the keyboard to a frame of its own under the curtain, which is drawn by another gate. */
function isCurtained(): boolean {
  const root = Document.prototype.querySelector.call(seat.document, ':root')
  return [...(root?.children ?? [])].some((child) => rootIn(child)?.querySelector('dialog:modal'))
}

function keepFocus(): void {
  setTimeout(() => {
    if (curtain?.isOpen()) curtain.focus()
  })
}

function warm(event: Event): void {
  if (!watched || !hasControl(event)) return
  if (globalThis.tillsideReader) requestIdleCallback(() => globalThis.tillsideReader?.seen(currency))
  else if (!isTop && mayBe()) void bring()
}

/** A submit does not leave a shadow root: it is heard inside. */
function listenInside(event: Event): void {
  for (const node of [...event.composedPath(), ...(globalThis.tillsideReader?.roots() ?? [])]) {
    const root = node instanceof ShadowRoot ? node : node instanceof Element ? rootIn(node) : null
    root?.addEventListener('submit', judge, { capture: true })
    root?.addEventListener('formdata', judgeForm, { capture: true })
  }
}

/** Whether this total may be ordered now. The order counts as placed once its form is submitted, or at a press without a form. */
function mayPass(page: SeenPage, event: Event): boolean {
  if (!isGood(page, event)) return false
  letThrough ??= { read: page.total, at: performance.now() }
  if (pass && !pass.placed && !globalThis.tillsideReader?.submits(event)) {
    void send('page.placed', { order: pass.order })
    pass = { ...pass, placed: true }
  }
  return true
}

function isGood(page: SeenPage, event: Event): boolean {
  const now = performance.now()
  if (now < waivedUntil) return true
  // A person's press is an order of its own sooner than what the page does after one: it may first ask the bank.
  const patience = event instanceof UIEvent ? SAME_PRESS_MS : SAME_ORDER_MS
  if (letThrough && now - letThrough.at < patience && sameTotal(letThrough.read, page.total)) return true
  return pass !== null && !pass.placed && sameTotal(pass.read, page.total)
}

function stop(event: Event): void {
  event.preventDefault()
  event.stopImmediatePropagation()
}

/** Raises the curtain over an order that is held. A page that takes it away again and again is not let eat the person's time. */
function raise(page: SeenPage): void {
  const now = performance.now()
  if (curtain?.isOpen() || (lost > 0 && now - drawnAt < DRAW_EVERY_MS)) return
  drawnAt = now
  const nonce = crypto.randomUUID().replaceAll('-', '')
  // Told before anything is drawn: the worker weighs the order while the curtain rises.
  const told = send('page.held', { nonce, because: because(page), page })
  const raised = globalThis.tillsideReader?.drawCurtain(seat.document, say, waive, () => {
    if (++lost < MOST_LOST) setTimeout(raise, DRAW_EVERY_MS, page)
    // Where the page cannot reach: on the toolbar.
    else void send('page.fought', {})
  })
  if (!raised) return
  curtain = raised
  if (!api.runtime?.id) {
    raised.say('gone')
    return
  }
  raised.frame(api.runtime.getURL(`src/guard/panel/panel.html#${nonce}`))
  void told.then((answer) => {
    if (!answer) raised.say('no_answer')
    else setTimeout(isShown, PANEL_MS)
  })
  async function isShown(): Promise<void> {
    if (raised?.isOpen() && (await send('page.panel', { nonce }))?.isUp === false) raised.say('no_panel')
  }
}

/** The person's own decision when Tillside cannot answer. */
function waive(): void {
  waivedUntil = performance.now() + WAIVED_MS
}

function because(page: SeenPage): HeldBecause {
  if (!pass) return 'untagged'
  return sameTotal(pass.read, page.total) ? 'placed-before' : 'changed'
}

/**
 * A press on what may be a checkout before the reader is here: held first. When it turns out that the press places no
 * order, it is handed back to the page.
 */
function holdUntilRead(event: Event, form?: HTMLFormElement): void {
  if (performance.now() < waivedUntil || !mayBe()) return
  // What was pressed through a cover is pressed again: a script's click says nothing of what lies under it.
  const target = form || hasControl(event) ? event.composedPath()[0] : null
  const submitter = event instanceof SubmitEvent ? event.submitter : null
  stop(event)
  void bring().then(() => {
    if (!globalThis.tillsideReader) {
      // Neither reader nor curtain can come: a plain question of the browser's own.
      if (!confirm(say(api.runtime?.id ? 'no_answer' : 'gone'))) return
      waive()
    }
    if (form) HTMLFormElement.prototype.submit.call(form)
    else if (target instanceof HTMLFormElement) HTMLFormElement.prototype.requestSubmit.call(target, submitter)
    else if (target instanceof HTMLElement) HTMLElement.prototype.click.call(target)
  })
}

function mayBe(): boolean {
  const url = seat.location.href
  if (first?.url !== url) first = { url, may: mayBeCheckout(seat.document, url) }
  return first.may
}

function bring(): Promise<void> {
  bringing ??= send('page.bring-reader', {}).then((answer) => {
    if (!answer) bringing = null
  })
  return bringing
}

function lookSoon(): void {
  first = null
  clearTimeout(restTimer)
  restTimer = setTimeout(lookNow, REST_MS)
}

/** Tells the worker what the page shows, when that changed: for the badge, the popup, and to see an order through. */
async function lookNow(): Promise<void> {
  if (!watched || !api.runtime?.id) return
  if (!globalThis.tillsideReader) {
    // In a frame the page around it has a reader already; its own comes with the pointer or the keyboard.
    if (!isTop || !mayBe()) return
    await bring()
  }
  const reader = globalThis.tillsideReader
  // A busy machine may bring it after the answer was given up.
  if (!reader) restTimer = setTimeout(lookNow, NO_ANSWER_MS)
  if (!reader || !isTop) return
  const page = reader.seen(currency)
  reader.shield(performance.now() > waivedUntil && !(pass && sameTotal(pass.read, page.total)))
  const text = JSON.stringify(page)
  if (text === lastSeen) return
  lastSeen = text
  if (page.stage === 'confirmation') letThrough = null
  await send('page.seen', { page })
}

function hear(said: ToGate): void {
  if (said?.to !== 'gate') return
  pass = said.pass
  letThrough = null
  if (said.closePanel) curtain?.close()
  void lookNow()
}

function sameTotal(a: SeenPage['total'], b: SeenPage['total']): boolean {
  return a === null || b === null ? a === b : a.amount === b.amount && a.currency === b.currency
}

/** The worker's words, or looked up where it never said one. */
function say(key: keyof CurtainTexts): string {
  return texts?.[key] ?? api.i18n.getMessage(`curtain_${key}`)
}
