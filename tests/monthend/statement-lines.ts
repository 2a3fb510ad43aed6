import { calendarDate, type PotId, potId } from '../../src/index.ts'
import type { OrderToMatch } from '../../src/monthend/match-types.ts'
import type { StatementLine } from '../../src/monthend/statement-line.ts'
import { cad, order } from '../book/sample.ts'

/** A booked line; what a test does not say is not said by its bank either. */
export function line(
  id: string,
  date: string,
  amount: string,
  name: string,
  more: Partial<StatementLine> = {},
): StatementLine {
  return {
    id,
    idFrom: 'bank',
    account: '',
    date: calendarDate(date),
    valueDate: null,
    paidOn: null,
    amount: cad(amount),
    status: 'booked',
    name,
    text: '',
    references: [],
    original: null,
    fee: null,
    reversal: false,
    kind: null,
    balance: null,
    replaces: null,
    batch: null,
    place: { row: 1, entry: 1 },
    ...more,
  }
}

/** A standing order, nothing charged yet. */
export function held(
  n: number,
  date: string,
  amount: string,
  shop: string,
  more: Partial<OrderToMatch> = {},
): OrderToMatch {
  return { order: order(n), shop, date: calendarDate(date), amount: cad(amount), ...more }
}

export const pots = (...ids: string[]): readonly PotId[] => ids.map(potId)
