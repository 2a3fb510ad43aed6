import { type Money, ofMinor } from '../money/money.ts'
import { assess } from './assess.ts'
import { potBalance } from './balances.ts'
import type { Book } from './book.ts'
import type { CalendarDate } from './calendar-date.ts'
import type { OrderLine } from './entry.ts'
import { findPot } from './household.ts'
import type { OrderId, PotId } from './ids.ts'
import { findOrder } from './order-state.ts'
import { type OrderWish, workOut } from './purchase.ts'
import type { SharedCost, SplitItem } from './split.ts'
import { spread, sumOf } from './spread.ts'
import { type CostsBeside, type PotItems, takeOut } from './take-out.ts'

/** The items to take out of an order so that no pot blocks it. */
export interface Removal {
  /** Places in the order's list of items, ascending. */
  readonly items: readonly number[]
  /** What they cost, in the household's currency; without their part of shipping, tax and the rest. */
  readonly value: Money
  /** True when nothing would be left of the order. */
  readonly isAll: boolean
}

/** What stays whole when items are taken out; all else follows the items. */
const STAYS_WHOLE: ReadonlySet<SharedCost['kind']> = new Set(['shipping', 'fee', 'difference', 'credit'] as const)

/**
 * The smallest set of items to take out of an order split by item so that no pot blocks: the fewest items, then the least
 * value. Exact. Tax, tip, discount and a margin are taken to go down with the items; shipping and fees stay whole and fall
 * on the items that are kept, pro rata; where a gift card pays more than shipping and fees, a kept item counts on no more
 * of it than if no other pot gave anything up. What is left then fits wherever its odd cents fall. Abroad, items count
 * with their part of all costs.
 *
 * @param wish the order as it was meant, split by item
 * @param order an order tagged before, whose hold is replaced
 * @returns null when nothing blocks, or the order is not split by item or is paid in instalments
 * @throws BookError what `workOut` and `assess` throw
 */
export function smallestRemoval(book: Book, wish: OrderWish, today: CalendarDate, order?: OrderId): Removal | null {
  if (wish.split.by !== 'item' || wish.instalments) return null
  const { purchase, whole, split } = workOut(book.household, wish, today)
  if (assess(book, order ? { ...purchase, order } : purchase, today).outcome !== 'block') return null
  const { items } = wish.split
  const isForeign = split.total.currency !== book.household.currency
  const values = isForeign ? landed(book, items, whole) : items.map((i) => i.amount.minor)
  const worth = values.reduce((sum, v) => sum + v, 0)
  const costs = isForeign
    ? { worth, stays: 0, follows: 0 }
    : costsBeside(split.shared, worth, sumOf(whole) - split.total.minor)
  const notesOnly = items.flatMap((item, n) => (findPot(book.household, item.pot).sides === 'cash' ? [n] : []))
  const taken = [...new Set([...notesOnly, ...takeOut(potItems(book, items, values, order), costs)])]
  const value = taken.reduce((sum, n) => sum + (values[n] ?? 0), 0)
  const isAll = value === worth
  return {
    // Things that are free are not ordered alone.
    items: isAll ? items.map((_, n) => n) : taken.sort((a, b) => a - b),
    value: ofMinor(book.household.currency, value),
    isAll,
  }
}

function costsBeside(shared: readonly SharedCost[], worth: number, margin: number): CostsBeside {
  let [stays, follows] = [0, margin]
  for (const { kind, amount } of shared) {
    if (STAYS_WHOLE.has(kind)) stays += amount.minor
    else follows += amount.minor
  }
  return follows < -worth ? { worth, stays: stays + follows, follows: 0 } : { worth, stays, follows }
}

function potItems(book: Book, items: readonly SplitItem[], values: readonly number[], order?: OrderId): PotItems[] {
  const standing = order === undefined ? null : findOrder(book, order)
  const byPot = new Map<PotId, number[]>()
  for (const [n, item] of items.entries()) {
    const places = byPot.get(item.pot) ?? []
    if ((values[n] ?? 0) > 0) places.push(n)
    byPot.set(item.pot, places)
  }
  return [...byPot].map(([id, found]) => {
    const places = found.sort((a, b) => (values[b] ?? 0) - (values[a] ?? 0))
    const prices = places.map((n) => values[n] ?? 0)
    const heldNow = standing?.parts.find((p) => p.pot === id)?.held ?? 0
    return { places, values: prices, worth: prices.reduce((a, b) => a + b, 0), most: mostOf(book, id, heldNow) }
  })
}

/** The most a pot can be asked for before it blocks; null where it never does. */
function mostOf(book: Book, id: PotId, heldNow: number): number | null {
  const pot = findPot(book.household, id)
  if (pot.sides === 'cash') return Number.NEGATIVE_INFINITY
  if (pot.rule !== 'block') return null
  return Math.max(potBalance(book, id).left.minor + heldNow, heldNow)
}

/** Items with their part of all costs, in the household's currency. */
function landed(book: Book, items: readonly SplitItem[], whole: readonly OrderLine[]): number[] {
  const values = items.map(() => 0)
  for (const line of whole) {
    const places = items.map((item, n) => ({ item, n })).filter(({ item }) => item.pot === line.pot)
    const worth = places.map(({ item }) => ({ pot: line.pot, amount: item.amount.minor }))
    const shares = sumOf(worth) > 0 ? worth : worth.map((w) => ({ ...w, amount: 1 }))
    for (const [k, part] of spread(book.household.currency, line.amount, shares).entries()) {
      const place = places[k]
      if (place) values[place.n] = part.amount
    }
  }
  return values
}
