import browser from 'webextension-polyfill'
import type { CurtainTexts, OpenTag, Pass, ToGate } from './protocol.ts'
import { tabsOf } from './shops.ts'

/** The curtain's words, for the gate to keep. */
export function curtainTexts(): CurtainTexts {
  const text = (key: string): string => browser.i18n.getMessage(`curtain_${key}`)
  return {
    label: text('label'),
    no_answer: text('no_answer'),
    gone: text('gone'),
    no_panel: text('no_panel'),
    back: text('back'),
    go_on: text('go_on'),
  }
}

/** What the gate may know of a tag. */
export function passOf(tag: OpenTag | undefined): Pass | null {
  return tag ? { order: tag.order, read: tag.read, placed: tag.placedAt !== null } : null
}

/** Tells the gates of a shop's open tabs what may pass now. A tab without a gate is no failure. */
export async function tellGates(origin: string, tag: OpenTag | undefined): Promise<void> {
  const tabs = await tabsOf(origin).catch(() => [])
  await Promise.all(tabs.map((tab) => send(tab, { to: 'gate', pass: passOf(tag), closePanel: false }, null)))
}

/** Tells the gate of one tab's frame to take its panel away. */
export function closePanel(tab: number, frame: number, tag: OpenTag | undefined): Promise<void> {
  return send(tab, { to: 'gate', pass: passOf(tag), closePanel: true }, frame)
}

/** To one frame, or to all of the tab. */
async function send(tab: number, message: ToGate, frame: number | null): Promise<void> {
  const to = frame === null ? {} : { frameId: frame }
  await browser.tabs.sendMessage(tab, message, to).catch(() => undefined)
}
