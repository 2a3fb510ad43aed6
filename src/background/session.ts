import browser from 'webextension-polyfill'
import * as z from 'zod/mini'
import type { HeldBecause, SeenPage } from './protocol.ts'
import { pageRequests } from './schemas.ts'

/*
 * What the worker knows of open tabs. It lives in storage.session: it outlives the worker and ends with the browser.
 */

const LOOKED_THROUGH = 'looked-through'

/** What a tab showed when it was last read. */
export interface SeenTab {
  readonly shop: string
  readonly origin: string
  readonly page: SeenPage
}

/** An order held in a tab, by its panel's nonce. */
export interface HeldOrder extends SeenTab {
  readonly tab: number
  /** The frame whose gate holds it; 0 is the page itself. */
  readonly gate: number
  readonly because: HeldBecause
  /** The frame that spoke for it first; no other may, even one that learnt the nonce. */
  readonly frame: number | null
}

const seenTab = z.object({ shop: z.string(), origin: z.string(), page: pageRequests['page.seen'].def.shape.page })
const heldOrder = z.extend(seenTab, {
  tab: z.int(),
  gate: z.int(),
  frame: z.nullable(z.int()),
  because: pageRequests['page.held'].def.shape.because,
})

export async function seenIn(tab: number): Promise<SeenTab | null> {
  return read(`seen:${tab}`, seenTab)
}

export async function noteSeen(tab: number, seen: SeenTab): Promise<void> {
  await browser.storage.session.set({ [`seen:${tab}`]: seen })
}

export async function heldBy(nonce: string): Promise<HeldOrder | null> {
  return read(`held:${nonce}`, heldOrder)
}

/** A gate holds one order at a time: an earlier one of the same frame is forgotten, however many a page sets off. */
export async function noteHeld(nonce: string, held: HeldOrder): Promise<void> {
  const before = await keysOf(
    (key, order) => key !== `held:${nonce}` && order.tab === held.tab && order.gate === held.gate,
  )
  await browser.storage.session.remove(before)
  await browser.storage.session.set({ [`held:${nonce}`]: held })
}

export async function forgetHeld(nonce: string): Promise<void> {
  await browser.storage.session.remove(`held:${nonce}`)
}

/** Whether the whole book was proved since the browser started. */
export async function wasLookedThrough(): Promise<boolean> {
  return (await read(LOOKED_THROUGH, z.boolean())) === true
}

export async function noteLookedThrough(): Promise<void> {
  await browser.storage.session.set({ [LOOKED_THROUGH]: true })
}

/** A closed tab's page is nobody's any more. */
export async function forgetTab(tab: number): Promise<void> {
  await browser.storage.session.remove([`seen:${tab}`, ...(await keysOf((_, order) => order.tab === tab))])
}

async function keysOf(isMeant: (key: string, order: HeldOrder) => boolean): Promise<string[]> {
  return Object.entries(await browser.storage.session.get(null)).flatMap(([key, value]) => {
    const order = key.startsWith('held:') ? heldOrder.safeParse(value).data : undefined
    return order && isMeant(key, order) ? [key] : []
  })
}

async function read<S extends z.ZodMiniType>(key: string, schema: S): Promise<z.infer<S> | null> {
  const found = (await browser.storage.session.get(key))[key]
  return schema.safeParse(found).data ?? null
}
