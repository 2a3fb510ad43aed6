import { v7 } from 'uuid'
import browser, { type Runtime } from 'webextension-polyfill'
import { deviceId, entryId } from '../index.ts'
import type { Context } from './context.ts'
import { dispatch } from './dispatch.ts'
import { Keeper } from './keeper.ts'
import { browserMarker } from './marker.ts'
import { classify } from './sender.ts'
import { forgetTab, noteLookedThrough, wasLookedThrough } from './session.ts'
import { watchShop } from './shop-commands.ts'
import { originOf } from './shop-host.ts'
import { registerGates } from './shops.ts'
import { dateIn } from './today.ts'

/*
 * The worker: wakes for an event, answers it from the store, and may be gone a moment later. Every listener is
 * registered in this first turn, so that no event is lost on a cold start; what takes time is awaited inside.
 */

/** Time for the popup to be drawn first. */
const LOOK_THROUGH_AFTER_MS = 5_000

const context: Context = {
  keeper: new Keeper(
    browser.storage.local,
    browserMarker,
    (work) => navigator.locks.request('tillside:book', work),
    (timeZone) => dateIn(timeZone, Date.now()),
  ),
  now: () => Date.now(),
  today: (timeZone) => dateIn(timeZone, Date.now()),
  newId: (msecs) => entryId(msecs === undefined ? v7() : v7({ msecs })),
  newDevice: () => deviceId(v7()),
}

browser.runtime.onMessage.addListener((message: unknown, sender: Runtime.MessageSender) =>
  dispatch(context, message, classify(sender)),
)
browser.tabs.onRemoved.addListener((tab) => void forgetTab(tab))
browser.permissions.onAdded.addListener(({ origins }) => void watchGranted(origins ?? []))
browser.permissions.onRemoved.addListener(() => void keepGates())
browser.runtime.onInstalled.addListener(() => void keepGates())
browser.runtime.onStartup.addListener(() => void keepGates())

// Where the browser can, no content script reads the book, whatever happens to it.
void chrome.storage.local.setAccessLevel?.({ accessLevel: 'TRUSTED_CONTEXTS' })

// Once per run of the browser, when the first commands have had their turn.
setTimeout(() => void lookThrough(), LOOK_THROUGH_AFTER_MS)

/** Looks the whole book through. A worker that is stopped over it begins again when it next wakes. */
async function lookThrough(): Promise<void> {
  const held = await context.keeper.look()
  if (held.status !== 'ready' || (await wasLookedThrough())) return
  const isWell = await context.keeper.verify()
  if (!isWell) console.warn('Tillside: the stored book was not as it should be; the popup and the desk say more.')
  await noteLookedThrough()
}

/** Browsers drop registered scripts on an update, and people take permissions back. */
async function keepGates(): Promise<void> {
  const held = await context.keeper.look()
  await registerGates(held.status === 'ready' ? held.kept.head.watched : [])
}

/**
 * A shop's permission is only ever asked for to watch it. The browser's question closes the popup that asked, so it is
 * here that the yes arrives for certain.
 */
async function watchGranted(patterns: readonly string[]): Promise<void> {
  if ((await context.keeper.look()).status !== 'ready') return
  for (const pattern of patterns) {
    const origin = originOf(pattern.replace(/\/\*$/, ''))
    if (origin !== null) await watchShop(context, { origin })
  }
}
