import type { CurrencyCode } from '../money/currency.ts'
import { type Money, ofMinor } from '../money/money.ts'
import { type Book, isReversed } from './book.ts'
import { BookError } from './book-error.ts'
import type { CalendarDate } from './calendar-date.ts'
import type { InstalmentEntry, OrderLine, Stamp } from './entry.ts'
import type { OrderId, PotId } from './ids.ts'
import { holdPostings } from './order.ts'
import type { InstalmentPart } from './order-details.ts'
import { orderEntries } from './order-index.ts'
import { findOrder, type OrderState, orderState, orderSums } from './order-state.ts'
import { entryBase } from './posting.ts'
import { spread, sumOf } from './spread.ts'

/** One part as it stands: nothing done yet, held for the card, or charged. */
export interface PartState extends InstalmentPart {
  readonly part: number
  readonly amount: number
  readonly state: 'to-come' | 'held' | 'paid'
}

/**
 * Cuts an order's lines into parts, each with its sum and every pot's sum exact: each part takes pro rata of what the
 * parts before it left.
 *
 * @param parts days with their amounts in minor units, which sum to the lines
 * @throws BookError `bad-instalments` (fewer than two parts, days not in order, sums that disagree)
 */
export function cutInstalments(
  currency: CurrencyCode,
  lines: readonly OrderLine[],
  parts: readonly { readonly date: CalendarDate; readonly amount: number }[],
): InstalmentPart[] {
  const wrong = (what: string): BookError => new BookError('bad-instalments', what)
  if (parts.length < 2) throw wrong('Instalments need two parts at least. Enter each with its day.')
  if (parts.some((p, n) => n > 0 && p.date <= (parts[n - 1]?.date ?? ''))) {
    throw wrong('The instalments must be in order, each on a day of its own.')
  }
  if (parts.some((p) => p.amount <= 0)) throw wrong('Each instalment must be more than nothing.')
  if (sumOf(parts) !== sumOf(lines)) throw wrong('The instalments do not come to the order’s total. Mend one of them.')
  let left = [...lines]
  return parts.map(({ date, amount }) => {
    const part = spread(currency, amount, left)
    left = left.map((l, n) => ({ pot: l.pot, amount: l.amount - (part[n]?.amount ?? 0) }))
    return { date, lines: part }
  })
}

/** The parts of an order held by part, with how each stands; none for any other order. Charges pay the parts in order. */
export function instalmentsOf(state: OrderState): PartState[] {
  const { instalments } = state.details
  if (instalments?.reserve !== 'by-part') return []
  let paid = orderSums(state).charged
  return instalments.parts.map((p, part) => {
    const amount = sumOf(p.lines)
    const isPaid = paid >= amount
    paid -= Math.min(paid, amount)
    const isHeld = p.date <= state.date || state.heldParts.includes(part)
    return { ...p, part, amount, state: isPaid ? 'paid' : isHeld ? 'held' : 'to-come' }
  })
}

/**
 * Holds the next instalment of an order.
 *
 * @throws BookError `unknown-order`, `bad-instalments` (none is left to hold)
 */
export function holdInstalment(book: Book, stamp: Stamp, order: OrderId): InstalmentEntry {
  const next = instalmentsOf(orderState(book, order)).find((p) => p.state === 'to-come')
  if (!next) throw new BookError('bad-instalments', 'No instalment of this order is left to hold.')
  const base = entryBase(stamp, holdPostings(next.lines.map((l) => [l.pot, l.amount] as const)), [])
  return { ...base, kind: 'instalment', order, part: next.part, lines: next.lines }
}

/** An instalment that is not held yet. */
export interface InstalmentAhead {
  readonly order: OrderId
  readonly shop: string
  readonly date: CalendarDate
  readonly amount: Money
}

/** What a pot must still pay in instalments up to a day, that day included, beside what it holds. */
export function instalmentsAhead(book: Book, pot: PotId, to: CalendarDate): InstalmentAhead[] {
  const found: InstalmentAhead[] = []
  for (const entry of orderEntries(book, 'byPart')) {
    const state = isReversed(book, entry.id) ? null : findOrder(book, entry.order)
    if (!state || state.released !== null) continue
    for (const part of instalmentsOf(state)) {
      const amount = part.lines.find((l) => l.pot === pot)?.amount ?? 0
      if (part.state !== 'to-come' || part.date > to || amount === 0) continue
      found.push({
        order: state.order,
        shop: state.shop,
        date: part.date,
        amount: ofMinor(book.household.currency, amount),
      })
    }
  }
  return found.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
}
