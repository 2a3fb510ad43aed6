import browser, { type Runtime } from 'webextension-polyfill'

/**
 * Who sent a message, by what the browser stamped on it. A message's own claims are never asked.
 *
 * - `own`: a page of this extension that no web page can frame (popup, desk).
 * - `panel`: our panel, framed in the tab whose order it holds.
 * - `shop`: the gate in the top frame of a web page; whether the shop is watched is checked by the command.
 */
export type Sender =
  | { readonly kind: 'own' }
  | { readonly kind: 'panel'; readonly tab: number; readonly frame: number }
  | { readonly kind: 'shop'; readonly tab: number; readonly url: URL }
  | { readonly kind: 'stranger' }

export type StampedSender = Runtime.MessageSender & { readonly origin?: string }

export const PANEL_PATH = '/src/guard/panel/panel.html'

export function classify(sender: StampedSender): Sender {
  const stranger = { kind: 'stranger' } as const
  if (sender.id !== browser.runtime.id || !sender.url) return stranger
  const own = new URL(browser.runtime.getURL(''))
  const url = new URL(sender.url)
  if (sender.origin === own.origin || sender.origin === url.origin) {
    if (url.protocol === own.protocol) {
      if (url.pathname !== PANEL_PATH) return url.origin === own.origin ? { kind: 'own' } : stranger
      if (sender.tab?.id === undefined || sender.frameId === undefined) return stranger
      return { kind: 'panel', tab: sender.tab.id, frame: sender.frameId }
    }
    const isWeb = url.protocol === 'https:' || url.protocol === 'http:'
    if (isWeb && sender.tab?.id !== undefined && sender.frameId === 0) return { kind: 'shop', tab: sender.tab.id, url }
  }
  return stranger
}
