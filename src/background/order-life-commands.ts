import {
  type AccountId,
  accountId,
  answerCharge,
  append,
  assess,
  type Book,
  BookError,
  chargeOrder,
  confirmOrder,
  type Entry,
  type EntryId,
  expectRefund,
  findEntry,
  findOrder,
  holdInstalment,
  holdOrder,
  money,
  type OrderId,
  ofMinor,
  orderState,
  type Renewal,
  refundOrder,
  releaseOrder,
  type Stamp,
  smallestRemoval,
  workOut,
} from '../index.ts'
import type { Context } from './context.ts'
import { tellGates } from './gate-mail.ts'
import { potAmounts, wishFrom } from './order-wish.ts'
import type { ChargeReply, OwnCommands, Weighed } from './protocol.ts'
import { shopOf } from './shop-host.ts'
import { stampOn, stampToday } from './stamp.ts'
import type { Kept, Settings } from './store.ts'

type Ask<C extends keyof OwnCommands> = OwnCommands[C]['ask']
type Nothing = Record<never, never>

/** What an order would do to its pots; nothing is written. @throws BookError, MoneyError */
export async function weigh(context: Context, ask: Ask<'order.weigh'>): Promise<Weighed> {
  const { book } = await context.keeper.ready()
  const { currency, timeZone } = book.household
  const today = context.today(timeZone)
  const wish = wishFrom(ask.shop, ask.wish)
  const { purchase, split, converted, whole } = workOut(book.household, wish, today)
  const sum = (lines: readonly { amount: number }[]): number => lines.reduce((all, l) => all + l.amount, 0)
  return {
    verdict: assess(book, ask.order === null ? purchase : { ...purchase, order: ask.order }, today),
    split,
    converted,
    whole: ofMinor(currency, sum(whole)),
    held: ofMinor(
      currency,
      purchase.lines.reduce((all, l) => all + l.amount.minor, 0),
    ),
    removal: smallestRemoval(book, wish, today, ask.order ?? undefined),
  }
}

/** Notes that an order went through. @throws BookError, MoneyError */
export async function confirm(
  context: Context,
  ask: Ask<'order.confirm'>,
): Promise<OwnCommands['order.confirm']['answer']> {
  const reply = await context.keeper.writeOnWhole<OwnCommands['order.confirm']['answer']>((kept, book) => {
    if (findEntry(book, ask.id)) return { change: {}, answer: { kind: 'confirmed' } }
    const asked = orderState(book, ask.order).details.foreign?.currency ?? book.household.currency
    const answer = confirmOrder(book, stampToday(context, kept, book, ask.id), ask.order, {
      ...(ask.number === null ? {} : { number: ask.number }),
      ...(ask.total === null ? {} : { total: money(asked, ask.total) }),
    })
    const said = { kind: answer.kind }
    if (answer.kind === 'other-order') return { change: {}, answer: said }
    const ledger = { tags: withoutTag(kept.head.tags, ask.order) }
    return { change: { entries: answer.kind === 'confirmed' ? [answer.entry] : [], ledger }, answer: said }
  })
  await tellWatched(context, ask.order)
  return reply
}

/** What the card charged; above the hold only with the person's word for it. @throws BookError, MoneyError */
export function charge(context: Context, ask: Ask<'order.charge'>): Promise<ChargeReply> {
  return context.keeper.write<ChargeReply>((kept, book) => {
    if (findEntry(book, ask.id)) return { change: {}, answer: { kind: 'charged' } }
    const { currency } = book.household
    const { foreign } = orderState(book, ask.order).details
    const stamp = stampOn(context, kept, book, ask.id, ask.date)
    const asked = answerCharge(book, stamp, ask.order, money(currency, ask.amount), {
      ...(ask.lines ? { lines: potAmounts(currency, ask.lines) } : {}),
      ...(ask.items ? { items: ask.items } : {}),
      ...(ask.foreign !== null && foreign ? { foreign: money(foreign.currency, ask.foreign) } : {}),
      ...withAccount(ask.account),
      acceptsAbove: ask.acceptsAbove,
    })
    if (asked.kind === 'above-hold') return { change: {}, answer: asked }
    const entries: Entry[] = [asked.entry]
    if (ask.complete !== null) {
      entries.push(releaseOrder(append(book, asked.entry), { ...stamp, id: ask.complete }, ask.order, 'complete'))
    }
    return { change: { entries }, answer: { kind: 'charged' } }
  })
}

/** A charge nobody tagged, put on pots now. It has happened, so no rule can stop it. @throws BookError, MoneyError */
export function chargeUntagged(context: Context, ask: Ask<'order.charge-untagged'>): Promise<Nothing> {
  return context.keeper.write((kept, book) => {
    if (findEntry(book, ask.id)) return { change: {}, answer: {} }
    const { currency } = book.household
    const amount = money(currency, ask.amount)
    const pots = potAmounts(currency, ask.pots)
    if (pots.length === 0) throw new BookError('bad-lines', 'Choose the pot this charge belongs to.')
    const { purchase } = workOut(
      book.household,
      { shop: ask.shop, total: amount, split: pots.length === 1 ? byPot(pots) : { by: 'amount', lines: pots } },
      ask.date,
    )
    const stamp = stampOn(context, kept, book, ask.id, ask.date)
    return {
      change: { entries: orderAndCharge(book, stamp, ask, purchase, withAccount(ask.account).account) },
      answer: {},
    }
  })
}

/** Lets the rest of a hold go. @throws BookError */
export async function release(context: Context, ask: Ask<'order.release'>): Promise<Nothing> {
  await context.keeper.write((kept, book) => {
    if (findEntry(book, ask.id)) return { change: {}, answer: null }
    const entry = releaseOrder(book, stampToday(context, kept, book, ask.id), ask.order, ask.why)
    return { change: { entries: [entry], ledger: { tags: withoutTag(kept.head.tags, ask.order) } }, answer: null }
  })
  await tellWatched(context, ask.order)
  return {}
}

/** An order that is seen through is no open tag any more: the shop's next order is another one. */
function withoutTag(tags: Kept['head']['tags'], order: OrderId): Kept['head']['tags'] {
  return Object.fromEntries(Object.entries(tags).filter(([, tag]) => tag.order !== order))
}

async function tellWatched(context: Context, order: OrderId): Promise<void> {
  const { kept, book } = await context.keeper.ready()
  const shop = findOrder(book, order)?.shop
  for (const origin of kept.head.watched) {
    if (shopOf(origin) === shop) await tellGates(origin, shop === undefined ? undefined : kept.head.tags[shop])
  }
}

/** Holds the next instalment. @throws BookError */
export function holdPart(context: Context, ask: Ask<'order.hold-part'>): Promise<Nothing> {
  return once(context, ask.id, (book, stamp) => holdInstalment(book, stamp, ask.order))
}

/** Lists a refund the shop announced. @throws BookError, MoneyError */
export function expect(context: Context, ask: Ask<'order.expect-refund'>): Promise<Nothing> {
  return once(context, ask.id, (book, stamp) =>
    expectRefund(book, stamp, ask.order, money(book.household.currency, ask.amount), itemsOf(ask.items)),
  )
}

/** Posts money that came back. @throws BookError, MoneyError */
export function refund(context: Context, ask: Ask<'order.refund'>): Promise<Nothing> {
  return context.keeper.write((kept, book) => {
    if (findEntry(book, ask.id)) return { change: {}, answer: {} }
    const { currency } = book.household
    const stamp = stampOn(context, kept, book, ask.id, ask.date)
    const { account } = withAccount(ask.account)
    const entry = refundOrder(book, stamp, ask.order, money(currency, ask.amount), account, {
      ...itemsOf(ask.items),
      ...(ask.lines ? { lines: potAmounts(currency, ask.lines) } : {}),
    })
    return { change: { entries: [entry] }, answer: {} }
  })
}

/** Adds a renewal, or changes the one of the same id. @throws BookError `bad-household`, MoneyError */
export function saveRenewal(context: Context, ask: Ask<'renewal.save'>): Promise<Nothing> {
  return context.keeper.write(({ head: { settings } }) => {
    const { id, name, shop, pot, amount, first, every, end } = ask
    const renewal: NonNullable<Settings['renewals']>[number] = {
      id,
      name: name.trim(),
      pot,
      amount: money(settings.currency, amount).minor,
      first,
      every: { ...every },
      ...(shop === null || shop.trim() === '' ? {} : { shop: shop.trim() }),
      ...(end === null ? {} : { end }),
    }
    const before = settings.renewals ?? []
    const isNew = before.every((r) => r.id !== id)
    const renewals = isNew ? [...before, renewal] : before.map((r) => (r.id === id ? renewal : r))
    return { change: { ledger: { settings: { ...settings, renewals } } }, answer: {} }
  })
}

/** A renewal was charged. @throws BookError */
export function payRenewal(context: Context, ask: Ask<'renewal.pay'>): Promise<Nothing> {
  return context.keeper.write((kept, book) => {
    if (findEntry(book, ask.id)) return { change: {}, answer: {} }
    const renewal: Renewal | undefined = book.household.renewals?.find((r) => r.id === ask.renewal)
    if (!renewal) throw new BookError('bad-renewal', `There is no renewal "${ask.renewal}" in this household.`)
    const { purchase } = workOut(
      book.household,
      {
        shop: renewal.shop ?? renewal.name,
        total: ofMinor(book.household.currency, renewal.amount),
        split: { by: 'pot', pot: renewal.pot },
        renewal: { id: renewal.id, due: ask.due },
      },
      ask.date,
    )
    const stamp = stampOn(context, kept, book, ask.id, ask.date)
    return { change: { entries: orderAndCharge(book, stamp, ask, purchase) }, answer: {} }
  })
}

/** How careful holds are. @throws BookError `bad-household` */
export function saveRules(context: Context, ask: Ask<'order.rules'>): Promise<Nothing> {
  return context.keeper.write(({ head: { settings } }) => {
    for (const percent of [ask.marginPercent, ask.foreignFeePercent]) {
      if (!/^\d{1,2}(\.\d{1,4})?$/.test(percent)) {
        throw new BookError('bad-household', `"${percent}" is no share in per cent. Write a number such as 2.5.`)
      }
    }
    if (ask.holdDays < 1 || ask.holdDays > 365) {
      throw new BookError('bad-household', `A hold cannot lapse after ${ask.holdDays} days. Choose 1 to 365.`)
    }
    return { change: { ledger: { settings: { ...settings, ordering: { ...ask } } } }, answer: {} }
  })
}

function orderAndCharge(
  book: Book,
  stamp: Stamp,
  ask: { readonly charge: EntryId; readonly order: Ask<'order.charge'>['order'] },
  purchase: Parameters<typeof holdOrder>[3],
  account?: AccountId,
): Entry[] {
  const entry = holdOrder(book, stamp, ask.order, purchase)
  const amount = purchase.lines.reduce((all, l) => all + l.amount.minor, 0)
  const sum = ofMinor(book.household.currency, amount)
  return [entry, chargeOrder(append(book, entry), { ...stamp, id: ask.charge }, ask.order, sum, account)]
}

function byPot([first]: { pot: Renewal['pot'] }[]): { by: 'pot'; pot: Renewal['pot'] } {
  if (!first) throw new BookError('bad-lines', 'Choose the pot this charge belongs to.')
  return { by: 'pot', pot: first.pot }
}

function once(context: Context, id: EntryId, make: (book: Book, stamp: Stamp) => Entry): Promise<Nothing> {
  return context.keeper.write((kept, book) => {
    const entries = findEntry(book, id) ? [] : [make(book, stampToday(context, kept, book, id))]
    return { change: { entries }, answer: {} }
  })
}

function itemsOf(items: readonly number[] | null): { items?: readonly number[] } {
  return items && items.length > 0 ? { items } : {}
}

function withAccount(id: string | null): { account?: AccountId } {
  return id === null ? {} : { account: accountId(id) }
}
