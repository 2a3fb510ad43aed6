import type { HeldBecause, PageCommands, Pass, Reply, SeenPage, ToGate } from '../background/protocol.ts'
import { mayBeCheckout } from '../checkout/may-be-checkout.ts'
import { type Curtain, type CurtainTexts, drawCurtain } from './curtain.ts'
import './reader-global.ts'

/*
 * The gate: runs at document_start on every page of a watched shop, with no library in it. It holds whatever places the
 * order until the worker says that this very total is tagged. It knows a pass, never a pot or a balance, and it blocks
 * first and asks second: a click cannot wait for an answer.
 */

const api = globalThis.browser ?? globalThis.chrome

/** After an order was let through, what the same press sets off (submit, requestSubmit after a check) passes too. */
const SAME_PRESS_MS = 10_000
/** Reading again after a change waits for the page to come to rest. */
const REST_MS = 250
const NO_ANSWER_MS = 2_000

let watched = true
let currency = ''
let pass: Pass | null = null
let letThrough: { read: SeenPage['total']; until: number } | null = null
let curtain: Curtain | null = null
let bringing: Promise<void> | null = null
let lastSeen = ''
let restTimer: ReturnType<typeof setTimeout> | undefined

// An updated or removed extension cannot look its words up any more, so they are fetched while it can.
const texts: CurtainTexts = {
  label: message('curtain_label'),
  noAnswer: message('curtain_no_answer'),
  gone: message('curtain_gone'),
  back: message('curtain_back'),
  goOn: message('curtain_go_on'),
}

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

if (!('tillsideGate' in globalThis)) {
  Object.defineProperty(globalThis, 'tillsideGate', { value: true })
  start()
}

function start(): void {
  addEventListener('click', judge, { capture: true })
  addEventListener('submit', judge, { capture: true })
  for (const type of PRESSES) addEventListener(type, muffle, { capture: true, passive: true })
  for (const type of ['input', 'popstate', 'hashchange', 'pageshow', 'load']) {
    addEventListener(type, lookSoon, { capture: true, passive: true })
  }
  // The reader is sent for as soon as there is something to read: a press must not come before it.
  addEventListener('DOMContentLoaded', () => void lookNow(), { capture: true, once: true })
  // A pointer or the keyboard comes to a control before it is pressed: by then the page has been read.
  for (const type of ['pointerover', 'focusin']) addEventListener(type, warm, { capture: true, passive: true })
  new MutationObserver(lookSoon).observe(document, { childList: true, subtree: true, characterData: true })
  api.runtime.onMessage.addListener((said: ToGate) => hear(said))
  void send('page.hello', {}).then((answer) => {
    if (!answer) return
    watched = answer.watched
    currency = answer.currency
    pass = answer.pass
    lookSoon()
  })
}

/** A click or submit: lets it be, lets it through, or holds it. Decided before this returns. */
function judge(event: Event): void {
  if (!watched || !hasControl(event)) return
  if (event.type === 'click') lookSoon()
  const reader = globalThis.tillsideReader
  if (!reader) {
    if (mayBeCheckout(document, location.href)) holdUntilRead(event)
    return
  }
  const page = reader.ordering(event, currency)
  if (!page || mayPass(page, event)) return
  hold(event, page)
}

/** Presses that come before the click: a page that orders on one of them must not hear it either. */
function muffle(event: Event): void {
  if (!watched || !hasControl(event)) return
  if (event instanceof KeyboardEvent && event.key !== 'Enter' && event.key !== ' ') return
  const page = globalThis.tillsideReader?.ordering(event, currency)
  if (page && !isGood(page)) event.stopImmediatePropagation()
}

function warm(event: Event): void {
  if (watched && globalThis.tillsideReader && hasControl(event))
    requestIdleCallback(() => globalThis.tillsideReader?.seen(currency))
}

/** Whether this total may be ordered now. The order counts as placed once its form is submitted, or at a press without a form. */
function mayPass(page: SeenPage, event: Event): boolean {
  if (!isGood(page)) return false
  letThrough ??= { read: page.total, until: performance.now() + SAME_PRESS_MS }
  if (pass && !pass.placed && !isBeforeSubmit(event)) {
    void send('page.placed', { order: pass.order })
    pass = { ...pass, placed: true }
  }
  return true
}

/** A press on a submit button of a form: the browser may still find a field wrong, and then no order is placed. */
function isBeforeSubmit(event: Event): boolean {
  if (event.type !== 'click') return false
  return event.composedPath().some((node) => {
    const isButton = node instanceof HTMLButtonElement || node instanceof HTMLInputElement
    return isButton && (node.type === 'submit' || node.type === 'image') && node.form !== null
  })
}

function isGood(page: SeenPage): boolean {
  if (letThrough && performance.now() < letThrough.until && sameTotal(letThrough.read, page.total)) return true
  letThrough = null
  return pass !== null && !pass.placed && sameTotal(pass.read, page.total)
}

function hold(event: Event, page: SeenPage): void {
  event.preventDefault()
  event.stopImmediatePropagation()
  if (curtain?.isOpen()) return
  const nonce = Array.from(crypto.getRandomValues(new Uint8Array(16)), (b) => b.toString(16).padStart(2, '0')).join('')
  // Told before anything is drawn: the worker weighs the order while the curtain rises.
  const told = send('page.held', { nonce, because: because(page), page })
  const raised = drawCurtain(texts, () => {
    // The person's own decision when Tillside cannot answer: once, for what the page shows now.
    letThrough = { read: page.total, until: performance.now() + 60_000 }
  })
  curtain = raised
  if (!api.runtime?.id) {
    raised.say('gone')
    return
  }
  raised.frame(api.runtime.getURL(`src/guard/panel/panel.html#${nonce}`))
  void told.then((answer) => {
    if (!answer) raised.say('noAnswer')
  })
}

function because(page: SeenPage): HeldBecause {
  if (!pass) return 'untagged'
  return sameTotal(pass.read, page.total) ? 'placed-before' : 'changed'
}

/**
 * A press on what may be a checkout before the reader is here: held first. When it turns out that the press places no
 * order, it is handed back to the page.
 */
function holdUntilRead(event: Event): void {
  const target = event.composedPath()[0]
  event.preventDefault()
  event.stopImmediatePropagation()
  void bring().then(() => {
    const reader = globalThis.tillsideReader
    const again = reader && target instanceof HTMLElement
    if (!again) return
    if (target instanceof HTMLFormElement) target.requestSubmit()
    else target.click()
  })
}

function bring(): Promise<void> {
  bringing ??= send('page.bring-reader', {}).then((answer) => {
    if (!answer) bringing = null
  })
  return bringing
}

function lookSoon(): void {
  clearTimeout(restTimer)
  restTimer = setTimeout(() => void lookNow(), REST_MS)
}

/** Tells the worker what the page shows, when that changed: for the badge, the popup, and to see an order through. */
async function lookNow(): Promise<void> {
  if (!watched || !document.body || !api.runtime?.id) return
  if (!globalThis.tillsideReader) {
    if (!mayBeCheckout(document, location.href)) return
    await bring()
  }
  const page = globalThis.tillsideReader?.seen(currency)
  if (!page) return
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
}

const PRESSABLE =
  'button, a, input:is([type=submit], [type=image], [type=button]), summary, [role=button], [role=link], [onclick], [tabindex]'

/** The path holds something that could order when pressed, or is a form being submitted; most clicks end here. */
function hasControl(event: Event): boolean {
  if (event.type === 'submit') return true
  return event
    .composedPath()
    .some((node) => node instanceof Element && (node.matches(PRESSABLE) || node.localName.includes('-')))
}

function sameTotal(a: SeenPage['total'], b: SeenPage['total']): boolean {
  return a === null || b === null ? a === b : a.amount === b.amount && a.currency === b.currency
}

/** Null when the worker does not answer in time, refuses, or is gone. */
async function send<C extends keyof PageCommands>(
  command: C,
  ask: PageCommands[C]['ask'],
): Promise<PageCommands[C]['answer'] | null> {
  try {
    const late = new Promise<null>((resolve) => setTimeout(resolve, NO_ANSWER_MS, null))
    const reply: Reply<PageCommands[C]['answer']> | null | undefined = await Promise.race([
      api.runtime.sendMessage({ command, ask }),
      late,
    ])
    return reply?.ok ? reply.value : null
  } catch {
    return null // The worker cannot be reached; the caller says so to the person where it matters.
  }
}

function message(key: string): string {
  return api.i18n.getMessage(key)
}
