import { linesByEntry, postedLines } from '../book/agree.ts'
import { type Book, entriesOf, isReversed } from '../book/book.ts'
import { addDays, type CalendarDate } from '../book/calendar-date.ts'
import type { Entry } from '../book/entry.ts'
import type { AccountId, OrderId } from '../book/ids.ts'
import { findOrder, orderSums } from '../book/order-state.ts'
import { dueRenewals } from '../book/renewal.ts'
import { type Money, ofMinor } from '../money/money.ts'
import type { EntryToMatch, MatchOptions, OrderToMatch, PotHabit } from './match-types.ts'

/**
 * The orders of a book that a statement may still show: those with something held, charged ones that may get money back,
 * and those whose hold was let go before the card charged them.
 */
export function ordersToMatch(book: Book): OrderToMatch[] {
  const ids = new Set<OrderId>()
  for (const entry of entriesOf(book)) if (entry.kind === 'order') ids.add(entry.order)
  const of = (minor: number): Money => ofMinor(book.household.currency, minor)
  const found: OrderToMatch[] = []
  for (const id of ids) {
    const state = findOrder(book, id)
    if (!state) continue
    const sums = orderSums(state)
    const { foreign, margin } = state.details
    const isOff = state.released === 'cancelled' || state.released === 'not-placed'
    // A lapsed hold may be charged after all; a complete order is paid.
    const open = state.released === 'lapsed' || isOff ? Math.max(0, sums.tagged - sums.charged) : sums.held
    found.push({
      order: id,
      shop: state.shop,
      date: state.date,
      amount: of(sums.tagged),
      held: of(open),
      charged: of(sums.charged),
      refunded: of(sums.refunded),
      number: state.number,
      pots: state.parts.map((p) => p.pot),
      ...(sums.expected > 0 ? { expected: of(sums.expected) } : {}),
      ...(margin === undefined ? {} : { margin: of(margin) }),
      ...(foreign === undefined ? {} : { foreign: ofMinor(foreign.currency, foreign.amount) }),
      ...(isOff ? { isOff } : {}),
    })
  }
  return found
}

/** Days around a statement in which renewals are looked for. */
const AROUND = 10

/**
 * What else of a book helps to match a statement: entries no statement has shown, renewals due, habits, and the lines
 * posted already.
 *
 * @param from first day of the statement, with `to` its last: renewals are looked for around them
 */
export function whatElseToMatch(
  book: Book,
  from: CalendarDate,
  to: CalendarDate,
): Required<Omit<MatchOptions, 'accounts'>> {
  return {
    entries: unseenEntries(book),
    renewals: dueRenewals(book, addDays(from, -AROUND), addDays(to, AROUND)).map(({ renewal, due, amount }) => ({
      renewal: renewal.id,
      name: renewal.name,
      ...(renewal.shop === undefined ? {} : { shop: renewal.shop }),
      due,
      amount,
      pot: renewal.pot,
    })),
    habits: habitsOf(book),
    posted: postedLines(book),
  }
}

/**
 * Standing entries that moved an account's money, by hand and not from a statement line, and that no line has shown. An
 * opening balance is on no statement; a reversal and what it takes back are both left out.
 */
export function unseenEntries(book: Book): EntryToMatch[] {
  const shown = linesByEntry(book)
  const shops = new Map<OrderId, string>()
  for (const entry of entriesOf(book)) if (entry.kind === 'order') shops.set(entry.order, entry.shop)
  const found: EntryToMatch[] = []
  for (const entry of entriesOf(book)) {
    if (entry.kind === 'opening' || entry.kind === 'reversal' || isReversed(book, entry.id)) continue
    for (const { account, amount } of entry.places) {
      const id = accountOfPlace(book, account)
      if (id === null || shown.get(entry.id)?.some((l) => l.account === null || l.account === id)) continue
      const text =
        entry.kind === 'spend' ? entry.purpose : 'order' in entry ? (shops.get(entry.order) ?? '') : (entry.note ?? '')
      const money = ofMinor(book.household.currency, amount)
      found.push({
        entry: entry.id,
        account: id,
        date: entry.happened ?? entry.date,
        amount: money,
        text,
        kind: kindOf(entry),
      })
    }
  }
  return found
}

function accountOfPlace(book: Book, place: string): AccountId | null {
  return book.household.accounts.find((a) => `${a.kind}:${a.id}` === place)?.id ?? null
}

function kindOf(entry: Entry): EntryToMatch['kind'] {
  if (entry.places.some((p) => p.account === 'notes')) return 'cash'
  if (entry.kind === 'pay' || entry.kind === 'transfer' || entry.kind === 'spend') return entry.kind
  return 'other'
}

function habitsOf(book: Book): PotHabit[] {
  const habits: PotHabit[] = []
  for (const entry of entriesOf(book)) {
    if (isReversed(book, entry.id)) continue
    if (entry.kind === 'order') for (const { pot } of entry.lines) habits.push({ text: entry.shop, isShop: true, pot })
    if (entry.kind === 'spend' && entry.purpose !== '')
      habits.push({ text: entry.purpose, isShop: false, pot: entry.pot })
  }
  return habits
}
