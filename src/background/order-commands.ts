import browser from 'webextension-polyfill'
import {
  allOrders,
  assess,
  type Book,
  findEntry,
  isCurrencyCode,
  lastSeenRate,
  money,
  ofMinor,
  orderSums,
  potsForShop,
  type SeenRate,
  tagOrder,
  workOut,
} from '../index.ts'
import { potAhead, withoutAhead } from './ahead.ts'
import { showBadge } from './badge.ts'
import type { Context } from './context.ts'
import { closePanel, tellGates } from './gate-mail.ts'
import { wishFrom } from './order-wish.ts'
import type {
  At,
  CheckoutLook,
  HeldBecause,
  OpenTag,
  OwnCommands,
  PotChoice,
  SeenPage,
  TagReply,
  UnconfirmedOrder,
} from './protocol.ts'
import { readTab } from './reading-tab.ts'
import { Refusal } from './refusal.ts'
import type { Sender } from './sender.ts'
import { forgetHeld, heldBy, noteHeld, noteSeen, seenIn } from './session.ts'
import { originOf, shopOf } from './shop-host.ts'
import { permitted } from './shops.ts'
import { stampToday } from './stamp.ts'
import type { Kept } from './store.ts'

/** Orders asked about at a shop, at most. */
const MOST_ASKED = 5

type Ask<C extends keyof OwnCommands> = OwnCommands[C]['ask']

/** A tab's shop and what it showed. */
interface Place {
  readonly tab: number
  /** The frame whose gate holds an order there. */
  readonly gate: number
  readonly shop: string
  readonly origin: string
  readonly page: SeenPage | null
  readonly because: HeldBecause | null
}

/** What the popup or panel needs to know of the page before it. Reads the page anew for the popup. */
export async function lookAtCheckout(
  context: Context,
  ask: Ask<'checkout.look'>,
  sender: Sender,
): Promise<CheckoutLook> {
  const { kept, book } = await context.keeper.ready()
  const nowhere = {
    shop: null,
    origin: null,
    watched: false,
    page: null,
    tag: null,
    ahead: null,
    heldBecause: null,
    seenRate: null,
  }
  let place: Place
  if ('nonce' in ask.at) {
    place = await placeOf(ask.at, sender)
  } else {
    const url = (await browser.tabs.get(ask.at.tab)).url
    const nothing = { ...nowhere, unconfirmed: unconfirmedAt(kept, book, null) }
    if (url === undefined) return { ...nothing, unread: 'no-access' }
    const [shop, origin] = [shopOf(url), originOf(url)]
    if (shop === null || origin === null) return { ...nothing, unread: 'not-a-web-page' }
    const page = await readTab(ask.at.tab, book.household.currency)
    if (page) await noteSeen(ask.at.tab, { shop, origin, page })
    place = { tab: ask.at.tab, gate: 0, shop, origin, page, because: null }
  }
  const watched = kept.head.watched.includes(place.origin) && (await permitted([place.origin])).length > 0
  return {
    shop: place.shop,
    origin: place.origin,
    watched,
    page: place.page,
    unread: place.page ? null : 'no-access',
    tag: kept.head.tags[place.shop] ?? null,
    ahead: potAhead(kept.head, place.shop, context.now()),
    heldBecause: place.because,
    seenRate: rateFor(book, place.page),
    unconfirmed: unconfirmedAt(kept, book, place.shop),
  }
}

function rateFor(book: Book, page: SeenPage | null): SeenRate | null {
  const asked = page?.total?.currency
  if (asked === undefined || !isCurrencyCode(asked) || asked === book.household.currency) return null
  return lastSeenRate(book, asked)
}

/**
 * Orders of a shop (of any, with null) that are held and not known as placed. An open tag that is still to be placed is
 * not asked about.
 */
function unconfirmedAt(kept: Kept, book: Book, shop: string | null): UnconfirmedOrder[] {
  const open = Object.values(kept.head.tags).filter((tag) => tag.placedAt === null)
  const isToCome = (order: string): boolean => open.some((tag) => tag.order === order)
  return allOrders(book)
    .filter((s) => (shop === null || s.shop === shop) && !s.isConfirmed && orderSums(s).held > 0 && !isToCome(s.order))
    .slice(0, MOST_ASKED)
    .map((s) => ({
      order: s.order,
      shop: s.shop,
      amount: ofMinor(book.household.currency, s.total),
      date: s.date,
      pots: s.parts.map((p) => p.pot),
    }))
}

/**
 * Every pot that could pay, likeliest first, each with its verdict on the whole total.
 *
 * @throws MoneyError when the total is not an amount of the household's currency
 */
export async function assessPots(context: Context, ask: Ask<'order.assess'>): Promise<PotChoice[]> {
  const { book } = await context.keeper.ready()
  const total = money(book.household.currency, ask.total)
  const today = context.today(book.household.timeZone)
  return potsForShop(book, ask.shop).map(({ pot, usedHere }) => {
    const purchase = { shop: ask.shop, lines: [{ pot, amount: total }] }
    const verdict = assess(book, ask.order === null ? purchase : { ...purchase, order: ask.order }, today)
    return { pot, usedHere, verdict }
  })
}

/** Tags the order of a page to its pots, or adjusts its tag. Told to the gate once it is written. @throws BookError, MoneyError */
export async function tag(context: Context, ask: Ask<'order.tag'>, sender: Sender): Promise<TagReply> {
  const place = await placeOf(ask.at, sender)
  const reply = await context.keeper.write<TagReply>((kept, book) => {
    const { currency, timeZone } = book.household
    const today = context.today(timeZone)
    const { purchase, whole } = workOut(book.household, wishFrom(place.shop, ask.wish), today)
    if (findEntry(book, ask.id)) {
      const verdict = assess(book, { ...purchase, order: ask.order }, today)
      return { change: {}, answer: { kind: 'tagged', entry: ask.id, verdict, adjusted: false } }
    }
    const open: OpenTag = {
      order: ask.order,
      shop: place.shop,
      lines: purchase.lines,
      amount: ofMinor(
        currency,
        purchase.lines.reduce((sum, l) => sum + l.amount.minor, 0),
      ),
      read: place.page?.total ?? null,
      taggedAt: context.now(),
      placedAt: null,
    }
    const tags = { ...kept.head.tags, [place.shop]: open }
    const { ahead } = kept.head
    const ledger = ahead ? { tags, ahead: withoutAhead(ahead, place.shop) } : { tags }
    // A gift card pays all of it: no pot is asked, and the order may pass.
    if (whole.every((l) => l.amount === 0)) {
      return { change: { ledger }, answer: { kind: 'nothing-to-pay' } }
    }
    const stamp = stampToday(context, kept, book, ask.id)
    const asked = tagOrder(book, stamp, ask.order, purchase, ask.reason ?? undefined)
    if (asked.kind !== 'tagged' && asked.kind !== 'unchanged') {
      return { change: {}, answer: { kind: asked.kind, verdict: asked.verdict } }
    }
    const answer: TagReply =
      asked.kind === 'tagged'
        ? { kind: 'tagged', entry: asked.entry.id, verdict: asked.verdict, adjusted: asked.entry.kind === 'adjust' }
        : { kind: 'unchanged', verdict: asked.verdict }
    return { change: { entries: asked.kind === 'tagged' ? [asked.entry] : [], ledger }, answer }
  })
  await afterTag(context, place)
  return reply
}

/** The order let through before is tried again: its tag is good once more. @throws Refusal `no-tag` */
export async function again(context: Context, ask: Ask<'order.again'>, sender: Sender): Promise<Record<never, never>> {
  const place = await placeOf(ask.at, sender)
  await context.keeper.write((kept) => {
    const open = kept.head.tags[place.shop]
    if (!open) throw new Refusal('no-tag', 'No order of this shop is tagged. Tag it to a pot first.')
    const tags = { ...kept.head.tags, [place.shop]: { ...open, read: place.page?.total ?? open.read, placedAt: null } }
    return { change: { ledger: { tags } }, answer: null }
  })
  await afterTag(context, place)
  return {}
}

/** Takes the panel away. */
export async function leavePanel(
  context: Context,
  ask: Ask<'panel.close'>,
  sender: Sender,
): Promise<Record<never, never>> {
  const place = await placeOf({ nonce: ask.nonce }, sender)
  const { kept } = await context.keeper.ready()
  await forgetHeld(ask.nonce)
  await closePanel(place.tab, place.gate, kept.head.tags[place.shop])
  return {}
}

async function afterTag(context: Context, place: Place): Promise<void> {
  const { kept, book } = await context.keeper.ready()
  await tellGates(place.origin, kept.head.tags[place.shop])
  await showBadge(place.tab, book, place.shop, potAhead(kept.head, place.shop, context.now())?.pot ?? null)
}

/**
 * The page an own page speaks for. A panel may only speak for the order held in the very tab it is framed in.
 *
 * @throws Refusal `unknown-nonce`, `unread-page`
 */
async function placeOf(at: At, sender: Sender): Promise<Place> {
  if ('nonce' in at) {
    const held = await heldBy(at.nonce)
    const isTheirs =
      held && sender.kind === 'panel' && sender.tab === held.tab && (held.frame ?? sender.frame) === sender.frame
    if (!isTheirs) {
      throw new Refusal('unknown-nonce', 'This panel holds no order. Go back to the shop and place the order again.')
    }
    if (held.frame === null) await noteHeld(at.nonce, { ...held, frame: sender.frame })
    return held
  }
  const seen = sender.kind === 'own' ? await seenIn(at.tab) : null
  if (seen) return { ...seen, tab: at.tab, gate: 0, because: null }
  throw new Refusal('unread-page', 'This page has not been read. Open the popup on the shop again.')
}
