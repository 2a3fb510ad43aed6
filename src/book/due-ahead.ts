import type { Money } from '../money/money.ts'
import type { Book } from './book.ts'
import { addDays, type CalendarDate } from './calendar-date.ts'
import type { Pot } from './household.ts'
import { instalmentsAhead } from './instalment.ts'
import { nextFill } from './next-fill.ts'
import type { Purchase } from './order.ts'
import { dueRenewals } from './renewal.ts'

/** Something a pot must pay on a day to come. */
export interface Due {
  readonly name: string
  readonly date: CalendarDate
  readonly amount: Money
}

/** Where no fill is known to come, the coming month is looked at. */
const DAYS_WITHOUT_FILL = 31

/**
 * What a pot must pay up to and including the day of its next fill beside what it holds: renewals and instalments, without
 * those the purchase itself pays.
 */
export function dueAhead(book: Book, purchase: Purchase, pot: Pot, today: CalendarDate): Due[] {
  const to = nextFill(book.household, pot, today)?.date ?? addDays(today, DAYS_WITHOUT_FILL)
  const paid = purchase.details?.renewal
  const renewals = dueRenewals(book, today, to, pot.id)
    .filter((d) => d.renewal.id !== paid?.id || d.due !== paid.due)
    .map((d) => ({ name: d.renewal.name, date: d.due, amount: d.amount }))
  const instalments = instalmentsAhead(book, pot.id, to)
    .filter((i) => i.order !== purchase.order)
    .map((i) => ({ name: i.shop, date: i.date, amount: i.amount }))
  return [...renewals, ...instalments].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
}
