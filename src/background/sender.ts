import browser, { type Runtime } from 'webextension-polyfill'

/**
 * Who sent a message, by what the browser stamped on it. A message's own claims are never asked.
 *
 * - `own`: a page of this extension that no web page can frame (popup, desk).
 * - `panel`: our panel, framed in the tab whose order it holds.
 * - `shop`: the gate in a web page, or in a frame of one; whether the shop is watched is checked by the command.
 */
export type Sender =
  | { readonly kind: 'own' }
  | { readonly kind: 'panel'; readonly tab: number; readonly frame: number }
  | { readonly kind: 'shop'; readonly tab: number; readonly frame: number; readonly url: URL }
  | { readonly kind: 'stranger' }

export type StampedSender = Runtime.MessageSender & { readonly origin?: string }

export const PANEL_PATH = '/src/guard/panel/panel.html'

export function classify(sender: StampedSender): Sender {
  const stranger = { kind: 'stranger' } as const
  if (sender.id !== browser.runtime.id || !sender.url) return stranger
  const own = new URL(browser.runtime.getURL(''))
  // A frame made of about:blank or srcdoc is of the origin that the browser stamped on it, or of none.
  const url = new URL(MADE_HERE.test(sender.url) && isWebOrigin(sender.origin) ? sender.origin : sender.url)
  if (sender.origin !== undefined && sender.origin !== siteOf(url)) return stranger
  const [tab, frame] = [sender.tab?.id, sender.frameId]
  if (siteOf(url) === siteOf(own)) {
    if (url.pathname !== PANEL_PATH) return { kind: 'own' }
    return tab === undefined || frame === undefined ? stranger : { kind: 'panel', tab, frame }
  }
  const isWeb = url.protocol === 'https:' || url.protocol === 'http:'
  return isWeb && tab !== undefined && frame !== undefined ? { kind: 'shop', tab, frame, url } : stranger
}

const MADE_HERE = /^(?:about|blob|data):/

function isWebOrigin(origin: string | undefined): origin is string {
  return origin !== undefined && /^https?:/.test(origin)
}

/** Scheme, host and port. `URL.origin` is "null" for extension schemes outside a browser. */
function siteOf(url: URL): string {
  return `${url.protocol}//${url.host}`
}
