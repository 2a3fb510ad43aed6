import {
  type Entry,
  fillPot,
  findEntry,
  findOrder,
  money,
  ofMinor,
  openPot,
  orderId,
  receivePay,
  reverse,
  type Stamp,
  spendFrom,
} from '../index.ts'
import type { Context } from './context.ts'
import { tellGates } from './gate-mail.ts'
import type { Look, OpenTag, OwnCommands } from './protocol.ts'
import { amountOf, potFrom } from './settings.ts'
import type { Head, Kept } from './store.ts'
import { look } from './view.ts'

type Ask<C extends keyof OwnCommands> = OwnCommands[C]['ask']

/** Notes a spend. @throws MoneyError, BookError */
export async function addSpend(context: Context, ask: Ask<'spend.add'>): Promise<Look> {
  await context.keeper.write((kept, book) => {
    const stamp = { id: ask.id, device: kept.head.device, date: ask.date }
    const amount = money(book.household.currency, ask.amount)
    return once(findEntry(book, ask.id), () => spendFrom(book.household, stamp, ask.pot, ask.side, amount, ask.purpose))
  })
  return look(context)
}

/** Fills a pot. @throws MoneyError, BookError */
export async function addFill(context: Context, ask: Ask<'fill.add'>): Promise<Look> {
  await context.keeper.write((kept, book) => {
    const stamp = { id: ask.id, device: kept.head.device, date: ask.date }
    const { currency } = book.household
    const sides = {
      cash: ofMinor(currency, amountOf(currency, ask.cash)),
      card: ofMinor(currency, amountOf(currency, ask.card)),
    }
    return once(findEntry(book, ask.id), () => fillPot(book.household, stamp, ask.pot, sides, ask.from))
  })
  return look(context)
}

/** Notes pay that arrived. @throws MoneyError, BookError */
export async function addPay(context: Context, ask: Ask<'pay.add'>): Promise<Look> {
  await context.keeper.write((kept, book) => {
    const stamp = { id: ask.id, device: kept.head.device, date: ask.date }
    const amount = money(book.household.currency, ask.amount)
    return once(findEntry(book, ask.id), () => receivePay(book.household, stamp, amount))
  })
  return look(context)
}

/** Adds a pot with what it starts with, or changes the pot of the same id. @throws MoneyError, BookError */
export async function savePot(context: Context, ask: Ask<'pot.save'>): Promise<Look> {
  await context.keeper.write((kept, book) => {
    const { settings } = kept.head
    const pot = potFrom(settings.currency, ask.pot, ask.archived)
    const isNew = !settings.pots.some((p) => p.id === pot.id)
    const pots = isNew ? [...settings.pots, pot] : settings.pots.map((p) => (p.id === pot.id ? pot : p))
    const household = { ...book.household, pots }
    const sides = {
      cash: ofMinor(settings.currency, amountOf(settings.currency, ask.pot.openCash)),
      card: ofMinor(settings.currency, amountOf(settings.currency, ask.pot.openCard)),
    }
    const stamp: Stamp = { id: ask.id, device: kept.head.device, date: context.today(settings.timeZone) }
    const opens = isNew && sides.cash.minor + sides.card.minor > 0
    const entries = opens ? [openPot(household, stamp, pot.id, sides)] : []
    return { change: { entries, ledger: { settings: { ...settings, pots } } }, answer: null }
  })
  return look(context)
}

/** Takes an entry back by a reversing one; an order's tag goes with it. @throws BookError */
export async function undo(context: Context, ask: Ask<'entry.undo'>): Promise<Look> {
  const tag = await context.keeper.write((kept, book) => {
    if (findEntry(book, ask.id)) return { change: {}, answer: null }
    const stamp = { id: ask.id, device: kept.head.device, date: context.today(book.household.timeZone) }
    const entry = reverse(book, stamp, ask.target)
    const target = findEntry(book, ask.target)
    const tag = target && 'order' in target ? tagOfOrder(kept.head, orderId(target.order)) : undefined
    return {
      change: { entries: [entry], ...(tag ? { ledger: { tags: withoutTag(kept, tag) } } : {}) },
      answer: tag ?? null,
    }
  })
  if (tag) await tellAllGates(context, tag)
  return look(context)
}

/** The open tag of an order, if it still is one. */
function tagOfOrder(head: Head, order: OpenTag['order']): OpenTag | undefined {
  return Object.values(head.tags).find((tag) => tag.order === order)
}

/*
 * When only a later adjustment is taken back, the order's first hold stands again; but the page it was read from has
 * moved on, so the guard must ask again: the tag is dropped and the next press finds the order through `findOrder`.
 */
function withoutTag(kept: Kept, tag: OpenTag): Head['tags'] {
  const { [tag.shop]: _, ...others } = kept.head.tags
  return others
}

async function tellAllGates(context: Context, tag: OpenTag): Promise<void> {
  const { kept } = await context.keeper.ready()
  for (const origin of kept.head.watched) await tellGates(origin, kept.head.tags[tag.shop])
}

function once(known: Entry | undefined, make: () => Entry): { change: { entries: Entry[] }; answer: null } {
  return { change: { entries: known ? [] : [make()] }, answer: null }
}
