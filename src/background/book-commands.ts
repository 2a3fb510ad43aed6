import {
  append,
  type Book,
  type Entry,
  fillPot,
  findEntry,
  findOrder,
  money,
  type OrderId,
  ofMinor,
  openPot,
  receivePay,
  reverse,
  type Stamp,
  spendFrom,
  toDecimal,
} from '../index.ts'
import type { Context } from './context.ts'
import { tellGates } from './gate-mail.ts'
import type { Look, OpenTag, OwnCommands } from './protocol.ts'
import { amountOf, potFrom } from './settings.ts'
import { stampOn, stampToday } from './stamp.ts'
import type { Head } from './store.ts'
import { look } from './view.ts'

type Ask<C extends keyof OwnCommands> = OwnCommands[C]['ask']

/** Notes a spend. @throws MoneyError, BookError */
export async function addSpend(context: Context, ask: Ask<'spend.add'>): Promise<Look> {
  await context.keeper.write((kept, book) => {
    const stamp = stampOn(context, kept, book, ask.id, ask.date)
    const amount = money(book.household.currency, ask.amount)
    return once(findEntry(book, ask.id), () => spendFrom(book.household, stamp, ask.pot, ask.side, amount, ask.purpose))
  })
  return look(context)
}

/** Fills a pot. @throws MoneyError, BookError */
export async function addFill(context: Context, ask: Ask<'fill.add'>): Promise<Look> {
  await context.keeper.write((kept, book) => {
    const stamp = stampOn(context, kept, book, ask.id, ask.date)
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
    const stamp = stampOn(context, kept, book, ask.id, ask.date)
    const amount = money(book.household.currency, ask.amount)
    return once(findEntry(book, ask.id), () => receivePay(book.household, stamp, amount))
  })
  return look(context)
}

/** Adds a pot with what it starts with, or changes the pot of the same id. @throws MoneyError, BookError */
export async function savePot(context: Context, ask: Ask<'pot.save'>): Promise<Look> {
  await context.keeper.write((kept, book) => {
    const { settings } = kept.head
    const form = potFrom(settings.currency, ask.pot, ask.archived)
    const known = settings.pots.find((p) => p.id === form.id)
    const isNew = !known
    // The form knows nothing of what is planned for the pot.
    const pot = known?.plan ? { ...form, plan: known.plan } : form
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

/** Takes an entry back by a reversing one; an order's open tag follows. @throws BookError */
export async function undo(context: Context, ask: Ask<'entry.undo'>): Promise<Look> {
  const tag = await context.keeper.write((kept, book) => {
    if (findEntry(book, ask.id)) return { change: {}, answer: null }
    const stamp = stampToday(context, kept, book, ask.id)
    const entry = reverse(book, stamp, ask.target)
    const target = findEntry(book, ask.target)
    const tag = target && 'order' in target ? tagOfOrder(kept.head, target.order) : undefined
    if (!tag) return { change: { entries: [entry] }, answer: null }
    const tags = followingTags(kept.head.tags, tag, append(book, entry))
    return { change: { entries: [entry], ledger: { tags } }, answer: tag }
  })
  if (tag) await tellAllGates(context, tag)
  return look(context)
}

/** The open tag of an order, if it still is one. */
function tagOfOrder(head: Head, order: OrderId): OpenTag | undefined {
  return Object.values(head.tags).find((tag) => tag.order === order)
}

/**
 * The open tags once a step of a tag's order was taken back. The whole order gone: no tag. Only an adjustment gone: the
 * tag stands for what it was before, so that a page that still asks the later total is asked about again.
 */
function followingTags(tags: Head['tags'], tag: OpenTag, after: Book): Head['tags'] {
  const { [tag.shop]: _, ...others } = tags
  const state = findOrder(after, tag.order)
  if (!state) return others
  const amount = ofMinor(after.household.currency, state.total)
  const read = { amount: toDecimal(amount), currency: amount.currency }
  const lines = state.parts.map((p) => ({ pot: p.pot, amount: ofMinor(after.household.currency, p.tagged) }))
  return { ...others, [tag.shop]: { ...tag, lines, amount, read } }
}

async function tellAllGates(context: Context, tag: OpenTag): Promise<void> {
  const { kept } = await context.keeper.ready()
  for (const origin of kept.head.watched) await tellGates(origin, kept.head.tags[tag.shop])
}

function once(known: Entry | undefined, make: () => Entry): { change: { entries: Entry[] }; answer: null } {
  return { change: { entries: known ? [] : [make()] }, answer: null }
}
