import { confirmOrder, findOrder, monthOf, orderNumbered, type PotId } from '../index.ts'
import { potAhead } from './ahead.ts'
import { showBadge, showFought } from './badge.ts'
import type { Context } from './context.ts'
import { curtainTexts, passOf } from './gate-mail.ts'
import type { HeldBecause, OpenTag, PageCommands, Pass, SeenPage } from './protocol.ts'
import { bringReader } from './reading-tab.ts'
import type { Sender } from './sender.ts'
import { heldBy, noteHeld, noteSeen } from './session.ts'
import { originOf, shopOf } from './shop-host.ts'
import { permitted } from './shops.ts'
import { stampToday } from './stamp.ts'
import type { Head } from './store.ts'

/** Longer texts are no order numbers. */
const LONGEST_NUMBER = 60

type Shop = Extract<Sender, { kind: 'shop' }>
type Ask<C extends keyof PageCommands> = PageCommands[C]['ask']

/** An order let through longer ago than this is another order, not the same one tried again. */
const SAME_ORDER_MS = 12 * 3_600_000

/** A page of a watched shop starts its gate. */
export async function hello(context: Context, sender: Shop): Promise<PageCommands['page.hello']['answer']> {
  const held = await context.keeper.look()
  if (held.status !== 'ready') return { watched: false, pass: null, currency: '', texts: curtainTexts() }
  const { kept, book } = await context.keeper.ready()
  const place = await watchedPlace(kept.head, sender)
  if (!place) return { watched: false, pass: null, currency: '', texts: curtainTexts() }
  if (sender.frame === 0) await showBadge(sender.tab, book, place.shop, aheadAt(context, kept.head, place.shop))
  return {
    watched: true,
    pass: await freshPass(context, place.shop),
    currency: book.household.currency,
    texts: curtainTexts(),
  }
}

/** Brings the reader into the page, or into the frame that asks. */
export async function bring(context: Context, sender: Shop): Promise<Record<never, never>> {
  const { kept } = await context.keeper.ready()
  if (await watchedPlace(kept.head, sender)) await bringReader(sender.tab, sender.frame)
  return {}
}

/** The page shows something new. A confirmation of an order that was let through ends its tag and is noted with it. */
export async function seen(context: Context, ask: Ask<'page.seen'>, sender: Shop): Promise<Record<never, never>> {
  const { kept, book } = await context.keeper.ready()
  const place = await watchedPlace(kept.head, sender)
  if (!place) return {}
  await noteSeen(sender.tab, { ...place, page: ask.page })
  await showBadge(sender.tab, book, place.shop, aheadAt(context, kept.head, place.shop))
  if (ask.page.stage === 'confirmation') await closeTheCircle(context, place.shop, ask.page)
  return {}
}

/** The gate holds an order; the panel with this nonce may speak for it. */
export async function held(context: Context, ask: Ask<'page.held'>, sender: Shop): Promise<Record<never, never>> {
  const { kept } = await context.keeper.ready()
  const place = await watchedPlace(kept.head, sender)
  if (!place) return {}
  const page: SeenPage = ask.page
  if (sender.frame === 0) await noteSeen(sender.tab, { ...place, page })
  await noteHeld(ask.nonce, { ...place, tab: sender.tab, gate: sender.frame, page, because: ask.because, frame: null })
  await countHeld(context, ask.because)
  return {}
}

/** The month's review tells how often the guard held an order, and why. */
async function countHeld(context: Context, because: HeldBecause): Promise<void> {
  await context.keeper.write(({ head }, book) => {
    const month = monthOf(context.today(book.household.timeZone), book.household.monthStartDay)
    const before = head.held?.[month] ?? { untagged: 0, changed: 0, 'placed-before': 0 }
    const held = { ...head.held, [month]: { ...before, [because]: before[because] + 1 } }
    return { change: { ledger: { held } }, answer: null }
  })
}

/** The gate let a tagged order through. */
export async function placed(context: Context, ask: Ask<'page.placed'>, sender: Shop): Promise<Record<never, never>> {
  const { kept } = await context.keeper.ready()
  const place = await watchedPlace(kept.head, sender)
  if (!place) return {}
  await context.keeper.write(({ head }) => {
    const tag = head.tags[place.shop]
    if (tag?.order !== ask.order) return { change: {}, answer: null }
    const tags = { ...head.tags, [place.shop]: { ...tag, placedAt: context.now() } }
    return { change: { ledger: { tags } }, answer: null }
  })
  return {}
}

/** Whether the panel of an order held in this very tab has been drawn. */
export async function panel(
  _: Context,
  ask: Ask<'page.panel'>,
  sender: Shop,
): Promise<PageCommands['page.panel']['answer']> {
  const order = await heldBy(ask.nonce)
  return { isUp: order?.tab !== sender.tab || order.frame !== null }
}

/** The page takes the panel away each time it is shown: what cannot be said there is said on the toolbar. */
export async function fought(context: Context, sender: Shop): Promise<Record<never, never>> {
  const { kept } = await context.keeper.ready()
  if (await watchedPlace(kept.head, sender)) await showFought(sender.tab)
  return {}
}

/**
 * A shop's page may say that an order the person let through was taken, and under which number: that is kept. It cannot
 * change a figure; a final total that differs from the tagged one waits for the person. A page of an order confirmed
 * before (the same page opened again) says nothing about the new one.
 */
async function closeTheCircle(context: Context, shop: string, page: SeenPage): Promise<void> {
  const before = await context.keeper.ready()
  if (!before.kept.head.tags[shop]?.placedAt) return
  // An order number may be an old order's: all of the book is looked through.
  await context.keeper.writeOnWhole((kept, book) => {
    const { head } = kept
    const { [shop]: tag, ...tags } = head.tags
    if (!tag || tag.placedAt === null) return { change: {}, answer: null }
    const number = page.orderNumber?.trim().slice(0, LONGEST_NUMBER) ?? ''
    const known = number === '' ? null : orderNumbered(book, shop, number)
    if (known !== null && known !== tag.order) return { change: {}, answer: null }
    const isAsTagged = page.total === null || tag.read === null || sameAmount(page.total, tag.read)
    if (!isAsTagged || !findOrder(book, tag.order)) return { change: { ledger: { tags } }, answer: null }
    const stamp = stampToday(context, kept, book, context.newId())
    const said = confirmOrder(book, stamp, tag.order, { from: 'page', ...(number === '' ? {} : { number }) })
    return { change: { entries: said.kind === 'confirmed' ? [said.entry] : [], ledger: { tags } }, answer: null }
  })
}

function aheadAt(context: Context, head: Head, shop: string): PotId | null {
  return potAhead(head, shop, context.now())?.pot ?? null
}

function sameAmount(a: { amount: string; currency: string }, b: { amount: string; currency: string }): boolean {
  return a.currency === b.currency && Number(a.amount) === Number(b.amount)
}

async function freshPass(context: Context, shop: string): Promise<Pass | null> {
  const { kept } = await context.keeper.ready()
  const tag = kept.head.tags[shop]
  if (tag && isOld(tag, context.now())) {
    await endTag(context, shop)
    return null
  }
  return passOf(tag)
}

function isOld(tag: OpenTag, now: number): boolean {
  return tag.placedAt !== null && Math.abs(now - tag.placedAt) > SAME_ORDER_MS
}

async function endTag(context: Context, shop: string): Promise<void> {
  await context.keeper.write(({ head }) => {
    const { [shop]: _, ...tags } = head.tags
    return { change: { ledger: { tags } }, answer: null }
  })
}

async function watchedPlace(head: Head, sender: Shop): Promise<{ shop: string; origin: string } | null> {
  const [shop, origin] = [shopOf(sender.url.href), originOf(sender.url.href)]
  if (shop === null || origin === null || !head.watched.includes(origin)) return null
  return (await permitted([origin])).length > 0 ? { shop, origin } : null
}
